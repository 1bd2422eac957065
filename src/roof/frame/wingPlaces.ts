import { Failure } from "../../measure/result.ts";
import type { HipCorner } from "./bearers.ts";
import { endBeside, type Block, type RoofPlane, type Side } from "./blocks.ts";
import type { FrameProblem } from "./frameProblem.ts";
import { hipBesideValley, hipsReach } from "./hipCorner.ts";
import type { RoofSpec } from "./roofSpec.ts";
import { innerSides } from "./valleys.ts";
import type { WingFrame } from "./wingFrame.ts";

/** Of a length: the least that a refusal names is taken, whatever the last bit of a double. */
const NONE = 1e-9;

const wrong = (problem: FrameProblem) => new Failure<FrameProblem>(problem);
const SIDES = ["left", "right"] as const;
const other = (side: Side): Side => (side === "left" ? "right" : "left");

/** What a wing's place on its wall is judged by: the room beside each corner, and where along the wall it may start for each of its valleys to be the long one. */
interface Limits {
  readonly room: Readonly<Record<Side, number>>;
  /** From and to; the same for both where the ridges are level. */
  readonly ridge: Readonly<Record<Side, readonly [number, number]>>;
  /** Both together: the stretches in which it can start. */
  readonly stretches: readonly (readonly [number, number])[];
}

/** What is wrong with a wing's place on its wall. */
export function placeProblem(
  frame: WingFrame,
  main: Block,
  corner: HipCorner,
  spec: RoofSpec,
): Failure<FrameProblem> | null {
  const { block } = frame;
  const { letter, wall, flush, level, laid, from, to, spec: own } = block.wing;
  const { length } = spec;
  const slack = NONE * length;
  if (block.span > length) return wrong({ kind: "wing wider than wall", at: "wingSpan", wing: letter, most: length });
  if (flush) {
    const end = endBeside(main, wall, flush)!;
    if (end.pitch !== own.pitch)
      return wrong({
        kind: "flush at another pitch",
        at: "wingFrom",
        wing: letter,
        pitch: 12 * own.pitch,
        end: 12 * end.pitch,
      });
  }
  if ((level || flush) && own.longValley)
    return wrong({ kind: "no long valley", at: "longValley", wing: letter, why: level ? "level" : "flush" });
  const { room, ridge, stretches } = limitsOf(frame, main, corner, spec);
  // The nearest place that works.
  const [low, high] = [Math.min(...stretches.map(([first]) => first)), Math.max(...stretches.map(([, last]) => last))];
  const place = (side: Side) => ({
    bound: side === "left" ? ("least" as const) : ("most" as const),
    limit: side === "left" ? low : high,
    fits: stretches.length > 0 && flush === null,
  });
  const past = to - length;
  if (past > slack)
    return wrong({ kind: "wing past the wall", at: "wingFrom", wing: letter, by: past, ...place("right") });
  for (const side of innerSides(block)) {
    if ((side === "left" ? from : length - to) >= room[side] - slack) continue;
    const end = endBeside(main, wall, side);
    return wrong({
      kind: "wing too near a corner",
      at: "wingFrom",
      wing: letter,
      side,
      ...place(side),
      flush: flush === null && end !== null && end.pitch === block.sides[0].pitch,
    });
  }
  if (flush || laid) return null;
  const off = (side: Side) => Math.max(ridge[side][0] - from, from - ridge[side][1]);
  if (own.longValley && off(own.longValley) > slack && off(other(own.longValley)) <= slack)
    return wrong({
      kind: "long valley off the ridge",
      at: "longValley",
      wing: letter,
      by: off(own.longValley),
      other: other(own.longValley),
    });
  const by = Math.min(...SIDES.map(off));
  if (by <= slack) return null;
  const after = stretches.map(([first]) => first).filter((first) => first > from);
  return wrong({
    kind: level ? "no room on the ridge" : "no valley to the ridge",
    at: "wingFrom",
    wing: letter,
    by,
    ...(after.length > 0
      ? { bound: "least", limit: Math.min(...after), fits: true }
      : { bound: "most", limit: high, fits: stretches.length > 0 }),
  });
}

function limitsOf(frame: WingFrame, main: Block, corner: HipCorner, spec: RoofSpec): Limits {
  const { block, at, meeting } = frame;
  const { span } = block;
  const { wall, level, laid } = block.wing;
  const long = block.wing.spec.longValley;
  const ends = { left: endBeside(main, wall, "left"), right: endBeside(main, wall, "right") };
  const room = { left: roomBeside(ends.left, frame, corner, spec), right: roomBeside(ends.right, frame, corner, spec) };
  if (laid) {
    const whole = [room.left, spec.length - span - room.right] as const;
    return { room, ridge: { left: whole, right: whole }, stretches: whole[0] <= whole[1] ? [whole] : [] };
  }
  const clear = (side: Side) => (ends[side]?.run ?? 0) + clearOf(ends[side], spec, corner);
  const half = meeting.valley / 2 / at.near.sin;
  // Where along the wall, from the wing's own start, its outermost boards meet the ridge.
  const along = level ? span / 2 : meeting.toRidge / at.near.tan;
  const more = level ? half + (wall.run - meeting.toRidge) / at.near.tan : half;
  const [low, high] = [clear("left") + more, spec.length - clear("right") - more];
  const starting = (head: number) => [low - head, high - head] as const;
  const ridge = { left: starting(along), right: starting(level ? along : span - along) };
  const stretches = SIDES.filter((side) => long === null || long === side)
    .map(
      (side) =>
        [Math.max(ridge[side][0], room.left), Math.min(ridge[side][1], spec.length - span - room.right)] as const,
    )
    .filter(([first, last]) => first <= last)
    .sort((a, b) => a[0] - b[0]);
  return { room, ridge, stretches };
}

/** How far from a corner of its wall a wing's plate line must stay, so that valley and hip keep clear of each other from tail to crossing. */
function roomBeside(
  end: RoofPlane | null,
  { block, at, meeting }: WingFrame,
  corner: HipCorner,
  spec: RoofSpec,
): number {
  const { level, reach } = block.wing;
  if (end === null) return meeting.valley / 2 / at.near.sin;
  // Up to the crossing; level ridges are judged on the ridge.
  return hipBesideValley(corner, at.near, meeting.valley, spec.overhang, level ? 0 : reach);
}

/** How far from an end of the main ridge line, on its inner side, a board on its face must stay: clear of king common, hip or gable pair. */
function clearOf(end: RoofPlane | null, spec: RoofSpec, corner: HipCorner): number {
  if (end === null) return spec.rafter.thickness;
  return spec.hipHead === "king commons"
    ? spec.rafter.thickness / 2
    : Math.max(0, hipsReach(corner, (spec.ridge?.thickness ?? 0) / 2));
}
