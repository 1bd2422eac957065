import { alongSlope } from "../../geometry/alongSlope.ts";
import { Failure } from "../../measure/result.ts";
import { plumbDepthOf } from "../members/commonRafter.ts";
import type { Corner } from "../members/corner.ts";
import type { HipCorner } from "./bearers.ts";
import type { Block, RoofPlane, Wing } from "./blocks.ts";
import type { FrameProblem } from "./frameProblem.ts";
import { hipBesideValley, hipTooShallow } from "./hipCorner.ts";
import type { Meeting } from "./joints.ts";
import { laidRidgeEnd } from "./laidOver.ts";
import type { RoofSpec } from "./roofSpec.ts";
import type { WingFrame } from "./wingFrame.ts";
import { neighborProblem } from "./wingNeighbors.ts";
import { placeProblem } from "./wingPlaces.ts";

/** Of a length: the least that a refusal names is taken, whatever the last bit of a double. */
const NONE = 1e-9;

const wrong = (problem: FrameProblem) => new Failure<FrameProblem>(problem);

/** What is wrong with a wing by itself on its wall; null where it can stand. The frames before it are right. */
export function wingProblem(
  frame: WingFrame,
  others: readonly WingFrame[],
  main: Block,
  corner: HipCorner,
  spec: RoofSpec,
  heel: number,
): Failure<FrameProblem> | null {
  return (
    heights(frame, spec) ??
    boards(frame, spec, heel) ??
    placeProblem(frame, main, corner, spec) ??
    outFrom(frame, spec) ??
    neighborProblem(frame, others, main, spec)
  );
}

/** A side that it shares with no end of the main roof. */
const ownSide = ({ sides, wing: { letter } }: Wing): RoofPlane => sides.find((plane) => plane.wing === letter)!;

/** Its ridge against the main roof's. */
function heights({ block, meeting }: WingFrame, spec: RoofSpec): Failure<FrameProblem> | null {
  const { wing } = block;
  const { letter, wall, level, reach } = wing;
  const { pitch } = ownSide(block);
  if (level) return null;
  const by = Math.abs(reach - wall.run) * wall.pitch;
  const span = (2 * wall.run * wall.pitch) / pitch;
  if (reach > wall.run)
    return wrong({
      kind: "wing ridge too high",
      at: "wingSpan",
      wing: letter,
      by,
      span,
      pitch: (12 * 2 * wall.run * wall.pitch) / block.span,
    });
  // A ridge that lies on the sheathing needs no room under the main one.
  if (wing.laid) return null;
  const room = wing.flush ? brokenRoom(meeting, spec) : 0;
  const most = (2 * (meeting.toRidge - room) * wall.pitch) / pitch;
  if (block.span > most * (1 + NONE))
    return wrong({ kind: "wing ridge nearly level", at: "wingSpan", wing: letter, by, span, most });
  return null;
}

/** How much of the run a broken hip must keep between its foot and its head. */
function brokenRoom({ near, ridge }: Meeting, { hip, rafter }: RoofSpec): number {
  return (ridge / 2) * near.tan + (rafter.thickness + 2 * hip.thickness * Math.max(near.tan, 1 / near.tan)) * near.sin;
}

/** Its rafters, hips and valleys on the common height above plate. */
function boards({ block, corner, at }: WingFrame, spec: RoofSpec, heel: number): Failure<FrameProblem> | null {
  const { letter, spec: own } = block.wing;
  const side = ownSide(block);
  for (const plane of [side, ...(block.ends[0] ? [block.ends[0]] : [])])
    if (!(plane.seat > 0))
      return wrong({
        kind: "wing without seat",
        at: plane.end ? "wingEndPitch" : "wingPitch",
        wing: letter,
        heel,
        most: plumbDepthOf(plane.pitch, spec.rafter.depth),
      });
  const half = block.span / 2;
  const least = 2 * (side.seat + own.ridge.thickness / 2 + spec.rafter.thickness);
  if (block.span < least) return wrong({ kind: "wing too narrow", at: "wingSpan", wing: letter, least });
  if (block.ends[0]) {
    const run = Math.min(half, block.ends[0].run);
    if (spec.spacing >= run)
      return wrong({
        kind: "wing spacing",
        at: "wingSpan",
        wing: letter,
        run,
        spacing: spec.spacing,
        least: (block.span * spec.spacing) / run,
      });
  }
  if (corner && heel - corner.member.drop <= 0)
    return wrong({ kind: "wing hip below plate", at: "wingEndPitch", wing: letter, drop: corner.member.drop, heel });
  const shallow = corner && hipTooShallow(corner, spec, heel);
  if (shallow) return shallow;
  if (block.wing.laid) return tooLow(block, at, spec);
  const depth = plumbDepthOf(at.slope, spec.valley.depth);
  return depth <= heel
    ? wrong({ kind: "valley does not reach the plate", at: "valley", least: (heel * spec.valley.depth) / depth })
    : null;
}

/** Whether the ridge of a laid-over wing stands clear of the sheathing with its whole depth over the plate, and of its valley boards with a rafter's thickness. */
function tooLow({ span, wing }: Wing, { near, far }: Corner, spec: RoofSpec): Failure<FrameProblem> | null {
  const { letter, spec: own } = wing;
  const sheathing = own.sheathing ?? 0;
  const need = Math.max(
    (sheathing + spec.valley.thickness) * alongSlope(near.pitch) + near.pitch * spec.rafter.thickness,
    sheathing * alongSlope(near.pitch) + own.ridge.depth,
  );
  const least = 2 * (need / far.pitch + own.ridge.thickness / 2);
  return span < least * (1 - NONE)
    ? wrong({ kind: "wing too low to lay over", at: "wingSpan", wing: letter, least })
    : null;
}

/** How far it stands out. */
function outFrom({ block, at, meeting, corner }: WingFrame, spec: RoofSpec): Failure<FrameProblem> | null {
  const { letter, spec: own, reach, wall, laid } = block.wing;
  const end = block.ends[0];
  const { thickness } = spec.rafter;
  const past = end?.overhang ?? block.gableOverhang;
  const inner = laid ? laidRidgeEnd(block, at).at : reach - meeting.valley / 2 / at.near.cos;
  const ridge = 2 * thickness - inner + (end?.run ?? 0);
  let least = Math.max(wall.overhang - past + thickness, ridge, thickness);
  let gable = Math.max(
    wall.overhang - (own.endOverhang ?? block.sides[0].overhang) + thickness,
    ridge - (end?.run ?? 0),
    thickness,
  );
  if (corner) {
    // On the wing's side its hip and the valley stand beside each other from tail to ridge.
    const { overhang } = ownSide(block);
    least = Math.max(least, hipBesideValley(corner, at.far, meeting.valley, overhang, block.span / 2));
  }
  // The apex of a laid-over wing stands outside of the main roof.
  if (laid && end) least = Math.max(least, end.run + thickness / 2);
  gable = Math.max(gable, meeting.valley / 2 / at.far.sin);
  if (own.out >= least - NONE * spec.length) return null;
  return wrong({ kind: "wing too short", at: "wingOut", wing: letter, least, gable: end !== null && own.out >= gable });
}
