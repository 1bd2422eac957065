import { alongSlope } from "../../geometry/alongSlope.ts";
import { degrees } from "../../measure/degrees.ts";
import { Failure, type Result } from "../../measure/result.ts";
import { heelOf, plumbDepthOf } from "../members/commonRafter.ts";
import { corner } from "../members/corner.ts";
import { hipMember } from "../members/hipMember.ts";
import { jackStep } from "../members/jack.ts";
import { levelOverhang } from "../members/tail.ts";
import { alike, type Alike } from "./alike.ts";
import { sideOn, type Bearer, type Hip, type HipCorner, type Valley } from "./bearers.ts";
import { mainBlock, planesOf, settled, sideFigures, type Block } from "./blocks.ts";
import { layersOf, type Layers } from "./layers.ts";
import { headRuns, type JackRow, type Rafter } from "./rafterLines.ts";
import type { FrameProblem } from "./frameProblem.ts";
import { hipTooShallow } from "./hipCorner.ts";
import type { RoofSpec } from "./roofSpec.ts";
import { tailProblem } from "./tailEnd.ts";
import { wingBlocks } from "./wingBlocks.ts";
import type { WingFrame } from "./wingFrame.ts";

/** A roof set out, layer by layer: what stands where, before any piece is measured. */
export interface Frame extends Layers {
  readonly spec: RoofSpec;
  readonly heel: number;
  /** The same rafters, those that are one piece together. */
  readonly alike: readonly Alike[];
  /** What is written on each. */
  readonly marks: ReadonlyMap<Rafter, string>;
}

/** The hips of a roof, corner by corner, whole ones of the main roof first; there is one at least. */
export const hipsIn = ({ bearers }: Pick<Frame, "bearers">): readonly Hip[] =>
  bearers.filter((one): one is Hip => one.kind === "hip");

/** The valleys of a roof, wing by wing. */
export const valleysIn = ({ bearers }: Pick<Frame, "bearers">): readonly Valley[] =>
  bearers.filter((one): one is Valley => one.kind === "valley");

/** The ridge of the main roof; undefined where the hips meet in a point. */
export const ridgeIn = ({ bearers }: Pick<Frame, "bearers">): Bearer | undefined =>
  bearers.find(({ kind, block }) => kind === "ridge" && block === 0);

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
  const line = ridgeLine(spec, endRun);
  if (line instanceof Failure) return line;
  const wrong = contradiction(spec, mainRun, endRun, line === 0);
  if (wrong) return wrong;
  const hip = hipMember(at, spec, mainRun);
  if (hip instanceof Failure) return new Failure({ kind: "roof too narrow", at: "span", span: spec.span });
  if (heel - hip.drop <= 0) return hipBelowPlate(spec, endPitch, heel, hip.drop);
  const shallow = hipTooShallow({ at, member: hip }, spec, heel);
  if (shallow) return shallow;

  const endOverhang = settled(spec.endOverhang ?? levelOverhang(spec.pitch, spec.overhang, endPitch), spec.overhang);
  const { pitch, overhang, correction } = spec;
  const endCorrection = settled(spec.endCorrection, correction);
  const side = sideFigures(spec, heel, { pitch, run: mainRun, overhang, correction });
  const end = sideFigures(spec, heel, {
    pitch: endPitch,
    run: endRun,
    overhang: endOverhang,
    correction: endCorrection,
  });
  const main = mainBlock(spec, { heel, side, end });
  const wings = wingBlocks(spec, main, { at, member: hip }, heel);
  return wings instanceof Failure ? wings : framed(spec, main, { at, member: hip }, wings, heel);
}

/** The layers of a roof, or what the jacks in it refuse. */
function framed(
  spec: RoofSpec,
  main: Block,
  mainCorner: HipCorner,
  wings: readonly WingFrame[],
  heel: number,
): Result<Frame, FrameProblem> {
  const tails = tailProblem(spec, heel, [...new Set([main, ...wings.map(({ block }) => block)].flatMap(planesOf))]);
  if (tails) return tails;
  const layers = layersOf(spec, main, mainCorner, wings, heel);
  const wrong = layers.rows.map((row) => correctionOff(row, spec)).find((one) => one !== null);
  if (wrong) return wrong;
  if (layers.rows.every(({ jacks }) => jacks.length === 0))
    return new Failure({ kind: "no jack fits", at: "span", span: spec.span, spacing: spec.spacing });
  const groups = alike(layers);
  const marks = new Map<Rafter, string>();
  for (const { mark, rafters } of groups) for (const rafter of rafters) marks.set(rafter, mark);
  return { spec, heel, alike: groups, marks, ...layers };
}

/** A correction that would take the shortest jack below the plate, or that is a whole step. */
function correctionOff({ hip, plane, jacks }: JackRow, spec: RoofSpec): Failure<FrameProblem> | null {
  const side = sideOn(hip, plane)!;
  const shortest =
    jacks.length === 0 ? Infinity : headRuns(jacks.at(-1)!, spec.rafter.thickness).short * alongSlope(plane.pitch);
  const at = plane.end ? "endCorrection" : "correction";
  if (shortest + plane.correction <= 0) return new Failure({ kind: "correction below plate", at, least: -shortest });
  // A jack that is off by a step is another jack: a length was taken for what it is off by.
  const most = jackStep(side, spec.spacing);
  return Math.abs(plane.correction) >= most ? new Failure({ kind: "correction over a step", at, most }) : null;
}

/** The one height above plate of all planes: given, or the largest of what the seat leaves on any pitch. */
function commonHeel({ heel, seat, pitch, rafter, wings }: RoofSpec, endPitch: number): Result<number, FrameProblem> {
  const pitches = [pitch, endPitch, ...wings.flatMap((wing) => [wing.pitch, wing.endPitch ?? wing.pitch])];
  const most = Math.min(...[pitch, endPitch].map((one) => plumbDepthOf(one, rafter.depth)));
  if (heel !== null) return heel < most ? heel : new Failure({ kind: "nothing left to notch", at: "heel", most });
  const heels = pitches.map((one) => heelOf(one, rafter.depth, seat ?? 0));
  const mosts = heels.map((one) => (one instanceof Failure ? one.problem.most : Infinity));
  if (mosts.every((one) => one < Infinity))
    return new Failure({ kind: "seat too wide", at: "seat", most: Math.max(...mosts) });
  const larger = Math.max(...heels.map((one) => (one instanceof Failure ? 0 : one)));
  // Each inch more of seat lowers the steeper side's heel, which is the larger one, by its pitch.
  return larger < most
    ? larger
    : new Failure({
        kind: "no seat on the flatter side",
        at: "seat",
        most,
        heel: larger,
        least: (seat ?? 0) + (larger - most) / Math.max(...pitches),
      });
}

/** The hip's drop takes all of the height above plate: the most that the seat may be, or the heel if that was given, says what to change. */
function hipBelowPlate(spec: RoofSpec, endPitch: number, heel: number, drop: number): Failure<FrameProblem> {
  if (spec.heel !== null) return new Failure({ kind: "heel under the drop", at: "heel", least: drop });
  const most = Math.max(...[spec.pitch, endPitch].map((a) => (plumbDepthOf(a, spec.rafter.depth) - drop) / a));
  return new Failure({ kind: "hip drops below plate", at: "seat", drop, heel, most });
}

/** Length of the ridge line, 0 where hips meet in a point. */
function ridgeLine({ length, ends, rafter }: RoofSpec, endRun: number): Result<number, FrameProblem> {
  const gable = ends !== "hip and hip";
  const taken = gable ? endRun : 2 * endRun;
  const line = length - taken;
  if (!gable && Math.abs(line) <= 1e-9 * length) return 0;
  // Two king commons, or one and the gable's pair, must stand side by side.
  const clear = (gable ? 4 : 2) * rafter.thickness;
  // The least length that a refusal names is taken, whatever the last bit of a run.
  if (line >= clear - 1e-9 * length) return line;
  return new Failure({
    kind: line < 0 ? "length too short" : "ridge too short",
    at: "length",
    pyramid: gable ? null : taken,
    least: taken + clear,
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
