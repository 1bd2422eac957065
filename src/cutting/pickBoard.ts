import { Failure, type Result } from "../measure/result.ts";
import type { StockProblem } from "./model/stockProblem.ts";
import { TOLERANCE } from "./model/tolerance.ts";

/**
 * The shortest board on hand that holds a piece.
 *
 * All lengths positive and in one unit; the boards may come in any order.
 *
 * @example
 * pickBoard(112.6, [96, 144, 120]) // => 120
 */
export function pickBoard(
  length: number,
  boards: readonly number[],
): Result<number, StockProblem<"no board long enough">> {
  let best = Infinity;
  let longest = 0;
  for (const board of boards) {
    if (board > longest) longest = board;
    if (length <= board * (1 + TOLERANCE) && board < best) best = board;
  }
  return best < Infinity ? best : new Failure({ kind: "no board long enough", length, longest });
}
