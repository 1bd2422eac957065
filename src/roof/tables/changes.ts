import { HANDS, isEaveMember, type Hand, type Piece } from "../frame/piece.ts";

/** What becomes of the pieces of one mark and hand of a changed roof. Lengths in the roof's unit, along the top edge. */
export interface Change {
  readonly piece: Piece;
  readonly hand: Hand;
  readonly needed: number;
  /** The old piece that serves, and how many of it; null where none does. */
  readonly from: { readonly piece: Piece; readonly count: number } | null;
  /** What is cut off its head; 0 where it serves as it is. */
  readonly off: number;
  /** What is cut off its tail, along the top edge. */
  readonly offTail: number;
}

/** Old pieces that nothing of the new roof can use. */
export interface Unused {
  readonly piece: Piece;
  readonly hand: Hand;
  readonly count: number;
}

/** Less than a tape shows. */
const UNSEEN = { in: 1 / 32, mm: 0.5 } as const;

/**
 * Which pieces that were cut for an old roof still serve a new one, longest new pieces first.
 *
 * A piece serves where its size, slope, height above plate and seat are the same, and its head has the same saw tilts and hand; it may be cut shorter at the head, and
 * at a tail that ends over the fascia. An old piece is given once, to the new ones that it loses least for.
 */
export function changes(
  old: readonly Piece[],
  now: readonly Piece[],
  unit: "in" | "mm",
): { readonly changes: readonly Change[]; readonly unused: readonly Unused[] } {
  const left = old.flatMap((piece) => HANDS.map((hand) => ({ piece, hand, count: piece[hand] })));
  const needs = now
    .flatMap((piece) => HANDS.map((hand) => ({ piece, hand, open: piece[hand], given: [] as Change[] })))
    .filter(({ open }) => open > 0)
    .sort((a, b) => b.piece.longPoint - a.piece.longPoint);
  // First each by its own name and length, then whatever else serves.
  for (const own of [true, false])
    for (const need of needs) {
      const { piece, hand, given } = need;
      const offOf = (one: Piece) => one.longPoint - piece.longPoint;
      const fit = left
        .filter((one) => one.hand === hand && alike(one.piece, piece, UNSEEN[unit]))
        .filter((one) => !own || (one.piece.mark === piece.mark && offOf(one.piece) <= UNSEEN[unit]))
        .sort((a, b) => a.piece.longPoint - b.piece.longPoint);
      for (const one of fit) {
        const count = Math.min(need.open, one.count);
        if (count === 0) continue;
        const off = offOf(one.piece) > UNSEEN[unit] ? offOf(one.piece) : 0;
        const tail = one.piece.tail - piece.tail;
        const offTail = tail > UNSEEN[unit] ? tail : 0;
        given.push({ piece, hand, needed: count, from: { piece: one.piece, count }, off, offTail });
        one.count -= count;
        need.open -= count;
      }
    }
  const found = needs.flatMap(({ piece, hand, open, given }): Change[] =>
    open > 0 ? [...given, { piece, hand, needed: open, from: null, off: 0, offTail: 0 }] : given,
  );
  return { changes: found, unused: left.filter(({ count }) => count > 0) };
}

/** A level piece serves as one of its kind only. */
const levelKind = ({ member }: Piece) => (member === "ridge" || isEaveMember(member) ? member : "");

function alike(one: Piece, other: Piece, unseen: number): boolean {
  const same = (a: number, b: number, most: number) => Math.abs(a - b) <= most;
  return (
    one.section.thickness === other.section.thickness &&
    one.section.depth === other.section.depth &&
    levelKind(one) === levelKind(other) &&
    (one.planes.length === 0) === (other.planes.length === 0) &&
    same(one.slope, other.slope, 1e-6) &&
    [one.heel - other.heel, one.seat - other.seat].every((off) => same(off, 0, unseen)) &&
    tailServes(one, other, unseen) &&
    String(one.foot.tilts.map(Math.round)) === String(other.foot.tilts.map(Math.round)) &&
    one.head.tilts.length === other.head.tilts.length &&
    one.head.tilts.every((tilt, i) => same(tilt, other.head.tilts[i]!, 0.01)) &&
    one.longPoint >= other.longPoint - unseen
  );
}

/** Whether a tail can be cut to another: the same one, or a longer one whose cut is the same or leaves the whole board. */
function tailServes(one: Piece, other: Piece, unseen: number): boolean {
  const long = one.tail - other.tail;
  const cut = ({ tailEnd: { cut, plumb }, tailCut }: Piece) =>
    [cut, plumb?.toFixed(3), tailCut?.tilts.map((tilt) => tilt.toFixed(2))].join(" ");
  if (Math.abs(long) <= unseen) return cut(one) === cut(other) || (other.tail > unseen && cut(one).startsWith("plumb"));
  // Without a tail the heel is cut plumb over the plate, as it can be off any tail.
  const fascia = one.tailCut === null && other.tailCut === null && one.member !== "valley";
  return fascia && long > 0 && (cut(one) === cut(other) || other.tail === 0 || cut(one).startsWith("plumb"));
}
