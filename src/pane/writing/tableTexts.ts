import { lengthText } from "../../measure/lengthText.ts";
import type { Unit } from "../../measure/unit.ts";
import type { Cell } from "../../registry/worksheetFunction.ts";
import { kindOf } from "./tables.ts";

/** A cell of a table as people read it: lengths on the tape or in millimetres, angles to the hundredth. */
export function cellText(heading: unknown, cell: Cell, unit: Unit): string {
  if (typeof cell !== "number") return String(cell);
  switch (kindOf(heading)) {
    case "length":
      return lengthText(cell, unit);
    case "angle":
      return `${cell.toFixed(2)}°`;
    case "amount":
      return cell.toFixed(2);
    default:
      return String(Number(cell.toFixed(6)));
  }
}

/** Some columns of a table as texts, in the order asked for; columns it does not have are left out. */
export function tableTexts(
  table: readonly (readonly Cell[])[],
  unit: Unit,
  columns: readonly string[] = table[0]!.map(String),
): { headings: string[]; rows: string[][]; numbers: boolean[] } {
  const [headings, ...rows] = table as [readonly Cell[], ...(readonly Cell[])[]];
  const at = columns.map((name) => headings.indexOf(name)).filter((column) => column >= 0);
  return {
    headings: at.map((column) => String(headings[column])),
    rows: rows.map((row) => at.map((column) => cellText(headings[column], row[column] ?? "", unit))),
    numbers: at.map((column) => kindOf(headings[column]) !== "text"),
  };
}
