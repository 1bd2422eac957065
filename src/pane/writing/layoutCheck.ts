import { jackTable } from "../../../functions/jackTable.ts";
import { columnAt, headingWidth } from "../../registry/columns.ts";
import type { BlockLayout, CellLayout } from "../../hosts/host.ts";
import type { Cut } from "../state/checkCuts.ts";
import type { Table } from "../state/evaluateFunction.ts";
import { areaReference, relative } from "../state/reference.ts";
import { texts } from "../words/texts.ts";
import { blockAt, firstLine, spilledHeading, type TablePlace } from "./blockAt.ts";
import type { HangsOn } from "./layoutFill.ts";
import { roomToGrow } from "./layoutTable.ts";
import { columnsOf } from "./roofTables.ts";

/** Lines for jacks that are measured later. */
const SPARE = 6;
/** Of what is measured, and of the gap before the schedule. */
const WIDTHS = [...texts.checkHeadings.map((heading) => Math.max(72, headingWidth(heading))), 28];

/**
 * The cells of a check: what was measured, by the jack's name, and beside it the schedule that each is looked up in.
 *
 * Looked up by name, so that a measured tape stays with its jack when the schedule grows. The height above plate that a tape is turned into a
 * long point with follows from the schedule's own long point and tape.
 */
export function layoutCheck(
  place: TablePlace,
  { block }: HangsOn,
  { cuts, now }: { cuts: readonly Cut[]; now: Table },
): BlockLayout {
  const { sheet, column } = place;
  const columns = columnsOf(jackTable);
  const rows = roomToGrow(now);
  const measured = cuts.length + SPARE;
  const first = firstLine(place) + 1;
  const below = (at: number, count: number) =>
    areaReference({ sheet, row: first, column: column + at, rows: count, columns: 1 }, sheet);
  const scheduled = (name: string) => below(WIDTHS.length + columnAt(columns, name), rows);
  const offs = below(4, measured);

  const line = (i: number): CellLayout[] => {
    const cell = (at: number) => relative(first + i, column + at);
    const [mark, tape] = [cell(0), cell(1)];
    const found = (name: string) => `INDEX(${scheduled(name)},MATCH(${mark},${scheduled("Piece")},0))`;
    const run = `${found("Long point")}*COS(RADIANS(${found("Plumb cut")}))`;
    const heel = `SQRT(${found("Tape")}^2-(${run})^2)-${found("Long point")}*SIN(RADIANS(${found("Plumb cut")}))`;
    const where = (formula: string): CellLayout => ({
      content: `=IF(OR(${mark}="",${tape}=""),"",${formula})`,
      format: "0.000",
    });
    return [
      { content: cuts[i]?.piece.mark ?? "", style: "input" },
      { content: cuts[i]?.tape ?? "", style: "input", format: "0.000" },
      where(found("Long point")),
      where(`RAFTER.JACKFROMTAPE(${found("Plumb cut")}&"°",${tape},${heel})`),
      where(`${cell(3)}-${cell(2)}`),
    ];
  };
  const heading: CellLayout[] = texts.checkHeadings.map((content) => ({ content, style: "heading" }));
  const median: (CellLayout | null)[] = [
    { content: texts.medianInSheet, style: "label" },
    null,
    null,
    null,
    { content: `=IF(COUNT(${offs})=0,"",MEDIAN(${offs}))`, format: "0.000" },
  ];
  const lines = [
    [...heading, null, ...spilledHeading(`=RAFTER.${jackTable.name}(${block})`, columns.length)],
    ...Array.from({ length: measured }, (_, i) => line(i)),
    [],
    median,
  ];
  return blockAt(place, lines, {
    spill: {
      row: 0,
      column: WIDTHS.length,
      rows: rows + 1,
      columns: columns.length,
      formats: columns.map(({ format }) => format),
    },
    widths: [...WIDTHS, ...columns.map(({ width }) => width)],
  });
}
