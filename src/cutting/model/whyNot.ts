import { slantOf, toeOf } from "./problemsOf.ts";
import type { StockProblem } from "./stockProblem.ts";
import { TOLERANCE } from "./tolerance.ts";
import type { StockBoard, StockPiece } from "../stock.ts";

/** What keeps the pieces from being cut whatever the search finds, or null. Lengths and counts are finite and not below 0. */
export function whyNot(pieces: readonly StockPiece[], boards: readonly StockBoard[], trim = 0): StockProblem | null {
  if (pieces.every((piece) => piece.count === 0)) return { kind: "no pieces" };
  const longest = new Map<string, number>();
  for (const board of boards)
    if (board.count !== 0) longest.set(board.size, Math.max(longest.get(board.size) ?? 0, board.length));
  const toes = toeOfSlants(pieces);
  for (const [i, piece] of pieces.entries()) {
    if (piece.count === 0) continue;
    const { name, size, length, turn } = piece;
    const row = i + 1;
    // A head that turns by more than the piece is long would pass its own tail.
    if ((turn ?? 0) > length) return { kind: "head longer than piece", row, name, length };
    const board = longest.get(size);
    if (board === undefined) return { kind: "no board of that size", row, name, size };
    const taken = length + toes.get(`${size} ${slantOf(piece)}`)!;
    // A piece as long as a board takes it untrimmed.
    const needs = Math.abs(taken - board) <= TOLERANCE * board ? taken : taken + trim;
    if (needs > board * (1 + TOLERANCE))
      return { kind: "piece too long", row, name, size, length, needs, longest: board };
  }
  return null;
}

/** What a board loses to each slant: the most that one of its pieces asks. */
function toeOfSlants(pieces: readonly StockPiece[]): Map<string, number> {
  const toes = new Map<string, number>();
  for (const piece of pieces) {
    const key = `${piece.size} ${slantOf(piece)}`;
    if (piece.count > 0) toes.set(key, Math.max(toes.get(key) ?? 0, toeOf(piece)));
  }
  return toes;
}
