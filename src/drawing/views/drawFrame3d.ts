import type { Point } from "../../geometry/point.ts";
import type { Vector3 } from "../../geometry/vector.ts";
import type { Frame } from "../../roof/frame/frame.ts";
import type { Outline } from "../../roof/frame/outline.ts";
import { outlineFace, type OutlineFace, type PointName } from "../../roof/frame/outlineFace.ts";
import type { Piece } from "../../roof/frame/piece.ts";
import { inSpace, placedBoards, type PlacedBoard } from "../../roof/frame/placedBoards.ts";
import { colorOf, isBearer, labelOf } from "../canvas/labelOf.ts";
import { painterOrder, type Side } from "../../geometry/painterOrder.ts";
import { Canvas, type BoardShape, type DrawingOptions } from "../canvas/canvas.ts";
import type { View } from "../canvas/view.ts";

/** From where a frame is looked at, and the height in pixels that it is drawn into, in the middle and at one scale however it is turned. */
export interface Turned {
  /** About the plumb line, in degrees: 0 looks at the front, 90 at the right end. */
  readonly turn: number;
  /** Looked down on, in degrees: 0 is level, 90 from straight above. */
  readonly down: number;
  readonly height: number;
}

/** An axonometric projection, so lengths of one direction keep their ratio. */
interface Eye {
  /** Level to the right as seen, level away from the reader, and towards the reader. */
  readonly right: Point;
  readonly away: Point;
  readonly towards: Vector3;
  /** A point of space as it is seen: x to the right, y up. */
  seen(point: Vector3): Point;
}

/** As the guide shows it. */
const STILL = { turn: -28, down: 32 } as const;

/** From straight above nothing is nearer than anything else on its plumb line; this is as good as above. */
const ABOVE = 89;

function eyeAt({ turn, down }: Pick<Turned, "turn" | "down">): Eye {
  const [about, over] = [(turn * Math.PI) / 180, (Math.min(ABOVE, down) * Math.PI) / 180];
  const right = { x: Math.cos(about), y: Math.sin(about) };
  const away = { x: -Math.sin(about), y: Math.cos(about) };
  const level = Math.cos(over);
  return {
    right,
    away,
    towards: { x: -away.x * level, y: -away.y * level, z: Math.sin(over) },
    seen: ({ x, y, z }) => ({
      x: x * right.x + y * right.y,
      y: z * level + (x * away.x + y * away.y) * Math.sin(over),
    }),
  };
}

/** Twice the area in square pixels under which a side is not drawn. */
const SEEN = 0.5;

/** The whole frame in the round: every board, farthest first, so that nearer ones cover what they hide. Turned, its sides are shaded. */
export function drawFrame3d(frame: Frame, pieces: readonly Piece[], options: DrawingOptions, turned?: Turned): string {
  const canvas = new Canvas(options);
  const { words } = canvas;
  const eye = eyeAt(turned ?? STILL);
  const boards = placedBoards(frame, pieces);
  const sections = new Map(
    [...new Set(boards.map((board) => board.outline))].map((outline) => [outline, sectionsOf(outline)]),
  );
  const solids = boards.map((board) => ({ board, sides: sidesOf(board, sections.get(board.outline)!) }));
  const corners = solids.flatMap(({ sides }) => sides.flatMap((side) => side.corners));
  const view = turned ? middle(canvas, corners, eye, turned) : across(canvas, corners, eye);
  const order = painterOrder(
    solids.map(({ sides }) => sides),
    eye.towards,
  );
  canvas.boards(
    view,
    order.flatMap((i) =>
      shapesOf(solids[i]!.board, solids[i]!.sides, eye, SEEN / view.scale ** 2, turned !== undefined),
    ),
  );
  const nearest = order.map((i) => solids[i]!.board).reverse();
  const lowest = writeFeet(canvas, view, nearest, eye);
  const bottom = Math.max(view.y - view.scale * extent(corners.map((one) => eye.seen(one).y))[0], lowest) + 6;
  return canvas.svg(
    turned ? turned.height : bottom,
    words.frame,
    `${words.frame}: ${pieces.map(({ mark, left, right, plain }) => `${mark} ×${left + right + plain}`).join(", ")}.`,
  );
}

const extent = (values: readonly number[]): [number, number] => [
  values.reduce((a, b) => Math.min(a, b), Infinity),
  values.reduce((a, b) => Math.max(a, b), -Infinity),
];

/** As wide as the canvas. */
function across(canvas: Canvas, corners: readonly Vector3[], eye: Eye): View {
  const points = corners.map((corner) => eye.seen(corner));
  const margin = 2 * canvas.size;
  const [least, most] = extent(points.map(({ x }) => x));
  const [, high] = extent(points.map(({ y }) => y));
  const scale = (canvas.width - 2 * margin) / (most - least);
  return { name: "frame", scale, x: margin - least * scale, y: 4 + high * scale, weight: 0.6 };
}

/** In the middle, as large as it may be without leaving the canvas when it is turned. */
function middle({ width, size }: Canvas, corners: readonly Vector3[], eye: Eye, { down, height }: Turned): View {
  const [[west, east], [south, north], [low, high]] = [
    extent(corners.map(({ x }) => x)),
    extent(corners.map(({ y }) => y)),
    extent(corners.map(({ z }) => z)),
  ] as const;
  const across = Math.hypot(east - west, north - south);
  const over = (down * Math.PI) / 180;
  const tall = across * Math.sin(over) + (high - low) * Math.cos(over);
  // Under the frame is room for the marks at its feet.
  const scale = Math.min((width - 4 * size) / across, (height - 4 * size) / tall);
  const center = eye.seen({ x: (west + east) / 2, y: (south + north) / 2, z: (low + high) / 2 });
  return {
    name: "frame",
    scale,
    x: width / 2 - center.x * scale,
    y: height / 2 - size + center.y * scale,
    weight: 0.6,
  };
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
function shapesOf(board: PlacedBoard, sides: readonly Side[], eye: Eye, least: number, shaded: boolean): BoardShape[] {
  const { piece, hand } = board;
  const color = colorOf(board);
  return sides.flatMap((side): BoardShape[] => {
    const polygon = side.corners.map((corner) => eye.seen(corner));
    if (doubleArea(polygon) <= least) return [];
    return [{ polygon, mark: piece.mark, hand, color, shade: shaded ? shadeOf(side, eye) : 0 }];
  });
}

/** Light comes from the upper left: what looks up is plain, what looks to the left a little gray, what looks to the right more. */
function shadeOf({ corners }: Side, { right }: Eye): number {
  const [a, b, c] = corners as [Vector3, Vector3, Vector3];
  const [u, v] = [
    { x: b.x - a.x, y: b.y - a.y, z: b.z - a.z },
    { x: c.x - b.x, y: c.y - b.y, z: c.z - b.z },
  ];
  const normal = { x: u.y * v.z - u.z * v.y, y: u.z * v.x - u.x * v.z, z: u.x * v.y - u.y * v.x };
  const length = Math.hypot(normal.x, normal.y, normal.z);
  if (normal.z > 0.5 * length) return 0;
  return normal.x * right.x + normal.y * right.y < 0 ? 12 : 28;
}

/** Twice a polygon's area, positive where its corners run counterclockwise as seen: then the side faces the reader. */
function doubleArea(polygon: readonly Point[]): number {
  return polygon.reduce((sum, b, i) => sum + polygon.at(i - 1)!.x * b.y - b.x * polygon.at(i - 1)!.y, 0);
}

/** How far under its first place a mark is tried, in pixels. */
const STEPS = [0, 3, 6, 9];

/** Marks at the feet of the nearest boards, as far as they have room: first each mark once, then with either hand. Gives the lowest one's line. */
function writeFeet(canvas: Canvas, view: View, nearest: readonly PlacedBoard[], { right, away, seen }: Eye): number {
  const shown = new Set<string>();
  const known = new Set<string>();
  let lowest = 0;
  const part = (of: Point, { heading }: PlacedBoard) => of.x * heading.x + of.y * heading.y;
  const feet = nearest.filter((board) => board.piece.member !== "ridge" && part(away, board) > 1e-9);
  for (const first of [true, false]) {
    for (const board of feet) {
      const text = labelOf(board, canvas.words);
      if (shown.has(text) || (first && known.has(board.piece.mark))) continue;
      const { "tail tip": tip, "tail toe": toe, "seat corner": seat } = board.outline.middle.points;
      const { x, y } = seen(inSpace(board, toe ?? tip ?? seat!, 0));
      const foot: Point = { x: view.x + x * view.scale, y: view.y - y * view.scale };
      // Feet that run aside have their marks on that side.
      const aside = Math.abs(part(right, board)) > Math.abs(part(away, board)) && !isBearer(board.piece.member);
      const side = Math.sign(part(right, board));
      const places = STEPS.map((down): Point =>
        aside
          ? { x: foot.x - 4 * side, y: foot.y + canvas.size * 0.6 + down }
          : { x: foot.x, y: foot.y + canvas.size + 3 + down },
      );
      const anchor = !aside ? "middle" : side > 0 ? "end" : "start";
      const place = canvas.label(places, text, { anchor, color: colorOf(board) }, first);
      if (!place) continue;
      shown.add(text);
      known.add(board.piece.mark);
      lowest = Math.max(lowest, place.y);
    }
  }
  return lowest;
}
