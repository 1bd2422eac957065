import { alongSlope } from "../../geometry/alongSlope.ts";
import { Failure, type Kinds, type Result } from "../../measure/result.ts";
import { endReach } from "../members/plumbEnd.ts";
import type { Frame } from "../frame/frame.ts";
import { jacksAlike, type Piece } from "../frame/piece.ts";
import { footReach, handOf, type Rafter } from "../frame/rafterLines.ts";

type Hand = "left" | "right";

/** A jack as it was cut: what for, and its hand and long point along the top edge. */
export interface CutJack {
  /** A hip jack of the main roof cut for an end; null where all sides have the same jacks. */
  readonly end: boolean | null;
  readonly hand: Hand;
  readonly longPoint: number;
  /** The mark of the piece that it was cut as: any that stands on a hip or a valley; null for a hip jack of the main roof. */
  readonly mark?: string | null;
}

/** What a cut jack can still become. Lengths in the roof's unit, along the top edge. */
export interface Rescue {
  readonly piece: Piece;
  readonly hand: Hand;
  /** Long-point length that is lost, the turn to the other hand included; 0 where the jack is used as it is. */
  readonly lost: number;
  /** What turning it to the other hand takes of it; 0 for the same hand. */
  readonly turn: number;
  /** By how much the piece falls short, and can often still be used; else 0. */
  readonly short: number;
  /** The ends that a turn is made at. */
  readonly ends: "head" | "foot" | "both";
}

/** A jack off by this much can often still be used (common practice, no source). */
const USABLE = { in: 0.25, mm: 6 } as const;

/** Less than this is no difference, in any unit: lengths, and degrees. */
const NONE = 1e-6;

/**
 * The jacks that a wrongly cut one can still become, least lost first, and of those the ones that keep its hand.
 *
 * A jack keeps its plumb cuts and tail, and every bevel its tilt, so only pieces of the same pitch, ends and overhang come up. Cut shorter along its head it
 * keeps its hand; to turn a bevel, its long point moves to the other face, where the wood ends t tan f / cos A sooner. What stands on a plate keeps its seat;
 * what stands on a valley may slide along.
 *
 * @returns a reason "sides differ" where the roof's sides have different jacks and the cut one names neither, or "no such piece" with the marks that would do.
 */
export function salvage(
  frame: Frame,
  pieces: readonly Piece[],
  { end, hand, longPoint, mark = null }: CutJack,
): Result<readonly Rescue[], Kinds<{ "sides differ": object; "no such piece": { mark: string; marks: string[] } }>> {
  const all = pieces.filter(isBeveled);
  if (mark === null && end === null && !jacksAlike(pieces)) return new Failure({ kind: "sides differ" });
  const named = mark?.trim().toLowerCase();
  const cut =
    mark === null
      ? all.find(
          ({ member, stands, planes }) =>
            member === "jack" &&
            (stands[0] as Rafter).mouth === null &&
            planes.some((plane) => plane.wing === "" && (end === null || plane.end === end)),
        )
      : all.find((piece) => piece.mark.toLowerCase() === named);
  if (!cut) return mark === null ? [] : new Failure({ kind: "no such piece", mark, marks: all.map((one) => one.mark) });
  const { thickness } = frame.spec.rafter;
  const side = end === null || mark !== null ? cut.planes[0]! : cut.planes.find((plane) => plane.end === end)!;
  const wood = spanOf(cut, hand, thickness, longPoint - cut.longPoint);
  const ends = cut.foot.tilts.length === 0 ? "head" : cut.head.tilts.length === 0 ? "foot" : "both";
  const rescues = all
    .filter((piece) =>
      isKin(
        piece,
        cut,
        piece.planes.some((plane) => plane.overhang === side.overhang),
      ),
    )
    .flatMap((piece) =>
      (["left", "right"] as const).flatMap((other): Rescue[] => {
        const shortBy = (one: Piece, more = 0) =>
          missing(spanOf(one, other, thickness, more), wood, piece.foot.bearer === null);
        const turn = other === hand ? 0 : shortBy(cut, longPoint - cut.longPoint);
        const short = Math.max(0, shortBy(piece));
        return short > USABLE[frame.spec.unit] * (1 + 1e-9)
          ? []
          : [{ piece, hand: other, turn, short, ends, lost: Math.max(0, longPoint - piece.longPoint) }];
      }),
    );
  return rescues.sort((a, b) => a.lost - b.lost || a.short - b.short || a.turn - b.turn);
}

/** A jack or cripple that is nothing but its two ends: no tail cut on a valley, none lost, no second seat. */
const isBeveled = ({ planes, head, foot, tailCut, over, mouth }: Piece): boolean =>
  planes.length > 0 &&
  tailCut === null &&
  !over &&
  mouth === null &&
  [head, foot].some(({ bearer }) => bearer !== null && bearer !== "ridge");

/** Whether one piece can be cut out of another: the same slope, tail and seat, and at both ends the same cut. */
function isKin(one: Piece, other: Piece, overhang: boolean): boolean {
  const alike = (a: readonly number[], b: readonly number[]) =>
    a.length === b.length && a.every((value, i) => Math.abs(value - b[i]!) < NONE);
  const [rafter, its] = [one.stands[0], other.stands[0]] as [Rafter, Rafter];
  return (
    one.slope === other.slope &&
    (one.foot.bearer === null ? other.foot.bearer === null && overhang : one.foot.bearer === other.foot.bearer) &&
    alike(one.head.tilts, other.head.tilts) &&
    alike(one.foot.tilts, other.foot.tilts) &&
    // Both ends slant the same way, or against each other.
    Math.sign(rafter.head.per * rafter.foot.per) === Math.sign(its.head.per * its.foot.per)
  );
}

/** Where a piece starts and ends along its top on its left and its right face, cut longer by so much at its head. */
type Span = Readonly<Record<Hand, readonly [from: number, to: number]>>;

function spanOf({ stands, slope, longPoint }: Piece, hand: Hand, thickness: number, more: number): Span {
  const rafter = stands[0] as Rafter;
  const along = alongSlope(slope);
  const turned = handOf(rafter) === hand ? 1 : -1;
  const at = (across: number): readonly [number, number] => [
    footReach(rafter, turned * across) * along,
    endReach([rafter.head], turned * across) * along,
  ];
  const own = { left: at(thickness / 2), right: at(-thickness / 2) };
  // A correction has moved the head already.
  const extra = more + longPoint - Math.max(own.left[1] - own.left[0], own.right[1] - own.right[0]);
  const longer = ([from, to]: readonly [number, number]): readonly [number, number] => [from, to + extra];
  return { left: longer(own.left), right: longer(own.right) };
}

/** How much of a piece the wood lacks on the face where it lacks most; it may be slid along unless a seat holds it. Below 0 where some is left. */
function missing(piece: Span, wood: Span, seated: boolean): number {
  const faces = ["left", "right"] as const;
  const least = seated ? 0 : Math.max(...faces.map((face) => wood[face][0] - piece[face][0]));
  return Math.max(...faces.map((face) => least + piece[face][1] - wood[face][1]));
}
