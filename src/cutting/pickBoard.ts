import { Reason } from "../measure/reason.ts";
import { TOLERANCE } from "./model/tolerance.ts";

/**
 * The shortest board on hand that holds a piece.
 *
 * All lengths in one unit; the boards may come in any order.
 *
 * @returns a reason when the length or a board is not a positive number ("length", "boardLength" with its row, "noBoards") or when every board is too short
 * ("tooLong", with the longest).
 *
 * @example
 * pickBoard(112.6, [96, 144, 120]) // => 120
 */
export function pickBoard(length: number, boards: readonly number[]): number | Reason {
  if (!(length > 0 && length < Infinity)) return new Reason("length", { length });
  if (boards.length === 0) return new Reason("noBoards");
  let best = Infinity;
  let longest = 0;
  for (const [i, board] of boards.entries()) {
    if (!(board > 0 && board < Infinity)) return new Reason("boardLength", { row: i + 1, length: board });
    if (board > longest) longest = board;
    if (length <= board * (1 + TOLERANCE) && board < best) best = board;
  }
  return best < Infinity ? best : new Reason("tooLong", { length, longest });
}
