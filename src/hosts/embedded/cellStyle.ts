import type { ICellData, IStyleData, Nullable } from "@univerjs/core";
import { BooleanNumber, BorderStyleTypes, CellValueType } from "@univerjs/core";
import type { CellPlan } from "../host.ts";

const STYLES: Record<NonNullable<CellPlan["style"]>, IStyleData> = {
  title: { bl: BooleanNumber.TRUE, fs: 14 },
  heading: { bl: BooleanNumber.TRUE, bg: { rgb: "#e4ebf1" }, bd: { b: { s: BorderStyleTypes.THIN, cl: { rgb: "#7d8b99" } } } },
  label: { cl: { rgb: "#3b4754" } },
  input: { bg: { rgb: "#fdf6dd" } },
  note: { it: BooleanNumber.TRUE, cl: { rgb: "#5c6975" } },
};

/** The cell as the sheet keeps it. What stood there goes; fill, font and borders that the plan does not name stay. */
export function cellData({ content, format, style }: CellPlan): ICellData {
  return { ...contentData(content), si: null, p: null, s: styleData(format ?? null, style) };
}

/** An emptied cell for a spilled value, with its number format (null: none). */
export function emptiedCell(format: string | null): ICellData {
  return { ...contentData(""), si: null, p: null, s: styleData(format) };
}

function contentData(content: string | number): Pick<ICellData, "v" | "t" | "f"> {
  if (typeof content === "number") return { v: content, t: CellValueType.NUMBER, f: null };
  if (content === "") return { v: null, t: null, f: null };
  // Told to be text, or the sheet would read "08" as 8 and "TRUE" as a logical value.
  return content.startsWith("=") ? { v: null, t: null, f: content } : { v: content, t: CellValueType.STRING, f: null };
}

function styleData(format: string | null, style?: CellPlan["style"]): Nullable<IStyleData> {
  return { ...(style && STYLES[style]), n: format === null || format === "General" ? null : { pattern: format } };
}
