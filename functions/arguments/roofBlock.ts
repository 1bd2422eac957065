import { deeperSize } from "../../src/measure/deeperSize.ts";
import { isNominal } from "../../src/measure/isNominal.ts";
import type { ReadSize } from "../../src/measure/readSize.ts";
import { readLength } from "../../src/measure/readLength.ts";
import { readSize } from "../../src/measure/readSize.ts";
import { Failure } from "../../src/measure/result.ts";
import { MM_PER_INCH, type Unit } from "../../src/measure/unit.ts";
import { isBlank, shown } from "../../src/registry/cells.ts";
import { labelledBlock } from "../../src/registry/labelledBlock.ts";
import { choice, number } from "../../src/registry/parameters.ts";
import { readLengthCell, type LengthOptions } from "../../src/registry/readLengthCell.ts";
import { readPitchCell } from "../../src/registry/readPitchCell.ts";
import { readSizeCell } from "../../src/registry/readSizeCell.ts";
import { CellError, Refusal } from "../../src/registry/refusal.ts";
import type { Input, Reading } from "../../src/registry/worksheetFunction.ts";
import type { RoofSpec, Section } from "../../src/roof/frame/roofSpec.ts";
import { boardLengths } from "./boardLengths.ts";

/** The rows of the roof block, in the order in which the pane writes them. */
export const ROWS = [
  "Span",
  "Length",
  "Pitch",
  "End pitch",
  "Ends",
  "Spacing",
  "Overhang",
  "End overhang",
  "Rafter",
  "Hip",
  "Ridge",
  "Seat",
  "Heel",
  "Set out from",
  "Hip top",
  "Hip head",
  "Correction",
  "End correction",
  "Boards",
  "Waste",
  "Spares",
  "Unit",
] as const;
export type Row = (typeof ROWS)[number];

/** Rows whose value is a length and so may say in which unit the block is. */
const LENGTHS: readonly Row[] = [
  "Span",
  "Length",
  "Spacing",
  "Overhang",
  "End overhang",
  "Seat",
  "Heel",
  "Correction",
  "End correction",
];
const SIZES: readonly Row[] = ["Rafter", "Hip", "Ridge"];

/** Rows in which no 0 can be meant: it is an empty cell there, as some hosts hand it over. */
const NEVER_ZERO: readonly Row[] = [
  "End pitch",
  "Ends",
  ...SIZES,
  "Set out from",
  "Hip top",
  "Hip head",
  "Boards",
  "Unit",
];

/** What stands in a roof block's optional rows when they are blank. */
export const DEFAULTS = {
  in: { spacing: 24, seat: 3.5, rafter: "2x6", least: 60, boards: [96, 120, 144, 168, 192, 216, 240] },
  mm: {
    spacing: 600,
    seat: 89,
    rafter: "38 x 140 mm",
    least: 1500,
    boards: [2400, 3000, 3600, 4200, 4800, 5400, 6000],
  },
} as const;

/** Inches: no hip roof spans 250 ft on rafters, and none is narrower than 3 m by much. */
const WIDEST = 3000;

/** Carries the first refusal out of the row readers; caught in {@link readRoofBlock} and nowhere else. */
class Stop extends Error {
  readonly why: Refusal | CellError;
  constructor(why: Refusal | CellError) {
    super();
    this.why = why;
  }
}

function must<T>(value: T | Refusal | CellError): T {
  if (value instanceof Refusal || value instanceof CellError) throw new Stop(value);
  return value;
}

function refused(label: string, words: string): never {
  throw new Stop(new Refusal("#VALUE!", `${label}: ${words}`));
}

/**
 * Reads a roof block: two columns, label and value, in one unit.
 *
 * The unit is the row Unit, else inches unless every length text is metric. Every refusal starts with the row's label.
 */
export function readRoofBlock(name: string, input: Input): RoofSpec | Refusal | CellError {
  const rows = labelledBlock(name, input, ROWS);
  if (!(rows instanceof Map)) return rows;
  try {
    return roofSpec(rows as Map<Row, Input>);
  } catch (stop) {
    if (stop instanceof Stop) return stop.why;
    throw stop;
  }
}

/** What may be typed for the rows that every block needs. */
const NEEDED = {
  in: { Span: "24' or 288", Length: "36' or 432", Pitch: `6 or "6/12"` },
  mm: { Span: `"7.2 m"`, Length: `"10.8 m"`, Pitch: `6 or "6/12"` },
} as const;

function roofSpec(rows: Map<Row, Input>): RoofSpec {
  for (const row of NEVER_ZERO) if (rows.get(row) === 0) rows.delete(row);
  const unit = blockUnit(rows);
  for (const row of ["Span", "Length", "Pitch"] as const) {
    if (!rows.has(row))
      refused(row, `the block has no value for it. Type ${NEEDED[unit][row]} beside the label ${row}.`);
  }
  const preset = DEFAULTS[unit];
  const reading: Reading = { unit, unitFrom: rows.has("Unit") ? "the row Unit" : "the rest of the block" };
  const length = (row: Row, fallback: number | null, options: LengthOptions = {}) => {
    if (rows.get(row) === 0 && !options.zero)
      refused(row, "0 was read, as some sheets hand over an empty cell. Type a length, or take the row away.");
    return rows.has(row) ? must(readLengthCell(row, rows.get(row), reading, options)) : fallback;
  };
  const word = <T extends string>(row: Row, choices: readonly T[], fallback: T) =>
    must(choice(row, "", choices, fallback).read(rows.get(row), reading));
  const count = (row: Row, to: number, whole: boolean, example: string) =>
    must(
      number(row, "", { from: 0, to, whole, example, fallback: 0 }).read(
        row === "Waste" ? percent(rows.get(row)) : rows.get(row),
        reading,
      ),
    );

  const pitch = must(readPitchCell("Pitch", rows.get("Pitch")));
  const endPitch = rows.has("End pitch") ? must(readPitchCell("End pitch", rows.get("End pitch"))) : null;
  const rafter = section("Rafter", rows.get("Rafter") ?? preset.rafter, unit);
  const deeper = deeperSize(rafter.name);
  if (rows.has("Seat") && rows.has("Heel"))
    refused("Heel", "the block has both Heel and Seat, and one follows from the other. Keep one of the two rows.");
  const waste = count("Waste", 100, false, "10, for 10 per cent");
  if (waste > 0 && waste < 1) refused("Waste", wasteAsPart(waste));
  return {
    unit,
    span: span("Span", rows, reading, preset.least),
    length: span("Length", rows, reading, preset.least),
    pitch,
    endPitch,
    ends: word("Ends", ["hip and hip", "hip and gable", "gable and hip"], "hip and hip"),
    spacing: length("Spacing", preset.spacing, { example: "24" })!,
    overhang: length("Overhang", 0, { zero: true, example: "16" })!,
    endOverhang: length("End overhang", null, { zero: true, example: "16" }),
    rafter,
    hip: section("Hip", rows.get("Hip") ?? deeper, unit),
    ridge: isNone(rows.get("Ridge")) ? null : section("Ridge", rows.get("Ridge") ?? deeper, unit),
    seat: rows.has("Heel") ? null : length("Seat", preset.seat, { example: "3.5" }),
    heel: length("Heel", null, { example: "4.4" }),
    setOutFrom: word("Set out from", ["king common", "corner"], "king common"),
    hipTop: word("Hip top", ["dropped", "backed", "shifted"], "dropped"),
    hipHead: word("Hip head", ["king commons", "ridge"], "king commons"),
    correction: length("Correction", 0, { zero: true, negative: true, example: "0.25" })!,
    endCorrection: length("End correction", 0, { zero: true, negative: true, example: "0.25" })!,
    boards: boardsOnHand(rows, reading, preset),
    waste,
    spares: count("Spares", 1000, true, "2, for two pieces"),
  };
}

/** A per cent that a sheet turned into a part of one: 0.07 for 7%. */
function wasteAsPart(waste: number): string {
  const percent = Number((waste * 100).toPrecision(12));
  return `${waste} was read, which a sheet makes of ${percent}%. Type ${percent} for ${percent} per cent.`;
}

/** A number without a mark. */
const isBare = (cell: Input) => typeof cell === "number" || (typeof cell === "string" && /^[\s\d.]+$/.test(cell));

/** A bare number that is far too small for its row is feet taken for inches, and one far too large for a span is millimetres. */
function span(row: "Span" | "Length", rows: Map<Row, Input>, reading: Reading, least: number): number {
  const cell = rows.get(row);
  const value = must(readLengthCell(row, cell, reading, { example: NEEDED.in[row] }));
  if (isBare(cell) && value < least) {
    const [unit, way] =
      reading.unit === "mm" ? ["millimetres", `"${value} m" for metres`] : ["inches", `${value}' for feet`];
    refused(row, `${shown(cell)} was read, which is too short in ${unit}. Type ${way}.`);
  }
  if (isBare(cell) && row === "Span" && value >= WIDEST && reading.unit === "in" && !rows.has("Unit"))
    refused(
      row,
      `${shown(cell)} was read, which is too long in inches. Type "${value} mm" for millimetres, or in beside the label Unit.`,
    );
  return value;
}

/** Bare numbers that are all far too small for a roof's boards, under half the least span, are feet or metres. */
function boardsOnHand(
  rows: Map<Row, Input>,
  reading: Reading,
  { boards, least }: { boards: readonly number[]; least: number },
): readonly number[] {
  if (!rows.has("Boards")) return boards;
  const cell = rows.get("Boards");
  const read = must(boardLengths("Boards", cell, reading));
  const bare = typeof cell === "number" || (typeof cell === "string" && /^(?:[\s\d.,;]|to|by)+$/i.test(cell));
  if (bare && read.at(-1)! < least / 2) {
    const [unit, mark, units] = reading.unit === "mm" ? ["millimetres", " m", "metres"] : ["inches", "'", "feet"];
    refused(
      "Boards",
      `${shown(cell)} was read, and no board so short in ${unit} frames a roof. Type "${String(cell)
        .trim()
        .replace(/[\d.]+/g, `$&${mark}`)}" for ${units}.`,
    );
  }
  return read;
}

/** The unit of the whole block. Refuses a mixture by the label of the row that does not fit. */
function blockUnit(rows: Map<Row, Input>): Unit {
  const given = must(
    choice("Unit", "", ["in", "mm"] as const, "in").read(rows.get("Unit"), { unit: null, unitFrom: "" }),
  );
  const texts: { row: Row; unit: Unit }[] = [];
  for (const row of [...LENGTHS, ...SIZES]) {
    const cell = rows.get(row);
    if (typeof cell !== "string" || isBlank(cell)) continue;
    const read = SIZES.includes(row) ? readSize(cell) : readLength(cell);
    if (read instanceof Failure || read.unit === null) continue;
    // A nominal size is a name, in any unit; only an actual one says in which.
    if (SIZES.includes(row) && isNominal(read as ReadSize)) continue;
    texts.push({ row, unit: read.unit });
  }
  const unit = rows.has("Unit") ? given : texts.length > 0 && texts.every((text) => text.unit === "mm") ? "mm" : "in";
  const stray = texts.find((text) => text.unit !== unit);
  if (!stray) return unit;
  const was = stray.unit === "mm" ? "metric" : "feet and inches";
  const rest = unit === "mm" ? "millimetres" : "feet and inches";
  refused(
    stray.row,
    `${shown(rows.get(stray.row))} is ${was}, but the block is in ${rest}. Type every length of the block in one unit${rows.has("Unit") ? ", or change the row Unit" : ""}.`,
  );
}

function section(row: Row, cell: Input, unit: Unit): Section {
  const { name, thickness, depth, unit: own } = must(readSizeCell(row, cell, { unit: null, unitFrom: "" }));
  if (own === unit) return { name, thickness, depth };
  // Dressed lumber is sold to whole millimetres: 1.5 x 5.5 in is 38 x 140.
  const metric = (inches: number) => Math.round(inches * MM_PER_INCH);
  return { name, thickness: metric(thickness), depth: metric(depth) };
}

function isNone(cell: Input): boolean {
  return typeof cell === "string" && cell.trim().toLowerCase() === "none";
}

/** A per cent typed as text, "10%", is the number before its sign. */
function percent(cell: Input): Input {
  return typeof cell === "string" && cell.length < 32 && cell.trim().endsWith("%") ? cell.trim().slice(0, -1) : cell;
}
