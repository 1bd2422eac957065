import { joinTurned, uprightRows, type Row } from "./rows.ts";
import type { SlantGroup } from "../model/problemsOf.ts";
import type { PlacedPiece, StockPiece } from "../stock.ts";

/** Pieces of one slant on a board, by index into the pieces given. */
export interface GroupOnBoard {
  readonly group: SlantGroup;
  readonly pieces: readonly number[];
}

interface Part {
  readonly group: SlantGroup;
  readonly rows: Row[];
}

/**
 * Where every piece lies on one board, by the convention of PlacedPiece, and how far the board is used.
 *
 * Pieces that lie crown up share what slanting cuts they can. They lie end for end only where that is needed: where they do not fit the room otherwise, and then as few as will
 * do, those that save most first.
 */
export function layBoard(
  pieces: readonly StockPiece[],
  groups: readonly GroupOnBoard[],
  kerf: number,
  room: number,
): { pieces: PlacedPiece[]; used: number } {
  const parts = groups.map(({ group, pieces: list }): Part => ({ group, rows: uprightRows(pieces, list) }));
  for (let over = laid(pieces, parts, kerf).used - room; over > 0;) {
    const widest = (rows: readonly Row[]): number => joinTurned([...rows]);
    const best = parts.reduce((a, b) => (widest(b.rows) > widest(a.rows) ? b : a));
    const saved = joinTurned(best.rows);
    if (saved === 0) break;
    over -= saved;
  }
  return laid(pieces, parts, kerf);
}

function laid(
  pieces: readonly StockPiece[],
  parts: readonly Part[],
  kerf: number,
): { pieces: PlacedPiece[]; used: number } {
  const placed: PlacedPiece[] = [];
  let used = 0;
  for (const { group, rows } of parts) {
    // Along the top edge; the first piece's tail comes down to where the board, or this part of it, begins.
    let at = (placed.length > 0 ? used + kerf : 0) + group.toe;
    let first = true;
    for (const row of [...rows.filter(({ length }) => length > 1), ...rows.filter(({ length }) => length === 1)])
      for (const [n, { piece, flipped, left }] of row.entries()) {
        const { name, hand, length } = pieces[piece]!;
        if (!first) at += n > 0 ? group.cut - Math.abs(left) : group.cut;
        const start = flipped ? at - group.lean : at;
        const line = group.lean > 0 ? "plumb" : "square";
        placed.push({
          piece,
          name,
          hand: hand ?? "plain",
          start,
          end: start + length,
          flipped,
          shares: first ? "none" : n > 0 ? "compound" : line,
        });
        at += length;
        first = false;
      }
    used = at;
  }
  return { pieces: placed, used };
}
