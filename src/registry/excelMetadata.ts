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
 * Each function is given its own cell's address, so that the pane can show why a cell was refused.
 *
 * @param base the address that the help pages stand under, without a slash at its end.
 * @param sync marks functions that answer at once with `supportSync`: Excel then waits for them instead of showing #BUSY!, in the formula dialog and in
 * conditional formats too. Still a preview that its vendor does not want in a published add-in ("Synchronous custom functions"), so it is off unless asked for.
 */
export function excelMetadata(functions: readonly WorksheetFunction[], base: string, sync = false): ExcelMetadata {
  return {
    allowErrorForDataTypeAny: true,
    functions: functions.map((definition) => described(definition, base, sync && !definition.asynchronous)),
  };
}

function described(definition: WorksheetFunction, base: string, sync: boolean): ExcelFunction {
  const { name, summary, parameters, result } = definition;
  return {
    id: name,
    name,
    description: summary,
    helpUrl: `${base}/${helpPath(definition)}`,
    parameters: parameters.map(parameter),
    result: { type: "any", dimensionality: result === "table" ? "matrix" : "scalar" },
    options: sync ? { requiresAddress: true, supportSync: true } : { requiresAddress: true },
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
