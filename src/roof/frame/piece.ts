import type { Degrees } from "../../measure/degrees.ts";
import type { Bearer } from "./bearers.ts";
import type { RoofPlane } from "./blocks.ts";
import type { Note } from "./note.ts";
import type { Rafter, RafterMember } from "./rafterLines.ts";
import type { Section } from "./roofSpec.ts";
import type { TailEnd } from "./tailEnd.ts";

/** Boards along the eaves and blocks over the plates: level, and framed after the rafters. */
export type EaveMember = "fascia" | "sub-fascia" | "block";
export type Member = "ridge" | "hip" | "broken hip" | "valley" | "valley board" | RafterMember | EaveMember;

export const isEaveMember = (member: Member): member is EaveMember =>
  member === "fascia" || member === "sub-fascia" || member === "block";
export type SideName = "Main" | "End" | "Both" | `Wing ${string}`;

/** What tables and drawings call the planes, one at least, that a piece stands on; the roof's code compares the planes. */
export function sideName(planes: readonly Pick<RoofPlane, "end" | "wing">[]): SideName {
  const [first] = planes;
  if (first && first.wing !== "") return `Wing ${first.wing}${first.end ? " end" : ""}`;
  const ends = planes.filter(({ end }) => end).length;
  return ends === 0 ? "Main" : ends === planes.length ? "End" : "Both";
}

/** Whether the jacks of a roof's sides and of its ends are the same pieces. */
export const jacksAlike = (pieces: readonly Piece[]): boolean =>
  pieces
    .filter(({ member, planes }) => member === "jack" && planes[0]!.block === 0)
    .every(({ planes }) => planes.some((plane) => plane.end !== planes[0]!.end));

/** The first hip among the pieces of a roof: a broken one where no other is left. */
export const firstHip = (pieces: readonly Piece[]): Piece =>
  pieces.find(({ member }) => member === "hip") ?? pieces.find(({ member }) => member === "broken hip")!;

/** Hands, seen from outside looking up the hip from its foot; plain where a piece has none. */
export const HANDS = ["left", "right", "plain"] as const;
export type Hand = (typeof HANDS)[number];

/** How an end of a piece is cut, and where it is marked on what it meets. */
export interface PieceEnd {
  /** null where it meets a plate or another rafter, or nothing. */
  readonly bearer: Bearer["kind"] | null;
  /** Saw tilts of its cheeks from square: none where it is cut square, two for a hip between king commons. */
  readonly tilts: readonly Degrees[];
  /** What its cut leaves across the top edge, from square; null where it is square or has two cheeks. */
  readonly edge: Degrees | null;
  /** On a plate a jack's edge nearer the corner; on hip or valley its center along that board's face from the corner's plumb line, and from that board's head. */
  readonly mark: number | null;
  readonly markFromHead: number | null;
}

/** An end that is cut square across, and marked on nothing. */
export const SQUARE: PieceEnd = { bearer: null, tilts: [], edge: null, mark: null, markFromHead: null };

/**
 * One distinct piece of a roof, and how many of it are cut. Lengths in the roof's unit, along the top edge from the plumb
 * line over the plate line unless said otherwise; angles in degrees.
 */
export interface Piece {
  /** What is written on the board: "J3". */
  readonly mark: string;
  readonly member: Member;
  /** The planes that it stands in, one for each of it; none for ridges, hips and valleys, which belong to no one side. */
  readonly planes: readonly RoofPlane[];
  readonly left: number;
  readonly right: number;
  readonly plain: number;
  readonly section: Section;
  /** Its own slope, rise over its own run; 0 for the ridge. */
  readonly slope: number;
  /** Level runs to the long and to the short point; equal where the head is cut square across or to two cheeks. */
  readonly longRun: number;
  readonly shortRun: number;
  readonly lineLength: number;
  readonly longPoint: number;
  readonly shortPoint: number;
  /** Straight tape from the seat-cut corner to the long point; null where it is not measured so (ridge, hip). */
  readonly tape: number | null;
  readonly shortestBoard: number;
  /** Level overhang along the piece, and its tail along the top edge. */
  readonly overhang: number;
  readonly tail: number;
  /** The plumb cut; 0 for the square ends of a ridge. */
  readonly headCut: Degrees;
  readonly foot: PieceEnd;
  readonly head: PieceEnd;
  /** Height above plate, level seat width and depth of the notch square to the slope; 0 for the ridge. */
  readonly heel: number;
  readonly seat: number;
  readonly notch: number;
  /** Level, along the plate line, from the corner of the hip or valley that it is laid out from: its foot's valley, else what its head meets. */
  readonly offset: number | null;
  /** The valley that cuts its tail, beside an inner corner; null mostly. */
  readonly tailCut: PieceEnd | null;
  /** It stands on a valley and on the plate. */
  readonly over: boolean;
  /** The letter of the laid-over wing through whose mouth it goes, without a tail; else null. */
  readonly mouth: string | null;
  /** How the tail is cut that ends over the fascia. */
  readonly tailEnd: TailEnd;
  /** Where along its board one longer than every board may be joined; left out where nowhere. */
  readonly joints?: readonly number[];
  readonly notes: readonly Note[];
  /** Every one of it where it stands. */
  readonly stands: readonly (Bearer | Rafter)[];
}
