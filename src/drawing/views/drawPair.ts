import { rafterOutline } from "../../roof/frame/outline.ts";
import type { Piece } from "../../roof/frame/piece.ts";
import { drawHead } from "./drawHead.ts";
import { drawSide } from "./drawSide.ts";
import { labelOf } from "../canvas/labelOf.ts";
import { Canvas, type DrawingOptions } from "../canvas/canvas.ts";
import type { Shown } from "../canvas/shown.ts";

/** A left and a right jack of one length side by side, as the mirror images they are, with how many of each. */
export function drawPair(piece: Piece, options: DrawingOptions): string {
  const canvas = new Canvas(options);
  const { width, words, size, lineHeight } = canvas;
  const ends = (["left", "right"] as const).map((hand) => {
    const shown: Shown = { piece, hand, outline: rafterOutline(piece, hand) };
    const room = hand === "left" ? { left: 0, right: width / 2 - 8 } : { left: width / 2 + 8, right: width };
    canvas.text({ x: room.left, y: size }, `${labelOf(shown, words)}: ${words[hand]} ×${piece[hand]}`, {
      anchor: "start",
      bold: true,
    });
    const side = drawSide(canvas, shown, { ...room, top: lineHeight + 2 });
    return drawHead(canvas, shown, { ...room, top: side + 8 });
  });
  const bottom = Math.max(...ends);
  canvas.line(
    [
      { x: width / 2, y: 0 },
      { x: width / 2, y: bottom },
    ],
    "faint",
    "1 3",
  );
  return canvas.svg(
    bottom + 2,
    `${piece.mark}: ${words.left}, ${words.right}`,
    `${words.longPoint} ${canvas.length(piece.longPoint)}. ${words.left} ×${piece.left}: ${words.longPointFace.left}. ${words.right} ×${piece.right}: ${words.longPointFace.right}.`,
  );
}
