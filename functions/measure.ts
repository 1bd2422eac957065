import { MM_PER_INCH } from "../src/measure/unit.ts";
import { tapeRound } from "../src/measure/tapeRound.ts";
import { tapeText } from "../src/measure/tapeText.ts";
import { choice, length } from "../src/registry/parameters.ts";
import type { Reading } from "../src/registry/reading.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";

const family = "measure";
const any = { zero: true, negative: true } as const;
const smallest = choice(
  "smallest",
  "Smallest division of the tape: 2 for halves up to 64 for sixty-fourths of an inch.",
  [2, 4, 8, 16, 32, 64] as const,
  16,
);
const INCH = "international inch of 25.4 mm (1959 agreement)";

/** Inches of a length whose text may have been metric; a bare number is inches already. */
const inInches = (value: number, { unit }: Reading) => (unit === "mm" ? value / MM_PER_INCH : value);

export const inches = worksheetFunction({
  name: "INCHES",
  family,
  summary: "A length in inches, whatever it was typed in.",
  parameters: [length("length", `Length: a number of inches, or text such as 9' 4 5/8" or 2860 mm.`, any)],
  result: "value",
  returns: "inches; a bare number is inches already.",
  examples: [
    { cells: [`9' 4 5/8"`], result: 112.625 },
    { cells: ["9-4-5/8"], result: 112.625 },
    { cells: ["2540 mm"], result: 100, source: INCH },
  ],
  compute: ({ length }, reading) => inInches(length, reading),
});

export const toMm = worksheetFunction({
  name: "TOMM",
  family,
  summary: "A length in millimeters, whatever it was typed in.",
  parameters: [length("length", `Length: a number of millimeters, or text such as 2.86 m or 9' 4 5/8".`, any)],
  result: "value",
  returns: "millimeters; a bare number is millimeters already.",
  examples: [
    { cells: [`100"`], result: 2540, source: INCH },
    { cells: ["2.86 m"], result: 2860 },
  ],
  compute: ({ length }, { unit }) => (unit === "in" ? length * MM_PER_INCH : length),
});

export const tape = worksheetFunction({
  name: "TAPE",
  family,
  summary: "A length as it is read on a tape in feet, inches and a fraction.",
  parameters: [length("inches", "Length in inches.", any), smallest],
  result: "value",
  returns: "text such as 9' 4 5/8\", rounded once to the nearest division, half way up.",
  examples: [
    { cells: [112.6], result: `9' 4 5/8"` },
    { cells: [111.12, 8], result: `9' 3 1/8"`, source: "NAVEDTRA 14044, ch. 2: rise 7, span 16 ft, 9 ft 3 1/8 in" },
  ],
  compute: ({ inches, smallest }, reading) => tapeText(inInches(inches, reading), smallest),
});

export const tapeRounded = worksheetFunction({
  name: "TAPEROUND",
  family,
  summary: "A length rounded to the nearest division of a tape, as a number.",
  parameters: [length("inches", "Length in inches.", any), smallest],
  result: "value",
  returns: "inches, half way up.",
  examples: [
    { cells: [112.6], result: 112.625 },
    { cells: [111.12, 8], result: 111.125, source: "NAVEDTRA 14044, ch. 2: rise 7, span 16 ft, 111 1/8 in" },
  ],
  compute: ({ inches, smallest }, reading) => tapeRound(inInches(inches, reading), smallest),
});

export const measures = [inches, toMm, tape, tapeRounded];
