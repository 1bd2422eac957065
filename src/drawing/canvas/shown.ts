import type { Outline } from "../../roof/frame/outline.ts";
import type { Hand, Piece } from "../../roof/frame/piece.ts";

/** A piece as it is drawn: which one, which hand, what it looks like. */
export interface Shown {
  readonly piece: Piece;
  readonly hand: Hand;
  readonly outline: Outline;
}

/** A column of the canvas, and where in it a view begins. */
export interface Room {
  readonly left: number;
  readonly right: number;
  readonly top: number;
}

/** A left piece shows its left face, whose head is at the left, so that the two hands stand like mirror images. */
export function isFlipped({ hand }: Pick<Shown, "hand">): boolean {
  return hand === "left";
}

/**
 * An angle as it is set on a saw, in degrees.
 *
 * @example
 * angleText(48.189685) // => "48.19°"
 */
export function angleText(angle: number): string {
  return `${Number(angle.toFixed(2))}°`;
}
