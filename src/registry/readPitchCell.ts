import { pitchFromNumber } from "../measure/pitchFromNumber.ts";
import { readPitch } from "../measure/readPitch.ts";
import { Failure, type Result } from "../measure/result.ts";
import type { CellProblem } from "./cellProblem.ts";
import { isBlank } from "./cells.ts";
import type { Reading } from "./reading.ts";
import { refuse } from "./refuse.ts";
import type { Input } from "./worksheetFunction.ts";

/** Reads a pitch cell. */
export function readPitchCell(cell: Input, reading: Reading): Result<number, CellProblem> {
  if (isBlank(cell)) return refuse(reading, { kind: "no pitch" });
  if (typeof cell !== "number" && typeof cell !== "string") return refuse(reading, { kind: "not a pitch", read: cell });
  const slope = typeof cell === "number" ? pitchFromNumber(cell) : readPitch(cell);
  return slope instanceof Failure ? refuse(reading, { ...slope.problem, read: cell }) : slope;
}
