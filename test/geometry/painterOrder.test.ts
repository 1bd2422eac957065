import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { painterOrder, type Side } from "../../src/geometry/painterOrder.ts";
import type { Vector3 } from "../../src/geometry/vector.ts";

interface Box {
  readonly from: Vector3;
  readonly to: Vector3;
}

const TOWARDS: Vector3 = { x: -0.4, y: -0.75, z: 0.53 };

/** A box's six sides, corners counterclockwise seen from outside. */
function sidesOf({ from: a, to: b }: Box): Side[] {
  const at = (x: number, y: number, z: number): Vector3 => ({ x: x ? b.x : a.x, y: y ? b.y : a.y, z: z ? b.z : a.z });
  return [
    [at(0, 0, 0), at(0, 1, 0), at(1, 1, 0), at(1, 0, 0)],
    [at(0, 0, 1), at(1, 0, 1), at(1, 1, 1), at(0, 1, 1)],
    [at(0, 0, 0), at(1, 0, 0), at(1, 0, 1), at(0, 0, 1)],
    [at(0, 1, 0), at(0, 1, 1), at(1, 1, 1), at(1, 1, 0)],
    [at(0, 0, 0), at(0, 0, 1), at(0, 1, 1), at(0, 1, 0)],
    [at(1, 0, 0), at(1, 1, 0), at(1, 1, 1), at(1, 0, 1)],
  ].map((corners) => ({ corners }));
}

/** How far towards the reader a line of sight through a point leaves a box; null where it misses. */
function nearest({ from, to }: Box, point: Vector3): number | null {
  let [enter, leave] = [-Infinity, Infinity];
  for (const axis of ["x", "y", "z"] as const) {
    const [one, two] = [(from[axis] - point[axis]) / TOWARDS[axis], (to[axis] - point[axis]) / TOWARDS[axis]].sort(
      (p, q) => p - q,
    ) as [number, number];
    enter = Math.max(enter, one);
    leave = Math.min(leave, two);
  }
  return leave - enter > 1e-6 ? leave : null;
}

const apart = (a: Box, b: Box) =>
  (["x", "y", "z"] as const).some((axis) => a.to[axis] <= b.from[axis] || b.to[axis] <= a.from[axis]);
const size = fc.integer({ min: 1, max: 5 });
const place = fc.integer({ min: 0, max: 8 });
const box = fc
  .tuple(place, place, place, size, size, size)
  .map(([x, y, z, a, b, c]): Box => ({ from: { x, y, z }, to: { x: x + a, y: y + b, z: z + c } }));
/** Two boxes that may touch, but do not stand in one another: with two there can be no ring. */
const twoBoxes = fc.tuple(box, box).filter(([a, b]) => apart(a, b));

describe("painted", () => {
  it("paints of two boxes the one last that is nearer on some line of sight", () => {
    fc.assert(
      fc.property(
        twoBoxes,
        fc.array(
          fc.tuple(
            fc.double({ min: 0.01, max: 0.99, noNaN: true }),
            fc.double({ min: 0.01, max: 0.99, noNaN: true }),
            fc.double({ min: 0.01, max: 0.99, noNaN: true }),
          ),
          { minLength: 20, maxLength: 20 },
        ),
        (boxes, parts) => {
          const order = painterOrder(boxes.map(sidesOf), TOWARDS);
          for (const [i, one] of boxes.entries()) {
            const other = boxes[1 - i]!;
            for (const [p, q, r] of parts) {
              const point: Vector3 = {
                x: one.from.x + p * (one.to.x - one.from.x),
                y: one.from.y + q * (one.to.y - one.from.y),
                z: one.from.z + r * (one.to.z - one.from.z),
              };
              const [mine, its] = [nearest(one, point), nearest(other, point)];
              if (mine === null || its === null || Math.abs(mine - its) < 1e-6) continue;
              expect(order.indexOf(mine > its ? i : 1 - i)).toBe(1);
            }
          }
        },
      ),
      { seed: 4, numRuns: 400 },
    );
  });

  it("gives every solid once, also those that hide one another in a ring", () => {
    const bars: Box[] = [
      { from: { x: 0, y: 0, z: 0 }, to: { x: 9, y: 1, z: 1 } },
      { from: { x: 8, y: 0, z: 1 }, to: { x: 9, y: 9, z: 2 } },
      { from: { x: 0, y: 0, z: 1 }, to: { x: 1, y: 9, z: 2 } },
    ];
    expect([...painterOrder(bars.map(sidesOf), TOWARDS)].sort()).toEqual([0, 1, 2]);
  });
});
