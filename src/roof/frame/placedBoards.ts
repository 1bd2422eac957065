import type { Point } from "../../geometry/point.ts";
import type { Vector3 } from "../../geometry/vector.ts";
import { alongSlope } from "../../geometry/alongSlope.ts";
import { endReach } from "../members/plumbEnd.ts";
import type { ValleyBoard } from "./bearers.ts";
import type { Frame } from "./frame.ts";
import { outline, shapeOf, type Outline } from "./outline.ts";
import { reachAt } from "./outlineFace.ts";
import { drawnAs } from "./outlineShape.ts";
import type { Hand, Piece } from "./piece.ts";
import { handOf } from "./rafterLines.ts";

/**
 * One board of a roof where it stands. In plan x runs along the front plate from its left end, y from it to the back; heights are above the plates' top.
 */
export interface PlacedBoard {
  readonly piece: Piece;
  readonly hand: Hand;
  /** Made when it is asked for: a plan needs none. */
  readonly outline: Outline;
  /** Where its own line crosses the plate line (a hip: the corner; the ridge: its first end), and the level direction up the slope, of length 1. */
  readonly foot: Point;
  readonly heading: Point;
  /** The height of its outline's top edge over the foot. */
  readonly height: number;
  /** On its own line, in plan: the end of its tail, and its head. */
  readonly from: Point;
  readonly to: Point;
  /** Its outline seen from above. */
  readonly plan: readonly Point[];
  /** The directions in space of a board that lies flat: along it, to its left, and out of its upper face; null for one on edge. */
  readonly flat: readonly [along: Vector3, left: Vector3, up: Vector3] | null;
}

/** Every board of a roof, piece by piece in the order of the pieces. */
export function placedBoards(frame: Frame, pieces: readonly Piece[]): readonly PlacedBoard[] {
  return pieces.flatMap((piece) => {
    const known = new Map<Hand, Shown>();
    return piece.stands.map((stand): PlacedBoard => {
      const { hand, foot, heading, height, flat } = spotOf(frame, piece, stand);
      let shown = known.get(hand);
      if (!shown) known.set(hand, (shown = shownOf(frame, piece, hand)));
      const { plan, from, to, middle, outline } = shown;
      const at = (x: number, y: number): Point => {
        if (!flat) return { x: foot.x + x * heading.x - y * heading.y, y: foot.y + x * heading.y + y * heading.x };
        const lies = lying(flat, foot, height, { x, y: 0 }, y);
        return { x: lies.x, y: lies.y };
      };
      return {
        piece,
        hand,
        foot,
        heading,
        height,
        flat,
        from: at(from, middle),
        to: at(to, middle),
        plan: plan.map(({ x, y }) => at(x, y)),
        get outline() {
          return outline();
        },
      };
    });
  });
}

/** What the boards of a piece have in common that are of one hand. */
interface Shown {
  /** As on the saw horses, seen from above; how far it reaches along its own line, and where across it that is. */
  readonly plan: readonly Point[];
  readonly from: number;
  readonly to: number;
  readonly middle: number;
  readonly outline: () => Outline;
}

function shownOf(frame: Frame, piece: Piece, hand: Hand): Shown {
  const { plan, left, right } = shapeOf(piece, hand);
  // A valley board may be a triangle, which its middle misses.
  const middle = piece.member === "valley board" ? (hand === "left" ? left : right) : 0;
  let made: Outline | null = null;
  return { plan, middle, outline: () => (made ??= outline(frame, piece, hand)), ...reachAt(plan, middle) };
}

/**
 * A point of a board's outline in space: x and y on its face, and how far across the board it is, left positive.
 *
 * @returns level x and y as in plan, and z above the plates' top.
 */
export function inSpace(
  { outline: { shape }, foot, heading, height, flat }: Omit<PlacedBoard, "from" | "to" | "plan">,
  { x, y }: Point,
  across: number,
): Vector3 {
  if (flat) return lying(flat, foot, height, { x, y }, across);
  const along = alongSlope(shape.slope);
  const level = (x - shape.slope * y) / along;
  return {
    x: foot.x + level * heading.x - across * heading.y,
    y: foot.y + level * heading.y + across * heading.x,
    z: height + (y + shape.slope * x) / along,
  };
}

/** The same of a board that lies flat. */
function lying(
  [along, left, up]: NonNullable<PlacedBoard["flat"]>,
  foot: Point,
  height: number,
  { x, y }: Point,
  across: number,
): Vector3 {
  const by = (a: number, b: number, c: number) => x * a + across * b + y * c;
  return {
    x: foot.x + by(along.x, left.x, up.x),
    y: foot.y + by(along.y, left.y, up.y),
    z: height + by(along.z, left.z, up.z),
  };
}

/** Where a board's own line starts, which way it runs up from there, and how high its top edge is there. */
function spotOf(
  { heel }: Frame,
  piece: Piece,
  stand: Piece["stands"][number],
): Pick<PlacedBoard, "hand" | "foot" | "heading" | "height" | "flat"> {
  if (stand.kind === "rafter") {
    const [hand, { inward }] = [handOf(stand), stand.plane];
    // Pieces alike that stand on a valley start at other heights.
    const up = stand.foot.bearer === null ? 0 : stand.foot.at - drawnAs(piece, hand).foot.at;
    const foot = { x: stand.spot.x + up * inward.x, y: stand.spot.y + up * inward.y };
    return { hand, foot, heading: inward, height: heel + up * piece.slope, flat: null };
  }
  const { foot, heading, height, hand, tail } = stand;
  if (stand.kind === "valley board") return lyingSpot(stand as ValleyBoard);
  if (stand.kind !== "ridge") return { hand: piece.plain > 0 ? "plain" : hand, foot, heading, height, flat: null };
  // A ridge's outline starts at the end of its board.
  const past = endReach(tail, 0);
  return {
    hand: "plain",
    foot: { x: foot.x - past * heading.x, y: foot.y - past * heading.y },
    heading,
    height,
    flat: null,
  };
}

/** Where a valley board lies: the middle of its width at its lower end, its outer edge over the plate line in the wing's plane. */
function lyingSpot(board: ValleyBoard): Pick<PlacedBoard, "hand" | "foot" | "heading" | "height" | "flat"> {
  const { near, far, foot, heading, height, slope, above, hand, section } = board;
  const steep = alongSlope(slope);
  const along = { x: heading.x / steep, y: heading.y / steep, z: slope / steep };
  const square = alongSlope(near.pitch);
  const up = { x: -near.plane.x / square, y: -near.plane.y / square, z: 1 / square };
  const left = {
    x: up.y * along.z - up.z * along.y,
    y: up.z * along.x - up.x * along.z,
    z: up.x * along.y - up.y * along.x,
  };
  const out = above / far.pitch;
  const half = hand === "left" ? -section.depth / 2 : section.depth / 2;
  return {
    hand,
    foot: {
      x: foot.x + out * far.plane.inward.x + half * left.x,
      y: foot.y + out * far.plane.inward.y + half * left.y,
    },
    heading,
    height: height + above + half * left.z,
    flat: [along, left, up],
  };
}
