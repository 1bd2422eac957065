import fc from "fast-check";
import type { Answer } from "../../src/registry/call.ts";
import { CellError } from "../../src/registry/refusal.ts";

/** Objects that no sheet hands over, some of which fail when they are looked at. */
const objects = [
  {},
  Object.create(null),
  { toString: () => "6/12", valueOf: () => 6 },
  { toString: () => Promise.reject, length: 2 },
  Symbol("6"),
  () => 6,
  new Date(0),
  /6/,
  10n,
];
const texts = [
  "6/12",
  "24'",
  "2x8",
  "none",
  "hip and hip",
  "8' to 24' by 2'",
  "1 1",
  "\u0000",
  "\u202e12'",
  "=1+1",
  "1e999",
  "-0",
  "0x10",
  "९",
  "1".repeat(400),
  "'".repeat(3000),
  "9/".repeat(500),
];
const numbers = [0, -0, 1, -1, 6, 24, 288, 5e-324, 1e-300, 1e15, 1e300, Number.MAX_VALUE, NaN, Infinity, -Infinity];
/** A cell that may break a function: what no sheet hands over, and what one does. */
export const cell: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom<unknown>(...texts) },
  { weight: 4, arbitrary: fc.constantFrom<unknown>(...numbers) },
  { weight: 1, arbitrary: fc.constantFrom<unknown>(...objects) },
  { weight: 1, arbitrary: fc.constantFrom<unknown>(null, undefined, "", true, false, new CellError("#N/A")) },
  { weight: 1, arbitrary: fc.string({ maxLength: 30 }) },
);
const label = fc.constantFrom<unknown>(
  "Span",
  "Length",
  "Pitch",
  "Spacing",
  "Unit",
  "Rafter",
  "span:",
  "Span ",
  "x",
  7,
);
/** A block of such cells, or none. */
export const block: fc.Arbitrary<unknown> = fc.oneof(
  fc.array(fc.tuple(label, cell), { maxLength: 6 }),
  fc.constant([
    ["Span", "24'"],
    ["Length", "36'"],
    ["Pitch", 6],
  ]),
  fc.constantFrom<unknown>([], [[]], new Array(3), [new Array(2)], [["Span"]], [[[["Span", 1]]]]),
  cell,
);

/** Numbers of an answer, alone or in a block. */
export const numbersOf = (answer: Answer): number[] =>
  [answer].flat(2).filter((value): value is number => typeof value === "number");
