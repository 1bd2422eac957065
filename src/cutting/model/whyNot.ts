import type { StockProblem } from "./stockProblem.ts";
import type { StockPiece } from "../stock.ts";

/** What keeps all pieces from being cut, or null. Lengths and counts are finite and not below 0. */
export function whyNot(pieces: readonly StockPiece[]): StockProblem | null {
  if (pieces.every((piece) => piece.count === 0)) return { kind: "no pieces" };
  for (const [i, { name, length, count, turn }] of pieces.entries()) {
    // A head that turns by more than the piece is long would pass its own tail.
    if (count > 0 && (turn ?? 0) > length) return { kind: "head longer than piece", row: i + 1, name, length };
  }
  return null;
}
