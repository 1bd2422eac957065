import { tailTilts, type Hip } from "../../roof/frame/bearers.ts";
import type { Frame } from "../../roof/frame/frame.ts";
import { outline } from "../../roof/frame/outline.ts";
import type { Piece } from "../../roof/frame/piece.ts";
import { boardStep } from "../canvas/boardStep.ts";
import type { CardOptions } from "../cards/cardOptions.ts";
import { figure } from "../canvas/figure.ts";
import { sawText } from "../cards/sawText.ts";
import { WORDS } from "../canvas/words.ts";

/** What to do for a hip, in order. */
export function hipSteps(frame: Frame, piece: Piece, options: CardOptions): string[] {
  const { length, words: { card } = WORDS } = options;
  const { near } = piece.stands[0] as Hip;
  // Over 12 of the main side's run a hip runs 12 / sin f: 16.97 where both pitches are alike, for which squares are read at 17.
  const run = 12 / near.sin;
  const read =
    Math.abs(run - Math.round(run)) < 0.05 && figure(run) !== String(Math.round(run))
      ? `${Math.round(run)} (${figure(run)})`
      : figure(run);
  return [
    boardStep(frame, piece, options),
    `${card.hipHead(figure(near.pitch * 12), read, figure(piece.slope * 12))} ${headText(frame, piece, options)}${piece.plain > 0 ? "" : ` ${card.mainFace}`}`,
    card.hookHip(length(piece.longPoint)),
    `${card.tiltBack} ${card.seat(length(piece.heel), length(piece.seat))}`,
    piece.tail > 0
      ? `${card.tailHip(length(piece.tail), length(piece.overhang))} ${tailText(piece, options)}`
      : card.noTail,
  ];
}

/** From which face each cheek is sawn. A right hip, which has the main side on its right, stands for both hands. */
function headText(frame: Frame, piece: Piece, { length, words = WORDS }: CardOptions): string {
  const { edge, left, right, longFace } = outline(frame, piece, "right");
  const { card } = words;
  const [first, second] = piece.head.tilts.map((tilt) => sawText(tilt, words));
  const point = Math.max(...edge.map(({ x }) => x));
  const [mainBack, endBack] = [right, left].map(({ points }) => length(point - points.head!.x));
  if (second === undefined) return card.cheekOne(longFace === "right" ? words.mainSide : words.endSide, first!);
  return first === second && mainBack === endBack
    ? card.cheeks(first!, mainBack!)
    : card.cheeksTwo(first!, mainBack!, second, endBack!);
}

/** How the tail is cut. A fascia that is met alone stands nearer on the face of its own side: the other face is the longer one. */
function tailText(piece: Piece, { words = WORDS }: CardOptions): string {
  const { card, mainSide, endSide } = words;
  const { near: main, far: end } = tailTilts(piece.stands[0] as Hip);
  if (main === null) return card.tailOne(endSide, mainSide, sawText(end!, words));
  if (end === null) return card.tailOne(mainSide, endSide, sawText(main, words));
  const [mainTilt, endTilt] = [sawText(main, words), sawText(end, words)];
  return mainTilt === endTilt ? card.tailBoth(mainTilt) : card.tailTwo(mainTilt, endTilt);
}
