import { helpPath } from "./helpPage.ts";
import type { Parameter, WorksheetFunction } from "./worksheetFunction.ts";

/** What Excel reads in functions.json about every function before any code runs. */
export interface ExcelMetadata {
  /** Lets a function see an error in an argument's cell, so that it passes through unchanged. */
  readonly allowErrorForDataTypeAny: true;
  readonly functions: readonly ExcelFunction[];
}

export interface ExcelFunction {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly helpUrl: string;
  readonly parameters: readonly ExcelParameter[];
  readonly result: { readonly type: "any"; readonly dimensionality: Dimensionality };
  readonly options: { readonly requiresAddress: true; readonly supportSync?: true };
}

export interface ExcelParameter {
  readonly name: string;
  readonly description: string;
  readonly type: "any";
  readonly dimensionality: Dimensionality;
  readonly optional?: true;
}

type Dimensionality = "scalar" | "matrix";

/**
 * The contents of functions.json. Every parameter is `any`, so that no host reads "6/12" before we do.
 *
 * A function that answers at once is marked `supportSync`: Excel then waits for it instead of showing #BUSY!, in the formula dialog and in conditional formats
 * too. An Excel that does not know the mark passes it over. Each is given its own cell's address, so that the pane can show why a cell was refused.
 *
 * @param base the address that the help pages stand under, without a slash at its end.
 */
export function excelMetadata(functions: readonly WorksheetFunction[], base: string): ExcelMetadata {
  return { allowErrorForDataTypeAny: true, functions: functions.map((definition) => described(definition, base)) };
}

function described(definition: WorksheetFunction, base: string): ExcelFunction {
  const { name, summary, parameters, result, asynchronous } = definition;
  return {
    id: name,
    name,
    description: summary,
    helpUrl: `${base}/${helpPath(definition)}`,
    parameters: parameters.map(parameter),
    result: { type: "any", dimensionality: result === "table" ? "matrix" : "scalar" },
    options: asynchronous ? { requiresAddress: true } : { requiresAddress: true, supportSync: true },
  };
}

function parameter({ name, description, block, optional, defaultText }: Parameter): ExcelParameter {
  return {
    name,
    description: optional && defaultText ? `${description} Default: ${defaultText}.` : description,
    type: "any",
    dimensionality: block ? "matrix" : "scalar",
    ...(optional ? { optional: true } : {}),
  };
}
