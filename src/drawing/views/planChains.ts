import type { RoofPlane, Wing } from "../../roof/frame/blocks.ts";
import type { Frame } from "../../roof/frame/frame.ts";
import type { PlacedBoard } from "../../roof/frame/placedBoards.ts";
import type { Canvas } from "../canvas/canvas.ts";
import type { Dimension } from "../canvas/dimensions.ts";
import { isBearer } from "../canvas/labelOf.ts";
import { bays } from "./bays.ts";
import { wallsOf } from "./roofRing.ts";

/** What is measured under a plan, over it and beside it: in pixels from the main roof's front left corner. */
export interface PlanChains {
  readonly under: readonly Dimension[];
  readonly over: readonly Dimension[];
  readonly beside: readonly Dimension[];
}

/**
 * Bays along a main and an end plate and their overall lengths. A wall with wings has their places and spans in place of bays, which then stand at the
 * other wall if that has none; how far out a wing stands is measured beside the end. Without boards there are only the overall lengths, one of which may be lit.
 */
export function planChains(
  canvas: Canvas,
  boards: readonly PlacedBoard[],
  frame: Frame,
  scale: number,
  lit?: "span" | "length",
): PlanChains {
  const { spec, blocks } = frame;
  const { words, length } = canvas;
  const dimension = (from: number, to: number, name?: string): Dimension => ({
    from: from * scale,
    to: to * scale,
    text: length(Math.abs(to - from)),
    ...(name === undefined ? {} : { name }),
  });
  const chain = (stations: readonly number[], whole: number) =>
    // A gable's last pair stands half a board inside the plate line, which is no bay.
    bays([0, ...stations, whole])
      .filter(({ each }) => each > spec.rafter.thickness)
      .map(({ from, to, count, each }): Dimension => ({
        from: from * scale,
        to: to * scale,
        text: count > 1 ? `${count} ${words.each} ${length(each)}` : length(each),
      }));
  const on = (axis: "x" | "y", plate: number) =>
    boards
      .filter(({ foot, piece }) => foot[axis === "x" ? "y" : "x"] === plate && !isBearer(piece.member))
      .map(({ foot }) => foot[axis]);
  /** Along a wall in plan: the back's left is the plan's right. */
  const across = ({ corner, right }: RoofPlane, along: number) => corner.x + along * right.x;
  const placed = ({ wing: { wall, letter, from, to } }: Wing) => [
    ...(from > 0 ? [dimension(across(wall, 0), across(wall, from))] : []),
    dimension(across(wall, from), across(wall, to), words.wing(letter)),
  ];
  const { front, back } = wallsOf(frame);
  const whole = { ...dimension(0, spec.length), lit: lit === "length" };
  const wide = { ...dimension(0, spec.span), lit: lit === "span" };
  if (boards.length === 0) return { under: [whole], over: [], beside: [wide] };
  const out = ({ wing: { wall, letter, spec: own } }: Wing) =>
    dimension(wall.corner.y, wall.corner.y - own.out * wall.inward.y, words.wing(letter));
  // A hipped end, from which the roof is set out.
  const end = on("y", blocks[0]!.ends[0]!.corner.x).filter((y) => y > 0 && y < spec.span);
  return {
    under: [...(front.length > 0 ? front.flatMap(placed) : chain(on("x", 0), spec.length)), whole],
    over: back.length > 0 ? back.flatMap(placed) : front.length > 0 ? chain(on("x", spec.span), spec.length) : [],
    beside: [...chain(end, spec.span), wide, ...[...front, ...back].map(out)],
  };
}
