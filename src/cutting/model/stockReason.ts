import { Reason } from "../../measure/reason.ts";
import { slantOf, toeOf } from "./problemsOf.ts";
import { TOLERANCE } from "./tolerance.ts";
import type { StockBoard, StockPiece } from "../stock.ts";

/** A message for the first thing in the lists that cannot be planned, by its row from 1; null when all is well. */
export function stockReason(pieces: readonly StockPiece[], boards: readonly StockBoard[], kerf: number): Reason | null {
  if (!(kerf >= 0 && kerf < Infinity)) return new Reason("kerf", { kerf });
  if (pieces.every((piece) => piece.count === 0)) return new Reason("noPieces");
  if (boards.length === 0) return new Reason("noBoards");
  return boardReason(boards) ?? pieceReason(pieces) ?? tooLong(pieces, boards);
}

const isLength = (value: number): boolean => value > 0 && value < Infinity;
const isRoom = (value: number | undefined): boolean => value === undefined || (value >= 0 && value < Infinity);
const isCount = (value: number): boolean => Number.isSafeInteger(value) && value >= 0;

function boardReason(boards: readonly StockBoard[]): Reason | null {
  const priced = boards.some((board) => board.price !== undefined);
  for (const [i, { size, length, price, count }] of boards.entries()) {
    const row = i + 1;
    if (!isLength(length)) return new Reason("boardLength", { row, size, length });
    if (priced && price === undefined) return new Reason("boardWithoutPrice", { row, size, length });
    if (price !== undefined && !(price >= 0 && price < Infinity)) return new Reason("boardPrice", { row, size, price });
    if (count !== undefined && !isCount(count)) return new Reason("boardCount", { row, size, count });
  }
  return null;
}

function pieceReason(pieces: readonly StockPiece[]): Reason | null {
  for (const [i, piece] of pieces.entries()) {
    const { name, length, count, turn, lean, toe, spread } = piece;
    const row = i + 1;
    if (!isLength(length)) return new Reason("pieceLength", { row, name, length });
    if (!isCount(count)) return new Reason("pieceCount", { row, name, count });
    if (!isRoom(lean) || !isRoom(toe)) return new Reason("pieceLean", { row, name, lean: lean ?? 0 });
    // A head that turns by more than the piece is long would pass its own tail.
    if (!isRoom(turn) || (turn ?? 0) > length) return new Reason("pieceTurn", { row, name, turn: turn ?? 0, length });
    if (spread !== undefined && !(spread >= 1 && spread < Infinity))
      return new Reason("pieceSpread", { row, name, spread });
  }
  return null;
}

function tooLong(pieces: readonly StockPiece[], boards: readonly StockBoard[]): Reason | null {
  const longest = new Map<string, number>();
  for (const board of boards)
    if (board.count !== 0) longest.set(board.size, Math.max(longest.get(board.size) ?? 0, board.length));
  const toes = toeOfSlants(pieces);
  for (const [i, piece] of pieces.entries()) {
    if (piece.count === 0) continue;
    const board = longest.get(piece.size);
    const { name, size, length } = piece;
    if (board === undefined) return new Reason("noBoardOfSize", { row: i + 1, name, size });
    const needs = length + toes.get(`${size} ${slantOf(piece)}`)!;
    if (needs > board * (1 + TOLERANCE))
      return new Reason("pieceTooLong", { row: i + 1, name, size, length, needs, longest: board });
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
