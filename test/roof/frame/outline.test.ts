import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { alongSlope } from "../../../src/geometry/alongSlope.ts";
import type { Point } from "../../../src/geometry/point.ts";
import { outline, rafterOutline, type Outline } from "../../../src/roof/frame/outline.ts";
import { outlineFace, reachAt, type OutlineFace } from "../../../src/roof/frame/outlineFace.ts";
import type { Piece } from "../../../src/roof/frame/piece.ts";
import { main, wingedCases } from "../../solids/wings/cases.ts";
import { modelOf } from "../../solids/wings/frameOf.ts";
import { anyRoof, framed, HALL, handsOf, SHAPES } from "../outlineSpecs.ts";

const distance = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y);
const degreesOf = (a: Point, b: Point) => (Math.atan2(Math.abs(b.x - a.x), Math.abs(b.y - a.y)) * 180) / Math.PI;
const flipped = ({ across, polygon }: OutlineFace) => ({ across: -across, polygon });
const close = (value: number, expected: number) => {
  expect(Math.abs(value - expected)).toBeLessThan(1e-9 * Math.max(10, Math.abs(expected)));
};

/** Twice the area, positive counterclockwise: x to the right, y up. */
const doubleArea = (polygon: readonly Point[]) =>
  polygon.reduce((sum, b, i) => sum + polygon.at(i - 1)!.x * b.y - b.x * polygon.at(i - 1)!.y, 0);

/** Along the top edge from the lowest to the farthest point of a piece: the shortest straight board that holds it. */
function outlineExtent({ shape }: Outline): number {
  // The ends reach farthest at a corner of the plan, and the seat corner is lowest on the piece's own line.
  const xs = [0, ...shape.plan.map(({ y }) => y)].flatMap((across) =>
    outlineFace(shape, across).polygon.map(({ x }) => x),
  );
  return Math.max(...xs) - Math.min(...xs);
}

function longFace(shown: Outline): OutlineFace {
  return shown[shown.longFace];
}

/** What a tape, a square and a bevel would read off the drawn piece, held against the numbers it is cut to. */
function measure(shown: Outline, piece: Piece): void {
  const { head, toe } = longFace(shown).points;
  const ends = [...shown.edge].sort((a, b) => b.x - a.x);
  close(outlineExtent(shown), piece.shortestBoard);
  close(degreesOf(head!, toe!), piece.headCut);
  if (piece.member === "ridge") return;
  if (piece.member === "hip") {
    // In the middle of the board, which on a shifted hip is not the line over the corner.
    close(reachAt(shown.shape.plan, (shown.left.across + shown.right.across) / 2).to, piece.longRun);
    close(piece.longRun * alongSlope(piece.slope), piece.longPoint);
    close(shown.left.across - shown.right.across, piece.section.thickness);
  } else {
    const other = shown[shown.longFace === "left" ? "right" : "left"];
    close(head!.x, piece.longPoint);
    close(other.points.head!.x, piece.shortPoint);
    close(distance(longFace(shown).points["seat corner"]!, head!), piece.tape!);
    close(longFace(shown).points["tail tip"]!.x, -piece.tail);
    if (piece.head.edge !== null) close(degreesOf(ends[0]!, ends[1]!), piece.head.edge);
  }
  const { "seat corner": corner, "seat end": end } = shown.middle.points;
  close(distance(corner!, end!), piece.seat);
  // The notch goes as deep, square to the underside, as the seat corner stands above it.
  close(corner!.y + piece.section.depth, piece.notch);
  close(distance(corner!, shown.middle.points["over plate"]!), piece.heel);
}

describe("outline", () => {
  it.each(Object.entries(SHAPES))("of every piece of the hall, %s, measures what the piece says", (_, spec) => {
    const { frame, pieces } = framed(spec);
    for (const piece of pieces) for (const hand of handsOf(piece)) measure(outline(frame, piece, hand), piece);
  });

  it("of a valley board lies flat: its outer edge, its thickness and its whole width", () => {
    const { frame, pieces } = modelOf({
      ...main,
      wings: [{ wall: "front", from: 150, out: 120, span: 192, end: "gable", framing: "laid over" }],
    });
    const board = pieces.find(({ member }) => member === "valley board")!;
    for (const hand of ["left", "right"] as const) {
      const { shape } = outline(frame, board, hand);
      const outer = hand === "left" ? shape.left : shape.right;
      const edge = shape.plan.filter(({ y }) => Math.abs(y - outer) < 1e-9).map(({ x }) => x);
      close(Math.max(...edge) - Math.min(...edge), board.longPoint);
      expect([shape.plumbDepth, shape.left - shape.right]).toEqual([board.section.thickness, board.section.depth]);
    }
  });

  it("of a wing's lower ridge is pointed into its two valleys, 45 degrees each", () => {
    const { frame, pieces } = modelOf(wingedCases["a T with a lower ridge"]!);
    const { plan } = outline(
      frame,
      pieces.find(({ mark }) => mark === "R-A")!,
      "left",
    ).shape;
    const farthest = (across: number) =>
      Math.max(...plan.filter(({ y }) => Math.abs(y - across) < 1e-9).map(({ x }) => x));
    for (const face of [0.75, -0.75]) close(farthest(0) - farthest(face), 0.75);
  });

  it("does so on any roof", () => {
    fc.assert(
      fc.property(anyRoof, (spec) => {
        const { frame, pieces } = framed(spec);
        for (const piece of pieces) for (const hand of handsOf(piece)) measure(outline(frame, piece, hand), piece);
      }),
      { seed: 6, numRuns: 150 },
    );
  });

  it("has mirror images for the two hands", () => {
    fc.assert(
      fc.property(anyRoof, (spec) => {
        const { frame, pieces } = framed(spec);
        for (const piece of pieces.filter(({ member }) => member === "jack" || member === "hip")) {
          const left = outline(frame, piece, "left");
          const right = outline(frame, piece, "right");
          expect(flipped(left.left)).toEqual({ across: right.right.across, polygon: right.right.polygon });
          expect(flipped(left.right)).toEqual({ across: right.left.across, polygon: right.left.polygon });
          expect(new Set(left.edge.map(({ x, y }) => `${x} ${0 - y}`))).toEqual(
            new Set(right.edge.map(({ x, y }) => `${x} ${y + 0}`)),
          );
          expect(left.marks.map(({ mark, face, at }) => `${mark} ${face === "left"} ${at}`).sort()).toEqual(
            right.marks.map(({ mark, face, at }) => `${mark} ${face === "right"} ${at}`).sort(),
          );
        }
      }),
      { seed: 7, numRuns: 60 },
    );
  });

  it("puts the long point of a left jack on its left face", () => {
    const { pieces } = framed(HALL);
    const jack = pieces.find(({ mark }) => mark === "J1")!;
    expect(rafterOutline(jack, "left").longFace).toBe("left");
    expect(rafterOutline(jack, "right").longFace).toBe("right");
  });

  it("runs round every face and edge one way, so that each is a simple shape with an inside", () => {
    fc.assert(
      fc.property(anyRoof, (spec) => {
        const { frame, pieces } = framed(spec);
        for (const piece of pieces) {
          const { left, right, edge } = outline(frame, piece, handsOf(piece)[0]!);
          expect(doubleArea(edge)).toBeGreaterThan(0);
          for (const { polygon } of [left, right]) expect(doubleArea(polygon)).toBeLessThan(0);
        }
      }),
      { seed: 8, numRuns: 60 },
    );
  });

  it("has no heel cut and no tail where there is no overhang: the seat corner is the low end", () => {
    const { frame, pieces } = framed({ ...HALL, overhang: 0 });
    const jack = outline(
      frame,
      pieces.find(({ mark }) => mark === "J1")!,
      "left",
    ).left;
    expect(Object.keys(jack.points)).toEqual(["tail tip", "head", "toe", "seat end", "seat corner", "over plate"]);
    expect(jack.points["tail tip"]!.x).toBeCloseTo(0, 12);
    expect(Math.min(...jack.polygon.map(({ x }) => x))).toBe(jack.points["seat corner"]!.x);
  });

  it("marks a hip where the jacks' centers meet its faces, as the jacks say", () => {
    const { frame, pieces } = framed(SHAPES["unequal pitches, shifted hips"]!);
    const { marks } = outline(
      frame,
      pieces.find(({ member }) => member === "hip")!,
      "right",
    );
    const jacks = pieces.filter(({ member }) => member === "jack");
    expect(marks).toHaveLength(jacks.length);
    for (const jack of jacks) {
      const mark = marks.find((one) => one.mark === jack.mark)!;
      close(mark.at, jack.head.mark!);
      expect(mark.face).toBe(jack.planes[0]!.end ? "left" : "right");
    }
  });

  it("marks the ridge where king commons and commons stand on both faces", () => {
    const { frame, pieces } = framed(HALL);
    const { marks, right } = outline(frame, pieces[0]!, "plain");
    // 144 in from apex to apex at 24 in: two king commons and five commons a face, each flush or spaced; counted by hand.
    expect(marks.filter(({ face }) => face === "left").map(({ mark, at }) => `${mark} ${at}`)).toEqual([
      "K 0.75",
      "C 24.75",
      "C 48.75",
      "C 72.75",
      "C 96.75",
      "C 120.75",
      "K 144.75",
    ]);
    expect(right.points.head!.x).toBe(145.5);
  });
});
