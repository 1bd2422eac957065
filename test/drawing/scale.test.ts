import { describe, expect, it } from "vitest";
import { drawCorner } from "../../src/drawing/views/drawCorner.ts";
import { drawFrame3d } from "../../src/drawing/views/drawFrame3d.ts";
import { drawHip } from "../../src/drawing/views/drawHip.ts";
import { drawJack } from "../../src/drawing/views/drawJack.ts";
import { drawPair } from "../../src/drawing/views/drawPair.ts";
import { drawPlan } from "../../src/drawing/views/drawPlan.ts";
import type { Point } from "../../src/geometry/point.ts";
import { outline, rafterOutline } from "../../src/roof/frame/outline.ts";
import type { Hand } from "../../src/roof/frame/piece.ts";
import { placedBoards } from "../../src/roof/frame/placedBoards.ts";
import { framed, HALL, handsOf, SHAPES } from "../roof/outlineSpecs.ts";
import { inches } from "./allDrawings.ts";
import { drawnBoards, measured, type DrawnBoard } from "./readDrawing.ts";

const options = { width: 320, length: inches };

/** Drawn points are written to a thousandth of a pixel. */
function samePlaces(drawn: DrawnBoard, expected: readonly Point[]): void {
  const back = drawn.points.map((point) => measured(drawn, point));
  expect(back).toHaveLength(expected.length);
  for (const [i, { x, y }] of expected.entries()) {
    expect(Math.hypot(back[i]!.x - x, back[i]!.y - y) * drawn.view.scale).toBeLessThan(0.0011);
  }
}

describe("drawn points are the roof's own, to scale", () => {
  it.each(Object.entries(SHAPES))("in plan and corner, %s", (_, spec) => {
    const { frame, pieces } = framed(spec);
    const placed = placedBoards(frame, pieces);
    const plan = drawnBoards(drawPlan(frame, pieces, options));
    expect(plan).toHaveLength(placed.length);
    for (const [i, drawn] of plan.entries()) {
      expect([drawn.piece, drawn.hand]).toEqual([placed[i]!.piece.mark, placed[i]!.hand]);
      samePlaces(drawn, placed[i]!.plan);
    }
    for (const drawn of drawnBoards(drawCorner(frame, pieces, options))) {
      const candidates = placed.filter(({ piece, hand }) => piece.mark === drawn.piece && hand === drawn.hand);
      const near = candidates.reduce((a, b) => (away(b.plan, drawn) < away(a.plan, drawn) ? b : a));
      samePlaces(drawn, near.plan);
    }
  });

  it.each(Object.entries(SHAPES))("in side, foot and head of every piece, %s", (_, spec) => {
    const { frame, pieces } = framed(spec);
    for (const piece of pieces.filter(({ member }) => member !== "ridge")) {
      for (const hand of handsOf(piece)) {
        const svg =
          piece.member === "hip" ? drawHip(frame, pieces, { ...options, hand }) : drawJack(piece, hand, options);
        const shown = outline(frame, piece, hand);
        const views = new Map(drawnBoards(svg).map((board) => [board.view.name, board]));
        const turned = shown.edge.map(({ x, y }) => ({ x, y: hand === "left" ? -y : y }));
        samePlaces(views.get("head")!, turned);
        if (piece.member === "hip") {
          samePlaces(views.get("left")!, shown.left.polygon);
          samePlaces(views.get("right")!, shown.right.polygon);
          samePlaces(views.get("foot")!, shown.middle.polygon);
        } else {
          samePlaces(views.get("side")!, shown[shown.longFace].polygon);
          samePlaces(views.get("foot")!, shown[shown.longFace].polygon);
        }
      }
    }
  });

  it("the drawn tape line and long point are as long as the piece says", () => {
    const { pieces } = framed(HALL);
    const jack = pieces.find(({ mark }) => mark === "J1")!;
    const side = drawnBoards(drawJack(jack, "right", { ...options, width: 1000 })).find(
      ({ view }) => view.name === "side",
    )!;
    const { polygon, points } = rafterOutline(jack, "right").right;
    const at = (point: Point) => measured(side, side.points[polygon.indexOf(point)]!);
    const [head, corner] = [at(points.head!), at(points["seat corner"]!)];
    expect(head.x).toBeCloseTo(jack.longPoint, 2);
    expect(Math.hypot(head.x - corner.x, head.y - corner.y)).toBeCloseTo(jack.tape!, 2);
  });

  it("a pair is one drawing and its mirror image", () => {
    const { pieces } = framed(HALL);
    const sides = drawnBoards(
      drawPair(
        pieces.find(({ mark }) => mark === "J2")!,
        { ...options, width: 640 },
      ),
    ).filter(({ view }) => view.name === "side");
    expect(sides.map(({ hand }): string => hand)).toEqual(["left", "right"] satisfies Hand[]);
    const [left, right] = sides as [DrawnBoard, DrawnBoard];
    for (const [i, { x, y }] of left.points.entries()) {
      expect(640 - x).toBeCloseTo(right.points[i]!.x, 2);
      expect(y).toBeCloseTo(right.points[i]!.y, 2);
    }
  });

  it("3-D frame shows every board, some side of each", () => {
    for (const spec of Object.values(SHAPES)) {
      const { frame, pieces } = framed(spec);
      const drawn = drawnBoards(drawFrame3d(frame, pieces, options));
      for (const piece of pieces)
        for (const hand of handsOf(piece))
          expect(drawn.some((board) => board.piece === piece.mark && board.hand === hand)).toBe(true);
    }
  });

  it("3-D frame keeps lengths of one direction in one ratio: the ridge, turned by 28 degrees", () => {
    const { frame, pieces } = framed(HALL);
    const ridge = drawnBoards(drawFrame3d(frame, pieces, options)).filter(({ piece }) => piece === "R");
    const xs = ridge.flatMap(({ points }) => points.map(({ x }) => x));
    const [cos, sin] = [Math.cos((28 * Math.PI) / 180), Math.sin((28 * Math.PI) / 180)];
    expect((Math.max(...xs) - Math.min(...xs)) / ridge[0]!.view.scale).toBeCloseTo(145.5 * cos + 1.5 * sin, 1);
  });

  it("writes the piece's numbers, and no others, where they are measured", () => {
    const { frame, pieces } = framed(HALL);
    const jack = pieces.find(({ mark }) => mark === "J1")!;
    const svg = drawJack(jack, "left", options).replaceAll("&#34;", '"');
    for (const value of [
      jack.longPoint,
      jack.shortPoint,
      jack.tape!,
      jack.shortestBoard,
      jack.tail,
      jack.heel,
      jack.seat,
      jack.overhang,
      jack.notch,
    ])
      expect(svg).toMatch(new RegExp(`[ >]${inches(value)}<`));
    const corner = drawCorner(frame, pieces, options).replaceAll("&#34;", '"');
    for (const { foot, head } of pieces.filter(({ member }) => member === "jack")) {
      expect(corner).toContain(`>${inches(foot.mark!)}<`);
      expect(corner).toContain(`>${inches(head.mark!)}<`);
    }
  });
});

/** How far a drawn board is from one of the roof's, by their first corners. */
function away(plan: readonly Point[], drawn: DrawnBoard): number {
  const first = measured(drawn, drawn.points[0]!);
  return Math.hypot(first.x - plan[0]!.x, first.y - plan[0]!.y);
}
