import fc from "fast-check";

// Whatever may stand in a cell: any code units at all, whole graphemes, and near misses made of the characters that measures are made of.
const PARTS = [
  "0",
  "1",
  "24",
  "7.5",
  "3/16",
  "½",
  "'",
  '"',
  "′",
  "″",
  "-",
  "−",
  "/",
  ":",
  "x",
  "×",
  " ",
  "ft",
  "in",
  "mm",
  "m",
  "°",
  "deg",
  "%",
  ",",
  ".",
  "e9",
  "+",
  "00",
];

export const anyText = fc.oneof(
  fc.string({ unit: "binary", maxLength: 200 }),
  fc.string({ unit: "grapheme", maxLength: 80 }),
  fc.array(fc.constantFrom(...PARTS), { maxLength: 12 }).map((parts) => parts.join("")),
);

/** Long texts that a careless pattern would chew on for minutes. */
export const longTexts: readonly (readonly [string, string])[] = [
  ["digits", "1".repeat(10_000)],
  ["digits and an end that fits nothing", `${"1".repeat(9_999)}!`],
  ["spaces", " ".repeat(10_000)],
  ["emoji", "📐".repeat(5_000)],
  ["feet marks", "1'".repeat(5_000)],
  ["dashes", "1-".repeat(5_000)],
  ["fractions", "1/2 ".repeat(2_500)],
  ["size marks", "2x".repeat(5_000)],
];
