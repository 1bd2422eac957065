import { slantKey, slantsOf } from "../model/slants.ts";
import type { StockPiece } from "../stock.ts";

/** A piece as it lies in a board; the slants of its left and its right end there, 0 for one that is plumb across. */
export interface Lying {
  readonly piece: number;
  readonly flipped: boolean;
  readonly left: number;
  readonly right: number;
}

/** Pieces that lie one after another, neighbors along one slanting cut. */
export type Row = readonly Lying[];

const leftOf = (row: Row): number => row[0]!.left;
const rightOf = (row: Row): number => row.at(-1)!.right;

/** A row whose own two ends could share a cut. */
const isRing = (row: Row): boolean => leftOf(row) !== 0 && leftOf(row) === rightOf(row);

/** A row end for end. */
const turned = (row: Row): Row =>
  row.map(({ piece, flipped, left, right }) => ({ piece, flipped: !flipped, left: -right, right: -left })).reverse();

/** A row, or it end for end where fewer pieces are turned so. */
function steady(row: Row): Row {
  return 2 * row.filter(({ flipped }) => flipped).length > row.length ? turned(row) : row;
}

/** Pieces in rows, all crown up, in which as many slanting cuts are shared as can be. */
export function uprightRows(pieces: readonly StockPiece[], list: readonly number[]): Row[] {
  const rows: Row[] = list.map((piece) => {
    const [left, right] = slantsOf(pieces[piece]!).map(slantKey) as [number, number];
    return [{ piece, flipped: false, left, right }];
  });
  for (let i = 0; i < rows.length; i++) {
    for (;;) {
      const end = rightOf(rows[i]!);
      const next = end === 0 ? -1 : rows.findIndex((row, k) => k !== i && leftOf(row) === end);
      if (next < 0) break;
      rows[i] = [...rows[i]!, ...rows[next]!];
      rows.splice(next, 1);
      if (next < i) i--;
    }
  }
  const alone = new Set<Row>();
  for (;;) {
    const ring = rows.find((row) => isRing(row) && !alone.has(row));
    if (!ring) return rows;
    if (openedInto(rows, ring, false)) continue;
    const open = openedBest(ring);
    rows[rows.indexOf(ring)] = open;
    alone.add(open);
  }
}

/**
 * Two rows joined, or a ring opened into another row, with pieces turned end for end: at the widest slant that can be shared so.
 *
 * @returns the slant that is shared, 0 where there is none.
 */
export function joinTurned(rows: Row[]): number {
  // An end lies on the left of a row turned round as it would on the right with the other sign.
  const ends = rows.flatMap((row) => [
    { row, at: rightOf(row), right: true },
    { row, at: -leftOf(row), right: false },
  ]);
  const pairs = ends
    .filter(({ at }) => at > 0)
    .flatMap((one) => {
      const other = ends.find(({ row, at }) => row !== one.row && at === -one.at);
      return other ? [{ one, other }] : [];
    })
    .sort((a, b) => b.one.at - a.one.at);
  const [pair] = pairs;
  if (pair) {
    const { one, other } = pair;
    const joined = steady([
      ...(one.right ? one.row : turned(one.row)),
      ...(other.right ? turned(other.row) : other.row),
    ]);
    rows[rows.indexOf(one.row)] = joined;
    rows.splice(rows.indexOf(other.row), 1);
    return one.at;
  }
  const rings = rows.filter(isRing);
  const ring = rings.find((row) => openedInto(rows, row, true));
  return ring ? Math.abs(leftOf(ring)) : 0;
}

/** A ring with another of its cuts at its ends. */
const openedAt = (ring: Row, n: number): Row => [...ring.slice(n), ...ring.slice(0, n)];

/** A ring open where that loses least. */
function openedBest(ring: Row): Row {
  const least = ring.reduce((best, { left }, n) => (Math.abs(left) < Math.abs(ring[best]!.left) ? n : best), 0);
  return openedAt(ring, least);
}

/** Puts a ring into another row where that has an end or a cut of a slant that is in the ring. */
function openedInto(rows: Row[], ring: Row, turning: boolean): boolean {
  for (const way of turning ? [ring, turned(ring)] : [ring])
    for (const [n, { left: slant }] of way.entries())
      for (const [k, row] of rows.entries()) {
        if (row === ring) continue;
        const at = row.findIndex(({ left }) => left === slant);
        const place = at >= 0 ? at : rightOf(row) === slant ? row.length : -1;
        if (place < 0) continue;
        rows[k] = steady([...row.slice(0, place), ...openedAt(way, n), ...row.slice(place)]);
        rows.splice(rows.indexOf(ring), 1);
        return true;
      }
  return false;
}
