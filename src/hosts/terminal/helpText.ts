import { signature } from "../../registry/parameterText.ts";
import { NAMESPACE, type WorksheetFunction } from "../../registry/worksheetFunction.ts";
import { sheetFunctions } from "./sheetFunctions.ts";

/** What `--help` prints: how a line is written, and every function with its arguments. */
export function helpText(functions: readonly WorksheetFunction[]): string {
  const signatures = functions.map((definition) => `  ${signature(definition)}\n      ${definition.summary}`);
  return [
    "Prints what a cell with this formula would show.",
    "",
    `  npm run -s cell -- '=${NAMESPACE}.JACKLEN("6/12", 48, 1.5, 1.5)'`,
    "  npm run -s cell -- --json < formulas.txt",
    "",
    "With no formula it reads one formula a line from standard input and passes over blank lines.",
    "  --json   one line of JSON for each formula, numbers at full precision, a spill as an array of rows",
    "  --help   this text",
    "A spill is printed as rows with a tab between cells. The reason for an error goes to standard error.",
    "The exit status is 0 when every formula gave a value, 1 otherwise.",
    `In a formula: numbers, "text", TRUE, {1,2;3,4}, + - * / ^ & % and comparisons, ${Object.keys(sheetFunctions).join(", ")}, and:`,
    "",
    ...signatures,
  ].join("\n");
}
