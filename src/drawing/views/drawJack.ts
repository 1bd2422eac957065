import { rafterOutline } from "../../roof/frame/outline.ts";
import type { Hand, Piece } from "../../roof/frame/piece.ts";
import { drawFoot } from "./drawFoot.ts";
import { drawHead } from "./drawHead.ts";
import { drawSide } from "./drawSide.ts";
import { labelOf } from "../canvas/labelOf.ts";
import { Canvas, type DrawingOptions } from "../canvas/canvas.ts";
import type { Shown } from "../canvas/shown.ts";

/** From this width on, foot and head stand side by side. */
const WIDE = 300;

/** A jack, common or king common of one hand: its long-point face, its foot on the plate, and its head from above. */
export function drawJack(piece: Piece, hand: Hand, options: DrawingOptions): string {
  const canvas = new Canvas(options);
  const { width, words } = canvas;
  const shown: Shown = { piece, hand, outline: rafterOutline(piece, hand) };
  // On a small card its figures and steps say what the side would show, and a square head needs no drawing.
  const below = canvas.brief ? 0 : drawSide(canvas, shown, { left: 0, right: width, top: 2 }) + 8;
  const square = canvas.brief && piece.head.tilts.length === 0;
  const wide = width >= WIDE && !square;
  // The head stands under the head: at the side to which it points.
  const halves = [
    { left: 0, right: width / 2 - 6 },
    { left: width / 2 + 6, right: width },
  ];
  const [head, foot] = !wide
    ? [
        { left: 0, right: width },
        { left: 0, right: width },
      ]
    : hand === "left"
      ? halves
      : halves.reverse();
  const footEnd = drawFoot(canvas, shown, { ...foot!, top: below });
  const headEnd = square ? footEnd : drawHead(canvas, shown, { ...head!, top: wide ? below : footEnd + 6 });
  const {
    longPoint,
    tape,
    head: { tilts },
  } = piece;
  const name = labelOf(shown, words);
  return canvas.svg(
    Math.max(footEnd, headEnd) + 2,
    `${name}: ${words[hand]}`,
    `${words.longPoint} ${canvas.length(longPoint)}, ${words.tape} ${canvas.length(tape ?? 0)}, ${tilts.length === 0 ? words.squareAcross : `${words.sawTilt} ${tilts[0]!.toFixed(2)}°, ${words.longPointFace[hand]}`}.`,
  );
}
