import type { Hand } from "../measure.ts";
import type { Role } from "./bearer.ts";
import type { Kind } from "./rafters.ts";

/**
 * What a roof with wings measures, in plain data: inches, degrees, square inches. Nothing here is worked out; all of it is read off the corners of
 * the solids. A comparison finds a piece by where it stands: the plane, and how far along that plane's plate line from its left end, seen from outside.
 */
export interface RoofFigures {
  readonly rafters: readonly RafterFigures[];
  readonly bearers: readonly BearerFigures[];
  readonly planes: readonly PlaneFigures[];
  readonly edges: EdgeFigures;
  readonly plates: readonly MarkList[];
  readonly ridges: readonly MarkList[];
}

/** Which part of the roof a plane is: the sides of a roof's or a wing's planes are mirror images or alike, so tables have one name for them. */
export type Part = "main" | "end" | `wing ${string}` | `wing ${string} end`;

export interface RafterFigures {
  readonly kind: Kind;
  readonly name: string;
  readonly plane: string;
  readonly part: Part;
  /** From the left end of the plane's plate line, seen from outside, to the rafter's center. */
  readonly station: number;
  readonly hand: Hand | "plain";
  /** Along the top edge on the longer and the shorter side face: from the plumb line over the plate line, or from the valley's face, to the head. */
  readonly long: number;
  readonly short: number;
  /** The longer face, for someone who looks up the slope; "both" when they are alike. */
  readonly longFace: Hand | "both";
  /** The same between plate line and the lines of hip, valley and ridge. */
  readonly line: number;
  /** Saw tilts from square about the plumb line; 0 for a square end and for a foot on a plate. */
  readonly headTilt: number;
  readonly footTilt: number;
  /** What the cuts leave across the top edge, from square. */
  readonly headEdge: number;
  readonly footEdge: number;
  /** The bearers' names, "" for a plate. */
  readonly head: string;
  readonly foot: string;
  /** Along the top of hip or valley, from its corner's plumb line squared across, to where the rafter's center meets its face; 0 on ridge and plate. */
  readonly headMark: number;
  readonly footMark: number;
  /** From the seat corner to the long point; 0 without a plate. */
  readonly tape: number;
  /** Tail lengths along the top edge, longer and shorter; they differ where a valley cuts the tail. */
  readonly tail: readonly [number, number];
  readonly tailTilt: number;
  readonly tailMark: number;
  /** Level seat, on the face where it is wider and on the other. */
  readonly seat: readonly [number, number];
  /** The shortest straight board that holds the piece. */
  readonly board: number;
  /** How far its cut at a foot on a valley, or at a head on hip or valley, hangs below that bearer's lower edge, plumb; 0 where all of it bears. */
  readonly footHang: number;
  readonly headHang: number;
  readonly overCorner: boolean;
  /** How far it was moved along the plate to clear the end of a bearer, without a sign. */
  readonly slid: number;
}

export interface BearerFigures {
  readonly kind: "ridge" | "hip" | "broken hip" | "valley" | "valley board";
  readonly role: Role | "";
  readonly name: string;
  /** The letter of the wing that it is made by, "" for the main roof. */
  readonly wing: string;
  /** A valley's side of its wing, seen from outside. */
  readonly side: Hand | "";
  /** A hip's hand: the side of the main plane, or of its wing's side plane, for someone who looks up it; a valley's is its side. */
  readonly hand: Hand | "plain";
  /** The line in which the planes meet, from corner (or crossing, or outer end) to where it stops. */
  readonly line: number;
  /** Along the top from the corner's plumb line squared across to the head: on the center line, on the left and on the right face, looking up. */
  readonly center: number;
  readonly left: number;
  readonly right: number;
  /** Tilts of the cheeks of its upper end, of its tail or foot. */
  readonly headTilts: readonly number[];
  readonly footTilts: readonly number[];
  /** Down the top from the corner's plumb line to the tail's notch, on the center line; 0 for a ridge and a broken hip. */
  readonly tail: number;
  readonly board: number;
  /** Height of the top's center over its corner. */
  readonly heel: number;
  /** How far the top's corners stand above the main plane, plumb, where that is on both sides: a supporting valley past its crossing; below 0 under it. */
  readonly proud: number;
}

export interface PlaneFigures {
  readonly plane: string;
  readonly part: Part;
  readonly plan: number;
  readonly sloped: number;
}

/** Lengths of the finished roof's edges. */
export interface EdgeFigures {
  readonly ridges: number;
  readonly hips: number;
  readonly brokenHips: number;
  readonly valleys: number;
  readonly eaves: number;
  /** Gables' rakes. */
  readonly rakes: number;
  /** Free edges of a plane along another plane's fascia, where the fascias are not level. */
  readonly cornerRakes: number;
  /** Corners of the fascia, as seen from above. */
  readonly outerCorners: number;
  readonly innerCorners: number;
}

/** Marks along a plate or ridge from one hook of the tape, to the edge nearer the hook. */
export interface MarkList {
  readonly name: string;
  readonly length: number;
  readonly marks: readonly { readonly at: number; readonly piece: string }[];
}
