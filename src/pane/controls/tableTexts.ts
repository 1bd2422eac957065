import { lengthText } from "../../measure/lengthText.ts";
import type { Unit } from "../../measure/unit.ts";
import { columnAt, type Cell, type Column, type ColumnKind, type Table } from "../../registry/columns.ts";

/** A cell of a table as people read it: lengths on the tape or in millimeters, angles to the hundredth. */
export function cellText(kind: ColumnKind, cell: Cell, unit: Unit): string {
  if (typeof cell !== "number") return String(cell);
  switch (kind) {
    case "length":
      return lengthText(cell, unit);
    case "angle":
      return `${cell.toFixed(2)}°`;
    case "money":
    case "area":
    case "amount":
      return cell.toFixed(2);
    default:
      return String(Number(cell.toFixed(6)));
  }
}

/** Some columns of a table as texts, in the order asked for. */
export function tableTexts(
  columns: readonly Column[],
  [, ...rows]: Table,
  unit: Unit,
  wanted: readonly string[],
): { headings: string[]; rows: string[][]; numbers: boolean[] } {
  const at = wanted.map((name) => columnAt(columns, name));
  return {
    headings: at.map((i) => String(columns[i]!.heading)),
    rows: rows.map((row) => at.map((i) => cellText(columns[i]!.kind, row[i] ?? "", unit))),
    numbers: at.map((i) => columns[i]!.kind !== "text"),
  };
}
