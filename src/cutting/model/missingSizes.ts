import { slantOf, toeOf } from "./problemsOf.ts";
import type { MissingSize } from "./stockProblem.ts";
import { TOLERANCE } from "./tolerance.ts";
import type { StockBoard, StockPiece } from "../stock.ts";

/** The sizes that no board is long enough for, or that there are no boards of, each by the piece that needs most, in the order of the pieces. */
export function missingSizes(
  pieces: readonly StockPiece[],
  boards: readonly StockBoard[],
  trim = 0,
): readonly MissingSize[] {
  const longest = new Map<string, number>();
  for (const board of boards)
    if (board.count !== 0) longest.set(board.size, Math.max(longest.get(board.size) ?? 0, board.length));
  const toes = toeOfSlants(pieces);
  const missing = new Map<string, MissingSize>();
  for (const [i, piece] of pieces.entries()) {
    if (piece.count === 0) continue;
    const { name, size, length } = piece;
    const row = i + 1;
    const board = longest.get(size);
    const known = missing.get(size);
    if (board === undefined) {
      if (!known) missing.set(size, { kind: "no board of that size", row, name, size });
      continue;
    }
    const taken = length + toes.get(`${size} ${slantOf(piece)}`)!;
    // A piece as long as a board takes it untrimmed.
    const needs = Math.abs(taken - board) <= TOLERANCE * board ? taken : taken + trim;
    if (needs > board * (1 + TOLERANCE) && !(known?.kind === "piece too long" && known.needs >= needs))
      missing.set(size, { kind: "piece too long", row, name, size, length, needs, longest: board });
  }
  return [...missing.values()];
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
