import { degrees } from "../../measure/degrees.ts";
import { Failure, type Result } from "../../measure/result.ts";
import { plumbDepthOf } from "../members/commonRafter.ts";
import { corner, type Corner } from "../members/corner.ts";
import { hipMember } from "../members/hipMember.ts";
import { levelOverhang } from "../members/tail.ts";
import type { HipCorner } from "./bearers.ts";
import { endBeside, planesOf, wingBlock, type Block, type Wing } from "./blocks.ts";
import type { FrameProblem } from "./frameProblem.ts";
import type { Meeting } from "./joints.ts";
import type { RoofSpec, WingSpec } from "./roofSpec.ts";

/** A wing in its place, with what settles its boards: the corner of its hips (null at a gable), the corner of its valleys, and how they meet. */
export interface WingFrame {
  readonly block: Wing;
  readonly corner: HipCorner | null;
  readonly at: Corner;
  readonly meeting: Meeting;
}

/** Of a length or a pitch: what the last bits of a double are. Settled here once; the layers take flags. */
const NONE = 1e-9;

/** The wings of a roof in the order of their letters, or the first thing that is wrong with one. */
export function wingBlocks(spec: RoofSpec, main: Block, heel: number): Result<readonly WingFrame[], FrameProblem> {
  const wings: WingFrame[] = [];
  let planes = planesOf(main).length;
  for (const own of spec.wings) {
    const wing = wingFrame(spec, own, main, heel, wings.length + 1, planes);
    if (wing instanceof Failure) return wing;
    planes += planesOf(wing.block).filter(({ block }) => block > 0).length;
    wings.push(wing);
  }
  return wings;
}

/** What differs from another by a last bit only is that other. */
const like = (value: number, other: number): number =>
  Math.abs(value - other) <= 1e-12 * Math.abs(other) ? other : value;

function wingFrame(
  spec: RoofSpec,
  own: WingSpec,
  main: Block,
  heel: number,
  index: number,
  planes: number,
): Result<WingFrame, FrameProblem> {
  const [front] = main.sides[0].inward.y > 0 ? main.sides : [main.sides[1]];
  const wall = own.wall === "front" ? front : main.sides.find((plane) => plane !== front)!;
  const flush = own.from === "flush left" ? "left" : own.from === "flush right" ? "right" : null;
  const shared = flush && endBeside(main, wall, flush);
  const pitch = like(like(own.pitch, spec.pitch), shared?.pitch ?? spec.pitch);
  const endPitch = like(own.endPitch ?? pitch, pitch);
  const from = typeof own.from === "number" ? own.from : flush === "left" ? 0 : spec.length - own.span;
  const half = own.span / 2;
  const reach = half * (pitch / spec.pitch);
  const level = Math.abs(reach - wall.run) <= NONE * wall.run;
  const figures = (slope: number, run: number, overhang: number) => ({
    pitch: slope,
    run,
    overhang,
    seat: (plumbDepthOf(slope, spec.rafter.depth) - heel) / slope,
    correction: 0,
  });
  const side = figures(pitch, half, own.overhang ?? levelOverhang(spec.pitch, spec.overhang, pitch));
  const end = figures(
    endPitch,
    half * (pitch / endPitch),
    own.endOverhang ?? levelOverhang(spec.pitch, spec.overhang, endPitch),
  );
  const place = {
    spec: own,
    letter: own.letter,
    wall,
    from,
    to: from + own.span,
    reach: level ? wall.run : reach,
    level,
    flush,
  } as const;
  const block = wingBlock(place, { heel, side, end }, main, index, planes);
  const at = corner(spec.pitch, pitch, degrees(90)) as Corner;
  const hips = corner(pitch, endPitch, degrees(90)) as Corner;
  const member = own.end === "hip" ? hipMember(hips, { ...spec, ridge: own.ridge }, half) : null;
  if (member instanceof Failure) throw new Error("narrow");
  return {
    block,
    corner: member && { at: hips, member },
    at,
    meeting: {
      near: at.near,
      toRidge: wall.run - (spec.ridge?.thickness ?? 0) / 2,
      toWingRidge: half - own.ridge.thickness / 2,
      reach: place.reach,
      valley: spec.valley.thickness,
      ridge: own.ridge.thickness,
    },
  };
}
