import { alongSlope } from "../../geometry/alongSlope.ts";
import { plumbDepthOf } from "../members/commonRafter.ts";
import type { Corner } from "../members/corner.ts";
import { endReach, plumbEnd, tiltOf, type PlumbCut } from "../members/plumbEnd.ts";
import { headingOn, sideOf, tailReach, type Valley, type ValleyRole } from "./bearers.ts";
import { onPlane, type RoofPlane, type Side, type Wing } from "./blocks.ts";
import { valleyHeads, type Meeting } from "./joints.ts";
import type { RoofSpec } from "./roofSpec.ts";

/** Of a length: fascias that near meet on the valley's line. */
const NONE = 1e-9;

/** The side plane of a wing. */
export const sidePlane = ({ sides }: Wing, side: Side): RoofPlane => sides[side === "left" ? 1 : 0];

/** The sides on which a wing has an inner corner, left first. */
export const innerSides = ({ wing: { flush } }: Wing): Side[] =>
  (["left", "right"] as const).filter((side) => side !== flush);

/**
 * Which valley of a lower wing runs on to the main ridge: the given one, else the one whose head is farther from the nearer end of that ridge, else the left.
 *
 * @param ridge along the wall from its left end, the two ends of the main ridge line. A head outside of them is nearer than none.
 */
export function supportingSide(
  { wing: { spec, from, to, wall } }: Wing,
  at: Corner,
  ridgeFace: number,
  ridge: readonly [number, number],
): Side {
  if (spec.longValley) return spec.longValley;
  const [left, right] = [headAlong("left"), headAlong("right")].map((head) =>
    Math.min(head - ridge[0], ridge[1] - head),
  );
  return right! > left! + NONE * wall.run ? "right" : "left";

  function headAlong(side: Side): number {
    const along = (wall.run - ridgeFace) / at.near.tan;
    return side === "left" ? from + along : to - along;
  }
}

/** A valley of a wing, over its inner corner on one side. */
export function valleyOf(
  wing: Wing,
  side: Side,
  role: ValleyRole,
  at: Corner,
  meeting: Meeting,
  { valley }: RoofSpec,
  heel: number,
): Valley {
  const { wall, from, to, reach, letter } = wing.wing;
  const half = valley.thickness / 2;
  const { slope } = at;
  // Both planes rise from it.
  const rise = (tan: number) => ({ face: half, fall: (-half * slope) / tan, proud: 0 });
  const near = sideOf(wall, at.near, rise(at.near.tan));
  const far = sideOf(sidePlane(wing, side), at.far, rise(at.far.tan));
  const head = plumbEnd(valleyHeads[role](meeting), -half, half);
  const headRun = endReach(head.cuts, 0);
  const tail = tailOf(near.plane.overhang / near.sin, far.plane.overhang / far.sin, near.tan);
  const made = {
    kind: "valley",
    block: wing.index,
    wing: letter,
    role,
    side,
    section: valley,
    near,
    far,
    slope,
    hand: side,
    foot: onPlane(wall, side === "left" ? from : to, 0),
    heading: headingOn(near, side === "left"),
    start: 0,
    run: (role === "supporting" ? wall.run : reach) / near.sin,
    height: heel,
    tail,
    head: head.cuts,
    headLean: 0,
    notched: tail.length === 2,
    headRun,
    farthest: endReach(head.cuts, head.farthest) * alongSlope(slope),
    tilts: head.cuts.map(tiltOf),
    seat: (plumbDepthOf(slope, valley.depth) - heel) / slope,
    overhang: 0,
  } satisfies Valley;
  return { ...made, overhang: Math.max(tailReach(made, -half), tailReach(made, half)) };
}

/** The tail of a valley: two cheeks where the fascias meet on its line, each as long as its face needs; else one, at the fascia that is nearer. */
function tailOf(main: number, wing: number, tan: number): PlumbCut[] {
  const cuts = [
    { at: main, per: -1 / tan },
    { at: wing, per: tan },
  ] as const;
  if (Math.abs(main - wing) <= NONE * Math.max(main, wing)) return [...cuts];
  return [main < wing ? cuts[0] : cuts[1]];
}
