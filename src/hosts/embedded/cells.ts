import type { ICellData, IObjectMatrixPrimitiveType, Nullable, Worksheet } from "@univerjs/core";
import { CellValueType } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import type { HostCell } from "../host.ts";
import type { EmbeddedSheet } from "./runningSheet.ts";

const EMPTY: HostCell = { formula: null, value: "", format: "General" };

/** Reads the cells of one sheet in full precision, spilled values included. */
export interface Cells {
  /** @param cell what the sheet keeps there, where it is known already. */
  at(row: number, column: number, cell?: Nullable<ICellData>): HostCell;
  /** What the user (or a step) put into the cell itself: formula or value, kept apart by type; "" when nothing, spilled values not counted. */
  contentAt(row: number, column: number): string;
  /** Nothing is seen in the cell: no content and no spilled value. */
  emptyAt(row: number, column: number): boolean;
  /** Every cell with content of its own, by rows. */
  filled(): { row: number; column: number }[];
  /** Every cell in which something is seen, spilled cells included, by rows. */
  shown(): { row: number; column: number }[];
}

export function cells({ univer, workbook }: EmbeddedSheet, worksheet: Worksheet): Cells {
  const model = univer.__getInjector().get(FormulaDataModel);
  const sheet = worksheet.getSheetId();
  const spilled = model.getArrayFormulaCellData()[workbook.getId()]?.[sheet] as
    IObjectMatrixPrimitiveType<Nullable<ICellData>> | undefined;
  const matrix = worksheet.getCellMatrix();
  const styles = workbook.getWorkbook().getStyles();
  const formulaAt = (row: number, column: number, cell: Nullable<ICellData>) =>
    cell && (cell.f || cell.si) ? (model.getFormulaStringByCell(row, column, sheet, workbook.getId()) ?? null) : null;

  const contentAt = (row: number, column: number) => {
    const cell = matrix.getValue(row, column);
    if (!cell) return "";
    const formula = formulaAt(row, column, cell);
    if (formula) return formula;
    const value = valueOf(cell);
    return value === "" ? "" : `${typeof value} ${value}`;
  };
  return {
    at(row, column, cell = matrix.getValue(row, column)) {
      const spill = spilled?.[row]?.[column];
      if (!cell && !spill) return EMPTY;
      const own = valueOf(cell);
      return {
        formula: formulaAt(row, column, cell),
        value: own === "" ? valueOf(spill) : own,
        format: styles.getStyleByCell(cell)?.n?.pattern || "General",
      };
    },
    contentAt,
    emptyAt: (row, column) => contentAt(row, column) === "" && valueOf(spilled?.[row]?.[column]) === "",
    filled() {
      const found: { row: number; column: number }[] = [];
      matrix.forValue((row, column) => void (contentAt(row, column) !== "" && found.push({ row, column })));
      return found;
    },
    shown() {
      const found = new Map<string, { row: number; column: number }>();
      const add = (row: number, column: number) => void found.set(`${row}/${column}`, { row, column });
      matrix.forValue((row, column) => void (contentAt(row, column) !== "" && add(row, column)));
      for (const [row, line] of Object.entries(spilled ?? {}))
        for (const [column, cell] of Object.entries((line ?? {}) as Record<string, Nullable<ICellData>>))
          if (valueOf(cell) !== "") add(Number(row), Number(column));
      return [...found.values()].sort((a, b) => a.row - b.row || a.column - b.column);
    },
  };
}

function valueOf(cell: Nullable<ICellData>): number | string | boolean {
  // A text with a link may be in its document only, which ends with two signs of its own.
  const value = cell?.v ?? cell?.p?.body?.dataStream.replace(/\r\n$/, "").replaceAll("\r", "\n");
  if (value === undefined) return "";
  return cell!.t === CellValueType.BOOLEAN ? Number(value) === 1 : value;
}
