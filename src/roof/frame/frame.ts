import { alongSlope } from "../../geometry/alongSlope.ts";
import { degrees } from "../../measure/degrees.ts";
import { Failure, type Result } from "../../measure/result.ts";
import type { FrameProblem } from "./frameProblem.ts";
import { heelOf, plumbDepthOf } from "../members/commonRafter.ts";
import { corner, turned, type Corner } from "../members/corner.ts";
import { hipMember, type HipMember } from "../members/hipMember.ts";
import { jackRuns, jackStep, type JackRuns } from "../members/jack.ts";
import type { RoofSpec } from "./roofSpec.ts";
import { commonStations, jackOffsets } from "./setOut.ts";
import { levelOverhang } from "../members/tail.ts";

/** A jack position along one plate line. */
export interface JackPosition {
  readonly offset: number;
  readonly runs: JackRuns;
}

/** One kind of side of the roof: both main sides are alike, and so are the hipped ends. */
export interface FrameSide {
  readonly name: "Main" | "End";
  /** The corner with this side as its near one. */
  readonly at: Corner;
  readonly run: number;
  readonly overhang: number;
  readonly seat: number;
  readonly correction: number;
  /** Offset of the king common from the corner along this plate line (of the apex, where hips meet the ridge). */
  readonly king: number;
  /** Level distance of the hip's face on this side from the meeting line. */
  readonly face: number;
  /** Farthest from the corner first. */
  readonly jacks: readonly JackPosition[];
  /** Positions nearer the corner whose head would land over their own seat: left out. */
  readonly dropped: number;
}

/** A rectangular hip roof set out: what stands where, before any piece is measured. */
export interface Frame {
  readonly spec: RoofSpec;
  readonly heel: number;
  readonly main: FrameSide;
  readonly end: FrameSide;
  /** Main and end jacks of the same offset are the same piece. */
  readonly alike: boolean;
  readonly hip: HipMember;
  /** Level along the hip from the corner's plumb line to the farthest point of its tail within its own thickness. */
  readonly hipOverhang: number;
  /** Hipped ends: 2, or 1 with a gable. */
  readonly hipEnds: 1 | 2;
  readonly pyramid: boolean;
  readonly ridgeThickness: number;
  /** Apex to apex, or apex to the gable's plate line; 0 for a pyramid. */
  readonly ridgeLine: number;
  /** The ridge board from end to end; 0 where there is none. */
  readonly ridgeBoard: number;
  /** How far the ridge board runs past an apex. */
  readonly ridgePast: number;
  readonly kings: boolean;
  /** Offsets along the main plate from a hip's corner: commons between the king commons, and the last pair at a gable. */
  readonly commons: readonly number[];
  /** Centre to centre, from the last common to what stands after it, where that is no whole spacing; else null. */
  readonly lastBay: number | null;
  /** Hips on the ridge: centre to centre over the apex, from the longest main jack to the first common; null with king commons. */
  readonly apexBay: number | null;
}

/**
 * Sets a roof out: which members exist and where each stands.
 *
 * Jacks exist where their head clears their own seat. Commons follow the spacing from one king common to the other.
 *
 * @returns a problem that names what of the spec is at fault, with the limit.
 */
export function frame(spec: RoofSpec): Result<Frame, FrameProblem> {
  const endPitch = settled(spec.endPitch ?? spec.pitch, spec.pitch);
  const at = corner(spec.pitch, endPitch, degrees(90));
  if (at instanceof Failure) return new Failure({ ...at.problem, kind: "planes meet in no hip", at: "endPitch" });
  const mainRun = spec.span / 2;
  const endRun = mainRun * (spec.pitch / endPitch);
  const heel = commonHeel(spec, endPitch);
  if (heel instanceof Failure) return heel;
  const shape = ridgeShape(spec, endRun);
  if (shape instanceof Failure) return shape;
  const wrong = contradiction(spec, mainRun, endRun, shape.pyramid);
  if (wrong) return wrong;
  const hip = hipMember(at, spec, mainRun);
  if (hip instanceof Failure) return new Failure({ kind: "roof too narrow", at: "span", span: spec.span });
  if (heel - hip.drop <= 0) return hipBelowPlate(spec, endPitch, heel, hip.drop);
  if (plumbDepthOf(at.slope, spec.hip.depth) <= heel - hip.drop)
    return new Failure({
      kind: "hip does not reach the plate",
      at: "hip",
      least: (heel - hip.drop) * (spec.hip.depth / plumbDepthOf(at.slope, spec.hip.depth)),
    });

  const endOverhang = settled(spec.endOverhang ?? levelOverhang(spec.pitch, spec.overhang, endPitch), spec.overhang);
  const main = side(spec, "Main", at, {
    run: mainRun,
    king: endRun,
    face: hip.mainFace,
    overhang: spec.overhang,
    heel,
    correction: spec.correction,
  });
  if (main instanceof Failure) return main;
  const end = side(spec, "End", turned(at), {
    run: endRun,
    king: mainRun,
    face: hip.endFace,
    overhang: endOverhang,
    heel,
    correction: settled(spec.endCorrection, spec.correction),
  });
  if (end instanceof Failure) return end;
  if (main.jacks.length + end.jacks.length === 0)
    return new Failure({ kind: "no jack fits", at: "span", span: spec.span, spacing: spec.spacing });

  const kings = spec.hipHead === "king commons";
  const ridgeThickness = shape.pyramid ? 0 : (spec.ridge?.thickness ?? 0);
  const past = kings
    ? spec.rafter.thickness / 2
    : (ridgeThickness / 2) * (at.near.cos / at.near.sin) + hip.endFace / at.near.sin;
  const hipEnds = spec.ends === "hip and hip" ? 2 : 1;
  // On the inner side of the apex they reach along the ridge by the face to the main side; the last common keeps clear of them.
  const hipReach = kings ? 0 : hip.mainFace / at.near.sin - ((ridgeThickness / 2) * at.near.cos) / at.near.sin;
  const pastApex = kings ? 0 : main.king - (main.jacks[0]?.offset ?? 0);
  const { commons, lastBay } = commonsAlong(
    spec,
    shape.line,
    endRun,
    hipEnds,
    Math.max(spec.rafter.thickness, hipReach + spec.rafter.thickness / 2),
    pastApex,
  );
  return {
    spec,
    heel,
    main,
    end,
    hip,
    hipEnds,
    kings,
    ridgeThickness,
    commons,
    lastBay,
    apexBay: kings || commons.length === 0 ? null : commons[0]! - main.king + pastApex,
    alike: spec.pitch === endPitch && main.correction === end.correction && endOverhang === spec.overhang,
    hipOverhang: hipTail(at, hip, spec.overhang, endOverhang),
    pyramid: shape.pyramid,
    ridgeLine: shape.line,
    ridgePast: shape.pyramid ? 0 : past,
    ridgeBoard: spec.ridge === null || shape.pyramid ? 0 : shape.line + hipEnds * past,
  };
}

/** What differs from the main sides' by a last bit only, as 45° from 12 in 12, is theirs: alike ends have the same pieces. */
function settled(end: number, main: number): number {
  return Math.abs(end - main) <= 1e-12 * Math.abs(main) ? main : end;
}

/**
 * How far a hip's tail reaches, level along it, when it is cut to both fascias.
 *
 * Seen in plan it ends in a point where both fascias meet, or square on the nearer one where that point lies beside it.
 */
function hipTail(
  { near: { sin, cos } }: Corner,
  { mainFace, endFace }: HipMember,
  overhang: number,
  endOverhang: number,
): number {
  const across = Math.min(Math.max(endOverhang * sin - overhang * cos, -mainFace), endFace);
  return Math.min((overhang + across * cos) / sin, (endOverhang - across * sin) / cos);
}

/** The one height above plate of both planes: given, or the larger of what the seat leaves on either side. */
function commonHeel({ heel, seat, pitch, rafter }: RoofSpec, endPitch: number): Result<number, FrameProblem> {
  const most = Math.min(plumbDepthOf(pitch, rafter.depth), plumbDepthOf(endPitch, rafter.depth));
  if (heel !== null) return heel < most ? heel : new Failure({ kind: "nothing left to notch", at: "heel", most });
  const main = heelOf(pitch, rafter.depth, seat ?? 0);
  const end = heelOf(endPitch, rafter.depth, seat ?? 0);
  if (main instanceof Failure && end instanceof Failure)
    return new Failure({ kind: "seat too wide", at: "seat", most: Math.max(main.problem.most, end.problem.most) });
  const larger = Math.max(main instanceof Failure ? 0 : main, end instanceof Failure ? 0 : end);
  // Each inch more of seat lowers the steeper side's heel, which is the larger one, by its pitch.
  return larger < most
    ? larger
    : new Failure({
        kind: "no seat on the flatter side",
        at: "seat",
        most,
        heel: larger,
        least: (seat ?? 0) + (larger - most) / Math.max(pitch, endPitch),
      });
}

/** The hip's drop takes all of the height above plate: the most that the seat may be, or the heel if that was given, says what to change. */
function hipBelowPlate(spec: RoofSpec, endPitch: number, heel: number, drop: number): Failure<FrameProblem> {
  if (spec.heel !== null) return new Failure({ kind: "heel under the drop", at: "heel", least: drop });
  const most = Math.max(...[spec.pitch, endPitch].map((a) => (plumbDepthOf(a, spec.rafter.depth) - drop) / a));
  return new Failure({ kind: "hip drops below plate", at: "seat", drop, heel, most });
}

type RidgeShape = { line: number; pyramid: boolean };

function ridgeShape({ length, ends, rafter }: RoofSpec, endRun: number): Result<RidgeShape, FrameProblem> {
  const hipEnds = ends === "hip and hip" ? 2 : 1;
  const line = length - hipEnds * endRun;
  const pyramid = hipEnds === 2 && Math.abs(line) <= 1e-9 * length;
  // Two king commons, or one and the gable's pair, must stand side by side.
  const clear = hipEnds === 2 ? 2 * rafter.thickness : 4 * rafter.thickness;
  if (pyramid) return { line: 0, pyramid };
  // The least length that a refusal names is taken, whatever the last bit of a run.
  if (line >= clear - 1e-9 * length) return { line, pyramid };
  return new Failure({
    kind: line < 0 ? "length too short" : "ridge too short",
    at: "length",
    pyramid: 2 * endRun,
    least: hipEnds * endRun + clear,
    hipEnds,
  });
}

/** No roof has more rafters along a plate; a slip in a length would keep every table busy for minutes. */
const MOST_RAFTERS = 1000;

function contradiction(
  { span, length, spacing, rafter, hipHead, ridge }: RoofSpec,
  mainRun: number,
  endRun: number,
  pyramid: boolean,
): Failure<FrameProblem> | null {
  if (spacing < 2 * rafter.thickness)
    return new Failure({ kind: "spacing too narrow", at: "spacing", least: 2 * rafter.thickness });
  if (Math.max(span, length) > MOST_RAFTERS * spacing)
    return new Failure({
      kind: "too many rafters",
      at: span > MOST_RAFTERS * spacing ? "span" : "length",
      rafters: MOST_RAFTERS,
      spacing,
      most: MOST_RAFTERS * spacing,
    });
  if (spacing >= Math.min(mainRun, endRun))
    return new Failure({ kind: "spacing wider than run", at: "spacing", run: Math.min(mainRun, endRun), spacing });
  if (hipHead === "ridge" && (pyramid || ridge === null))
    return new Failure({ kind: "no ridge for the hips", at: "hipHead" });
  if (hipHead === "ridge" && ridge !== null && ridge.thickness >= mainRun)
    return new Failure({ kind: "roof too narrow", at: "span", span });
  return null;
}

function side(
  spec: RoofSpec,
  name: FrameSide["name"],
  at: Corner,
  given: Pick<FrameSide, "run" | "king" | "face" | "overhang" | "correction"> & { heel: number },
): Result<FrameSide, FrameProblem> {
  const { heel, ...rest } = given;
  // commonHeel left a seat on both sides.
  const seat = (plumbDepthOf(at.near.pitch, spec.rafter.depth) - heel) / at.near.pitch;
  const thickness = spec.rafter.thickness;
  const offsets = jackOffsets({ ...spec, thickness }, given.king);
  const jacks: JackPosition[] = [];
  for (const offset of offsets) {
    const runs = jackRuns(at.near, offset, { face: given.face, thickness });
    if (!(runs instanceof Failure) && runs.short >= seat) jacks.push({ offset, runs });
  }
  const shortest = jacks.length === 0 ? Infinity : jacks.at(-1)!.runs.short * alongSlope(at.near.pitch);
  const row = name === "Main" ? "correction" : "endCorrection";
  if (shortest + given.correction <= 0)
    return new Failure({ kind: "correction below plate", at: row, least: -shortest });
  // A jack that is off by a step is another jack: a length was taken for what it is off by.
  const most = jackStep(at.near, spec.spacing);
  if (Math.abs(given.correction) >= most) return new Failure({ kind: "correction over a step", at: row, most });
  return { name, at, seat, jacks, dropped: offsets.length - jacks.length, ...rest };
}

/** What stands after the last common: a king common at its apex, the gable's pair, or past an apex without one the longest jack. */
function commonsAlong(
  { spacing, rafter, length }: RoofSpec,
  line: number,
  endRun: number,
  hipEnds: 1 | 2,
  clear: number,
  pastApex: number,
): { commons: number[]; lastBay: number | null } {
  if (line === 0) return { commons: [], lastBay: null };
  // At a gable the last pair stands inside the gable's plate line, its outer face flush with it.
  const reach = hipEnds === 2 ? line : line - rafter.thickness / 2;
  const stations = commonStations(spacing, reach, hipEnds === 2 ? clear : rafter.thickness);
  const bay = reach - (stations.at(-1) ?? 0) + (hipEnds === 2 ? pastApex : 0);
  const commons = stations.map((station) => endRun + station);
  if (hipEnds === 1) commons.push(length - rafter.thickness / 2);
  return { commons, lastBay: Math.abs(bay - spacing) <= 1e-9 * length ? null : bay };
}
