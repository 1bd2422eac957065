import type { SlantGroup } from "../model/problemsOf.ts";
import type { PlacedPiece, StockPiece } from "../stock.ts";

/** Pieces of one slant on a board, by index into the pieces given. Those of one compound cut are a key. */
export interface GroupOnBoard {
  readonly group: SlantGroup;
  readonly keys: readonly {
    readonly turn: number;
    readonly left: readonly number[];
    readonly right: readonly number[];
    readonly plain: readonly number[];
  }[];
}

/**
 * Where every piece lies on one board, by the convention of PlacedPiece, and how far the board is used.
 *
 * Pieces lie end for end only where that is needed: where the pieces do not fit the room otherwise, and then as few as will do, those that save most first.
 */
export function layBoard(
  pieces: readonly StockPiece[],
  groups: readonly GroupOnBoard[],
  kerf: number,
  room: number,
): { pieces: PlacedPiece[]; used: number } {
  const pairs = new Map<object, number>();
  let over = laid(pieces, groups, kerf, pairs).used - room;
  for (const key of groups.flatMap((group) => group.keys).sort((a, b) => b.turn - a.turn)) {
    if (over <= 0 || key.turn === 0) break;
    const number = Math.min(key.left.length, key.right.length, Math.ceil(over / key.turn));
    pairs.set(key, number);
    over -= number * key.turn;
  }
  return laid(pieces, groups, kerf, pairs);
}

function laid(
  pieces: readonly StockPiece[],
  groups: readonly GroupOnBoard[],
  kerf: number,
  pairs: ReadonlyMap<object, number>,
): { pieces: PlacedPiece[]; used: number } {
  const placed: PlacedPiece[] = [];
  let used = 0;
  for (const { group, keys } of groups) {
    const row = orderOf(keys, pairs);
    // Along the top edge; the first piece's tail comes down to where the board, or this part of it, begins.
    let at = (placed.length > 0 ? used + kerf : 0) + group.toe;
    let first = true;
    for (const lying of row) {
      const { name, hand, length } = pieces[lying.piece]!;
      if (!first) at += lying.flipped ? group.cut - lying.turn : group.cut;
      const start = lying.flipped ? at - group.lean : at;
      const line = group.lean > 0 ? "plumb" : "square";
      placed.push({
        piece: lying.piece,
        name,
        hand: hand ?? "plain",
        start,
        end: start + length,
        flipped: lying.flipped,
        shares: first ? "none" : lying.flipped ? "compound" : line,
      });
      at += length;
      first = false;
    }
    used = at;
  }
  return { pieces: placed, used };
}

interface Lying {
  readonly piece: number;
  readonly turn: number;
  readonly flipped: boolean;
}

/** Pairs head to head first, so many of each key, then all others, so that every group begins with a tail, and may end in one. */
function orderOf(keys: GroupOnBoard["keys"], numbers: ReadonlyMap<object, number>): Lying[] {
  const pairs: Lying[] = [];
  const rest: Lying[] = [];
  for (const key of keys) {
    const { turn, left, right, plain } = key;
    const both = numbers.get(key) ?? 0;
    for (let n = 0; n < both; n++)
      pairs.push({ piece: left[n]!, turn, flipped: false }, { piece: right[n]!, turn, flipped: true });
    for (const piece of [...left.slice(both), ...right.slice(both), ...plain])
      rest.push({ piece, turn, flipped: false });
  }
  return [...pairs, ...rest];
}
