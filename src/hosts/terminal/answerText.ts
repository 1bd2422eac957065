import type { Answer } from "./answer.ts";
import { printable } from "./printable.ts";
import { toText } from "./value.ts";

/** One answer as printed: what the cell would show, a spill as rows with a tab between cells; or one line of JSON at full precision. */
export function answerText(answer: Answer, json: boolean): string {
  // The same value for whoever reads it, with nothing in it that a terminal obeys.
  if (json)
    return JSON.stringify(answer).replace(
      /[\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]/g,
      (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, "0")}`,
    );
  if ("error" in answer) return answer.error;
  const { value } = answer;
  return typeof value === "object"
    ? value.map((row) => row.map((cell) => printable(toText(cell).replace(/[\t\r\n]+/g, " "))).join("\t")).join("\n")
    : printable(toText(value));
}
