import type { IFunctionInfo } from "@univerjs/engine-formula";
import { FunctionType } from "@univerjs/engine-formula";
import { argumentText, formulaText } from "../../registry/formulaText.ts";
import type { WorksheetFunction } from "../../registry/worksheetFunction.ts";
import { NAMESPACE } from "../../registry/worksheetFunction.ts";

/** The texts that the sheet shows while a formula is typed, made from the definition. */
export function functionInfo(definition: WorksheetFunction): IFunctionInfo {
  const [example] = definition.examples;
  return {
    functionName: `${NAMESPACE}.${definition.name}`,
    functionType: FunctionType.User,
    abstract: definition.summary,
    description: `${definition.summary} Returns ${definition.returns} Example: ${formulaText(definition, example)}`,
    functionParameter: definition.parameters.map((parameter, i) => ({
      name: parameter.name,
      detail:
        parameter.defaultText === undefined
          ? parameter.description
          : `${parameter.description} Left out: ${parameter.defaultText}.`,
      example: i in example.cells ? argumentText(example.cells[i]!) : "",
      require: parameter.optional ? 0 : 1,
      repeat: 0,
    })),
  };
}
