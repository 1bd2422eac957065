import type { IFunctionInfo } from "@univerjs/engine-formula";
import { FunctionType } from "@univerjs/engine-formula";
import type { Cell, Example, WorksheetFunction } from "../../registry/worksheetFunction.ts";
import { NAMESPACE } from "../../registry/worksheetFunction.ts";

/** The texts that the sheet shows while a formula is typed, made from the definition. */
export function functionInfo(definition: WorksheetFunction): IFunctionInfo {
  const [example] = definition.examples;
  return {
    functionName: `${NAMESPACE}.${definition.name}`,
    functionType: FunctionType.User,
    abstract: definition.summary,
    description: `${definition.summary} Returns ${definition.returns} Example: ${written(definition.name, example)}`,
    functionParameter: definition.parameters.map((parameter, i) => ({
      name: parameter.name,
      detail: parameter.defaultText === undefined ? parameter.description : `${parameter.description} Left out: ${parameter.defaultText}.`,
      example: exampleText(example, i),
      require: parameter.optional ? 0 : 1,
      repeat: 0,
    })),
  };
}

function written(name: string, example: Example): string {
  return `=${NAMESPACE}.${name}(${example.cells.map((_, i) => exampleText(example, i)).join(", ")})`;
}

function exampleText(example: Example, i: number): string {
  const cell = example.cells[i];
  if (cell === undefined) return "";
  return typeof cell === "object" ? `{${cell.map((row) => row.map(literal).join(",")).join(";")}}` : literal(cell);
}

function literal(cell: Cell | null): string {
  if (cell === null) return '""';
  return typeof cell === "string" ? `"${cell.replaceAll('"', '""')}"` : String(cell).toUpperCase();
}
