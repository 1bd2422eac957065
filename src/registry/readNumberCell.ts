import { bareNumber } from "../measure/bareNumber.ts";
import type { Result } from "../measure/result.ts";
import type { CellProblem, Counted } from "./cellProblem.ts";
import { hasComma, isBlank } from "./cells.ts";
import type { Reading } from "./reading.ts";
import { refuse } from "./refuse.ts";
import type { Input } from "./worksheetFunction.ts";

/** What a plain number may be, and what it counts, for an example. */
export interface NumberBounds {
  readonly from: number;
  readonly to: number;
  readonly whole?: boolean;
  readonly example: Counted;
}

/** Reads a plain number. */
export function readNumberCell(cell: Input, reading: Reading, bounds: NumberBounds): Result<number, CellProblem> {
  const { from, to, whole = false, example } = bounds;
  if (isBlank(cell)) return refuse(reading, { kind: "no number", example });
  const value = typeof cell === "string" && cell.length < 32 ? bareNumber(cell.trim()) : cell;
  if (typeof value === "number" && value >= from && value <= to && (!whole || Number.isInteger(value))) return value;
  if (hasComma(cell)) return refuse(reading, { kind: "decimal comma", read: cell });
  return refuse(reading, { kind: "number out of range", read: cell, from, to, whole, example });
}
