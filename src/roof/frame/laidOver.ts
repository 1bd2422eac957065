import { alongSlope } from "../../geometry/alongSlope.ts";
import { slopeAngle } from "../../geometry/angle.ts";
import { degrees } from "../../measure/degrees.ts";
import { plumbDepthOf } from "../members/commonRafter.ts";
import type { Corner } from "../members/corner.ts";
import { alongHip, backing } from "../members/hip.ts";
import type { PlumbCut } from "../members/plumbEnd.ts";
import { faceOn, headingOn, sideOf, sideOn, type Bearer, type ValleyBoard } from "./bearers.ts";
import { onPlane, type Block, type Side, type Wing } from "./blocks.ts";
import { dot, offsetFrom, ON } from "./facings.ts";
import type { RoofSpec } from "./roofSpec.ts";
import type { Station } from "./stations.ts";
import { sidePlane } from "./valleys.ts";

/** Whether a block is a wing that is laid over: what it stands on is framed as if it were not there. */
export const isLaid = ({ wing }: Block): boolean => wing?.laid ?? false;

/** The valley boards among some bearers. */
export const valleyBoardsIn = ({ bearers }: { readonly bearers: readonly Bearer[] }): readonly ValleyBoard[] =>
  bearers.filter((one): one is ValleyBoard => one.kind === "valley board");

/** The height of a wing's ridge over the plates, at its faces, above the heel. */
const ridgeRise = ({ span, wing: { spec } }: Wing, pitch: number): number =>
  pitch * (span / 2 - spec.ridge.thickness / 2);

/**
 * Where the top of a laid-over wing's ridge ends, level in from the main plate line: its end is cut to the main pitch and lies on the sheathing. Its lower edge stops
 * shorter by `lean`.
 */
export function laidRidgeEnd(wing: Wing, { near, far }: Corner): { readonly at: number; readonly lean: number } {
  const { spec } = wing.wing;
  const under = (spec.sheathing ?? 0) * alongSlope(near.pitch);
  return { at: (ridgeRise(wing, far.pitch) - under) / near.pitch, lean: spec.ridge.depth / near.pitch };
}

/** The valley board of a laid-over wing on one side: of the size of the row Valley, flat. */
export function valleyBoardOf(wing: Wing, side: Side, at: Corner, { valley }: RoofSpec, heel: number): ValleyBoard {
  const { wall, from, to, reach, letter, spec } = wing.wing;
  const { near, far, slope } = at;
  const sheathing = spec.sheathing ?? 0;
  const above = (sheathing + valley.thickness) * alongSlope(near.pitch);
  const foot = onPlane(wall, side === "left" ? from : to, 0);
  // Its outer edge is parallel to the valley's line, and meets the wing ridge's face lower than that does.
  const headRun = (ridgeRise(wing, far.pitch) - above) / near.pitch / near.sin;
  const outer = alongHip(at, headRun);
  // On the flat of the board, between its edge and the plate line.
  const tan = near.tan * alongSlope(near.pitch);
  const angles = Math.atan(backing(near, slope)) + Math.atan(backing(far, slope));
  // Away from its plane's line: the wing's rafters start that much farther in.
  const face = (above / far.pitch) * far.cos;
  const main = sideOf(wall, near, { face: 0, fall: 0, proud: 0 });
  return {
    kind: "valley board",
    block: wing.index,
    wing: letter,
    section: valley,
    side,
    near: main,
    far: sideOf(sidePlane(wing, side), far, { face, fall: 0, proud: 0 }),
    slope,
    hand: side,
    foot,
    heading: headingOn(main, side === "left"),
    start: 0,
    run: reach / near.sin,
    height: heel,
    // It starts over the plate line, where its outer edge lies that far along.
    tail: [{ at: 0 - (above / far.pitch) * near.cos, per: 0 }],
    head: [{ at: reach / near.sin, per: 0 }],
    headLean: 0,
    notched: false,
    above,
    sheathing,
    headRun,
    outer,
    inner: Math.max(0, outer - valley.depth * (tan + 1 / tan)),
    lowerCut: slopeAngle(1 / tan),
    upperCut: slopeAngle(tan),
    setBack: valley.thickness / Math.tan(angles),
    bevel: degrees(90 - (angles * 180) / Math.PI),
  };
}

/** How the tail of a rafter ends that a laid-over wing meets: on the plate line in its mouth, or on the valley's line beside it; null elsewhere. */
export type LaidTail =
  { readonly mouth: string } | { readonly bearer: ValleyBoard; readonly cut: PlumbCut; readonly face: Side };

/** How a laid-over wing, one of whose boards lies along the plane, ends the tail of a rafter which stands on a plate at a station. */
export function laidTail({ plane, at }: Station, boards: readonly ValleyBoard[], thickness: number): LaidTail | null {
  if (plane.overhang === 0 || boards.length === 0) return null;
  const half = thickness / 2;
  const beside = boards.map((bearer) => ({ bearer, offset: offsetFrom(bearer, plane, at) }));
  for (const { bearer, offset } of beside) {
    // Within the mouth a main rafter lies inside of both corners.
    const other = beside.find((one) => one.bearer.wing === bearer.wing && one.bearer !== bearer);
    if (bearer.near.plane === plane && other && Math.min(offset, other.offset) > -half + ON)
      return { mouth: bearer.wing };
  }
  for (const { bearer, offset } of beside) {
    const side = sideOn(bearer, plane)!;
    const { tan, cos } = side;
    if (offset > -half + ON || (offset + half) * tan <= -plane.overhang + ON) continue;
    // The line ends at the fascia that it meets first.
    const { near, far } = bearer;
    const most = Math.min(near.plane.overhang / near.sin, far.plane.overhang / far.sin);
    if ((offset + half) / cos <= -most + ON) continue;
    return {
      bearer,
      face: faceOn(bearer, side),
      cut: { at: offset * tan, per: dot(bearer.heading, plane.right) < 0 ? tan : -tan },
    };
  }
  return null;
}

/**
 * A station of a laid-over wing moved off the main plate line: a rafter stands on the wing's plate, or on the valley board.
 *
 * At most half a thickness; one that is midway stays on the plate.
 */
export function slidOff(station: Station, wings: readonly Wing[], { rafter }: RoofSpec): Station {
  const { plane, at, king } = station;
  const wing = wings.find(({ index }) => index === plane.block);
  if (king || plane.end || !wing?.wing.laid) return station;
  const half = rafter.thickness / 2;
  // The wing's plates end at the main plate line: at the right end of a left side, at the left end of a right one.
  const left = plane === sidePlane(wing, "left");
  const past = left ? -at : at - plane.width;
  if (Math.abs(past) >= half - ON) return station;
  const slid = (past > ON ? half : -half) - past;
  const moved = left ? -slid : slid;
  return { ...station, at: at + moved, slid: moved };
}

/** Level width of the seat of a jack that lies on a valley board: the board's whole depth on the level, or less of a short wedge. */
export const laidSeat = (pitch: number, depth: number, run: number): number =>
  Math.min(plumbDepthOf(pitch, depth) / pitch, run);
