import type { DrawingOptions } from "../../drawing/canvas/canvas.ts";
import { drawCorner } from "../../drawing/views/drawCorner.ts";
import { drawFrame3d } from "../../drawing/views/drawFrame3d.ts";
import { drawHip } from "../../drawing/views/drawHip.ts";
import { drawJack } from "../../drawing/views/drawJack.ts";
import { drawPair } from "../../drawing/views/drawPair.ts";
import { drawRidge } from "../../drawing/views/drawRidge.ts";
import type { Frame } from "../../roof/frame/frame.ts";
import type { Hand, Piece } from "../../roof/frame/piece.ts";
import type { RoofModel } from "../../../functions/arguments/roofModel.ts";
import type { ViewName } from "../state/looking.ts";

/** A view of the roof as SVG: any but the plan, which is there at first. */
export function drawView(
  view: Exclude<ViewName, "plan">,
  { frame, pieces }: RoofModel,
  options: DrawingOptions,
): string {
  switch (view) {
    case "corner":
      return drawCorner(frame, pieces, options);
    case "hip":
      return drawHip(frame, pieces, options);
    case "round":
      return drawFrame3d(frame, pieces, options);
  }
}

/** One piece with everything that is laid out on it, for a hand. */
export function drawPiece(frame: Frame, piece: Piece, hand: Hand, options: DrawingOptions): string {
  if (piece.member === "ridge") return drawRidge(frame, piece, options);
  if (piece.plain > 0) return drawJack(piece, "plain", options);
  return hand === "left" || hand === "right" ? drawJack(piece, hand, options) : drawPair(piece, options);
}
