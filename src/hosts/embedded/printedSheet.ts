import type { IRange, Worksheet } from "@univerjs/core";
import { escaped } from "../../measure/escaped.ts";
import type { Look, Print } from "../../xlsx/book.ts";
import { EDGES } from "../../xlsx/book.ts";
import { columnOf } from "../../registry/columnLetters.ts";
import { address } from "../address.ts";
import { cells } from "./cells.ts";
import { lookOf } from "./lookStyle.ts";
import type { EmbeddedSheet } from "./runningSheet.ts";
import { printOf } from "./printSetup.ts";

// Sheets are laid out at 96 pixels to the inch; what a paper holds between its margins of half an inch.
const PAPERS: Readonly<Record<string, { readonly name: string; readonly width: number; readonly height: number }>> = {
  letter: { name: "letter", width: 8.5 * 96, height: 11 * 96 },
  legal: { name: "legal", width: 8.5 * 96, height: 14 * 96 },
  a4: { name: "A4", width: 794, height: 1123 },
  a3: { name: "A3", width: 1123, height: 1587 },
};
const MARGINS = 96;

/** What of a sheet goes on paper: the selection where it holds several cells, else the sheet's print area, else all that is filled. */
export interface PrintedSheet {
  /** A whole document. */
  readonly html: string;
  /** What is printed, in words: "Bid!A1:F26". */
  readonly place: string;
}

/** The active sheet as a document for the printer, with its looks, title rows, paper and fit; null where nothing is in it. */
export function printedSheet(sheet: EmbeddedSheet, title: string, selection: IRange | null): PrintedSheet | null {
  const active = sheet.workbook.getActiveSheet();
  const worksheet = active.getSheet();
  const print: Print = printOf(sheet, worksheet) ?? {};
  const range = selection ?? rangeOf(print.area) ?? filledRange(sheet, worksheet);
  if (!range) return null;
  const shown = active
    .getRange(
      0,
      0,
      Math.min(range.endRow + 1, worksheet.getRowCount()),
      Math.min(range.endColumn + 1, worksheet.getColumnCount()),
    )
    .getDisplayValues();
  const columns = numbers(range.startColumn, range.endColumn).filter((column) => worksheet.getColVisible(column));
  const width = columns.reduce((sum, column) => sum + worksheet.getColumnWidth(column), 0);
  const titles = rowsOf(print.titleRows).filter((row) => row < range.startRow || row > range.endRow);
  const row = (index: number) => rowText(sheet, worksheet, index, columns, range, shown);
  const rows = (from: readonly number[]) =>
    from
      .filter((index) => worksheet.getRowVisible(index))
      .map(row)
      .join("\n");
  // Titles that stand in the printed rows themselves are at their head, and repeat from there.
  const own = rowsOf(print.titleRows).filter((index) => index >= range.startRow && index <= range.endRow);
  const head = own[0] === range.startRow ? own : [];
  const place = `${address(worksheet.getName(), range.startRow, range.startColumn)}:${address("S", range.endRow, range.endColumn).slice(2)}`;
  const html = `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<title>${escaped(`${title}, ${worksheet.getName()}`)}</title>
<style>
@page { size: ${paperOf(print).name} ${print.landscape ? "landscape" : "portrait"}; margin: 0.5in; }
body { font: 11pt system-ui, sans-serif; margin: 0; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
table { border-collapse: collapse; table-layout: fixed; width: ${width}px; zoom: ${scaleOf(print, width)}; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
td { overflow: hidden; padding: 1px 3px; vertical-align: bottom; white-space: nowrap; }
td.past { overflow: visible; }
</style>
</head>
<body>
<table>
<colgroup>${columns.map((column) => `<col style="width:${worksheet.getColumnWidth(column)}px">`).join("")}</colgroup>
<thead>
${rows([...titles, ...head])}
</thead>
<tbody>
${rows(numbers(range.startRow, range.endRow).filter((index) => !head.includes(index)))}
</tbody>
</table>
</body>
</html>`;
  return { html, place };
}

function rowText(
  sheet: EmbeddedSheet,
  worksheet: Worksheet,
  row: number,
  columns: readonly number[],
  range: IRange,
  shown: readonly (readonly string[])[],
): string {
  const styles = sheet.workbook.getWorkbook().getStyles();
  const at = cells(sheet, worksheet);
  const texts = columns.map((column) => {
    const merge = worksheet.getMergedCell(row, column);
    const first = merge && merge.startRow === row && merge.startColumn === column;
    if (merge && !first && merge.startRow >= range.startRow && merge.startColumn >= range.startColumn) return "";
    const span = first
      ? ` colspan="${columns.filter((c) => c >= column && c <= merge.endColumn).length}" rowspan="${Math.min(merge.endRow, range.endRow) - row + 1}"`
      : "";
    const look = lookOf(styles.getStyleByCell(worksheet.getCell(row, column)), new Set());
    const { value } = at.at(row, column);
    const text = shown[row]?.[column] || String(value);
    // As in the sheet: a text runs over empty cells to its right, a number does not.
    const past = typeof value === "string" && !look?.wrap ? ' class="past"' : "";
    return `<td${span}${past}${styleText(look, typeof value === "number")}>${escaped(text)}</td>`;
  });
  return `<tr style="height:${worksheet.getRowHeight(row)}px">${texts.join("")}</tr>`;
}

function styleText(look: Look | null | undefined, isNumber: boolean): string {
  const rules = [
    look?.across ? `text-align:${look.across}` : isNumber ? "text-align:right" : "",
    look?.upright ? `vertical-align:${look.upright === "center" ? "middle" : look.upright}` : "",
    look?.font ? `font-family:'${look.font.replace(/[^\w -]/g, "")}'` : "",
    look?.size ? `font-size:${look.size}pt` : "",
    look?.bold ? "font-weight:bold" : "",
    look?.italic ? "font-style:italic" : "",
    look?.underline || look?.strike
      ? `text-decoration:${[look.underline && "underline", look.strike && "line-through"].filter(Boolean).join(" ")}`
      : "",
    color("color", look?.color),
    color("background", look?.fill),
    look?.wrap ? "white-space:normal" : "",
    ...EDGES.map((edge) => {
      const border = look?.borders?.[edge];
      return border
        ? `border-${edge}:${lineOf(border.line)} ${/^#[0-9a-f]{6}$/i.test(border.color) ? border.color : "#000"}`
        : "";
    }),
  ].filter(Boolean);
  return rules.length > 0 ? ` style="${rules.join(";")}"` : "";
}

function color(rule: string, value: string | undefined): string {
  return value && /^#[0-9a-f]{6}$/i.test(value) ? `${rule}:${value}` : "";
}

function lineOf(line: string): string {
  const width =
    line === "thick" ? 3 : line.startsWith("medium") || line === "slantDashDot" ? 2 : line === "double" ? 3 : 1;
  const style =
    line === "double"
      ? "double"
      : /dash/i.test(line)
        ? "dashed"
        : line === "dotted" || line === "hair"
          ? "dotted"
          : "solid";
  return `${width}px ${style}`;
}

function paperOf({ paper = "letter" }: Print): (typeof PAPERS)[string] {
  return PAPERS[paper.toLowerCase()] ?? PAPERS["letter"]!;
}

/** Only ever smaller: what is made to fit a page across, and what would run off it. */
function scaleOf(print: Print, width: number): number {
  const paper = paperOf(print);
  const room = (print.landscape ? paper.height : paper.width) - MARGINS;
  const across = Math.max(1, print.fit?.across ?? 1);
  return Math.min(1, Math.floor(((room * across) / Math.max(1, width)) * 1000) / 1000);
}

function filledRange(sheet: EmbeddedSheet, worksheet: Worksheet): IRange | null {
  const shown = cells(sheet, worksheet).shown();
  if (shown.length === 0) return null;
  return {
    startRow: 0,
    startColumn: 0,
    endRow: shown.reduce((most, { row }) => Math.max(most, row), 0),
    endColumn: shown.reduce((most, { column }) => Math.max(most, column), 0),
  };
}

/** "$A$1:$D$20" as a range; of several areas the first. */
function rangeOf(area: string | undefined): IRange | null {
  const found = /^(?:.*!)?\$?([A-Z]{1,3})\$?(\d+)(?::\$?([A-Z]{1,3})\$?(\d+))?/i.exec(area?.split(",")[0] ?? "");
  if (!found) return null;
  const [, left, top, right = left, bottom = top] = found;
  return {
    startRow: Number(top) - 1,
    endRow: Number(bottom) - 1,
    startColumn: columnOf(left!),
    endColumn: columnOf(right!),
  };
}

/** "$1:$2" as the rows 0 and 1. */
function rowsOf(titles: string | undefined): number[] {
  const found = /^(?:.*!)?\$?(\d+):\$?(\d+)$/.exec(titles ?? "");
  return found ? numbers(Number(found[1]) - 1, Number(found[2]) - 1) : [];
}

function numbers(from: number, to: number): number[] {
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => from + i);
}
