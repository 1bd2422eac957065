import type { Point } from "../../geometry/clipped.ts";
import type { Vector3 } from "../../geometry/plane.ts";
import { alongSlope } from "../../geometry/alongSlope.ts";
import type { Frame, FrameSide } from "./frame.ts";
import { outline, type Outline } from "./outline.ts";
import { reachAt } from "./outlineFace.ts";
import { jackMark } from "../members/jackMark.ts";
import type { Hand, Piece } from "./piece.ts";

/**
 * One board of a roof where it stands. In plan x runs along the main plates from the first hipped end's plate line, y across the
 * span from one main plate line; heights are above the plates' top.
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
    return spots(frame, piece).map(({ hand, foot, heading, height }): PlacedBoard => {
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
        height: height ?? piece.heel,
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

interface Spot {
  readonly hand: Hand;
  readonly foot: Point;
  readonly heading: Point;
  readonly height?: number;
}

const NORTH: Point = { x: 0, y: 1 };
const SOUTH: Point = { x: 0, y: -1 };
const EAST: Point = { x: 1, y: 0 };
const WEST: Point = { x: -1, y: 0 };

function spots(frame: Frame, piece: Piece): Spot[] {
  const { commons, end, spec, hipEnds, pyramid, ridgePast, main, ridgeThickness } = frame;
  switch (piece.member) {
    case "ridge":
      return [
        {
          hand: "plain",
          foot: { x: end.run - ridgePast, y: spec.span / 2 },
          heading: EAST,
          height: frame.heel + (main.run - ridgeThickness / 2) * main.at.near.pitch,
        },
      ];
    case "common":
      return commons.flatMap((x) => onMainPlates(frame, x));
    case "king common":
      if (piece.side === "Main")
        return [end.run, spec.length - end.run].slice(0, pyramid ? 1 : hipEnds).flatMap((x) => onMainPlates(frame, x));
      return [
        { hand: "plain" as const, foot: { x: 0, y: spec.span / 2 }, heading: EAST },
        { hand: "plain" as const, foot: { x: spec.length, y: spec.span / 2 }, heading: WEST },
      ].slice(0, hipEnds);
    case "hip":
      return corners(frame).map(({ at, inward: { x, y }, main: hand }) => ({
        hand: piece.plain > 0 ? "plain" : hand,
        foot: at,
        heading: { x: x * main.at.near.cos, y: y * main.at.near.sin },
      }));
    case "jack":
      return [main, end].flatMap((side) =>
        side.jacks.flatMap(({ offset }, i) =>
          jackMark(frame, side, i) === piece.mark ? atCorners(frame, side, offset) : [],
        ),
      );
  }
}

function onMainPlates({ spec }: Frame, x: number): Spot[] {
  return [
    { hand: "plain", foot: { x, y: 0 }, heading: NORTH },
    { hand: "plain", foot: { x, y: spec.span }, heading: SOUTH },
  ];
}

/** The hipped corners: which way their plates run, and the hand of the main side for someone outside who looks up the hip. */
function corners({ spec: { length, span }, hipEnds }: Frame): { at: Point; inward: Point; main: "left" | "right" }[] {
  return [
    { at: { x: 0, y: 0 }, inward: { x: 1, y: 1 }, main: "right" as const },
    { at: { x: 0, y: span }, inward: { x: 1, y: -1 }, main: "left" as const },
    { at: { x: length, y: 0 }, inward: { x: -1, y: 1 }, main: "left" as const },
    { at: { x: length, y: span }, inward: { x: -1, y: -1 }, main: "right" as const },
  ].slice(0, 2 * hipEnds);
}

function atCorners(frame: Frame, { name }: FrameSide, offset: number): Spot[] {
  return corners(frame).map(({ at, inward, main }) =>
    name === "Main"
      ? { hand: main, foot: { x: at.x + inward.x * offset, y: at.y }, heading: inward.y > 0 ? NORTH : SOUTH }
      : {
          hand: main === "left" ? "right" : "left",
          foot: { x: at.x, y: at.y + inward.y * offset },
          heading: inward.x > 0 ? EAST : WEST,
        },
  );
}
