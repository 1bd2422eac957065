import { Failure, type Result } from "../../src/measure/result.ts";
import { readLengthCell, type LengthOptions } from "../../src/registry/readLengthCell.ts";
import type { Reading } from "../../src/registry/reading.ts";
import { refuse } from "../../src/registry/refuse.ts";
import type { Input } from "../../src/registry/worksheetFunction.ts";
import type { ArgumentProblem, BlockProblem } from "./blockProblem.ts";

/** 0 is a value: boards that come with their ends cut. */
export const TRIM: LengthOptions = { zero: true, example: `1/2"` };
/** Whether a piece may lie crown down. */
export const YES_NO = ["no", "yes"] as const;

/** The row End trim: what is taken off a board leaves something of the shortest. */
export function readTrim(cell: Input, at: Reading, shortest: number): Result<number, ArgumentProblem> {
  const trim = readLengthCell(cell, at, TRIM);
  if (trim instanceof Failure || trim < shortest) return trim;
  return refuse<BlockProblem>(at, { kind: "trim takes the board", trim, board: shortest });
}
