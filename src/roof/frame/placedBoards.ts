import type { Point } from "../../geometry/point.ts";
import type { Vector3 } from "../../geometry/vector.ts";
import { alongSlope } from "../../geometry/alongSlope.ts";
import { endReach } from "../members/plumbEnd.ts";
import type { Frame } from "./frame.ts";
import { outline, type Outline } from "./outline.ts";
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
}

/** Every board of a roof, piece by piece in the order of the pieces. */
export function placedBoards(frame: Frame, pieces: readonly Piece[]): readonly PlacedBoard[] {
  return pieces.flatMap((piece) => {
    const known = new Map<Hand, Outline>();
    return piece.stands.map((stand): PlacedBoard => {
      const { hand, foot, heading, height } = spotOf(frame, piece, stand);
      const shown = known.get(hand) ?? outline(frame, piece, hand);
      known.set(hand, shown);
      const at = ({ x, y }: Point) => ({
        x: foot.x + x * heading.x - y * heading.y,
        y: foot.y + x * heading.y + y * heading.x,
      });
      const { from, to } = reachAt(shown.shape.plan, 0);
      return {
        piece,
        hand,
        outline: shown,
        foot,
        heading,
        height,
        from: at({ x: from, y: 0 }),
        to: at({ x: to, y: 0 }),
        plan: shown.shape.plan.map(at),
      };
    });
  });
}

/**
 * A point of a board's outline in space: x and y on its face, and how far across the board it is, left positive.
 *
 * @returns level x and y as in plan, and z above the plates' top.
 */
export function inSpace(
  { outline: { shape }, foot, heading, height }: PlacedBoard,
  { x, y }: Point,
  across: number,
): Vector3 {
  const along = alongSlope(shape.slope);
  const level = (x - shape.slope * y) / along;
  return {
    x: foot.x + level * heading.x - across * heading.y,
    y: foot.y + level * heading.y + across * heading.x,
    z: height + (y + shape.slope * x) / along,
  };
}

/** Where a board's own line starts, which way it runs up from there, and how high its top edge is there. */
function spotOf(
  { heel }: Frame,
  piece: Piece,
  stand: Piece["stands"][number],
): Pick<PlacedBoard, "hand" | "foot" | "heading" | "height"> {
  if (stand.kind === "rafter") {
    const [hand, { inward }] = [handOf(stand), stand.plane];
    // Pieces alike that stand on a valley start at other heights.
    const up = stand.foot.bearer === null ? 0 : stand.foot.at - drawnAs(piece, hand).foot.at;
    const foot = { x: stand.spot.x + up * inward.x, y: stand.spot.y + up * inward.y };
    return { hand, foot, heading: inward, height: heel + up * piece.slope };
  }
  const { foot, heading, height, hand, tail } = stand;
  if (stand.kind !== "ridge") return { hand: piece.plain > 0 ? "plain" : hand, foot, heading, height };
  // A ridge's outline starts at the end of its board.
  const past = endReach(tail, 0);
  return { hand: "plain", foot: { x: foot.x - past * heading.x, y: foot.y - past * heading.y }, heading, height };
}
