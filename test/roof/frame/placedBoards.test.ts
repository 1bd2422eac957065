import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Point } from "../../../src/geometry/point.ts";
import { inSpace, placedBoards, type PlacedBoard } from "../../../src/roof/frame/placedBoards.ts";
import { anyRoof, framed, HALL, SHAPES } from "../outlineSpecs.ts";

const closeTo = (a: number, b: number) => {
  expect(Math.abs(a - b)).toBeLessThan(1e-8);
};

/** How far two convex polygons reach into each other, found along the sides of both; 0 or less when they only touch. */
function overlap(one: readonly Point[], two: readonly Point[]): number {
  const gaps = [one, two].flatMap((polygon) =>
    polygon.map((b, i) => {
      const a = polygon.at(i - 1)!;
      const length = Math.hypot(b.x - a.x, b.y - a.y);
      if (length < 1e-9) return -Infinity;
      const out = { x: (b.y - a.y) / length, y: (a.x - b.x) / length };
      const reach = (points: readonly Point[]) => points.map(({ x, y }) => (x - a.x) * out.x + (y - a.y) * out.y);
      return Math.min(...reach(polygon === one ? two : one));
    }),
  );
  return -Math.max(...gaps);
}

const pairs = (boards: readonly PlacedBoard[]) =>
  boards.flatMap((one, i) => boards.slice(i + 1).map((two) => [one, two] as const));

describe("placedBoards", () => {
  it.each(Object.entries(SHAPES))("places as many boards of each piece and hand as are cut, %s", (_, spec) => {
    const { frame, pieces } = framed(spec);
    const boards = placedBoards(frame, pieces);
    for (const piece of pieces) {
      const count = (hand: string) => boards.filter((board) => board.piece === piece && board.hand === hand).length;
      expect([piece.mark, count("left"), count("right"), count("plain")]).toEqual([
        piece.mark,
        piece.left,
        piece.right,
        piece.plain,
      ]);
    }
  });

  it("starts a ridge in the middle of its board's end, past the members that it carries", () => {
    for (const spec of Object.values(SHAPES)) {
      const { frame, pieces } = framed(spec);
      for (const { foot, heading, plan } of placedBoards(frame, pieces).filter(
        ({ piece }) => piece.member === "ridge",
      )) {
        const along = ({ x, y }: Point) => x * heading.x + y * heading.y;
        const least = Math.min(...plan.map(along));
        const end = plan.filter((point) => along(point) < least + 1e-6);
        closeTo(along(foot), least);
        closeTo(foot.x, end.reduce((sum, { x }) => sum + x, 0) / end.length);
        closeTo(foot.y, end.reduce((sum, { y }) => sum + y, 0) / end.length);
      }
    }
  });

  it("no two boards of any roof stand in one another, seen from above", () => {
    fc.assert(
      fc.property(
        anyRoof.filter(({ correction }) => correction === 0),
        (spec) => {
          const { frame, pieces } = framed(spec);
          for (const [one, two] of pairs(placedBoards(frame, pieces))) {
            const deep = overlap(one.plan, two.plan);
            expect([one.piece.mark, two.piece.mark, deep > 1e-7 ? deep : 0]).toEqual([
              one.piece.mark,
              two.piece.mark,
              0,
            ]);
          }
        },
      ),
      { seed: 9, numRuns: 40 },
    );
  }, 60_000);

  it("every jack's head lies on a hip's face: both its ends, to the last bit that counts", () => {
    for (const spec of [
      HALL,
      SHAPES["unequal pitches, shifted hips"]!,
      SHAPES["hips on the ridge"]!,
      SHAPES["square pyramid"]!,
    ]) {
      const { frame, pieces } = framed(spec);
      const boards = placedBoards(frame, pieces);
      const hips = boards.filter(({ piece }) => piece.member === "hip");
      for (const jack of boards.filter(({ piece }) => piece.member === "jack")) {
        const [, longer, other] = jack.plan;
        const across = hips.map(({ foot, heading, outline }) => {
          const side = ({ x, y }: Point) => (y - foot.y) * heading.x - (x - foot.x) * heading.y;
          return [outline.left.across, outline.right.across].map((face) =>
            Math.max(Math.abs(side(longer!) - face), Math.abs(side(other!) - face)),
          );
        });
        expect(Math.min(...across.flat())).toBeLessThan(1e-9);
      }
    }
  });

  it("stands jacks and hips under their roof planes, and the ridge's top flush with the commons at its faces", () => {
    const { frame, pieces } = framed(HALL);
    const boards = placedBoards(frame, pieces);
    const plane = ({ x, y }: Point) => frame.heel + Math.min(x * 0.5, (432 - x) * 0.5, y * 0.5, (288 - y) * 0.5);
    for (const board of boards.filter(({ piece }) => piece.member === "jack" || piece.member === "hip")) {
      for (const face of [board.outline.left, board.outline.right]) {
        for (const name of ["tail tip", "head"] as const) {
          const at = inSpace(board, face.points[name]!, face.across);
          closeTo(at.z, plane(at));
        }
      }
    }
    const ridge = boards.find(({ piece }) => piece.member === "ridge")!;
    closeTo(ridge.height, plane({ x: 216, y: 144 - 0.75 }));
  });

  it("gives the marks the plates say: a jack's edge nearer the corner is its plate mark", () => {
    const { frame, pieces } = framed(HALL);
    const first = placedBoards(frame, pieces).find(
      ({ piece, hand, foot }) => piece.mark === "J1" && hand === "right" && foot.y === 0,
    )!;
    const atPlate = first.plan.map(({ x }) => x);
    closeTo(Math.min(...atPlate), first.piece.foot.mark!);
    closeTo(first.to.x, first.piece.offset!);
  });
});
