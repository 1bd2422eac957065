import { readRows, ROWS, type BlockRow, type Row } from "../../../functions/arguments/roofBlock.ts";
import { readRoof, type RoofModel } from "../../../functions/arguments/roofModel.ts";
import { Failure } from "../../measure/result.ts";
import type { Unit } from "../../measure/unit.ts";
import { Refusal } from "../../registry/refusal.ts";
import { fieldText } from "../../../functions/words/problemText.ts";
import type { Frame } from "../../roof/frame/frame.ts";
import type { RoofSpec } from "../../roof/frame/roofSpec.ts";
import { blockRows } from "./blockCells.ts";
import type { Inputs } from "./fields.ts";
import { texts } from "../words/texts.ts";
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
 * A function names the first fault only; here all show at once, each at its field.
 */
export function report(inputs: Inputs): Report {
  const rows = blockRows(inputs);
  const model = readRoof("roof", rows);
  if (!(model instanceof Failure)) {
    const { spec } = model.frame;
    return { model, unit: spec.unit, understood: allUnderstood(ROWS, spec, model.frame), messages: {}, general: null };
  }
  const read = readRows("roof", rows);
  if (read instanceof Failure)
    return { model: null, unit: "in", understood: {}, messages: {}, general: fieldText(read) };
  // With every row read, what is left is that the rows together make no roof.
  const wrong: ReadonlyMap<BlockRow | null, typeof model> =
    read.problems.size > 0 ? read.problems : new Map([[rowOf(model), model]]);
  const messages: Partial<Record<Row, string>> = {};
  for (const row of ROWS) {
    const failure = wrong.get(row);
    if (failure)
      messages[row] = failure.problem.kind === "row missing" ? texts.missing[failure.problem.row] : fieldText(failure);
  }
  const filled = ROWS.filter((row) => inputs[row].trim() !== "" && messages[row] === undefined);
  return {
    model: null,
    unit: read.spec.unit,
    understood: allUnderstood(filled, read.spec, null),
    messages,
    general: wrong.has(null) ? fieldText(model) : null,
  };
}

function rowOf(failure: Failure): Row | null {
  const place = failure instanceof Refusal ? failure.place : null;
  return (place?.row as Row | undefined) ?? null;
}

function allUnderstood(rows: readonly Row[], spec: RoofSpec, frame: Frame | null): Partial<Record<Row, string>> {
  return Object.fromEntries(rows.map((row) => [row, fieldReading(row, spec, frame)]));
}
