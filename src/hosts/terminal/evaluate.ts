import type { ArrayExpression, AstExpression, CallExpression, ReferenceIdentifier, UnaryExpression } from "@borgar/fx";
import { call } from "../../registry/call.ts";
import { messageOf } from "../../../functions/words/problemText.ts";
import { CellError, Refusal } from "../../registry/refusal.ts";
import { NAMESPACE, type WorksheetFunction } from "../../registry/worksheetFunction.ts";
import { lift } from "./lift.ts";
import { operators } from "./operators.ts";
import { sheetFunctions } from "./sheetFunctions.ts";
import { FormulaError, isRows, type Value } from "./value.ts";

/** The worksheet functions that a formula can call, by name without the namespace. */
export type Functions = ReadonlyMap<string, WorksheetFunction>;

/** Works out a parsed formula. Errors are values: one that a cell would show comes back as a {@link CellError}. */
export async function evaluate(node: AstExpression, functions: Functions): Promise<Value> {
  switch (node.type) {
    case "Literal":
      return typeof node.value === "number" && !Number.isFinite(node.value)
        ? new FormulaError("#NUM!", `${node.raw} is more than a cell can hold.`)
        : node.value;
    case "ErrorLiteral":
      return new FormulaError(node.value, `The formula itself holds ${node.value}.`);
    case "ArrayExpression":
      return block(node, functions);
    case "ReferenceIdentifier":
      return reference(node);
    case "UnaryExpression":
      return unary(node, functions);
    case "BinaryExpression": {
      const [left, right] = [
        await evaluate(node.arguments[0]!, functions),
        await evaluate(node.arguments[1]!, functions),
      ];
      const operator = operators[node.operator];
      if (operator !== undefined) return lift(operator, [left, right]);
      return left instanceof CellError ? left : noSheet(node.operator);
    }
    case "CallExpression":
      return called(node, functions);
    case "LambdaExpression":
      return unknown("LAMBDA");
    case "LetExpression":
      return unknown("LET");
    default:
      return new FormulaError("#NAME?", "This part of a formula is not known here.");
  }
}

async function unary(node: UnaryExpression, functions: Functions): Promise<Value> {
  const value = await evaluate(node.arguments[0]!, functions);
  switch (node.operator) {
    case "-":
      return lift(operators["-"]!, [0, value]);
    case "%":
      return lift(operators["/"]!, [value, 100]);
    case "@":
      return isRows(value) ? value[0]![0]! : value;
    case "#":
      return noSheet("#");
    default:
      return value;
  }
}

async function block(node: ArrayExpression, functions: Functions): Promise<Value> {
  const rows = await Promise.all(
    node.elements.map((row) => Promise.all(row.map((cell) => evaluate(cell as AstExpression, functions)))),
  );
  const columns = rows[0]!.length;
  const ragged = rows.findIndex((row) => row.length !== columns);
  if (ragged > 0)
    return new FormulaError(
      "#VALUE!",
      `Row ${ragged + 1} of the block in braces has ${rows[ragged]!.length} cells where the first has ${columns}. Write "" for an empty cell.`,
    );
  return rows as Value;
}

async function called(node: CallExpression, functions: Functions): Promise<Value> {
  if (node.callee.type !== "Identifier") return new FormulaError("#NAME?", "Only functions can be called.");
  const name = node.callee.name.toUpperCase();
  const definition = name.startsWith(`${NAMESPACE}.`) ? functions.get(name.slice(NAMESPACE.length + 1)) : undefined;
  const native = Object.hasOwn(sheetFunctions, name) ? sheetFunctions[name] : undefined;
  if (definition === undefined && native === undefined) return unknown(name, functions);

  const values: (Value | undefined)[] = [];
  for (const argument of node.arguments)
    values.push(argument === null ? undefined : await evaluate(argument as AstExpression, functions));

  if (definition !== undefined) {
    const answer = await call(definition, values);
    return answer instanceof Refusal ? new FormulaError(answer.error, messageOf(answer)) : (answer as Value);
  }
  const { least, most, compute } = native!;
  if (values.length < least || values.length > most) {
    return new FormulaError(
      "#VALUE!",
      `${name} takes ${most === Infinity ? `${least} or more` : least === most ? least : `${least} to ${most}`} arguments and was given ${values.length}.`,
    );
  }
  return compute(...values.map((value) => value ?? null));
}

function unknown(name: string, functions?: Functions): FormulaError {
  const hint = functions?.has(name) ? ` Write ${NAMESPACE}.${name}.` : " --help lists the functions.";
  return new FormulaError("#NAME?", `There is no function ${name} here.${hint}`);
}

function reference({ value, kind }: ReferenceIdentifier): FormulaError {
  if (kind === "name")
    return new FormulaError("#NAME?", `${value} is no name here. Text stands in quotes: "${value}".`);
  return noSheet(value);
}

function noSheet(what: string): FormulaError {
  return new FormulaError(
    "#REF!",
    `${what}: there is no sheet here, so no cell can be pointed to. Write the value itself.`,
  );
}
