import type { BlockLayout, CellLayout } from "../../hosts/host.ts";
import type { Table } from "../state/evaluateFunction.ts";
import { relative } from "../state/reference.ts";
import { typedCell } from "../state/typedCell.ts";
import { texts } from "../words/texts.ts";
import { blockAt, firstLine, spilledHeading, type TablePlace } from "./blockAt.ts";
import type { HangsOn } from "./layoutFill.ts";

/** What is compared: pitches down, spacings across. */
export interface Comparison {
  readonly pitches: readonly string[];
  readonly spacings: readonly string[];
  readonly what: string;
}

/** A text list, "4, 6, 8", as its parts. */
export function listed(text: string): string[] {
  return text
    .split(",")
    .map((part) => part.trim())
    .filter((part) => part !== "");
}

const typed = (text: string): CellLayout => ({ content: typedCell(text), style: "input" });

/** The cells of a comparison: what is compared stands above the grid in cells of its own, to be changed in the sheet. */
export function layoutComparison(
  place: TablePlace,
  { block }: HangsOn,
  { pitches, spacings, what }: Comparison,
  now: Table,
): BlockLayout {
  const values = Math.max(pitches.length, spacings.length);
  const cell = (at: number, column: number) => relative(firstLine(place) + at, place.column + column);
  const line = (at: number, count: number) => `${cell(at, 1)}:${cell(at, count)}`;
  const formula = `=RAFTER.COMPARE(${block},${line(0, pitches.length)},${line(1, spacings.length)},${cell(2, 1)})`;
  const lines = [
    [{ content: texts.pitches, style: "label" } as const, ...pitches.map(typed)],
    [{ content: texts.spacings, style: "label" } as const, ...spacings.map(typed)],
    [{ content: texts.compared, style: "label" } as const, typed(what)],
    [],
    spilledHeading(formula, now[0]!.length),
  ];
  return blockAt(place, lines, {
    spill: {
      row: 4,
      column: 0,
      rows: now.length,
      columns: now[0]!.length,
      formats: [null, ...spacings.map(() => "0.000")],
    },
    widths: [150, ...Array.from({ length: values }, () => 92)],
  });
}
