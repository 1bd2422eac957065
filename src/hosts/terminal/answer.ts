import { parse, tokenize, type AstExpression } from "@borgar/fx";
import { CellError } from "../../registry/refusal.ts";
import type { Cell } from "../../registry/worksheetFunction.ts";
import { evaluate, type Functions } from "./evaluate.ts";
import { FormulaError, isRows, type Scalar } from "./value.ts";

/** What one line gives: the formula as typed with its value, or with the error that the cell would show and why. */
export type Answer =
  | { readonly formula: string; readonly value: Cell | readonly (readonly Cell[])[] }
  | { readonly formula: string; readonly error: string; readonly message: string };

/** Works out one formula, with or without its leading "=". Never rejects, so that the lines after it go on. */
export async function answer(formula: string, functions: Functions): Promise<Answer> {
  try {
    const value = await evaluate(parsed(formula), functions);
    if (value instanceof CellError) return refused(formula, value);
    return { formula, value: isRows(value) ? value.map((row) => row.map(shown)) : shown(value) };
  } catch (error) {
    if (error instanceof CellError) return refused(formula, error);
    const why =
      error instanceof RangeError
        ? "The formula is nested too deeply."
        : `A fault of this program, not of the formula: ${String(error)}`;
    return { formula, error: "#VALUE!", message: why };
  }
}

function refused(formula: string, error: CellError): Answer {
  return {
    formula,
    error: error.error,
    message: error instanceof FormulaError ? error.message : `A value that went in is ${error.error}.`,
  };
}

/** An error among the cells of a spill stays in its place, as its text. */
function shown(cell: Scalar): Cell {
  return cell instanceof CellError ? cell.error : (cell ?? 0);
}

/** As many characters as a sheet takes in one formula; the limit also keeps the parser's time short for any text. */
const LONGEST = 8192;

function parsed(formula: string): AstExpression {
  const text = formula.trim().replace(/^=\s*/, "");
  if (text.length > LONGEST)
    throw new FormulaError("#VALUE!", `The formula has ${text.length} characters; a cell takes ${LONGEST} at most.`);
  try {
    return parse(tokenize(text));
  } catch (error) {
    if (error instanceof RangeError) throw error;
    throw new FormulaError("#NAME?", unreadable(text, error as { message: string; sourceOffset?: number }));
  }
}

/** The parser's complaint in words for people: what is missing at the end, or near what it stopped. */
function unreadable(text: string, { message, sourceOffset = 0 }: { message: string; sourceOffset?: number }): string {
  if (message.includes("unterminated"))
    return 'A text has no closing quote. Inside a text, inches are typed as two quotes: "9\' 4 5/8""".';
  if (sourceOffset >= text.length && /Invalid syntax|but got \(END\)/.test(message))
    return "The formula ends too early: a bracket or a value is missing.";
  return `The formula cannot be read near "${text.slice(Math.max(0, sourceOffset - 10), sourceOffset + 10)}".`;
}
