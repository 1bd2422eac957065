import type { Result } from "../measure/result.ts";
import type { CellProblem } from "./cellProblem.ts";
import { isBlank } from "./cells.ts";
import type { Reading } from "./reading.ts";
import { refuse } from "./refuse.ts";
import type { Input } from "./worksheetFunction.ts";

/** Reads one of a few words or numbers, without regard to case. */
export function readChoiceCell<T extends string | number>(
  cell: Input,
  reading: Reading,
  choices: readonly T[],
): Result<T, CellProblem> {
  if (isBlank(cell)) return refuse(reading, { kind: "no word", choices });
  // No sheet hands over an object; one that does not become a text would fail here.
  const text = (typeof cell === "object" ? "" : String(cell)).slice(0, 64).trim().replace(/\s+/g, " ").toLowerCase();
  const chosen = choices.find((one) => String(one).toLowerCase() === text);
  return chosen ?? refuse(reading, { kind: "no such word", read: cell, choices });
}
