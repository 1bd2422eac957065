import { alongSlope } from "../../geometry/alongSlope.ts";
import type { Point } from "../../geometry/point.ts";
import { tailReach, type Bearer } from "../../roof/frame/bearers.ts";
import { reachAt } from "../../roof/frame/outlineFace.ts";
import { planOf } from "../../roof/frame/outlineShape.ts";
import type { Hand, Piece } from "../../roof/frame/piece.ts";
import type { PlacedBoard } from "../../roof/frame/placedBoards.ts";
import { handOf, lowReach, type Rafter } from "../../roof/frame/rafterLines.ts";
import { endReach, stopsOf } from "../../roof/members/plumbEnd.ts";

/** A board as a plan shows it. */
export type PlanBoard = Pick<PlacedBoard, "piece" | "hand" | "foot" | "heading" | "from" | "to" | "plan">;

/** Every board of a roof seen from above, piece by piece in the order of the pieces. */
export function planBoards(pieces: readonly Piece[]): readonly PlanBoard[] {
  return pieces.flatMap((piece) =>
    piece.stands.map((stand): PlanBoard => {
      const hand: Hand = piece.plain > 0 ? "plain" : stand.kind === "rafter" ? handOf(stand) : stand.hand;
      const [foot, heading] = stand.kind === "rafter" ? [stand.spot, stand.plane.inward] : [stand.foot, stand.heading];
      const shape = boardPlan(piece, stand, hand);
      const at = ({ x, y }: Point): Point => ({
        x: foot.x + x * heading.x - y * heading.y,
        y: foot.y + x * heading.y + y * heading.x,
      });
      const { from, to } = reachAt(shape, 0);
      return { piece, hand, foot, heading, plan: shape.map(at), from: at({ x: from, y: 0 }), to: at({ x: to, y: 0 }) };
    }),
  );
}

/** One board from above, in its own plan: x level up it from where its runs start, y across it to the left. */
export const boardPlan = (piece: Piece, stand: Piece["stands"][number], hand: Hand): Point[] =>
  stand.kind === "rafter" ? rafterPlan(stand, piece) : bearerPlan(stand, hand);

function rafterPlan(rafter: Rafter, { section, member }: Piece): Point[] {
  const half = section.thickness / 2;
  const { pitch, correction } = rafter.plane;
  const more = member === "jack" ? correction / alongSlope(pitch) : 0;
  const low = (y: number) => ({ x: lowReach(rafter, y), y });
  const high = (y: number) => ({ x: endReach([rafter.head], y) + more, y });
  return [low(-half), high(-half), high(half), low(half)];
}

/** A bearer's own plan has its far side to the left; seen from above that is so where its near side is on the right, as of a plain one, which is its own mirror image. */
function bearerPlan(bearer: Bearer, hand: Hand): Point[] {
  const plan = bearer.notched ? notchedPlan(bearer) : planOf(bearer);
  return hand === "left" ? plan.map(({ x, y }) => ({ x, y: -y })).reverse() : plan;
}

/** A valley's tail is an inner corner of two fascias: notched on its own line. */
function notchedPlan(bearer: Bearer): Point[] {
  const { near, far, head } = bearer;
  const [from, to] = [-near.face, far.face];
  const low = (y: number): Point => ({ x: 0 - tailReach(bearer, y), y });
  return [low(0), low(from), ...stopsOf(head, from, to).map((y) => ({ x: endReach(head, y), y })), low(to)];
}
