import type { DrawingOptions } from "../../drawing/canvas/canvas.ts";
import { drawCorner } from "../../drawing/views/drawCorner.ts";
import { drawFrame3d } from "../../drawing/views/drawFrame3d.ts";
import { drawHip } from "../../drawing/views/drawHip.ts";
import { drawJack } from "../../drawing/views/drawJack.ts";
import { drawPair } from "../../drawing/views/drawPair.ts";
import { drawRidge } from "../../drawing/views/drawRidge.ts";
import type { Frame } from "../../roof/frame/frame.ts";
import type { Piece } from "../../roof/frame/piece.ts";
import type { texts } from "../words/texts.ts";

/** Every view of the roof but the plan, which is there at first. */
type View = Exclude<keyof typeof texts.views, "plan">;

/** What is drawn: of the view "piece" this piece, for this hand. */
interface Shown {
  readonly frame: Frame;
  readonly pieces: readonly Piece[];
  readonly piece: Piece;
  readonly hand: string;
}

/** A view of the roof as SVG. */
export function drawView(view: View, { frame, pieces, piece, hand }: Shown, options: DrawingOptions): string {
  switch (view) {
    case "corner":
      return drawCorner(frame, pieces, options);
    case "hip":
      return drawHip(frame, pieces, options);
    case "round":
      return drawFrame3d(frame, pieces, options);
    case "piece":
      return drawPiece(frame, piece, hand, options);
  }
}

function drawPiece(frame: Frame, piece: Piece, hand: string, options: DrawingOptions): string {
  if (piece.member === "ridge") return drawRidge(frame, piece, options);
  if (piece.plain > 0) return drawJack(piece, "plain", options);
  return hand === "left" || hand === "right" ? drawJack(piece, hand, options) : drawPair(piece, options);
}
