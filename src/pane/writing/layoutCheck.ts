import type { BlockLayout, CellLayout } from "../../hosts/host.ts";
import type { Cell } from "../../registry/worksheetFunction.ts";
import type { Cut } from "./checkCuts.ts";
import type { HangsOn } from "./layoutFill.ts";
import { roomToGrow, type TablePlace } from "./layoutTable.ts";
import { relative } from "../state/reference.ts";
import { FORMATS, kindOf, widthOf } from "./tables.ts";
import { texts } from "../state/texts.ts";

/** Lines for jacks that are measured later. */
const SPARE = 6;
const WIDTHS = [72, 120, 124, 124, 104, 28];

/**
 * The cells of a check: what was measured, by the jack's name, and beside it the schedule that each is looked up in.
 *
 * Looked up by name, so that a measured tape stays with its jack when the schedule grows. The height above plate that a tape is turned into a
 * long point with follows from the schedule's own long point and tape.
 */
export function layoutCheck(
  { sheet, newSheet, row, column, title }: TablePlace,
  { block }: HangsOn,
  { cuts, now }: { cuts: readonly Cut[]; now: readonly (readonly Cell[])[] },
): BlockLayout {
  const headings = now[0]!;
  const left = WIDTHS.length;
  const top = title === null ? 0 : 1;
  const rows = now.length - 1 + roomToGrow(now.length - 1);
  const lines = Math.max(rows, cuts.length + SPARE + 2);
  const first = row + top + 1;
  const span = (name: string) => {
    const at = column + left + headings.indexOf(name);
    return `${fixed(first, at)}:${fixed(first + rows - 1, at)}`;
  };
  const blank = (count: number): null[] => Array.from({ length: count }, () => null);
  const last = first + cuts.length + SPARE - 1;
  const offs = `${fixed(first, column + 4)}:${fixed(last, column + 4)}`;

  const line = (i: number): (CellLayout | null)[] => {
    if (i === cuts.length + SPARE + 1)
      return [
        { content: texts.medianInSheet, style: "label" },
        null,
        null,
        null,
        { content: `=IF(COUNT(${offs})=0,"",MEDIAN(${offs}))`, format: "0.000" },
        null,
      ];
    if (i >= cuts.length + SPARE) return blank(left);
    const [mark, tape] = [0, 1].map((j) => relative(first + i, column + j)) as [string, string];
    const found = (name: string) => `INDEX(${span(name)},MATCH(${mark},${span("Piece")},0))`;
    const computed = relative(first + i, column + 2);
    const means = relative(first + i, column + 3);
    const run = `${found("Long point")}*COS(RADIANS(${found("Plumb cut")}))`;
    const heel = `SQRT(${found("Tape")}^2-(${run})^2)-${found("Long point")}*SIN(RADIANS(${found("Plumb cut")}))`;
    return [
      { content: cuts[i]?.piece.mark ?? "", style: "input" },
      { content: cuts[i]?.tape ?? "", style: "input", format: "0.000" },
      { content: `=IF(OR(${mark}="",${tape}=""),"",${found("Long point")})`, format: "0.000" },
      {
        content: `=IF(OR(${mark}="",${tape}=""),"",RAFTER.JACKFROMTAPE(${found("Plumb cut")}&"°",${tape},${heel}))`,
        format: "0.000",
      },
      { content: `=IF(OR(${mark}="",${tape}=""),"",${means}-${computed})`, format: "0.000" },
      null,
    ];
  };
  const heading: CellLayout[] = texts.checkHeadings.map((content) => ({ content, style: "heading" }));
  const spilled: CellLayout[] = headings.map((_, j) => ({
    content: j === 0 ? `=RAFTER.JACKTABLE(${block})` : "",
    style: "heading",
    format: "General",
  }));
  const cells: (CellLayout | null)[][] = [
    ...(title === null
      ? []
      : [[{ content: title, style: "title" } as CellLayout, ...blank(left + headings.length - 1)]]),
    [...heading, null, ...spilled],
    ...Array.from({ length: lines }, (_, i) => [...line(i), ...blank(headings.length)]),
  ];
  return {
    sheet,
    newSheet,
    row,
    column,
    cells,
    spill: {
      row: top,
      column: left,
      rows: rows + 1,
      columns: headings.length,
      formats: headings.map((name) => FORMATS[kindOf(name)]),
    },
    widths: [...WIDTHS, ...headings.map(widthOf)],
    ...(newSheet && top === 0 ? { frozenRows: 1 } : {}),
  };
}

function fixed(row: number, column: number): string {
  return relative(row, column).replace(/^([A-Z]+)(\d+)$/, "$$$1$$$2");
}
