import { CellError } from "../../registry/refusal.ts";
import { FormulaError, toNumber, toText, type Scalar } from "./value.ts";

type Operator = (...cells: Scalar[]) => Scalar;

/** The operators of a formula, on single cells. An error on either side is the answer, the left one first. */
export const operators: Readonly<Record<string, Operator>> = {
  "+": ofNumbers((a, b) => a + b),
  "-": ofNumbers((a, b) => a - b),
  "*": ofNumbers((a, b) => a * b),
  "/": ofNumbers((a, b) => (b === 0 ? divisionByZero() : a / b)),
  "^": ofNumbers(power),
  "&": withoutErrors((a, b) => toText(a!) + toText(b!)),
  "=": comparison((order) => order === 0),
  "<>": comparison((order) => order !== 0),
  "<": comparison((order) => order < 0),
  "<=": comparison((order) => order <= 0),
  ">": comparison((order) => order > 0),
  ">=": comparison((order) => order >= 0),
};

/** Makes a function of numbers one of cells: errors pass through, and what is no finite number is #NUM!. */
export function ofNumbers(compute: (...numbers: number[]) => number | CellError): Operator {
  return (...cells) => {
    const numbers: number[] = [];
    for (const cell of cells) {
      const number = toNumber(cell);
      if (number instanceof CellError) return number;
      numbers.push(number);
    }
    const result = compute(...numbers);
    return result instanceof CellError || Number.isFinite(result)
      ? result
      : new FormulaError("#NUM!", "The result is not a number that a cell can hold.");
  };
}

export function divisionByZero(): FormulaError {
  return new FormulaError("#DIV/0!", "A number is divided by zero.");
}

/** 0 to the power 0 is an error in a sheet, though 1 in most programming languages. */
export function power(base: number, exponent: number): number | CellError {
  if (base === 0 && exponent < 0) return divisionByZero();
  return base === 0 && exponent === 0 ? NaN : base ** exponent;
}

function withoutErrors(compute: Operator): Operator {
  return (...cells) => cells.find((cell) => cell instanceof CellError) ?? compute(...cells);
}

/** Numbers stand before texts and texts before TRUE and FALSE; the case of text does not matter; an empty cell is like 0, "" or FALSE. */
function comparison(holds: (order: number) => boolean): Operator {
  return withoutErrors((a, b) => {
    const left = filled(a!, b!);
    const right = filled(b!, a!);
    const rank = rankOf(left) - rankOf(right);
    return holds(rank !== 0 ? rank : left < right ? -1 : left > right ? 1 : 0);
  });
}

function filled(cell: Scalar, other: Scalar): number | string | boolean {
  if (cell === null) return typeof other === "string" ? "" : typeof other === "boolean" ? false : 0;
  return typeof cell === "string" ? cell.toLowerCase() : (cell as number | boolean);
}

function rankOf(cell: number | string | boolean): number {
  return ["number", "string", "boolean"].indexOf(typeof cell);
}
