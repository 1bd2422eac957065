import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { edges } from "../../src/geometry/edges.ts";
import { faces, type Cover } from "../../src/geometry/faces.ts";
import { heightOver, type Plane } from "../../src/geometry/plane.ts";
import type { Point } from "../../src/geometry/point.ts";
import { polygonArea } from "../../src/geometry/polygon.ts";

const rectangle = (x0: number, y0: number, x1: number, y1: number): Point[] => [
  { x: x0, y: y0 },
  { x: x1, y: y0 },
  { x: x1, y: y1 },
  { x: x0, y: y1 },
];

/**
 * A hip roof of 40 by 24 at 6 in 12, and before it a wing 16 wide that reaches 10 out and in to the main ridge line.
 *
 * By hand: its ridge is at 4, and meets the main plane 8 in from the plate; it covers a triangle of 16 by 8 there.
 */
const planes: Plane[] = [
  { x: 0, y: 0.5, z: 0 },
  { x: 0, y: -0.5, z: 12 },
  { x: 0.5, y: 0, z: 0 },
  { x: -0.5, y: 0, z: 20 },
  { x: 0.5, y: 0, z: -6 },
  { x: -0.5, y: 0, z: 14 },
];
const covers: Cover[] = [
  { outline: rectangle(0, 0, 40, 24), planes: [0, 1, 2, 3] },
  { outline: rectangle(12, -10, 28, 12), planes: [4, 5] },
];

const area = (parts: readonly (readonly Point[])[]) => parts.reduce((sum, part) => sum + polygonArea(part), 0);

describe("faces", () => {
  it("a roof with a wing, by hand", () => {
    const seen = faces(planes, covers).map(area);
    const main = ((40 + 16) / 2) * 12;
    // Each side of the wing: 8 wide, 10 long at the eave and 18 at the ridge.
    expect(seen).toEqual([main - (16 * 8) / 2, main, 144, 144, 112, 112].map((value) => expect.closeTo(value, 9)));
  });

  it("of any two covers are together what both outlines cover, and the highest there", () => {
    const size = fc.double({ min: 1, max: 20, noNaN: true });
    fc.assert(
      fc.property(
        fc.tuple(size, size, size, size, fc.double({ min: 0.3, max: 2, noNaN: true })),
        ([x, y, w, h, pitch]) => {
          const own: Plane[] = [
            { x: pitch, y: 0, z: -pitch * x },
            { x: -pitch, y: 0, z: pitch * (x + w) },
          ];
          const [all, both] = [
            [...planes.slice(0, 4), ...own],
            [covers[0]!, { outline: rectangle(x, -y, x + w, h), planes: [4, 5] }],
          ];
          const seen = faces(all, both);
          const shared = Math.max(0, Math.min(40, x + w) - x) * Math.min(24, h);
          expect(area(seen.flat())).toBeCloseTo(40 * 24 + w * (y + h) - shared, 6);
          for (const [i, parts] of seen.entries())
            for (const part of parts) {
              const middle = {
                x: part.reduce((sum, point) => sum + point.x, 0) / part.length,
                y: part.reduce((sum, point) => sum + point.y, 0) / part.length,
              };
              const over = both
                .filter(
                  ({ outline: [low, , high] }) =>
                    low!.x <= middle.x && middle.x <= high!.x && low!.y <= middle.y && middle.y <= high!.y,
                )
                .map((cover) => Math.min(...cover.planes.map((plane) => heightOver(all[plane]!, middle))));
              expect(heightOver(all[i]!, middle)).toBeCloseTo(Math.max(...over), 9);
            }
        },
      ),
      { seed: 3 },
    );
  });

  it("gives a plane that two covers share one face", () => {
    // The wing stands in line with the left end, and has its plane.
    const flush: Cover = { outline: rectangle(0, -10, 16, 12), planes: [2, 4] };
    const right = { x: -0.5, y: 0, z: 8 };
    const seen = faces([...planes.slice(0, 4), right], [covers[0]!, { ...flush, planes: [2, 4] }]).map(area);
    // The end's face and half of the wing: 24 wide at the eave with its 10, less the triangles that the front and back planes take.
    expect(seen[2]).toBeCloseTo(144 + 8 * 10 + (8 * 8) / 2, 9);
    expect(seen.reduce((sum, one) => sum + one, 0)).toBeCloseTo(40 * 24 + 16 * 10, 9);
  });
});

describe("the parts of a face", () => {
  const moved = (by: number) => ({
    planes: planes.map(({ x, y, z }): Plane => ({ x, y, z: z - (x + y) * by })),
    covers: covers.map((cover): Cover => ({
      ...cover,
      outline: cover.outline.map(({ x, y }) => ({ x: x + by, y: y + by })),
    })),
  });

  it("are one where nothing stands in the way, and none where a plane is nowhere seen", () => {
    const apart: Cover = { outline: rectangle(50, 0, 60, 10), planes: [4] };
    const hidden: Cover = { outline: rectangle(10, 6, 20, 12), planes: [5] };
    const low = [...planes.slice(0, 4), { x: 0, y: 0, z: 1 }, { x: 0, y: 0, z: 1 }];
    expect(faces(low, [covers[0]!, apart, hidden]).map((parts) => parts.length)).toEqual([1, 1, 1, 1, 1, 0]);
    // A plane above the others of its own cover.
    expect(faces([...low, { x: 0, y: 0, z: 9 }], [{ ...apart, planes: [4, 6] }])[6]).toEqual([]);
  });

  it.each([0, 1e5, -1e5])("are the same wherever the roof stands: moved by %s", (by) => {
    const there = moved(by);
    // Two ends of a wing that reach a hundredth past the main roof's wall.
    const small: Cover = { outline: rectangle(by + 30, by - 0.01, by + 38, by + 6), planes: [6, 7] };
    const sides: Plane[] = [
      { x: 0.5, y: 0, z: -0.5 * (by + 30) },
      { x: -0.5, y: 0, z: 0.5 * (by + 38) },
    ];
    const seen = faces([...there.planes, ...sides], [...there.covers, small]);
    // By hand: a triangle of 4 by 4 over the main roof, and 4 by a hundredth outside it.
    const main = 40 * 24 + 16 * 10;
    expect(area(seen.flat())).toBeCloseTo(main + 8 * 0.01, 4);
    expect(area(seen[6]!)).toBeCloseTo((4 * 4) / 2 + 4 * 0.01, 4);
  });

  it("are not doubled by a corner that an outline gives twice", () => {
    const twice = covers.map((cover) => ({ ...cover, outline: cover.outline.flatMap((corner) => [corner, corner]) }));
    expect(faces(planes, twice).map(area)).toEqual(faces(planes, covers).map(area));
  });

  it.each([1, 1000])(
    "are no slivers, where roofs only touch or lie in line to the last bit, of %s the size",
    (scale) => {
      for (let n = 3; n < 60; n++) {
        // A wing as wide as the roof is deep, so that four planes meet in one point; thirds and sevenths are no exact doubles.
        const [wide, pitch] = [(scale * n) / 7, 1 / 3 + n / 90];
        const from = scale * (10 / 3 + n / 11);
        const own: Plane[] = [
          { x: 0, y: pitch, z: 0 },
          { x: 0, y: -pitch, z: pitch * wide },
          { x: pitch, y: 0, z: -pitch * from },
          { x: -pitch, y: 0, z: pitch * (from + wide) },
        ];
        const seen = faces(own, [
          { outline: rectangle(0, 0, 40 * scale, wide), planes: [0, 1] },
          { outline: rectangle(from, -5 * scale, from + wide, wide / 2), planes: [2, 3] },
          { outline: rectangle(from + wide, wide, from + 2 * wide, wide + scale), planes: [2] },
        ]);
        for (const part of seen.flat()) expect(polygonArea(part)).toBeGreaterThan(1e-9 * scale * scale);
      }
    },
  );
});

describe("edges", () => {
  const found = edges(planes, faces(planes, covers), 1e-9);
  const lengthOf = (a: number, b: number) =>
    found
      .filter(({ left, right }) => [a, b].includes(left) && [a, b].includes(right))
      .map(({ from, to, convex }) => [Math.hypot(to.x - from.x, to.y - from.y), convex]);

  it.each([
    ["the main ridge", 0, 1, 16, true],
    ["a hip", 0, 2, 12 * Math.SQRT2, true],
    ["a valley", 0, 4, 8 * Math.SQRT2, false],
    ["the wing's ridge, to where it meets the main plane", 4, 5, 18, true],
  ])("%s", (_, a, b, length, convex) => {
    expect(lengthOf(a, b)).toEqual([[expect.closeTo(length, 9), convex]]);
  });

  it("are all of them, each from its lower end up, its left plane on the left", () => {
    expect(found).toHaveLength(8);
    for (const { left, right, from, to, convex } of found) {
      expect(heightOver(planes[left]!, to)).toBeGreaterThan(heightOver(planes[left]!, from) - 1e-9);
      const length = Math.hypot(to.x - from.x, to.y - from.y);
      const beside = { x: from.x - (to.y - from.y) / length, y: from.y + (to.x - from.x) / length };
      const higher = heightOver(planes[left]!, beside) > heightOver(planes[right]!, beside);
      expect(higher).toBe(!convex);
    }
  });
});
