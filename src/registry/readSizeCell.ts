import { isNominal } from "../measure/isNominal.ts";
import { readSize, type ReadSize } from "../measure/readSize.ts";
import { Failure, type Result } from "../measure/result.ts";
import type { CellProblem } from "./cellProblem.ts";
import { isBlank } from "./cells.ts";
import { placeOf, type Reading } from "./reading.ts";
import { refuse } from "./refuse.ts";
import type { Input } from "./worksheetFunction.ts";

/** Reads a lumber size. */
export function readSizeCell(cell: Input, reading: Reading): Result<ReadSize, CellProblem> {
  if (isBlank(cell)) return refuse(reading, { kind: "no size" });
  if (typeof cell !== "string") return refuse(reading, { kind: "not a size", read: cell });
  const read = readSize(cell);
  if (read instanceof Failure) return refuse(reading, { ...read.problem, read: cell });
  if (reading.unit !== null && reading.unit !== read.unit && !isNominal(read))
    return refuse(reading, { kind: "size in other unit", read: cell, unit: read.unit, from: reading.unitFrom });
  if (reading.unit === null && read.unit === "mm") {
    reading.unit = "mm";
    reading.unitFrom = placeOf(reading);
  }
  return read;
}
