import type { Piece } from "../../roof/frame/piece.ts";
import type { DrawingOptions } from "../canvas/canvas.ts";
import type { Stick } from "./drawSticks.ts";

/** What is the same on every paper of one packet. */
export interface Packet {
  /** The job's name, or nothing. */
  readonly job: string;
  /** The day it is printed, in words. */
  readonly date: string;
  /** Differs where the roof, its boards or the saw cut differ. */
  readonly stamp: string;
}

/** How the texts of a card are written. */
export interface CardOptions extends Pick<DrawingOptions, "length" | "words" | "theme"> {
  /** A piece's notes in words; none when left out. */
  readonly notes?: (piece: Piece) => readonly string[];
  readonly packet?: Packet;
  /** The boards of the cutting plan, where there is one. */
  readonly sticks?: readonly Stick[];
  /** Lengths on hand, what is trimmed off each, and the step of a tape that lengths are rounded up to. */
  readonly onHand?: { readonly boards: readonly number[]; readonly trim: number; readonly step: number };
}
