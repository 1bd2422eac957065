import type { Point } from "../../geometry/point.ts";
import type { Vector3 } from "../../geometry/vector.ts";
import type { Frame } from "../../roof/frame/frame.ts";
import type { Outline } from "../../roof/frame/outline.ts";
import { outlineFace, type OutlineFace, type PointName } from "../../roof/frame/outlineFace.ts";
import type { Piece } from "../../roof/frame/piece.ts";
import { inSpace, placedBoards, type PlacedBoard } from "../../roof/frame/placedBoards.ts";
import { colorOf, labelOf } from "../canvas/labelOf.ts";
import { painterOrder, type Side } from "../../geometry/painterOrder.ts";
import { Canvas, type BoardShape, type DrawingOptions } from "../canvas/canvas.ts";
import type { View } from "../canvas/view.ts";

/** Turned about the plumb line and looked down on, in degrees: an axonometric projection, so lengths of one direction keep their ratio. */
const TURN = (-28 * Math.PI) / 180;
const DOWN = (32 * Math.PI) / 180;
const TOWARDS: Vector3 = { x: Math.sin(TURN) * Math.cos(DOWN), y: -Math.cos(TURN) * Math.cos(DOWN), z: Math.sin(DOWN) };

/** Twice the area in square pixels under which a side is not drawn. */
const SEEN = 0.5;

/** The whole frame in the round: every board, farthest first, so that nearer ones cover what they hide. */
export function drawFrame3d(frame: Frame, pieces: readonly Piece[], options: DrawingOptions): string {
  const canvas = new Canvas(options);
  const { width, words } = canvas;
  const boards = placedBoards(frame, pieces);
  const sections = new Map(
    [...new Set(boards.map((board) => board.outline))].map((outline) => [outline, sectionsOf(outline)]),
  );
  const solids = boards.map((board) => ({ board, sides: sidesOf(board, sections.get(board.outline)!) }));
  const points = solids.flatMap(({ sides }) => sides.flatMap(({ corners }) => corners.map(projected)));
  const margin = 2 * canvas.size;
  const [least, most] = [Math.min(...points.map(({ x }) => x)), Math.max(...points.map(({ x }) => x))];
  const [low, high] = [Math.min(...points.map(({ y }) => y)), Math.max(...points.map(({ y }) => y))];
  const scale = (width - 2 * margin) / (most - least);
  const view: View = { name: "frame", scale, x: margin - least * scale, y: 4 + high * scale, weight: 0.6 };
  const order = painterOrder(
    solids.map(({ sides }) => sides),
    TOWARDS,
  );
  canvas.boards(
    view,
    order.flatMap((i) => shapesOf(solids[i]!.board, solids[i]!.sides, SEEN / scale ** 2)),
  );
  const bottom = Math.max(view.y - low * scale, writeFeet(canvas, view, order.map((i) => solids[i]!.board).reverse()));
  return canvas.svg(
    bottom + 6,
    words.frame,
    `${words.frame}: ${pieces.map(({ mark, left, right, plain }) => `${mark} ×${left + right + plain}`).join(", ")}.`,
  );
}

/** A point of space as it is seen: x to the right, y up. */
function projected({ x, y, z }: Vector3): Point {
  const [right, away] = [x * Math.cos(TURN) + y * Math.sin(TURN), -x * Math.sin(TURN) + y * Math.cos(TURN)];
  return { x: right, y: z * Math.cos(DOWN) + away * Math.sin(DOWN) };
}

/** The plumb sections of an outline from right to left, one at each corner of its plan. */
function sectionsOf({ shape, left, right, edge }: Outline): OutlineFace[] {
  const across = [...new Set([right.across, ...edge.map(({ y }) => y), left.across])].sort((a, b) => a - b);
  return across.map((at) => outlineFace(shape, at));
}

/** The names of a face's corners in the order in which they stand round it. */
function round({ points, polygon }: OutlineFace): PointName[] {
  return (Object.keys(points) as PointName[]).filter((name) => polygon.includes(points[name]!));
}

/** The sides of a board in space, corners counterclockwise seen from outside: its two side faces, and what joins them round. */
function sidesOf(board: PlacedBoard, sections: readonly OutlineFace[]): Side[] {
  const { left, right } = board.outline;
  const corner = (face: OutlineFace, name: PointName) => inSpace(board, face.points[name]!, face.across);
  const joins = sections.slice(1).flatMap((to, i) => {
    const from = sections[i]!;
    const names = round(to).filter((name) => round(from).includes(name));
    return names.map((name, k): Side => ({
      corners: [corner(from, names.at(k - 1)!), corner(to, names.at(k - 1)!), corner(to, name), corner(from, name)],
    }));
  });
  const faces = [
    {
      corners: round(left)
        .map((name) => corner(left, name))
        .reverse(),
    },
    { corners: round(right).map((name) => corner(right, name)) },
  ];
  return [...joins, ...faces].filter(({ corners }) => corners.length > 2);
}

/** The sides that face the reader and are large enough to be seen. */
function shapesOf(board: PlacedBoard, sides: readonly Side[], least: number): BoardShape[] {
  const { piece, hand } = board;
  const color = colorOf(board);
  return sides
    .map(({ corners }) => corners.map(projected))
    .filter((polygon) => doubleArea(polygon) > least)
    .map((polygon) => ({ polygon, mark: piece.mark, hand, color }));
}

/** Twice a polygon's area, positive where its corners run counterclockwise as seen: then the side faces the reader. */
function doubleArea(polygon: readonly Point[]): number {
  return polygon.reduce((sum, b, i) => sum + polygon.at(i - 1)!.x * b.y - b.x * polygon.at(i - 1)!.y, 0);
}

/** How far under its first place a mark is tried, in pixels. */
const STEPS = [0, 3, 6, 9];

/** Marks at the feet of the nearest boards, as far as they have room: first each mark once, then with either hand. Gives the lowest one's line. */
function writeFeet(canvas: Canvas, view: View, nearest: readonly PlacedBoard[]): number {
  const shown = new Set<string>();
  const known = new Set<string>();
  let lowest = 0;
  const feet = nearest.filter(
    ({ piece, heading }) => piece.member !== "ridge" && (heading.y > 0 || (heading.y === 0 && heading.x > 0)),
  );
  for (const first of [true, false]) {
    for (const board of feet) {
      const text = labelOf(board, canvas.words);
      if (shown.has(text) || (first && known.has(board.piece.mark))) continue;
      const { "tail tip": tip, "tail toe": toe, "seat corner": seat } = board.outline.middle.points;
      const { x, y } = projected(inSpace(board, toe ?? tip ?? seat!, 0));
      const foot: Point = { x: view.x + x * view.scale, y: view.y - y * view.scale };
      // The end's feet run away to the left: their marks stand on that side.
      const aside = board.heading.y === 0;
      const places = STEPS.map((down): Point =>
        aside
          ? { x: foot.x - 4, y: foot.y + canvas.size * 0.6 + down }
          : { x: foot.x, y: foot.y + canvas.size + 3 + down },
      );
      const place = canvas.label(places, text, { anchor: aside ? "end" : "middle", color: colorOf(board) }, first);
      if (!place) continue;
      shown.add(text);
      known.add(board.piece.mark);
      lowest = Math.max(lowest, place.y);
    }
  }
  return lowest;
}
