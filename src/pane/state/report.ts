import { readRoofBlock, ROWS, type Row } from "../../../functions/arguments/roofBlock.ts";
import { readRoof, type RoofModel } from "../../../functions/arguments/roofModel.ts";
import { readLength } from "../../measure/readLength.ts";
import { Failure } from "../../measure/result.ts";
import type { Unit } from "../../measure/unit.ts";
import { CellError, Refusal } from "../../registry/refusal.ts";
import type { Frame } from "../../roof/frame/frame.ts";
import type { RoofSpec } from "../../roof/frame/roofSpec.ts";
import { blockRows } from "./blockCells.ts";
import { FIELDS, NEEDED, type Inputs } from "./fields.ts";
import { texts } from "../words/texts.ts";
import { typedHere } from "./typedHere.ts";
import { fieldReading } from "./fieldReading.ts";

/** What the inputs come to: the framed roof, or what is wrong with which field. */
export interface Report {
  readonly model: RoofModel | null;
  readonly unit: Unit;
  /** By row: how its text was understood. */
  readonly understood: Partial<Record<Row, string>>;
  /** By row: why its text cannot be used. */
  readonly messages: Partial<Record<Row, string>>;
  /** What is wrong with the roof as a whole, where no one row is at fault. */
  readonly general: string | null;
}

/**
 * Reads the inputs as a worksheet function would read the same block.
 *
 * A function names the first fault only; here every field is looked at, so that all faults show at once, each at its field.
 */
export function report(inputs: Inputs): Report {
  const rows = blockRows(inputs);
  const model = readRoof("roof", rows);
  if (!(model instanceof Refusal) && !(model instanceof CellError)) {
    const { spec } = model.frame;
    return {
      model,
      unit: spec.unit,
      understood: allUnderstood(ROWS, () => spec, model.frame),
      messages: {},
      general: null,
    };
  }
  const unit = unitOf(inputs);
  const filled = ROWS.filter((row) => inputs[row].trim() !== "");
  const alone = new Map(filled.map((row) => [row, readAlone(row, inputs[row].trim(), unit)]));
  const messages: Partial<Record<Row, string>> = {};
  for (const [row, read] of alone) if (read instanceof Refusal) messages[row] = withoutLabel(read.message, row);
  for (const row of NEEDED)
    if (inputs[row].trim() === "") messages[row] = texts.missing[row as "Span" | "Length" | "Pitch"];
  const whole = model instanceof Refusal ? model.message : texts.cellError;
  const at = ROWS.filter((row) => whole.startsWith(`${row}: `)).sort((a, b) => b.length - a.length)[0];
  if (at) messages[at] ??= withoutLabel(whole, at);
  const read = (row: Row) => (messages[row] === undefined ? specOf(alone.get(row)) : null);
  return {
    model: null,
    unit,
    understood: allUnderstood(filled, read, null),
    messages,
    general: at ? null : typedHere(whole),
  };
}

function allUnderstood(
  rows: readonly Row[],
  spec: (row: Row) => RoofSpec | null,
  frame: Frame | null,
): Partial<Record<Row, string>> {
  return Object.fromEntries(
    rows.flatMap((row) => {
      const read = spec(row);
      return read ? [[row, fieldReading(row, read, frame)]] : [];
    }),
  );
}

const specOf = (read: RoofSpec | Refusal | CellError | undefined) =>
  read === undefined || read instanceof Refusal || read instanceof CellError ? null : read;

/** One row read in a block that is right in all others. */
function readAlone(row: Row, text: string, unit: Unit): RoofSpec | Refusal | CellError {
  const others: [Row, string][] =
    unit === "mm"
      ? [
          ["Span", "9 m"],
          ["Length", "18 m"],
          ["Pitch", "6"],
          ["Unit", "mm"],
        ]
      : [
          ["Span", "30'"],
          ["Length", "60'"],
          ["Pitch", "6"],
          ["Unit", "in"],
        ];
  return readRoofBlock("roof", [...others.filter(([other]) => other !== row), [row, text]]);
}

function withoutLabel(message: string, row: Row): string {
  const words = typedHere(message.startsWith(`${row}: `) ? message.slice(row.length + 2) : message);
  return words.charAt(0).toUpperCase() + words.slice(1);
}

const LENGTHS = FIELDS.filter(({ kind }) => kind === "length").map(({ row }) => row);

/** The unit that refused inputs were meant in: said by the row Unit, else metric where every length with a unit is. */
function unitOf(inputs: Inputs): Unit {
  const said = inputs.Unit.trim().toLowerCase();
  if (said === "mm" || said === "in") return said;
  const units = LENGTHS.flatMap((row) => {
    const read = readLength(inputs[row]);
    return read instanceof Failure || read.unit === null ? [] : [read.unit];
  });
  return units.length > 0 && units.every((unit) => unit === "mm") ? "mm" : "in";
}
