import { halfUp } from "../../src/measure/halfUp.ts";
import { readLength } from "../../src/measure/readLength.ts";
import { Failure } from "../../src/measure/result.ts";
import { MM_PER_INCH, type Unit } from "../../src/measure/unit.ts";
import type { CellProblem, Counted } from "../../src/registry/cellProblem.ts";
import { isBlank } from "../../src/registry/cells.ts";
import type { Place } from "../../src/registry/refusal.ts";
import { placeText } from "./placeText.ts";
import { shown } from "./shown.ts";
import type { Say, Words } from "./words.ts";

const COMMA = "Type a decimal point instead of a decimal comma, and leave out a comma between thousands";

/** Why a cell, or a block of cells, cannot be read. */
export const cellWords: Words<CellProblem> = {
  "no length": ({ examples }, say) => ["nothing was given", `Type a length, such as ${example(examples, say)}`],
  "text too long": ({ read, examples }, say) => [
    `${shown(read)} was read, which is far too long for a length`,
    `Type ${inAnyUnit(examples, say)}`,
  ],
  "decimal comma": ({ read }) => [`${shown(read)} was read`, COMMA],
  "zero denominator": ({ read, examples }, say) => [
    `${shown(read)} was read, a fraction over 0`,
    `Type a length such as ${inAnyUnit(examples, say)}`,
  ],
  "not a length": ({ read, examples }, say) => [
    `${shown(read)} was read, which is no length`,
    `Type ${typeof read === "string" ? inAnyUnit(examples, say) : example(examples, say)}`,
  ],
  "length too long": ({ read, most, examples }, say) => [
    `${shown(read)} was read, which is too long`,
    `Type a length under ${most.toLocaleString("en-US")}, such as ${example(examples, say)}`,
  ],
  "date for a length": ({ read, value }, say) => [
    `${shown(read)} was read, which is a date that a sheet makes of 24-6`,
    `Type 24' 6", or ${say.typed(`${value / 1000} m`)} when it is millimeters`,
  ],
  "length of 0": ({ examples }, say) => [
    "0 was read; it must be more than 0",
    `Type a length such as ${example(examples, say)}`,
  ],
  "length below 0": ({ read, examples }, say) => [
    `${shown(read)} was read; it must not be negative`,
    `Type a length such as ${example(examples, say)}`,
  ],
  "length not a number": ({ read, examples }, say) => [
    `${shown(read)} was read, which is no number`,
    `Type a length such as ${example(examples, say)}`,
  ],
  "other unit": ({ read, unit, from }) => [
    `${shown(read)} is ${SYSTEM[unit]}, but ${unitSource(from)} is ${SYSTEM[other(unit)]}`,
    "Type both in the same unit",
  ],

  "no pitch": (_, say) => ["nothing was given", `Type a rise in 12, such as 6, or text such as ${say.typed("6/12")}`],
  "not a pitch": ({ read }, { typed }) => [
    `${shown(read)} was read, which is no pitch`,
    typeof read === "string" || typeof read === "number"
      ? `Type 6, ${typed("6/12")}, ${typed("6 in 12")}, ${typed("26.57°")} or ${typed("50%")}`
      : pitches(typed),
  ],
  "pitch below 1": ({ read }, { typed }) =>
    typeof read === "number" && read > 0
      ? [
          `${read} was read`,
          `A sheet makes such a number of 6:12 (a time), of 6/12 without quotes, or of 50%. Type 6, or ${typed("6/12")} in quotes`,
        ]
      : [
          `${shown(read)} was read; a pitch must rise, and a lone number is the rise in 12, from 1 to 24`,
          `Type 6, or a flatter pitch as ${typed("1/2 in 12")}`,
        ],
  "pitch above 24": ({ read }, { typed }) => [
    `${shown(read)} was read`,
    `A sheet makes a large number of 6/12 (a date); degrees need their sign. Type 6, ${typed("6/12")} or ${typed("30°")}`,
  ],
  "pitch not positive": ({ read }, { typed }) => [`${shown(read)} was read; a pitch must rise`, pitches(typed)],
  "pitch too steep": ({ read, most }, { typed }) => [
    `${shown(read)} was read; a pitch must be under ${most} degrees`,
    pitches(typed),
  ],

  "no size": () => ["nothing was given", "Type a lumber size, such as 2x8"],
  "not a size": ({ read }, { typed }) => [
    `${shown(read)} was read, which is no lumber size`,
    `Type 2x8, ${typed("1.5 x 7.25")} or ${typed("38 x 184")}`,
  ],
  "no such nominal size": ({ read }, { typed }) => [
    `${shown(read)} is no nominal size of lumber`,
    `Type a nominal size such as 2x8, or the actual one with decimals, such as ${typed("1.5 x 7.25")}`,
  ],
  "size turned round": ({ read, instead }) => [`${shown(read)} was read; thickness comes first`, `Type ${instead}`],
  "size in other unit": ({ read, unit, from }) => [
    `${shown(read)} is ${unit === "mm" ? "millimeters" : "inches"}, but ${unitSource(from)} is ${SYSTEM[other(unit)]}`,
    "Type both in the same unit",
  ],

  "corner out of range": ({ read }) => [
    `${shown(read)} was read; the angle between two plate lines is more than 0 and less than 180 degrees`,
    "Type 90 for a square corner",
  ],
  "no number": ({ example: counted }) => ["nothing was given", `Type ${COUNTED[counted]}`],
  "number out of range": ({ read, from, to, whole, example: counted }) => [
    `${shown(read)} was read; it must be ${whole ? "a whole number" : "a number"} from ${from} to ${to}`,
    `Type ${COUNTED[counted]}`,
  ],
  "no word": ({ choices }, { typed }) => [
    "nothing was given",
    `Type ${choices.map((one) => (typeof one === "string" ? typed(one) : one)).join(" or ")}`,
  ],
  "no such word": ({ read, choices }) => [`${shown(read)} was read; it must be one of ${choices.join(", ")}`],
  "range for one value": () => ["a range of cells was given where one value is expected", "Point to a single cell"],

  "no finite result": () => ["these values give no finite result", "Check that no argument is far too large"],
  "too many arguments": ({ name, most, given }) => [
    `${name} takes ${most} argument${most === 1 ? "" : "s"} at most and was given ${given}`,
    `Remove the last${given - most === 1 ? "" : ` ${given - most}`}`,
  ],
  "cell error": ({ error }) => [error],
  fault: ({ name, thrown }) => [
    `${name} failed on these values (${thrown})`,
    "This is a fault in Longpoint, not in your sheet",
  ],

  "no block of labels": ({ read }) => [
    isBlank(read) ? "nothing was given" : `${Array.isArray(read) ? "this block" : shown(read)} is no roof block`,
    "Point to two columns, label and value, of at most 200 rows; a wing takes one column more",
  ],
  "value without label": ({ read, labels }) => [
    `the value ${shown(read)} has no label beside it`,
    `Type one of: ${labels.join(", ")}`,
  ],
  "unknown label": ({ read, labels }) => [
    `${shown(read)} is no row of a roof block`,
    `The rows are: ${labels.join(", ")}`,
  ],
  "label twice": ({ label }) => [`${label} stands there twice`, "Keep one of the two rows"],
  "heading twice": ({ heading }) => [`the heading ${heading} stands there twice`, "Keep one of the two columns"],
  "heading missing": ({ heading, required }) => [
    `there is no column ${heading}`,
    `The first row needs the headings ${required.join(", ")}`,
  ],
  "too many rows": ({ most }) => [
    `there are more than ${most} rows`,
    `Point to ${most} at most; pieces that are alike belong in one row`,
  ],
  "no rows": () => ["there is nothing under the headings", "Type a row for each"],
};

const COUNTED: Readonly<Record<Counted, string>> = {
  count: "10, for ten pieces",
  pieces: "how many, such as 4",
  spares: "2, for two pieces",
  waste: "10, for 10 percent",
  boards: "how many there are, or nothing for as many as are wanted",
  price: "the price of one board, such as 9.85",
};

const SYSTEM = { in: "feet and inches", mm: "metric" } as const;
const other = (unit: Unit): Unit => (unit === "in" ? "mm" : "in");

const pitches = (typed: Say["typed"]) => `Type 6, ${typed("6/12")} or ${typed("26.57°")}`;

function unitSource(from: Place | "block" | null): string {
  if (from === null) return "the roof";
  if (from === "block") return "the rest of the block";
  return typeof from.row === "string" ? `the row ${from.row}` : placeText(from);
}

/** Examples that may be typed in this call: in a metric one feet and inches would be refused. */
function example(examples: readonly string[], { unit, typed }: Say): string {
  const read = unit === "mm" ? readLength(examples[0]!) : null;
  return read === null || read instanceof Failure || read.unit === "mm"
    ? examples.join(" or ")
    : typed(`${halfUp(read.value * MM_PER_INCH)} mm`);
}

/** While no text has said the unit, metric may be typed too. */
function inAnyUnit(examples: readonly string[], say: Say): string {
  return `${example(examples, say)}${say.unit === null ? ` or ${say.typed("2860 mm")}` : ""}`;
}
