import type { BaseValueObject } from "@univerjs/engine-formula";
import {
  ArrayValueObject,
  BooleanValueObject,
  ERROR_TYPE_SET,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";
import type { Cell, Output } from "../../registry/worksheetFunction.ts";

/** The cell a call stands in, as the engine names it. */
export interface Place {
  readonly unit: string;
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** A call's value as the engine's own: one cell, or an array that spills from the calling cell. Text is never parsed: "6/12" stays text. */
export function output(value: Output, place: Place): BaseValueObject {
  if (typeof value !== "object") return one(value);
  return ArrayValueObject.create({
    calculateValueList: value.map((row) => row.map(one)),
    rowCount: value.length,
    columnCount: value[0]?.length ?? 0,
    unitId: place.unit,
    sheetId: place.sheet,
    row: place.row,
    column: place.column,
  });
}

/** An error as the engine's own; one it has no name for shows as #VALUE!. */
export function errorOutput(error: string): BaseValueObject {
  return ErrorValueObject.create(ERROR_TYPE_SET.has(error as ErrorType) ? (error as ErrorType) : ErrorType.VALUE);
}

function one(cell: Cell): BaseValueObject {
  if (typeof cell === "number")
    return Number.isFinite(cell) ? NumberValueObject.create(cell) : ErrorValueObject.create(ErrorType.NUM);
  if (typeof cell === "boolean") return BooleanValueObject.create(cell);
  return StringValueObject.create(cell);
}
