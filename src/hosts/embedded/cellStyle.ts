import type { ICellData, IStyleData, Nullable } from "@univerjs/core";
import { CellValueType } from "@univerjs/core";
import type { Look } from "../../xlsx/book.ts";
import { CELL_STYLES } from "../cellStyles.ts";
import type { CellLayout } from "../host.ts";
import type { CellToWrite } from "../stepCells.ts";
import { styleOf } from "./lookStyle.ts";

/** A line under headings, which the shared looks leave to each sheet. */
const UNDERLINE: Look = { borders: { bottom: { line: "thin", color: "#7d8b99" } } };

/** How a style of a layout looks in this sheet. */
function lookOfStyle(style: NonNullable<CellLayout["style"]>): Look {
  return { ...CELL_STYLES[style], ...(style === "heading" && UNDERLINE) };
}

/** The cell as the sheet keeps it. What stood there goes; fill, font and borders that the layout does not name stay. */
export function cellData({ content, format, style }: CellToWrite): ICellData {
  return { ...contentData(content), si: null, p: null, s: styleData(format, style) };
}

function contentData(content: string | number): Pick<ICellData, "v" | "t" | "f"> {
  if (typeof content === "number") return { v: content, t: CellValueType.NUMBER, f: null };
  if (content === "") return { v: null, t: null, f: null };
  // Told to be text, or the sheet would read "08" as 8 and "TRUE" as a logical value.
  return content.startsWith("=") ? { v: null, t: null, f: content } : { v: content, t: CellValueType.STRING, f: null };
}

function styleData(format: string, style: CellLayout["style"]): Nullable<IStyleData> {
  return { ...(style && styleOf(lookOfStyle(style))), n: format === "General" ? null : { pattern: format } };
}
