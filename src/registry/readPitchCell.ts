import { pitchFromNumber } from "../measure/pitchFromNumber.ts";
import { readPitch } from "../measure/readPitch.ts";
import type { Failure } from "../measure/result.ts";
import type { ReadingProblem } from "../measure/readingProblem.ts";
import { isBlank, shown } from "./cells.ts";
import type { Refusal } from "./refusal.ts";
import { COMMA, missing, refuse } from "./refuse.ts";
import type { Input } from "./worksheetFunction.ts";

/** Reads a pitch cell for the argument or row of this name. */
export function readPitchCell(name: string, cell: Input): number | Refusal {
  if (typeof cell === "number") {
    const slope = pitchFromNumber(cell);
    return typeof slope === "number" ? slope : pitchRefusal(name, slope, cell);
  }
  if (isBlank(cell)) return missing(name, 'a rise in 12, such as 6, or text such as "6/12"');
  if (typeof cell !== "string")
    return refuse(name, `${shown(cell)} was read, which is no pitch. Type 6, "6/12" or "26.57°".`);
  const slope = readPitch(cell);
  return typeof slope === "number" ? slope : pitchRefusal(name, slope, cell);
}

function pitchRefusal(name: string, { problem }: Failure<ReadingProblem>, cell: Input): Refusal {
  const was = `${shown(cell)} was read`;
  switch (problem.kind) {
    case "pitch below 1":
      return typeof cell === "number" && cell > 0
        ? refuse(
            name,
            `${was}. A sheet makes such a number of 6:12 (a time), of 6/12 without quotes, or of 50%. Type 6, or "6/12" in quotes.`,
          )
        : refuse(
            name,
            `${was}; a pitch must rise, and a lone number is the rise in 12, from 1 to 24. Type 6, or a flatter pitch as "1/2 in 12".`,
          );
    case "decimal comma":
      return refuse(name, `${was}. ${COMMA}`);
    case "pitch above 24":
      return refuse(
        name,
        `${was}. A sheet makes a large number of 6/12 (a date); degrees need their sign. Type 6, "6/12" or "30°".`,
      );
    case "pitch not positive":
      return refuse(name, `${was}; a pitch must rise. Type 6, "6/12" or "26.57°".`);
    case "pitch too steep":
      return refuse(name, `${was}; a pitch must be under 85 degrees. Type 6, "6/12" or "26.57°".`);
    default:
      return refuse(name, `${was}, which is no pitch. Type 6, "6/12", "6 in 12", "26.57°" or "50%".`);
  }
}
