import { rafterOutline } from "../../roof/frame/outline.ts";
import type { Piece } from "../../roof/frame/piece.ts";
import { drawFoot } from "./drawFoot.ts";
import { drawHead } from "./drawHead.ts";
import { drawSide } from "./drawSide.ts";
import { labelOf } from "../canvas/labelOf.ts";
import { Canvas, type DrawingOptions } from "../canvas/canvas.ts";
import type { Shown } from "../canvas/shown.ts";

/** A left and a right jack of one length side by side, as the mirror images they are, with how many of each. */
export function drawPair(piece: Piece, options: DrawingOptions): string {
  const canvas = new Canvas(options);
  const { width, words, size, lineHeight } = canvas;
  const shownOf = (hand: "left" | "right"): Shown => ({ piece, hand, outline: rafterOutline(piece, hand) });
  // On a small card its figures and steps say what the sides would show, and the foot stands between the heads.
  const part = width * (canvas.brief ? 0.37 : 0.5);
  const ends = (["left", "right"] as const).map((hand) => {
    const shown = shownOf(hand);
    const room = hand === "left" ? { left: 0, right: part - 8 } : { left: width - part + 8, right: width };
    canvas.text(
      { x: hand === "left" ? room.left : room.right, y: size },
      canvas.brief ? labelOf(shown, words) : `${labelOf(shown, words)}: ${words[hand]} ×${piece[hand]}`,
      { anchor: hand === "left" ? "start" : "end", bold: true },
    );
    const side = canvas.brief ? lineHeight : drawSide(canvas, shown, { ...room, top: lineHeight + 2 }) + 8;
    return drawHead(canvas, shown, { ...room, top: side });
  });
  const bottom = Math.max(...ends);
  const foot = drawFoot(canvas, shownOf("right"), {
    left: canvas.brief ? part : 0,
    right: canvas.brief ? width - part : part - 8,
    top: canvas.brief ? 0 : bottom + 6,
  });
  return canvas.svg(
    Math.max(bottom, foot) + 2,
    `${piece.mark}: ${words.left}, ${words.right}`,
    `${words.longPoint} ${canvas.length(piece.longPoint)}. ${words.left} ×${piece.left}: ${words.longPointFace.left}. ${words.right} ×${piece.right}: ${words.longPointFace.right}.`,
  );
}
