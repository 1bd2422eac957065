import { slantsOf } from "./slants.ts";
import type { StockProblem } from "./stockProblem.ts";
import type { StockPiece } from "../stock.ts";

/** What keeps all pieces from being cut, or null. Lengths and counts are finite and not below 0. */
export function whyNot(pieces: readonly StockPiece[]): StockProblem | null {
  if (pieces.every((piece) => piece.count === 0)) return { kind: "no pieces" };
  for (const [i, piece] of pieces.entries()) {
    const { name, length, count } = piece;
    const [low, head] = slantsOf(piece);
    // On a face where the head turns back by more than the piece is long it would pass its own tail.
    const turns = [1, -1].map((face) => Math.max(0, face * head) + Math.max(0, -face * low));
    if (count > 0 && Math.max(...turns) > length) return { kind: "head longer than piece", row: i + 1, name, length };
  }
  return null;
}
