import { alongSlope } from "../../geometry/alongSlope.ts";
import { Failure, type Kinds, type Result } from "../../measure/result.ts";
import { sideOn } from "../frame/bearers.ts";
import type { Frame } from "../frame/frame.ts";
import { jacksAlike, type Piece } from "../frame/piece.ts";

/** A jack as it was cut: whether it was cut for an end, and its hand and long point along the top edge. */
export interface CutJack {
  /** null where all sides have the same jacks. */
  readonly end: boolean | null;
  readonly hand: "left" | "right";
  readonly longPoint: number;
}

/** What a cut jack can still become. Lengths in the roof's unit, along the top edge. */
export interface Rescue {
  readonly piece: Piece;
  readonly hand: "left" | "right";
  /** Long-point length that is lost, the turn to the other hand included; 0 where the jack is used as it is. */
  readonly lost: number;
  /** What turning the head to the other hand takes of it; 0 for the same hand. */
  readonly turn: number;
  /** By how much the piece falls short, and can often still be used; else 0. */
  readonly short: number;
}

/** A jack off by this much can often still be used (common practice, no source). */
const USABLE = { in: 0.25, mm: 6 } as const;

/**
 * The jacks that a wrongly cut one can still become, least lost first, and of those the ones that keep its hand.
 *
 * A jack keeps its plumb cuts and tail, so only jacks of the same pitch and overhang come up. Cut shorter along its head it
 * keeps its hand; to turn the head, the long point moves to the other face, where the wood ends t tan f / cos A sooner.
 *
 * @returns a reason "sides differ" where the roof's sides have different jacks and the cut one names neither.
 */
export function salvage(
  frame: Frame,
  pieces: readonly Piece[],
  { end, hand, longPoint }: CutJack,
): Result<readonly Rescue[], Kinds<{ "sides differ": object }>> {
  const { spec, rows } = frame;
  const all = pieces.filter(({ member, tailCut }) => member === "jack" && tailCut === null);
  if (end === null && !jacksAlike(pieces)) return new Failure({ kind: "sides differ" });
  const { hip, plane } = rows.find((row) => end === null || row.plane.end === end)!;
  const { tan, pitch } = sideOn(hip, plane)!;
  const turned = spec.rafter.thickness * tan * alongSlope(pitch);
  const jacks = all.filter(({ slope, overhang }) => slope === pitch && overhang === plane.overhang);
  const rescues = jacks.flatMap((piece) =>
    (["left", "right"] as const).flatMap((other): Rescue[] => {
      const turn = other === hand ? 0 : turned;
      const short = Math.max(0, piece.longPoint + turn - longPoint);
      return short > USABLE[spec.unit] * (1 + 1e-9)
        ? []
        : [{ piece, hand: other, turn, short, lost: Math.max(0, longPoint - piece.longPoint) }];
    }),
  );
  return rescues.sort((a, b) => a.lost - b.lost || a.short - b.short || a.turn - b.turn);
}
