import { shortened } from "../../measure/shortened.ts";
import { CellError } from "../../registry/refusal.ts";

/** What one cell can hold while a formula is worked out; null is an argument left empty. */
export type Scalar = number | string | boolean | null | CellError;

/** What a part of a formula gives: one cell, or rows of cells. */
export type Value = Scalar | Rows;
export type Rows = readonly (readonly Scalar[])[];

/** An error that a formula gives, with its reason; as a {@link CellError} it passes through every call it is handed to. */
export class FormulaError extends CellError {
  readonly message: string;
  constructor(error: string, message: string) {
    super(error);
    this.message = message;
  }
}

/** A value as rows, one cell being a block of one row and one column. */
export function rowsOf(value: Value): Rows {
  return isRows(value) ? value : [[value]];
}

export function isRows(value: Value): value is Rows {
  return Array.isArray(value);
}

/** A cell as a number, as a sheet takes it: TRUE is 1, an empty cell 0, text that is a plain number that number. */
export function toNumber(cell: Scalar): number | CellError {
  if (typeof cell === "number" || cell instanceof CellError) return cell;
  if (typeof cell !== "string") return Number(cell ?? 0);
  const number = cell.trim() === "" || /^\s*[+-]?0[box]/i.test(cell) ? NaN : Number(cell);
  return Number.isFinite(number)
    ? number
    : new FormulaError(
        "#VALUE!",
        `"${shortened(cell)}" is text where a number is needed. Hand measurements to a RAFTER function, or write a number.`,
      );
}

/** A cell as text, as a sheet shows it: numbers to the 15 digits that a sheet keeps. */
export function toText(cell: Scalar): string {
  if (cell instanceof CellError) return cell.error;
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  if (typeof cell === "number")
    return String(Number(cell.toPrecision(15)))
      .replace("e", "E")
      .replace(/^-0$/, "0");
  return cell ?? "";
}

export function toLogical(cell: Scalar): boolean | CellError {
  if (typeof cell === "boolean" || cell instanceof CellError) return cell;
  if (typeof cell === "string" && /^(true|false)$/i.test(cell)) return cell.toLowerCase() === "true";
  const number = toNumber(cell);
  return number instanceof CellError ? number : number !== 0;
}
