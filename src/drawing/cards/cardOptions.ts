import type { Piece } from "../../roof/frame/piece.ts";
import type { DrawingOptions } from "../canvas/canvas.ts";

/** How the texts of a card are written. */
export interface CardOptions extends Pick<DrawingOptions, "length" | "words"> {
  /** A piece's notes in words; none when left out. */
  readonly notes?: (piece: Piece) => readonly string[];
}
