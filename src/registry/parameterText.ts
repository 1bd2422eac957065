import { NAMESPACE, type Parameter, type WorksheetFunction } from "./worksheetFunction.ts";

/** How a function is called, its optional arguments in brackets: `RAFTER.TAPE(inches, [smallest])`. */
export function signature({ name, parameters }: Pick<WorksheetFunction, "name" | "parameters">): string {
  return `${NAMESPACE}.${name}(${parameters.map((parameter) => (parameter.optional ? `[${parameter.name}]` : parameter.name)).join(", ")})`;
}

/** How each kind of argument is written; the words for the two pages that explain a function. */
const written: Readonly<Record<Parameter["quantity"], string>> = {
  pitch: `rise in 12, or text such as 6/12, 26.57° or 50%`,
  length: `a number, or text such as 9' 4 5/8" or 2860 mm`,
  angle: "degrees",
  number: "a number",
  size: "a lumber size: text such as 2x8 or 38 x 184",
  text: "one of the words or numbers named",
  roof: "a range of two columns, label and value, such as A1:B5",
  pieces: "a block of pieces, or a roof block",
  boards: "a block of boards, or a list of lengths",
  list: "a list of values",
};

/** What kind of value an argument takes and, where it may be left out, what then holds. */
export function kindText({ quantity, optional, defaultText }: Parameter): string {
  return optional ? `${written[quantity]}; ${defaultText ?? "nothing"} when left out` : written[quantity];
}
