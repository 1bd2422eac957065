import type { MissingSize } from "./model/stockProblem.ts";

/**
 * Pieces to be cut, the boards they are cut from, and the plan: the model that this room solves.
 *
 * **How a piece lies in a board.** Look at the board's side face: x runs along it from its left end, y up from its bottom edge, z from the near
 * face through its thickness t to the far one. A piece with plumb ends (slope angle A, depth D) is a parallelogram there: at the same z both its ends are lines
 * x - y tan A = constant. So put u = x - y tan A: every plumb cut of that slope is a line of constant u, and in (u, z), the board seen from above
 * and sheared straight, a common is a rectangle. A jack's head turns by the plan angle f about the plumb line, so it is a line
 * u = U - b z (long point on the near face) or u = U - b (t - z) (long point on the far face), with b = tan f / cos A: a trapezoid whose long side
 * is the piece's `length` and whose short side is shorter by `turn` = t b.
 *
 * **What can be shared.** Of the turns of a board onto itself only the half turn about the z axis (end for end, top edge to the bottom, the same face to
 * the eye) keeps x - y tan A lines parallel; it sends u to -u and leaves z. The other two lean the plumb cuts the other way. So a piece lies as it is or so
 * *flipped*, and
 * - tail to tail, tail to plain head, plain head to plain head: one plumb cut ends one piece and starts the next;
 * - head to head: the first ends in u = U - b z, and only a flipped piece whose long point is on the *far* face starts with a parallel line, V - b z + b t.
 *   Long point near and long point far are the two hands, so *a left and a right* share the compound cut, and V = U - b t: they overlap by `turn` along
 *   the board. Two of one hand meet in a V: their long points touch, and nothing is saved. The lengths may differ; slope and `turn` must be the same.
 * - a compound head against a plumb tail: the long point touches the tail's line, and the wedge is lost; `length` holds it already.
 * - a low end that slants too, u = V + s z as the head of its neighbor does: one compound cut, and both crown up. So a cripple whose ends are parallel follows others of its
 *   hand, a left cripple whose ends are not follows a right one, and a valley jack the jack of the other face. `length` is then that of the rectangle around the piece, and
 *   each shared cut saves its |s| t.
 *
 * **What a board loses.** A board comes square, so a group of one slope loses one slant D tan A (`lean`), half of the triangle at each end. Groups of
 * different slope on one board do not share: each loses its own. There is one kerf between any two neighbors on a board and none at its ends:
 * the first and the last cut of a slanted group start in the triangle that falls off anyway, and a piece that ends just where the board ends needs no
 * cut. So pieces fit in a board of length L when
 *
 *   sum of lengths + kerf (pieces - 1) + sum over groups of their lean - sum over shared compound cuts of their turn <= L (1 + 1e-9).
 *
 * where L is the board less the trim at its ends; a piece that is as long as a board takes it alone and untrimmed. How many cuts are shared in the best order of pieces is in
 * model/looseEnds.ts; as long as no piece may lie crown down no two heads share. For single-slope boards that is "top-edge lengths and kerfs add up to L - D tan A". The 1e-9 of the board's length is the one tolerance of this room:
 * a length that is a whole number of sixteenths must not be refused for the last bit of a cosine.
 */

/** The side that a piece's compound cut is of; plain where it has none. */
export type Hand = "left" | "right" | "plain";

/** A piece to be cut, all lengths in one unit; the unit does not matter. A plain list gives only name, size, length and count. */
export interface StockPiece {
  readonly name: string;
  readonly size: string;
  /** Along the top edge, tail tip to long point. */
  readonly length: number;
  readonly count: number;
  /** D tan A: how far a plumb cut leans over the board's depth; 0 for square ends. */
  readonly lean?: number;
  /** Pieces with the same key have parallel plumb cuts. Left out: pieces of the same lean have. */
  readonly slant?: string;
  /** The side face, seen from tail to head with the top edge up, that the long point is on. A valley jack, whose compound cut is at its foot, keeps its own name of hand. */
  readonly hand?: Hand;
  /** t tan f / cos A: what a left and a right save head to head. */
  readonly turn?: number;
  /**
   * How far the cuts at its low end and at its head go along the board from the near face to the far one, minus towards the tail. Left out: a low end square across, and a head by
   * `hand` and `turn`.
   */
  readonly slants?: readonly [low: number, head: number];
  /** How far the low end reaches back beyond the tail tip, where that is less than `lean` (no overhang: heel sin A instead of D tan A). */
  readonly toe?: number;
  /**
   * How much wider than the kerf the saw cut is along the board: 1 / cos A for a plumb cut, 1 / (cos A cos f) for a compound one. Left out: 1, every kerf counts as it
   * is. On a board all cuts of one slant count as wide as the widest of that slant.
   */
  readonly spread?: number;
}

/** Boards to be had in one length. */
export interface StockBoard {
  readonly size: string;
  readonly length: number;
  /** For one board. Either all boards have a price, or none has and the order of least total length is sought. */
  readonly price?: number;
  /** How many there are at most; left out: as many as wanted. */
  readonly count?: number;
}

/**
 * Where a piece lies. Positions are measured from the board's left end once that is trimmed, along the edge of the board that is the piece's top edge.
 *
 * Seen on the side face with plumb cuts rising to the right (/). A piece that is not flipped has its top edge on the board's top edge, its tail tip at
 * `start` and its long point at `end`; its plumb tail runs from there down to `start - lean` on the bottom edge. A flipped piece is turned end for end
 * about the axis square to the side face: its top edge is the board's bottom edge, its long point is at `start`, its tail tip at `end`, and its plumb
 * tail runs up to `end + lean` on the top edge. Flipped or not, the near face is the right one of the piece (from tail to head, its own top edge up): a
 * right's long point is on the near face, a left's on the far one. A flipped piece has the board's crown at its bottom.
 */
export interface PlacedPiece {
  /** Which of the pieces given, from 0. */
  readonly piece: number;
  readonly name: string;
  readonly hand: Hand;
  readonly start: number;
  readonly end: number;
  readonly flipped: boolean;
  /** The one cut between this piece and the one before; "none" for the first of a board or of another slant. */
  readonly shares: "none" | "square" | "plumb" | "compound";
}

/** One board, or `repeat` boards cut alike. */
export interface PlannedBoard {
  readonly size: string;
  readonly length: number;
  /** What it costs: its price, or without prices its length. */
  readonly price: number;
  readonly repeat: number;
  readonly pieces: readonly PlacedPiece[];
  /** Up to where the board is used: pieces, slants and the kerfs between. */
  readonly used: number;
  /** Taken off its ends; 0 where a piece takes the whole board. */
  readonly trim: number;
  /** length - trim - used; the last cut's kerf still comes off it. */
  readonly leftOver: number;
}

export interface SizePlan {
  readonly size: string;
  readonly cost: number;
  /** No plan costs less. */
  readonly bound: number;
  /** cost equals bound: this is the least. If not, the work allowed was spent, and cost - bound is the most that can still be saved. */
  readonly proved: boolean;
}

export interface CutPlan {
  readonly boards: readonly PlannedBoard[];
  /** Sizes that the plan leaves out, for no board is long enough for a piece of them; cost and bound are those of the others. */
  readonly missing: readonly MissingSize[];
  readonly cost: number;
  readonly bound: number;
  readonly proved: boolean;
  readonly sizes: readonly SizePlan[];
}

export interface CutOptions {
  /** Width of the saw cut, square to the blade. */
  readonly kerf: number;
  /** Taken off every board, both ends together, before anything is cut from it; 0 where it is left out. */
  readonly trim?: number;
  /** Whether a piece may lie end for end, its crown down, where that saves money. Left out: never. */
  readonly crownDown?: boolean;
  /** Steps of the search, the same on every machine; left out: some five seconds' worth. */
  readonly steps?: number;
}
