import { slopeAngle } from "../../geometry/angle.ts";
import { alongSlope } from "../../geometry/alongSlope.ts";
import { tailTilts, type Hip } from "../../roof/frame/bearers.ts";
import type { Frame } from "../../roof/frame/frame.ts";
import { outline } from "../../roof/frame/outline.ts";
import type { Piece } from "../../roof/frame/piece.ts";
import { figure } from "../canvas/figure.ts";
import { angleText } from "../canvas/shown.ts";
import { WORDS } from "../canvas/words.ts";
import { boardStep } from "./boardStep.ts";
import type { CardOptions } from "./cardOptions.ts";
import { sawDanger } from "./sawDanger.ts";

/** What to do for a hip, in order. */
export function hipSteps(frame: Frame, piece: Piece, options: CardOptions): string[] {
  const { spec } = frame;
  const { length, words: { card } = WORDS } = options;
  const { near } = piece.stands[0] as Hip;
  // Over 12 of the main side's run a hip runs 12 / sin f: 16.97 where both pitches are alike, for which squares are read at 17.
  const run = 12 / near.sin;
  const read =
    Math.abs(run - Math.round(run)) < 0.05 && figure(run) !== String(Math.round(run))
      ? `${Math.round(run)} (${figure(run)})`
      : figure(run);
  const head = [
    card.hipHead(figure(near.pitch * 12), read, figure(piece.slope * 12), angleText(piece.headCut)),
    headText(frame, piece, options),
    sawDanger(piece.head.tilts, piece.section.thickness, spec.unit, options.words),
    // The top of a backed hip is no one plane to measure on.
    spec.hipTop === "backed" ? "" : card.sideCut(sideCuts(piece)),
    piece.plain > 0 ? "" : card.mainFace,
  ];
  const { near: main, far: end } = tailTilts(piece.stands[0] as Hip);
  const tail = [
    card.tailHip(length(piece.tail), length(piece.overhang)),
    tailText(main, end, options),
    sawDanger([main, end], piece.section.thickness, spec.unit, options.words),
    ...piece.notes.map((note) => ("plumb" in note ? card.tailLevelHip(length(note.plumb)) : "")),
  ];
  return [
    boardStep([piece], options),
    sentences(head),
    card.hookHip(length(piece.longPoint)),
    `${card.tiltBack} ${card.seat(length(piece.heel), length(piece.seat))} ${card.longSeat}`,
    isTailInPlace(piece) ? card.tailLong(length(piece.tail)) : piece.tail > 0 ? sentences(tail) : card.noTail,
  ];
}

/** Whether the tails beside it are not plumb, and its own is cut where it stands. */
export const isTailInPlace = ({ notes }: Piece): boolean => notes.some(({ kind }) => kind === "tail in place");

const sentences = (parts: readonly string[]) => parts.filter((part) => part !== "").join(" ");

/** What the cheeks leave across the square top: the tilt is in plan, and along the slope everything grows by 1 / cos. */
function sideCuts({ head, slope }: Piece): string[] {
  const angles = head.tilts.map((tilt) => angleText(slopeAngle(Math.tan((tilt * Math.PI) / 180) * alongSlope(slope))));
  return [...new Set(angles)];
}

/** From which face each cheek is sawn. A right hip, which has the main side on its right, stands for both hands. */
function headText(frame: Frame, piece: Piece, { length, words = WORDS }: CardOptions): string {
  const { edge, left, right, longFace } = outline(frame, piece, "right");
  const { card } = words;
  const [first, second] = piece.head.tilts.map(angleText);
  const point = Math.max(...edge.map(({ x }) => x));
  const [mainBack, endBack] = [right, left].map(({ points }) => length(point - points.head!.x));
  if (second === undefined) return card.cheekOne(longFace === "right" ? words.mainSide : words.endSide, first!);
  return first === second && mainBack === endBack
    ? card.cheeks(first!, mainBack!)
    : card.cheeksTwo(first!, mainBack!, second, endBack!);
}

/** How the tail is cut. A fascia that is met alone stands nearer on the face of its own side: the other face is the longer one. */
function tailText(main: number | null, end: number | null, { words = WORDS }: CardOptions): string {
  const { card, mainSide, endSide } = words;
  if (main === null) return card.tailOne(endSide, mainSide, angleText(end!));
  if (end === null) return card.tailOne(mainSide, endSide, angleText(main));
  const [mainTilt, endTilt] = [angleText(main), angleText(end)];
  return mainTilt === endTilt ? card.tailBoth(mainTilt) : card.tailTwo(mainTilt, endTilt);
}
