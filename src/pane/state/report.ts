import { readRows, ROWS, type BlockRow, type Row } from "../../../functions/arguments/roofBlock.ts";
import { readRoof, type RoofModel } from "../../../functions/arguments/roofModel.ts";
import { WING_ROWS, type WingRow } from "../../../functions/arguments/wingRows.ts";
import { Failure } from "../../measure/result.ts";
import type { Unit } from "../../measure/unit.ts";
import { Refusal } from "../../registry/refusal.ts";
import { fieldText } from "../../../functions/words/problemText.ts";
import type { Frame } from "../../roof/frame/frame.ts";
import type { RoofSpec } from "../../roof/frame/roofSpec.ts";
import { blockRows } from "./blockCells.ts";
import { inputAt, type FieldPlace, type Inputs } from "./fields.ts";
import { texts } from "../words/texts.ts";
import { fieldReading, wingReading } from "./fieldReading.ts";

/** What the fields of a column come to. */
export interface ColumnReport<R extends BlockRow> {
  /** By row: how its text was understood. */
  readonly understood: Partial<Record<R, string>>;
  /** By row: why its text cannot be used. */
  readonly messages: Partial<Record<R, string>>;
}

/** What the inputs come to: the framed roof, or what is wrong with which field. */
export interface Report extends ColumnReport<Row> {
  readonly model: RoofModel | null;
  readonly unit: Unit;
  /** The wings, by letter. */
  readonly wings: Readonly<Record<string, ColumnReport<WingRow>>>;
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
    const none = new Map<BlockRow, Failure>();
    return { model, unit: spec.unit, ...columns(inputs, spec, model.frame, none, () => none), general: null };
  }
  const read = readRows("roof", rows);
  if (read instanceof Failure)
    return { model: null, unit: "in", understood: {}, messages: {}, wings: {}, general: fieldText(read) };
  const { problems, wings, spec } = read;
  // With every row read, what is left is that the rows together make no roof.
  const allRead = [read, ...wings].every((column) => column.problems.size === 0);
  const place = allRead ? placeOf(model) : null;
  const whole = place && new Map([[place.row, model]]);
  const wrong = (letter: string) => wings.find((wing) => wing.letter === letter)?.problems ?? new Map();
  return {
    model: null,
    unit: spec.unit,
    ...columns(inputs, spec, null, (place?.wing === undefined && whole) || problems, (letter) =>
      place?.wing === letter ? whole! : wrong(letter),
    ),
    general: allRead && place === null ? fieldText(model, true) : null,
  };
}

function columns(
  inputs: Inputs,
  spec: RoofSpec,
  frame: Frame | null,
  problems: ReadonlyMap<BlockRow, Failure>,
  problemsOf: (letter: string) => ReadonlyMap<BlockRow, Failure>,
): ColumnReport<Row> & Pick<Report, "wings"> {
  const wings = inputs.wings.map(({ letter }) => {
    const wing = spec.wings.find((one) => one.letter === letter);
    const column = reported(WING_ROWS, inputs, frame, problemsOf(letter), letter, (row) =>
      wing ? wingReading(row, wing, spec, frame) : "",
    );
    return [letter, column] as const;
  });
  return {
    ...reported(ROWS, inputs, frame, problems, undefined, (row) => fieldReading(row, spec, frame)),
    wings: Object.fromEntries(wings),
  };
}

/** How the rows of a column were understood, where nothing is wrong with them: all of a framed roof, else those that are filled. */
function reported<R extends BlockRow>(
  rows: readonly R[],
  inputs: Inputs,
  frame: Frame | null,
  problems: ReadonlyMap<BlockRow, Failure>,
  wing: string | undefined,
  reading: (row: R) => string,
): ColumnReport<R> {
  const place = (row: R): FieldPlace => (wing === undefined ? { row } : { row, wing });
  const fine = rows.filter((row) => !problems.has(row) && (frame || inputAt(inputs, place(row)).trim() !== ""));
  const wrong = rows.filter((row) => problems.has(row));
  const entries = (of: readonly R[], words: (row: R) => string) =>
    Object.fromEntries(of.map((row) => [row, words(row)])) as Partial<Record<R, string>>;
  return { understood: entries(fine, reading), messages: entries(wrong, (row) => wordsOf(problems.get(row)!)) };
}

function wordsOf(failure: Failure): string {
  const problem = failure.problem as { kind: string; row?: string };
  if (problem.kind === "row missing") return texts.missing[problem.row as keyof typeof texts.missing];
  if (problem.kind === "wing without") return texts.missingInWing[problem.row as keyof typeof texts.missingInWing];
  return fieldText(failure);
}

/** What the fields of the main roof come to, or of a wing; nothing where there is no such wing yet. */
export function columnReport(report: Report, wing?: string): ColumnReport<BlockRow> {
  return (wing === undefined ? report : report.wings[wing]) ?? { messages: {}, understood: {} };
}

/** The first field at fault, from the top. */
export function faultyField({ messages, wings }: Pick<Report, "messages" | "wings">): FieldPlace | null {
  const [row] = Object.keys(messages) as Row[];
  if (row) return { row };
  for (const [wing, column] of Object.entries(wings)) {
    const [own] = Object.keys(column.messages) as WingRow[];
    if (own) return { row: own, wing };
  }
  return null;
}

function placeOf(failure: Failure): FieldPlace | null {
  const place = failure instanceof Refusal ? failure.place : null;
  if (typeof place?.row !== "string") return null;
  const { row, wing } = place;
  // What has no field is said of the roof as a whole.
  if (!(wing === undefined ? ROWS : WING_ROWS).some((one) => one === row)) return null;
  return wing === undefined ? { row: row as Row } : { row: row as WingRow, wing };
}
