import type { BaseReferenceObject, BaseValueObject, FunctionVariantType } from "@univerjs/engine-formula";
import { ERROR_TYPE_SET } from "@univerjs/engine-formula";
import { CellValueType } from "@univerjs/core";
import type { ICellData, Nullable } from "@univerjs/core";
import { CellError } from "../../registry/refusal.ts";
import type { Input } from "../../registry/worksheetFunction.ts";

/**
 * What the engine hands over for one argument, as the raw cell (or rows of raw cells) that `call` reads.
 *
 * Cells are read where they stand, without the engine's own value objects: it turns a blank cell into 0 and is slower.
 */
export function input(variant: FunctionVariantType, block: boolean): Input {
  if (variant.isReferenceObject()) return ofReference(variant as BaseReferenceObject, block);
  const value = variant as BaseValueObject;
  if (value.isArray()) return rowsOf(value);
  const single = ofValue(value);
  return block && !(single instanceof CellError) ? [[single]] : single;
}

function ofReference(reference: BaseReferenceObject, block: boolean): Input {
  // The engine keeps the name of a sheet that is not there, and would read this sheet instead.
  if (reference.getForcedSheetName() && !reference.getForcedSheetId()) return new CellError("#REF!");
  const { startRow, startColumn, endRow, endColumn } = reference.getRangePosition();
  const single = startRow === endRow && startColumn === endColumn;
  if (single && !block) return ofCell(reference.getCellData(startRow, startColumn));
  // Beyond the sheet's edge all is blank, and a reference may reach a long way beyond it: A1:XFD1048576 has 17 thousand million cells.
  const bottom = Math.min(endRow, Math.max(startRow, reference.getActiveSheetRowCount() - 1));
  const right = Math.min(endColumn, Math.max(startColumn, reference.getActiveSheetColumnCount() - 1));
  return Array.from({ length: bottom - startRow + 1 }, (_, i) =>
    Array.from({ length: right - startColumn + 1 }, (_, j) =>
      ofCell(reference.getCellData(startRow + i, startColumn + j)),
    ),
  );
}

function ofCell(cell: Nullable<ICellData>): Input {
  const value = cell?.v;
  if (value === undefined || value === null) return null;
  if (cell!.t === CellValueType.BOOLEAN) return Number(value) === 1;
  if (cell!.t === CellValueType.NUMBER) return Number(value);
  if (typeof value === "string" && ERROR_TYPE_SET.has(value as never)) return new CellError(value);
  return value;
}

function ofValue(value: BaseValueObject): Input {
  if (value.isNull()) return null;
  if (value.isError()) return new CellError(String(value.getValue()));
  if (value.isNumber()) return Number(value.getValue());
  if (value.isBoolean()) return value.getValue() === true;
  return value.isString() ? String(value.getValue()) : new CellError("#VALUE!");
}

function rowsOf(value: BaseValueObject): Input {
  const array = value as BaseValueObject & { getArrayValue(): Nullable<BaseValueObject>[][] };
  return Array.from(array.getArrayValue(), (row) => Array.from(row ?? [], (cell) => (cell ? ofValue(cell) : null)));
}
