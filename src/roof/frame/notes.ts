import { alongSlope } from "../../geometry/alongSlope.ts";
import { directionAngle, slopeAngle } from "../../geometry/angle.ts";
import { plumbDepthOf } from "../members/commonRafter.ts";
import type { Frame, FrameSide } from "./frame.ts";
import { alongHip, backing } from "../members/hip.ts";
import { hipTailTilts } from "../members/hipTail.ts";
import type { Note } from "./note.ts";

/** Less than this is no difference at all: a thousandth of the smallest tape mark, and the last bits of a double. */
const NONE = 1e-6;

/** How far the hip's lower edge ends above the toe of this side's jacks; 0 or less where the whole cut bears on the hip. */
export function toeBelowHip({ hip, spec }: Frame, side: FrameSide): number {
  const { at } = side;
  const fall = side.name === "Main" ? hip.mainFall : hip.endFall;
  // Both measured down from the jack's plane at the hip's face; a dropped top lies under it, a backed one in it.
  const below = spec.hipTop === "backed" ? -fall : hip.drop - fall;
  return plumbDepthOf(at.near.pitch, spec.rafter.depth) - (plumbDepthOf(at.slope, spec.hip.depth) + below);
}

/** Most portable saws tilt to 45 degrees, some to 60 (common practice, no source). */
function tiltNotes(tilt: number, of: "" | "tail " = ""): Note[] {
  const figures = { tilt, complement: 90 - tilt };
  if (tilt > 60 + NONE) return [{ kind: `${of}tilt over 60`, ...figures }];
  return tilt > 45 + NONE ? [{ kind: `${of}tilt over 45`, ...figures }] : [];
}

/** An overhang that short, in inches or millimetres, is mostly one in feet or metres whose mark was left out. */
const SHORT = 3;

function overhangNotes(overhang: number): Note[] {
  return overhang > 0 && overhang < SHORT ? [{ kind: "short overhang", overhang }] : [];
}

/** Notes of one jack: those of every jack of its side, and on the shortest one the bay left at the corner. */
export function jackNotes(frame: Frame, side: FrameSide, index: number): Note[] {
  const { near } = side.at;
  const notes: Note[] = [];
  const tilt = directionAngle(near.cos, near.sin);
  if (side.correction !== 0) notes.push({ kind: "corrected", by: side.correction });
  notes.push(...tiltNotes(tilt));
  if (index === 0) notes.push(...overhangNotes(side.overhang), ...(side.name === "End" ? fasciaNotes(frame) : []));
  const proud = side.name === "Main" ? frame.hip.mainProud : frame.hip.endProud;
  if (proud > NONE) notes.push({ kind: "proud of hip", by: proud });
  const toe = toeBelowHip(frame, side);
  if (toe > NONE) notes.push({ kind: "toe below hip", by: toe });
  if (index === side.jacks.length - 1)
    notes.push({ kind: side.dropped > 0 ? "corner bay, seat" : "corner bay", width: side.jacks[index]!.offset });
  if (index === 0 && frame.spec.setOutFrom === "corner") {
    const bay = side.king - side.jacks[0]!.offset;
    if (Math.abs(bay - frame.spec.spacing) > NONE) notes.push({ kind: "king bay", width: bay });
  }
  return notes;
}

function fasciaNotes({ main, end }: Frame): Note[] {
  const [height, other] = [main, end].map(({ overhang, at }) => overhang * at.near.pitch) as [number, number];
  return Math.abs(height - other) > NONE ? [{ kind: "fascia not level", levelEnd: height / end.at.near.pitch }] : [];
}

export function commonNotes({ lastBay, apexBay, hipEnds, spec }: Frame): Note[] {
  const notes: Note[] = overhangNotes(spec.overhang);
  if (hipEnds === 1) notes.push({ kind: "gable pair" });
  if (apexBay !== null) notes.push({ kind: "apex bay", width: apexBay });
  if (lastBay !== null && !(apexBay !== null && Math.abs(lastBay - apexBay) < NONE))
    notes.push({ kind: "last bay", width: lastBay });
  return notes;
}

/** How far king commons and ridge stand above the end planes at the apex (trade practice: planed off or left, seen only there). */
function aboveEndPlane({ main, end, ridgePast, ridgeThickness, pyramid, spec }: Frame): number {
  const past = pyramid ? spec.rafter.thickness / 2 : ridgePast;
  return end.at.near.pitch * past - (main.at.near.pitch * ridgeThickness) / 2;
}

export function kingNotes(frame: Frame, side: "Main" | "End"): Note[] {
  const notes: Note[] = [];
  if (side === "Main") {
    const above = aboveEndPlane(frame);
    if (above > NONE) notes.push({ kind: "above end plane", by: above });
    if (frame.pyramid) notes.push({ kind: "kings meet" });
  } else {
    notes.push({ kind: "butts", by: frame.spec.rafter.thickness / 2 });
    const { main, end } = frame;
    const above = ((main.at.near.pitch - end.at.near.pitch) * frame.spec.rafter.thickness) / 2;
    if (above > NONE) notes.push({ kind: "above main plane", by: above });
  }
  return notes;
}

export function ridgeNotes(frame: Frame): Note[] {
  const { kings, spec, ridgePast, hipEnds } = frame;
  const notes: Note[] = [{ kind: "ridge runs on", by: ridgePast }];
  const above = aboveEndPlane(frame);
  if (above > NONE) notes.push({ kind: "above end plane", by: above });
  if (!kings && spec.ridge !== null && spec.ridge.thickness < spec.rafter.thickness)
    notes.push({ kind: "ridge thinner than rafters", least: spec.rafter.thickness });
  if (hipEnds === 1) notes.push({ kind: "ridge to gable" });
  return notes;
}

export function hipNotes(frame: Frame): Note[] {
  const { hip, spec, main, end } = frame;
  const { at } = main;
  const notes: Note[] = [];
  if (hip.backing)
    notes.push({ kind: alike(at) ? "backed" : "backed, two", main: hip.backing[0], end: hip.backing[1] });
  else notes.push({ kind: "dropped", by: hip.drop });
  if (spec.hipTop === "shifted" && !alike(at)) notes.push({ kind: "shifted", main: hip.mainFace, end: hip.endFace });
  const proud = Math.max(hip.mainProud, hip.endProud);
  if (proud > NONE)
    notes.push({
      kind: "jacks proud",
      by: proud,
      backMain: slopeAngle(backing(at.near, at.slope)),
      backEnd: slopeAngle(backing(at.far, at.slope)),
    });
  const past = hip.farthest - alongHip(at, hip.headRun);
  if (past > NONE) notes.push({ kind: "farthest point", by: past });
  const tilt = Math.max(...hip.tilts);
  notes.push(...tiltNotes(tilt));
  const tails = hipTailTilts(frame);
  const tailTilt = frame.hipOverhang > 0 ? Math.max(tails.main ?? 0, tails.end ?? 0) : 0;
  // Between king commons head and tail have the same tilts.
  if (tailTilt > tilt + NONE) notes.push(...tiltNotes(tailTilt, "tail "));
  const toe = Math.max(toeBelowHip(frame, main), toeBelowHip(frame, end));
  if (toe > NONE) notes.push({ kind: "hip too shallow", least: spec.hip.depth + toe / alongSlope(at.slope) });
  notes.push(...fasciaNotes(frame));
  return notes;
}

const alike = (at: FrameSide["at"]) => at.near.tan === at.far.tan;
