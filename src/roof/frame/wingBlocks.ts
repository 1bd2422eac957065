import { degrees } from "../../measure/degrees.ts";
import { Failure, type Result } from "../../measure/result.ts";
import { corner, type Corner } from "../members/corner.ts";
import { hipMember } from "../members/hipMember.ts";
import { levelOverhang } from "../members/tail.ts";
import type { HipCorner } from "./bearers.ts";
import { endBeside, planeOver, planesOf, settled, sideFigures, wingBlock, type Block } from "./blocks.ts";
import type { FrameProblem } from "./frameProblem.ts";
import type { RoofSpec, WingSpec } from "./roofSpec.ts";
import { supportingSide } from "./valleys.ts";
import type { WingFrame } from "./wingFrame.ts";
import { wingProblem } from "./wingProblems.ts";

/** Of a length or a pitch: what the last bits of a double are. Settled here once; the layers take flags. */
const NONE = 1e-9;

/** The wings of a roof in the order of their letters, or the first thing that is wrong with one. */
export function wingBlocks(
  spec: RoofSpec,
  main: Block,
  mainCorner: HipCorner,
  heel: number,
): Result<readonly WingFrame[], FrameProblem> {
  const wings: WingFrame[] = [];
  let planes = planesOf(main).length;
  for (const own of spec.wings) {
    const refused = wingBefore(spec, own, main);
    if (refused) return refused;
    const wing = wingFrame(spec, own, main, heel, wings.length + 1, planes);
    if (wing instanceof Failure) return wing;
    const wrong = wingProblem(wing, wings, main, mainCorner, spec, heel);
    if (wrong) return wrong;
    planes += planesOf(wing.block).filter(({ block }) => block > 0).length;
    wings.push(wing);
  }
  return wings;
}

/** What cannot be framed whatever its figures are. */
function wingBefore(spec: RoofSpec, own: WingSpec, main: Block): Failure<FrameProblem> | null {
  const wing = own.letter;
  if (own.framing === "laid over" && typeof own.from === "string")
    return new Failure({ kind: "flush laid over", at: "wingFraming", wing });
  if (own.framing === "laid over" && own.longValley !== null)
    return new Failure({ kind: "no long valley", at: "longValley", wing, why: "laid" });
  if (own.framing === "framed in" && own.sheathing !== null)
    return new Failure({ kind: "sheathing framed in", at: "wingSheathing", wing });
  if (spec.ridge === null || spec.length - main.ends[0]!.run - (main.ends[1]?.run ?? 0) <= NONE * spec.length)
    return new Failure({ kind: "no ridge for wings", at: "length", least: spec.length + 2 * spec.rafter.thickness });
  if (
    typeof own.from === "string" &&
    endBeside(main, planeOver(main, own.wall), own.from === "flush left" ? "left" : "right") === null
  )
    return new Failure({ kind: "flush at a gable", at: "wingFrom", wing });
  if (own.span / 2 <= own.ridge.thickness)
    return new Failure({
      kind: "wing too narrow",
      at: "wingSpan",
      wing,
      least: 2 * own.ridge.thickness + 2 * spec.spacing,
    });
  return null;
}

function wingFrame(
  spec: RoofSpec,
  own: WingSpec,
  main: Block,
  heel: number,
  index: number,
  planes: number,
): Result<WingFrame, FrameProblem> {
  const wall = planeOver(main, own.wall);
  const flush = own.from === "flush left" ? "left" : own.from === "flush right" ? "right" : null;
  const shared = flush && endBeside(main, wall, flush);
  const pitch = settled(settled(own.pitch, spec.pitch), shared?.pitch ?? spec.pitch);
  const endPitch = settled(own.endPitch ?? pitch, pitch);
  const from = typeof own.from === "number" ? own.from : flush === "left" ? 0 : spec.length - own.span;
  const half = own.span / 2;
  const reach = half * (pitch / spec.pitch);
  const level = Math.abs(reach - wall.run) <= NONE * wall.run;
  const figures = (slope: number, given: number | null) =>
    sideFigures(spec, heel, {
      pitch: slope,
      run: half * (pitch / slope),
      overhang: given ?? levelOverhang(spec.pitch, spec.overhang, slope),
      correction: 0,
    });
  const side = figures(pitch, own.overhang);
  const end = figures(endPitch, own.endOverhang);
  const place = {
    spec: own,
    letter: own.letter,
    wall,
    from,
    to: from + own.span,
    reach: level ? wall.run : reach,
    level,
    laid: own.framing === "laid over",
    flush,
  } as const;
  const block = wingBlock(place, { heel, side, end }, main, index, planes);
  const at = corner(spec.pitch, pitch, degrees(90)) as Corner;
  const hips = corner(pitch, endPitch, degrees(90)) as Corner;
  const member = own.end === "hip" ? hipMember(hips, { ...spec, ridge: own.ridge }, half) : null;
  if (member instanceof Failure)
    return new Failure({
      kind: "wing too narrow",
      at: "wingSpan",
      wing: own.letter,
      least: own.span + 2 * member.problem.least,
    });
  const ridgeFace = (spec.ridge?.thickness ?? 0) / 2;
  const ridge = [
    endBeside(main, wall, "left")?.run ?? 0,
    spec.length - (endBeside(main, wall, "right")?.run ?? 0),
  ] as const;
  return {
    block,
    corner: member && { at: hips, member },
    at,
    long: level || flush || place.laid ? null : supportingSide(block, at, ridgeFace, ridge),
    meeting: {
      near: at.near,
      toRidge: wall.run - ridgeFace,
      toWingRidge: half - own.ridge.thickness / 2,
      reach: place.reach,
      valley: place.laid ? 0 : spec.valley.thickness,
      ridge: own.ridge.thickness,
    },
  };
}
