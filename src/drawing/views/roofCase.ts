import type { Frame } from "../../roof/frame/frame.ts";
import type { Piece } from "../../roof/frame/piece.ts";

/** One of several roofs that a drawing puts side by side. */
export interface RoofCase {
  readonly title: string;
  readonly frame: Frame;
  readonly pieces: readonly Piece[];
}
