import type { Answer } from "./answer.ts";
import { toText } from "./value.ts";

/** One answer as printed: what the cell would show, a spill as rows with a tab between cells; or one line of JSON at full precision. */
export function answerText(answer: Answer, json: boolean): string {
  if (json) return JSON.stringify(answer);
  if ("error" in answer) return answer.error;
  const { value } = answer;
  return typeof value === "object"
    ? value.map((row) => row.map((cell) => toText(cell).replace(/[\t\r\n]+/g, " ")).join("\t")).join("\n")
    : toText(value);
}
