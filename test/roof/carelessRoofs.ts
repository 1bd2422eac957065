import { expect } from "vitest";
import { readLength } from "../../src/measure/readLength.ts";
import { Failure } from "../../src/measure/result.ts";
import { rows, type Row } from "../functions/asked.ts";

/** Span 24', length 40', rafters 2x6 of 1.5 in by 5.5 in, hip 2x8 of 1.5 in by 7.25 in, as the block's blank rows say. */
export const block = (...more: readonly (readonly [string, unknown])[]) => [
  ["Span", `24'`],
  ["Length", `40'`],
  ...more,
];
export const jacks = (...more: readonly (readonly [string, unknown])[]): Row[] => rows("JACKTABLE", block(...more));
export const member = (name: string, ...more: readonly (readonly [string, unknown])[]): Row[] =>
  rows("MEMBERS", block(...more)).filter((row) => row["Member"] === name);
export const onSide = (table: readonly Row[], side: string): Row[] => table.filter((row) => row["Side"] === side);
export const notes = (table: readonly Row[]): string => table.map((row) => row["Note"]).join("; ");
/** A length that a note says, and half of the smallest mark it is given to: lengths under an inch are finer. */
export function said(row: Row | undefined, words: RegExp): { length: number; within: number } {
  const [, text] = words.exec(String(row?.["Note"])) ?? [];
  const read = readLength(text ?? "");
  if (read instanceof Failure) throw new Error(`"${String(row?.["Note"])}" does not say ${String(words)}.`);
  return { length: read.value, within: (read.value < 1 ? 1 / 128 : 1 / 32) + 1e-9 };
}
export function expectSaid(row: Row | undefined, words: RegExp, length: number): void {
  const note = said(row, words);
  expect(Math.abs(note.length - length), `${String(row?.["Note"])}: ${length}`).toBeLessThanOrEqual(note.within);
}
