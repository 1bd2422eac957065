import { alongSlope } from "../../geometry/alongSlope.ts";
import { slopeAngle } from "../../geometry/angle.ts";
import { plumbDepthOf } from "../members/commonRafter.ts";
import { alongHip, backing } from "../members/hip.ts";
import { endReach } from "../members/plumbEnd.ts";
import { sideOn, tailTilts, type Bearer, type BearerSide, type Hip, type Valley, type ValleyBoard } from "./bearers.ts";
import { crossingBay } from "./crossingBay.ts";
import { hipsIn, type Frame } from "./frame.ts";
import type { Note } from "./note.ts";
import { laidSeat } from "./laidOver.ts";
import { headRuns, lowReach, type Jack, type Rafter } from "./rafterLines.ts";
import { offsetFrom } from "./facings.ts";
import type { RoofPlane } from "./blocks.ts";
import { cornerBlock } from "./plateBlocks.ts";
import { plumbPart } from "./tailEnd.ts";

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

/** Notes of some rafters that are one piece: those of its kind, then what a valley does to it. */
export function rafterNotes(frame: Frame, rafters: readonly Rafter[]): Note[] {
  const [first] = rafters as readonly [Rafter];
  const { member } = first;
  const own =
    member === "jack"
      ? jackNotes(frame, first as Jack)
      : member === "common"
        ? commonNotes(frame, first)
        : member === "king common"
          ? kingNotes(frame, first)
          : [first.head, first.foot].flatMap(({ per }) => tiltNotes(slopeAngle(Math.abs(per)))).slice(0, 1);
  return [...own, ...placeNotes(frame, rafters)];
}

/** What is said of the places at which a piece stands beside a valley. */
function placeNotes(frame: Frame, rafters: readonly Rafter[]): Note[] {
  const { spec } = frame;
  const notes: Note[] = [];
  const [first] = rafters as readonly [Rafter];
  const half = spec.rafter.thickness / 2;
  const moved = Math.max(...rafters.map(({ slid }) => Math.abs(slid)));
  if (moved > NONE) notes.push({ kind: "moved", by: moved });
  const board = first.foot.bearer;
  if (board?.kind === "valley board") {
    notes.push({ kind: "seat on valley board", wing: board.wing, tilt: slopeAngle(board.near.pitch) });
    const { short } = headRuns(first, spec.rafter.thickness);
    if (laidSeat(first.plane.pitch, spec.rafter.depth, short) > short - NONE) notes.push({ kind: "wedge" });
  }
  const bay = rafters.map((one) => crossingBay(frame, one)).find((one) => one !== null);
  if (bay) notes.push(bay);
  if (first.mouth) notes.push({ kind: "through mouth", wing: first.mouth });
  if (first.over) notes.push({ kind: "over inner corner", wing: first.foot.bearer!.wing });
  if (spec.tailCut !== "plumb" && (first.tailCut || first.over) && first.plane.overhang > 0)
    notes.push({ kind: "tail in place" });
  if (first.tailCut) {
    const along = alongSlope(first.plane.pitch);
    const tails = [half, -half].map((across) => Math.max(0, -lowReach(first, across)) * along);
    notes.push({
      kind: "tail on valley",
      wing: first.tailCut.bearer!.wing,
      long: Math.max(...tails),
      short: Math.min(...tails),
      tilt: slopeAngle(Math.abs(first.tailCut.per)),
    });
  }
  return notes;
}

/** Notes of one jack: those of every jack of its side, and on the shortest one the bay left at the corner. */
function jackNotes(frame: Frame, jack: Jack): Note[] {
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
  if (last && isCornerBay(frame, hip, jack)) notes.push(cornerNote(frame, hip, plane, jack.offset, dropped));
  if (first && frame.spec.setOutFrom === "corner") {
    const bay = king - jack.offset;
    if (Math.abs(bay - frame.spec.spacing) > NONE) notes.push({ kind: "king bay", width: bay });
  }
  return notes;
}

/** What is left at a corner: blocked by a piece, or to be blocked. */
export function cornerNote(frame: Frame, hip: Hip, plane: RoofPlane, width: number, dropped: number): Note {
  const { blocking } = frame.spec;
  const block = blocking === "corner" || blocking === "both" ? cornerBlock(frame, hip, plane) : null;
  if (block) return { kind: "corner bay blocked", width, long: block.long };
  return { kind: dropped > 0 ? "corner bay, seat" : "corner bay", width };
}

/** Whether nothing stands between a jack and the corner of its hip: a wing's pieces may, and a broken hip has no corner. */
export function isCornerBay({ rafters, spec }: Frame, hip: Hip, { plane, offset }: Jack): boolean {
  if (hip.start > 0) return false;
  return (
    spec.wings.length === 0 ||
    !rafters.some((one) => {
      if (one.plane !== plane) return false;
      const other = offsetFrom(hip, plane, one.station);
      return other > NONE && other < offset - NONE;
    })
  );
}

function fasciaNotes({ near, far }: Hip): Note[] {
  const [height, other] = [near, far].map(({ plane }) => plane.overhang * plane.pitch) as [number, number];
  return Math.abs(height - other) > NONE ? [{ kind: "fascia not level", levelEnd: height / far.pitch }] : [];
}

function commonNotes(
  { commons: { lastBay, apexBay, block }, spec, blocks }: Frame,
  { of, plane, tailCut, mouth }: Rafter,
): Note[] {
  if (tailCut || mouth) return [];
  if (of !== 0)
    return [
      ...overhangNotes(plane.overhang),
      ...(blocks[of]!.ends[0] === null ? [{ kind: "gable pair" } as const] : []),
    ];
  const notes: Note[] = overhangNotes(spec.overhang);
  if (block.ends[1] === null) notes.push({ kind: "gable pair" });
  if (apexBay !== null) notes.push({ kind: "apex bay", width: apexBay });
  if (lastBay !== null && !(apexBay !== null && Math.abs(lastBay - apexBay) < NONE))
    notes.push({ kind: "last bay", width: lastBay });
  return notes;
}

/** The ridge of a block, and a hip of its corners. */
function topOf({ bearers, blocks }: Frame, of: number): { ridge: Bearer | undefined; hip: Hip | undefined } {
  const letter = blocks[of]!.wing?.letter ?? "";
  return {
    ridge: bearers.find(({ kind, block }) => kind === "ridge" && block === of),
    hip: hipsIn({ bearers }).find(({ block, wing }) => (of === 0 ? block === 0 : wing === letter && block === of)),
  };
}

/** How far king commons and ridge of a block stand above its end planes at the apex (trade practice: planed off or left, seen only there). */
function aboveEndPlane(frame: Frame, of: number): number {
  const { ridge, hip } = topOf(frame, of);
  if (!hip) return 0;
  const past = ridge ? ridge.tail[0]!.at : frame.spec.rafter.thickness / 2;
  return hip.far.pitch * past - hip.near.pitch * (ridge?.near.face ?? 0);
}

function kingNotes(frame: Frame, { plane, of, tailCut }: Rafter): Note[] {
  const notes: Note[] = [];
  const { ridge, hip } = topOf(frame, of);
  if (tailCut) return [];
  if (!plane.end || plane.block !== of) {
    const above = aboveEndPlane(frame, of);
    if (above > NONE) notes.push({ kind: "above end plane", by: above });
    if (!ridge) notes.push({ kind: "kings meet" });
  } else {
    notes.push({ kind: "butts", by: frame.spec.rafter.thickness / 2 });
    const above = hip ? ((hip.near.pitch - hip.far.pitch) * frame.spec.rafter.thickness) / 2 : 0;
    if (above > NONE) notes.push({ kind: "above main plane", by: above });
  }
  return notes;
}

export function ridgeNotes(frame: Frame, ridge: Bearer): Note[] {
  const { spec, blocks } = frame;
  const block = blocks[ridge.block]!;
  const notes: Note[] = [];
  if (block.ends[0]) notes.push({ kind: "ridge runs on", by: ridge.tail[0]!.at });
  const above = aboveEndPlane(frame, block.index);
  if (above > NONE) notes.push({ kind: "above end plane", by: above });
  if (spec.hipHead === "ridge" && block.ends[0] && ridge.section!.thickness < spec.rafter.thickness)
    notes.push({ kind: "ridge thinner than rafters", least: spec.rafter.thickness });
  const gable = block.wing ? block.ends[0] === null : block.ends[1] === null;
  if (gable) notes.push({ kind: "ridge to gable" });
  if (!block.wing) return notes;
  const past = endReach(ridge.head, 0) - ridge.run;
  if (block.wing.laid)
    notes.push({ kind: "ridge on sheathing", cut: slopeAngle(ridge.headLean / ridge.section!.depth) });
  else if (block.wing.level) notes.push({ kind: "ridge butts main ridge" });
  else if (block.wing.flush) notes.push({ kind: "ridge past crossing", by: past });
  else notes.push({ kind: "ridge pointed into valleys" });
  return notes;
}

/** How far the toe of a rafter's cut on a side of a valley hangs below that board's lower edge; 0 or less where the whole cut bears. */
export function toeBelowValley({ spec }: Frame, { slope, section }: Valley, { pitch, fall }: BearerSide): number {
  // The plane stands above the valley's corner: its toe hangs less low.
  return plumbDepthOf(pitch, spec.rafter.depth) + fall - plumbDepthOf(slope, section.depth);
}

/** By how much the wing-side corner of a supporting valley stands above the main plane past the crossing; 0 of any other. */
export const proudPast = ({ role, near, section }: Valley): number =>
  role === "supporting" ? (section.thickness / 2) * near.pitch * near.cos : 0;

/** How far the toe of a shortened valley hangs at most below the lower edge of the one that it butts, on its main side; 0 of any other. */
export const toeBelowLong = ({ role, near, section }: Valley): number =>
  role === "shortened" ? section.thickness * near.pitch * near.cos : 0;

export function valleyNotes(frame: Frame, valley: Valley): Note[] {
  const { role, near, far, slope, section, wing } = valley;
  const notes: Note[] = [];
  if (role === "supporting")
    notes.push({ kind: "runs on to ridge" }, { kind: "proud past crossing", by: proudPast(valley) });
  if (role === "shortened") {
    notes.push({ kind: "butts long valley" });
    notes.push({ kind: "toe below long valley", by: toeBelowLong(valley) });
  }
  if (role === "level") notes.push({ kind: "valley to corner of ridges" });
  if (role === "flush") notes.push({ kind: "valley to broken hip" });
  const tilt = Math.max(0, ...valley.tilts);
  notes.push(...tiltNotes(tilt));
  const toe = Math.max(toeBelowValley(frame, valley, near), toeBelowValley(frame, valley, far));
  if (toe > NONE) notes.push({ kind: "valley too shallow", least: section.depth + toe / alongSlope(slope) });
  const [height, other] = [near, far].map(({ plane }) => plane.overhang * plane.pitch) as [number, number];
  if (Math.abs(height - other) > NONE) notes.push({ kind: "wing fascia not level", wing, level: height / far.pitch });
  if (frame.spec.tailCut !== "plumb" && valley.overhang > 0) notes.push({ kind: "tail in place" });
  return notes;
}

export function boardNotes({ setBack, bevel, lowerCut, upperCut }: ValleyBoard): Note[] {
  return [{ kind: "valley board", setBack, bevel, lower: lowerCut, upper: upperCut }];
}

export function hipNotes(frame: Frame, hip: Hip): Note[] {
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
  if (hip.start > 0) notes.push({ kind: "broken hip stands on ridge" });
  const tails = tailTilts(hip);
  const tailTilt = hip.overhang > 0 ? Math.max(tails.near ?? 0, tails.far ?? 0) : 0;
  // Between king commons head and tail have the same tilts.
  if (tailTilt > tilt + NONE) notes.push(...tiltNotes(tailTilt, "tail "));
  const toe = Math.max(toeBelowHip(frame, hip, near), toeBelowHip(frame, hip, far));
  if (toe > NONE) notes.push({ kind: "hip too shallow", least: hip.section.depth + toe / alongSlope(slope) });
  if (hip.start === 0) notes.push(...fasciaNotes(hip), ...hipTailNotes(frame, hip));
  return notes;
}

/** A hip's tail beside tails that are not plumb: level at their height, or cut where it stands. */
function hipTailNotes({ spec }: Frame, hip: Hip): Note[] {
  const plumb = plumbPart(spec);
  if (spec.tailCut === "plumb" || hip.overhang === 0) return [];
  if (plumb === null || fasciaNotes(hip).length > 0) return [{ kind: "tail in place" }];
  // Its top line hangs lower than the tails' at the corner by its drop.
  return [{ kind: "level hip tail", plumb: hip.backing ? plumb : plumb - hip.drop }];
}
