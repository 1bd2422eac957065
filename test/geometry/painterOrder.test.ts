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

/** The same, turned in space. */
function turned({ x, y, z }: Vector3, [a, b, c]: readonly [number, number, number]): Vector3 {
  [x, y] = [x * Math.cos(a) - y * Math.sin(a), x * Math.sin(a) + y * Math.cos(a)];
  [y, z] = [y * Math.cos(b) - z * Math.sin(b), y * Math.sin(b) + z * Math.cos(b)];
  [x, z] = [x * Math.cos(c) - z * Math.sin(c), x * Math.sin(c) + z * Math.cos(c)];
  return { x, y, z };
}
const turn = fc.double({ min: -1.2, max: 1.2, noNaN: true });

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
        fc.tuple(turn, turn, turn),
        (boxes, parts, by) => {
          const order = painterOrder(
            boxes.map((one) => sidesOf(one).map(({ corners }) => ({ corners: corners.map((at) => turned(at, by)) }))),
            turned(TOWARDS, by),
          );
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

  it("goes by depth where nothing is hidden, farthest first, whatever plane lies between", () => {
    // All faces of a roof's boards are seen apart; rows and columns of boxes with gaps wider than their shadows.
    const apart: Box[] = [];
    for (let i = 0; i < 3; i++)
      for (let j = 0; j < 3; j++) {
        const at = { x: 30 * i - 7 * j, y: 4 * j - 11 * i, z: 40 * j + (i * j) / 3 };
        apart.push({ from: at, to: { x: at.x + 1, y: at.y + 2, z: at.z + 3 } });
      }
    const depth = ({ from, to }: Box) =>
      TOWARDS.x * (from.x + to.x) + TOWARDS.y * (from.y + to.y) + TOWARDS.z * (from.z + to.z);
    const byDepth = [...apart.keys()].sort((a, b) => depth(apart[a]!) - depth(apart[b]!));
    expect(painterOrder(apart.map(sidesOf), TOWARDS)).toEqual(byDepth);
    expect(byDepth).not.toEqual([...apart.keys()]);
  });

  it("is not upset by a side of no size, as a cut through a corner leaves it", () => {
    const [near, far] = [
      { from: { x: 0, y: 0, z: 0 }, to: { x: 2, y: 2, z: 2 } },
      { from: { x: 0, y: 2, z: 0 }, to: { x: 2, y: 4, z: 2 } },
    ];
    const slivers = [1, -1].map((by): Side => ({
      corners: [
        { x: 2, y: 2, z: 2 },
        { x: 2 + 1e-9, y: 2 + by * 1e-9, z: 2 },
        { x: 2, y: 2 + by * 1e-9, z: 2 + 1e-9 },
      ],
    }));
    for (const sliver of slivers)
      expect(
        painterOrder(
          [
            [sliver, ...sidesOf(near!)],
            [sliver, ...sidesOf(far!)],
          ],
          TOWARDS,
        ),
      ).toEqual([1, 0]);
  });

  it("paints a small plate that lies on a large one after it where their common side is seen, else before, wherever it lies", () => {
    const share = fc.double({ min: 0.05, max: 0.9, noNaN: true });
    fc.assert(
      fc.property(
        fc.tuple(fc.integer({ min: 2, max: 20 }), fc.integer({ min: 2, max: 20 })),
        fc.tuple(share, share),
        fc.tuple(turn, turn, turn),
        fc.boolean(),
        ([width, depth], [x, y], by, first) => {
          const large: Box = { from: { x: 0, y: 0, z: 0 }, to: { x: width, y: depth, z: 1 } };
          const small: Box = {
            from: { x: x * width, y: y * depth, z: 1 },
            to: { x: (x + 0.1) * width, y: (y + 0.1) * depth, z: 1.2 },
          };
          const up = turned({ x: 0, y: 0, z: 1 }, by);
          const facing = up.x * TOWARDS.x + up.y * TOWARDS.y + up.z * TOWARDS.z;
          fc.pre(Math.abs(facing) > 0.01);
          const boxes = first ? [small, large] : [large, small];
          const order = painterOrder(
            boxes.map((one) => sidesOf(one).map(({ corners }) => ({ corners: corners.map((at) => turned(at, by)) }))),
            TOWARDS,
          );
          expect(order.map((i) => boxes[i])).toEqual(facing > 0 ? [large, small] : [small, large]);
        },
      ),
      { seed: 4, numRuns: 200 },
    );
  });

  it("goes by depth where shadows miss each other along one of eight lines across the sight, though a plane says otherwise", () => {
    // From high above. The picture's unit vectors: one level, and one square to that and to the line of sight.
    const [tx, ty, tz] = [2 / 7, -3 / 7, 6 / 7];
    const level = Math.sqrt(1 - tz * tz);
    const right: Vector3 = { x: -ty / level, y: tx / level, z: 0 };
    const up: Vector3 = { x: -tz * right.y, y: tz * right.x, z: level };
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 15 }),
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        fc.boolean(),
        fc.tuple(turn, turn, turn),
        (eighth, deeper, nearer, by) => {
          const angle = (eighth * Math.PI) / 8;
          const across = (at: Vector3) =>
            Math.cos(angle) * (at.x * right.x + at.y * right.y) +
            Math.sin(angle) * (at.x * up.x + at.y * up.y + at.z * up.z);
          // A shadow of the cube is as long as those of three edges that meet; the next cube's starts a little after it.
          const edges = [
            turned({ x: 1, y: 0, z: 0 }, by),
            turned({ x: 0, y: 1, z: 0 }, by),
            turned({ x: 0, y: 0, z: 1 }, by),
          ];
          const off = edges.reduce((sum, edge) => sum + Math.abs(across(edge)), 0.01);
          const [cos, sin] = [off * Math.cos(angle), off * Math.sin(angle)];
          const depth = nearer ? deeper : -deeper;
          const cube = sidesOf({ from: { x: 0, y: 0, z: 0 }, to: { x: 1, y: 1, z: 1 } }).map(({ corners }) => ({
            corners: corners.map((at) => turned(at, by)),
          }));
          const moved = cube.map(({ corners }) => ({
            corners: corners.map(({ x, y, z }) => ({
              x: x + cos * right.x + sin * up.x + depth * tx,
              y: y + cos * right.y + sin * up.y + depth * ty,
              z: z + sin * up.z + depth * tz,
            })),
          }));
          expect(painterOrder([cube, moved], { x: tx, y: ty, z: tz })).toEqual(nearer ? [0, 1] : [1, 0]);
        },
      ),
      { seed: 4, numRuns: 400 },
    );
  });

  it("does not take for hidden what only touches in the picture, on either hand", () => {
    const towards: Vector3 = { x: 0, y: -0.8, z: 0.6 };
    const cube = (x: number, y: number, z: number) =>
      sidesOf({ from: { x, y, z }, to: { x: x + 1, y: y + 1, z: z + 1 } });
    // Higher than the first cube, so before its top; farther back, by 0.8 * 0.9 - 0.6; and beside it, or half before it.
    for (const x of [1, -1]) expect(painterOrder([cube(0, 0, 0), cube(x, 0.9, 1)], towards)).toEqual([1, 0]);
    expect(painterOrder([cube(0, 0, 0), cube(0.5, 0.9, 1)], towards)).toEqual([0, 1]);
  });

  it("goes by the mean depth of the corners, however many there are, of solids of which no plane tells", () => {
    const upright = sidesOf({ from: { x: 4, y: 4, z: 3 }, to: { x: 5, y: 5, z: 7 } });
    const lying = sidesOf({ from: { x: 0, y: 4.2, z: 4 }, to: { x: 9, y: 4.8, z: 4.5 } });
    // Corners of equal weight: 0.5 of depth between the two, both ways round.
    const towards: Vector3 = { x: 0.1, y: -0.1, z: 1 };
    expect(painterOrder([upright, lying], towards)).toEqual([1, 0]);
    expect(painterOrder([lying, upright], towards)).toEqual([0, 1]);
    // A single triangle of depth 6 across a box of depth 4 has fewer corners, and still is the nearer.
    const triangle: Side = {
      corners: [
        { x: 0, y: 0, z: 3 },
        { x: 9, y: 0, z: 3 },
        { x: 4, y: 9, z: 12 },
      ],
    };
    const box = sidesOf({ from: { x: 3, y: 3, z: 3 }, to: { x: 6, y: 6, z: 5 } });
    expect(painterOrder([[triangle], box], { x: 1e-3, y: 0, z: 1 })).toEqual([1, 0]);
    expect(painterOrder([box, [triangle]], { x: 1e-3, y: 0, z: 1 })).toEqual([0, 1]);
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
