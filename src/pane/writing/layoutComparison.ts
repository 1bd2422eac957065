import type { BlockLayout, CellLayout } from "../../hosts/host.ts";
import type { Cell } from "../../registry/worksheetFunction.ts";
import type { HangsOn } from "./layoutFill.ts";
import type { TablePlace } from "./layoutTable.ts";
import { relative } from "../state/reference.ts";
import { texts } from "../state/texts.ts";

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

const typed = (text: string): CellLayout => ({
  content: /^\d+(\.\d+)?$/.test(text) ? Number(text) : text,
  style: "input",
});

/** The cells of a comparison: what is compared stands above the grid in cells of its own, to be changed in the sheet. */
export function layoutComparison(
  { sheet, newSheet, row, column, title }: TablePlace,
  { block }: HangsOn,
  { pitches, spacings, what }: Comparison,
  now: readonly (readonly Cell[])[],
): BlockLayout {
  const top = title === null ? 0 : 1;
  const columns = Math.max(pitches.length, spacings.length) + 1;
  const padded = (cells: readonly (CellLayout | null)[]) => [
    ...cells,
    ...Array.from({ length: columns - cells.length }, () => null),
  ];
  const line = (at: number, count: number) =>
    `${relative(row + top + at, column + 1)}:${relative(row + top + at, column + count)}`;
  const formula = `=RAFTER.COMPARE(${block},${line(0, pitches.length)},${line(1, spacings.length)},${relative(row + top + 2, column + 1)})`;
  const cells = [
    ...(title === null ? [] : [padded([{ content: title, style: "title" }])]),
    padded([{ content: texts.pitches, style: "label" }, ...pitches.map(typed)]),
    padded([{ content: texts.spacings, style: "label" }, ...spacings.map(typed)]),
    padded([{ content: texts.compared, style: "label" }, typed(what)]),
    padded([]),
    padded(
      now[0]!.map((_, j): CellLayout => ({ content: j === 0 ? formula : "", style: "heading", format: "General" })),
    ),
  ];
  return {
    sheet,
    newSheet,
    row,
    column,
    cells,
    spill: {
      row: top + 4,
      column: 0,
      rows: now.length,
      columns: now[0]!.length,
      formats: [null, ...spacings.map(() => "0.000")],
    },
    widths: [150, ...Array.from({ length: columns - 1 }, () => 92)],
  };
}
