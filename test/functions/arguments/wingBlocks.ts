import { messageOf } from "../../../functions/words/problemText.ts";
import { readRoofBlock } from "../../../functions/arguments/roofBlock.ts";
import { Failure } from "../../../src/measure/result.ts";
import type { RoofSpec } from "../../../src/roof/frame/roofSpec.ts";

export type Rows = readonly (readonly unknown[])[];

export const MAIN: Rows = [
  ["Span", `24'`],
  ["Length", `40'`],
  ["Pitch", 6],
  ["Overhang", 16],
];
/** A block with a column for each wing: the rows of the main roof, then those of the wings. */
export function block(
  wings: readonly Record<string, unknown>[],
  more: Rows = [],
  headings?: readonly unknown[],
): unknown[][] {
  const labels = [...new Set([...[...MAIN, ...more].map(([label]) => String(label)), ...wings.flatMap(Object.keys)])];
  const main = new Map([...MAIN, ...more].map(([label, value]) => [label, value]));
  return [
    ...(headings ? [["", "Main roof", ...headings]] : []),
    ...labels.map((label) => [label, main.get(label) ?? "", ...wings.map((wing) => wing[label] ?? "")]),
  ];
}
export const read = (input: unknown): RoofSpec => {
  const spec = readRoofBlock("roof", input);
  if (spec instanceof Failure) throw new Error(messageOf(spec));
  return spec;
};
export const message = (input: unknown): string => {
  const spec = readRoofBlock("roof", input);
  return spec instanceof Failure ? messageOf(spec) : "read";
};

/** A wing with a gable on the front. */
export const T = { Wall: "front", "From left corner": `8'`, "Out from wall": `10'`, Span: `12'`, Ends: "gable" };
