import { CellError } from "../../registry/refusal.ts";
import { lift } from "./lift.ts";
import { divisionByZero, ofNumbers, power } from "./operators.ts";
import { FormulaError, isRows, rowsOf, toLogical, toNumber, type Scalar, type Value } from "./value.ts";

/** A function that every sheet has, so that a line can check a result as a cell would. */
interface SheetFunction {
  readonly least: number;
  readonly most: number;
  compute(...values: Value[]): Value;
}

const degrees = 180 / Math.PI;

/** The few functions of a sheet's own that a checking formula needs. All work as they do in a cell. */
export const sheetFunctions: Readonly<Record<string, SheetFunction>> = {
  SUM: ofAll((numbers) => numbers.reduce((sum, n) => sum + n, 0)),
  PRODUCT: ofAll((numbers) => numbers.reduce((product, n) => product * n, numbers.length === 0 ? 0 : 1)),
  COUNT: {
    least: 1,
    most: Infinity,
    compute: (...values) =>
      values.flatMap((value) => rowsOf(value).flat()).filter((cell) => typeof cell === "number").length,
  },
  AVERAGE: ofAll((numbers) =>
    numbers.length === 0 ? divisionByZero() : numbers.reduce((sum, n) => sum + n, 0) / numbers.length,
  ),
  MIN: ofAll((numbers) => numbers.reduce((least, n) => Math.min(least, n), numbers[0] ?? 0)),
  MAX: ofAll((numbers) => numbers.reduce((most, n) => Math.max(most, n), numbers[0] ?? 0)),

  ABS: each(1, 1, Math.abs),
  INT: each(1, 1, Math.floor),
  SQRT: each(1, 1, Math.sqrt),
  MOD: each(2, 2, (n: number, divisor: number) =>
    divisor === 0 ? divisionByZero() : n - divisor * Math.floor(n / divisor),
  ),
  POWER: each(2, 2, power),
  ROUND: each(2, 2, (n: number, digits: number) => rounded(n, digits, Math.round)),
  ROUNDUP: each(2, 2, (n: number, digits: number) => rounded(n, digits, Math.ceil)),
  ROUNDDOWN: each(2, 2, (n: number, digits: number) => rounded(n, digits, Math.floor)),

  PI: each(0, 0, () => Math.PI),
  SIN: each(1, 1, Math.sin),
  COS: each(1, 1, Math.cos),
  TAN: each(1, 1, Math.tan),
  ASIN: each(1, 1, Math.asin),
  ACOS: each(1, 1, Math.acos),
  ATAN: each(1, 1, Math.atan),
  ATAN2: each(2, 2, (x: number, y: number) => (x === 0 && y === 0 ? divisionByZero() : Math.atan2(y, x))),
  DEGREES: each(1, 1, (angle: number) => angle * degrees),
  RADIANS: each(1, 1, (angle: number) => angle / degrees),

  IF: { least: 2, most: 3, compute: (test, yes, no = false) => lift(choice, [test!, yes!, no]) },
  IFERROR: {
    least: 2,
    most: 2,
    compute: (value, instead) =>
      lift((cell, other) => (cell instanceof CellError ? other! : cell!), [value!, instead!]),
  },
  ISERROR: { least: 1, most: 1, compute: (value) => lift((cell) => cell instanceof CellError, [value!]) },
  NOT: { least: 1, most: 1, compute: (value) => lift((cell) => negated(toLogical(cell!)), [value!]) },
  AND: logical((all) => all.every(Boolean)),
  OR: logical((all) => all.some(Boolean)),

  ROWS: { least: 1, most: 1, compute: (value) => ofWhole(value!, (rows) => rows.length) },
  COLUMNS: { least: 1, most: 1, compute: (value) => ofWhole(value!, (rows) => rows[0]!.length) },
  INDEX: { least: 2, most: 3, compute: index },
  HSTACK: { least: 1, most: Infinity, compute: beside },
  VSTACK: { least: 1, most: Infinity, compute: below },
};

function each(least: number, most: number, compute: (...numbers: number[]) => number | CellError): SheetFunction {
  return { least, most, compute: (...values) => lift(ofNumbers(compute), values) };
}

/** Over all the numbers of its arguments; texts and empty cells inside a block are passed over, as in a sheet. */
function ofAll(compute: (numbers: readonly number[]) => number | CellError): SheetFunction {
  return {
    least: 1,
    most: Infinity,
    compute: (...values) => {
      const cells = values.flatMap((value) =>
        isRows(value) ? value.flat().filter((cell) => typeof cell === "number" || cell instanceof CellError) : [value],
      );
      const numbers = cells.map(toNumber);
      const error = numbers.find((n) => n instanceof CellError);
      return error ?? ofNumbers(() => compute(numbers as number[]))();
    },
  };
}

function logical(compute: (all: readonly boolean[]) => boolean): SheetFunction {
  return {
    least: 1,
    most: Infinity,
    compute: (...values) => {
      const all = values.flatMap((value) => rowsOf(value).flat()).map(toLogical);
      return all.find((one) => one instanceof CellError) ?? compute(all as boolean[]);
    },
  };
}

function negated(value: boolean | CellError): boolean | CellError {
  return value instanceof CellError ? value : !value;
}

function choice(test: Scalar | undefined, yes: Scalar | undefined, no: Scalar | undefined): Scalar {
  const answer = toLogical(test!);
  return answer instanceof CellError ? answer : ((answer ? yes : no) ?? 0);
}

/** Rounds the digits as they are written, half away from zero: 1.005 to two digits is 1.01, though its double lies below. */
function rounded(n: number, digits: number, round: (n: number) => number): number {
  const shift = (value: number, by: number) => {
    const [mantissa, exponent = "0"] = String(value).split("e");
    return Number(`${mantissa}e${Number(exponent) + by}`);
  };
  const places = Math.trunc(digits);
  return Math.sign(n) * shift(round(shift(Math.abs(n), places)), -places);
}

function ofWhole(value: Value, compute: (rows: ReturnType<typeof rowsOf>) => number): Value {
  return value instanceof CellError ? value : compute(rowsOf(value));
}

/** One cell of a block, counted from 1; row or column 0 gives the whole column or row. A single row takes one number as its column. */
function index(block?: Value, first?: Value, second?: Value): Value {
  if (block instanceof CellError) return block;
  const rows = rowsOf(block!);
  const across = second === undefined && rows.length === 1;
  const at = [across ? 1 : first!, across ? first! : (second ?? 0)].map((n) =>
    isRows(n) ? toNumber(n[0]![0]!) : toNumber(n),
  );
  const error = at.find((n) => n instanceof CellError);
  if (error !== undefined) return error;
  const [row, column] = at.map((n) => Math.trunc(n as number)) as [number, number];
  if (row < 0 || column < 0 || row > rows.length || column > rows[0]!.length) {
    return new FormulaError(
      "#REF!",
      `INDEX: the block has ${rows.length} rows and ${rows[0]!.length} columns; row ${row}, column ${column} is outside it.`,
    );
  }
  const lines = row === 0 ? rows : [rows[row - 1]!];
  const cut = column === 0 ? lines : lines.map((line) => [line[column - 1]!]);
  return cut.length === 1 && cut[0]!.length === 1 ? cut[0]![0]! : cut;
}

function beside(...values: Value[]): Value {
  const blocks = values.map(rowsOf);
  const rows = Math.max(...blocks.map((block) => block.length));
  return Array.from({ length: rows }, (_, row) => blocks.flatMap((block) => block[row] ?? block[0]!.map(missing)));
}

function below(...values: Value[]): Value {
  const lines = values.flatMap(rowsOf);
  const columns = Math.max(...lines.map((line) => line.length));
  return lines.map((line) =>
    Array.from({ length: columns }, (_, column) => (column < line.length ? line[column]! : missing())),
  );
}

function missing(): FormulaError {
  return new FormulaError("#N/A", "The blocks put together are not of the same size.");
}
