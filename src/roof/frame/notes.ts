import { alongSlope } from "../../geometry/alongSlope.ts";
import { slopeAngle } from "../../geometry/angle.ts";
import { plumbDepthOf } from "../members/commonRafter.ts";
import { alongHip, backing } from "../members/hip.ts";
import { sideOn, tailTilts, type BearerSide, type Hip } from "./bearers.ts";
import type { RoofPlane } from "./blocks.ts";
import { hipsIn, ridgeIn, type Frame } from "./frame.ts";
import type { Note } from "./note.ts";
import type { Jack } from "./rafterLines.ts";

/** Less than this is no difference at all: a thousandth of the smallest tape mark, and the last bits of a double. */
const NONE = 1e-6;

/** How far the hip's lower edge ends above the toe of this side's jacks; 0 or less where the whole cut bears on the hip. */
export function toeBelowHip({ spec }: Frame, { slope, drop, section }: Hip, { pitch, fall }: BearerSide): number {
  // Both measured down from the jack's plane at the hip's face; a dropped top lies under it, a backed one in it.
  const below = spec.hipTop === "backed" ? -fall : drop - fall;
  return plumbDepthOf(pitch, spec.rafter.depth) - (plumbDepthOf(slope, section.depth) + below);
}

/** Most portable saws tilt to 45 degrees, some to 60 (common practice, no source). */
function tiltNotes(tilt: number, of: "" | "tail " = ""): Note[] {
  const figures = { tilt };
  if (tilt > 60 + NONE) return [{ kind: `${of}tilt over 60`, ...figures }];
  return tilt > 45 + NONE ? [{ kind: `${of}tilt over 45`, ...figures }] : [];
}

/** An overhang that short, in inches or millimeters, is mostly one in feet or meters whose mark was left out. */
const SHORT = 3;

function overhangNotes(overhang: number): Note[] {
  return overhang > 0 && overhang < SHORT ? [{ kind: "short overhang", overhang }] : [];
}

/** Notes of one jack: those of every jack of its side, and on the shortest one the bay left at the corner. */
export function jackNotes(frame: Frame, jack: Jack): Note[] {
  const { plane } = jack;
  const { hip, jacks, dropped, king } = frame.rows.find((row) => row.jacks.includes(jack))!;
  const side = sideOn(hip, plane)!;
  const [first, last] = [jack === jacks[0], jack === jacks.at(-1)];
  const notes: Note[] = [];
  if (plane.correction !== 0) notes.push({ kind: "corrected", by: plane.correction });
  notes.push(...tiltNotes(slopeAngle(side.tan)));
  if (first) notes.push(...overhangNotes(plane.overhang), ...(plane.end ? fasciaNotes(hip) : []));
  if (side.proud > NONE) notes.push({ kind: "proud of hip", by: side.proud });
  const toe = toeBelowHip(frame, hip, side);
  if (toe > NONE) notes.push({ kind: "toe below hip", by: toe });
  if (last) notes.push({ kind: dropped > 0 ? "corner bay, seat" : "corner bay", width: jack.offset });
  if (first && frame.spec.setOutFrom === "corner") {
    const bay = king - jack.offset;
    if (Math.abs(bay - frame.spec.spacing) > NONE) notes.push({ kind: "king bay", width: bay });
  }
  return notes;
}

function fasciaNotes({ near, far }: Hip): Note[] {
  const [height, other] = [near, far].map(({ plane }) => plane.overhang * plane.pitch) as [number, number];
  return Math.abs(height - other) > NONE ? [{ kind: "fascia not level", levelEnd: height / far.pitch }] : [];
}

export function commonNotes({ commons: { lastBay, apexBay, block }, spec }: Frame): Note[] {
  const notes: Note[] = overhangNotes(spec.overhang);
  if (block.ends[1] === null) notes.push({ kind: "gable pair" });
  if (apexBay !== null) notes.push({ kind: "apex bay", width: apexBay });
  if (lastBay !== null && !(apexBay !== null && Math.abs(lastBay - apexBay) < NONE))
    notes.push({ kind: "last bay", width: lastBay });
  return notes;
}

/** How far king commons and ridge stand above the end planes at the apex (trade practice: planed off or left, seen only there). */
function aboveEndPlane(frame: Frame): number {
  const { near, far } = hipsIn(frame)[0]!;
  const ridge = ridgeIn(frame);
  const past = ridge ? ridge.tail[0]!.at : frame.spec.rafter.thickness / 2;
  return far.pitch * past - near.pitch * (ridge?.near.face ?? 0);
}

export function kingNotes(frame: Frame, { end }: RoofPlane): Note[] {
  const notes: Note[] = [];
  if (!end) {
    const above = aboveEndPlane(frame);
    if (above > NONE) notes.push({ kind: "above end plane", by: above });
    if (!ridgeIn(frame)) notes.push({ kind: "kings meet" });
  } else {
    notes.push({ kind: "butts", by: frame.spec.rafter.thickness / 2 });
    const { near, far } = hipsIn(frame)[0]!;
    const above = ((near.pitch - far.pitch) * frame.spec.rafter.thickness) / 2;
    if (above > NONE) notes.push({ kind: "above main plane", by: above });
  }
  return notes;
}

export function ridgeNotes(frame: Frame): Note[] {
  const { spec, commons } = frame;
  const notes: Note[] = [{ kind: "ridge runs on", by: ridgeIn(frame)!.tail[0]!.at }];
  const above = aboveEndPlane(frame);
  if (above > NONE) notes.push({ kind: "above end plane", by: above });
  if (spec.hipHead === "ridge" && spec.ridge !== null && spec.ridge.thickness < spec.rafter.thickness)
    notes.push({ kind: "ridge thinner than rafters", least: spec.rafter.thickness });
  if (commons.block.ends[1] === null) notes.push({ kind: "ridge to gable" });
  return notes;
}

export function hipNotes(frame: Frame): Note[] {
  const hip = hipsIn(frame)[0]!;
  const { near, far, slope } = hip;
  const alike = near.tan === far.tan;
  const notes: Note[] = [];
  if (hip.backing) notes.push({ kind: alike ? "backed" : "backed, two", main: hip.backing[0], end: hip.backing[1] });
  else notes.push({ kind: "dropped", by: hip.drop });
  if (frame.spec.hipTop === "shifted" && !alike) notes.push({ kind: "shifted", main: near.face, end: far.face });
  const proud = Math.max(near.proud, far.proud);
  if (proud > NONE)
    notes.push({
      kind: "jacks proud",
      by: proud,
      backMain: slopeAngle(backing(near, slope)),
      backEnd: slopeAngle(backing(far, slope)),
    });
  const past = hip.farthest - alongHip(hip, hip.headRun);
  if (past > NONE) notes.push({ kind: "farthest point", by: past });
  const tilt = Math.max(...hip.tilts);
  notes.push(...tiltNotes(tilt));
  const tails = tailTilts(hip);
  const tailTilt = hip.overhang > 0 ? Math.max(tails.near ?? 0, tails.far ?? 0) : 0;
  // Between king commons head and tail have the same tilts.
  if (tailTilt > tilt + NONE) notes.push(...tiltNotes(tailTilt, "tail "));
  const toe = Math.max(toeBelowHip(frame, hip, near), toeBelowHip(frame, hip, far));
  if (toe > NONE) notes.push({ kind: "hip too shallow", least: hip.section.depth + toe / alongSlope(slope) });
  notes.push(...fasciaNotes(hip));
  return notes;
}
