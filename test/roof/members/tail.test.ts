import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Failure } from "../../../src/measure/result.ts";
import { levelOverhang, soffitCut, tailOf, type TailCut } from "../../../src/roof/members/tail.ts";

type Point = readonly [number, number];
/** A half plane of the side view: keeps the points with a x + b z <= c. */
type Half = readonly [a: number, b: number, c: number];

/** What a half plane leaves of a convex outline (Sutherland and Hodgman): wood cut by a straight saw, with no rafter formula. */
function sawn(outline: readonly Point[], [a, b, c]: Half): Point[] {
  const over = ([x, z]: Point) => a * x + b * z - c;
  return outline.flatMap((here, i) => {
    const next = outline[(i + 1) % outline.length]!;
    const [d, e] = [over(here), over(next)];
    const crossing: Point[] =
      d * e < 0 ? [[here[0] + ((next[0] - here[0]) * d) / (d - e), here[1] + ((next[1] - here[1]) * d) / (d - e)]] : [];
    return d <= 0 ? [here, ...crossing] : crossing;
  });
}

interface Given {
  pitch: number;
  overhang: number;
  depth: number;
  heel: number;
  cut: TailCut;
  fascia: number | null;
}

/**
 * The part of a rafter outside the plate line, sawn from a long board in its side view. x runs outward from the plate line, z up from
 * the plate's top; the board's top edge passes one heel over the plate's edge.
 */
function tailOutline({ pitch, overhang, depth, heel, cut, fascia }: Given): Point[] {
  const angle = Math.atan(pitch);
  const [down, under]: [Point, Point] = [
    [Math.cos(angle), -Math.sin(angle)],
    [-Math.sin(angle), -Math.cos(angle)],
  ];
  const at = (along: number, deep: number): Point => [
    along * down[0] + deep * under[0],
    heel + along * down[1] + deep * under[1],
  ];
  const far = 10 * (overhang + depth + heel);
  let outline: Point[] = [at(-far, 0), at(far, 0), at(far, depth), at(-far, depth)];
  outline = sawn(outline, [-1, 0, 0]);
  const tip: Point = [overhang, heel - overhang * pitch];
  if (cut === "square") return sawn(outline, [down[0], down[1], down[0] * tip[0] + down[1] * tip[1]]);
  outline = sawn(outline, [1, 0, overhang]);
  return cut === "level" ? sawn(outline, [0, -1, fascia! - tip[1]]) : outline;
}

const measured = (given: Given) => {
  const outline = tailOutline(given);
  const angle = Math.atan(given.pitch);
  return {
    board: Math.max(...outline.map(([x, z]) => x * Math.cos(angle) - (z - given.heel) * Math.sin(angle))),
    below: -Math.min(...outline.map(([, z]) => z)),
  };
};

const shape = fc
  .record({
    pitch: fc.double({ min: 1 / 12, max: 2, noNaN: true }),
    overhang: fc.double({ min: 6, max: 48, noNaN: true }),
    depth: fc.double({ min: 3.5, max: 14, noNaN: true }),
    share: fc.double({ min: 0.05, max: 0.95, noNaN: true }),
    cut: fc.constantFrom<TailCut>("plumb", "square", "level"),
  })
  .map(({ share, ...rest }): Given => {
    const plumbDepth = rest.depth / Math.cos(Math.atan(rest.pitch));
    return { ...rest, heel: plumbDepth * share, fascia: rest.cut === "level" ? plumbDepth * (1 - share / 2) : null };
  });

// The 3-4-5 triangle: 9 in 12 rises 3 while the run is 4 and the slope 5.
const given: Given = { pitch: 0.75, overhang: 16, depth: 8, heel: 7, cut: "plumb", fascia: null };

describe("tailOf", () => {
  it.each<[string, Partial<Given>, { board: number; below: number }]>([
    ["plumb", {}, { board: 26, below: 15 }],
    ["square", { cut: "square" }, { board: 20, below: 11.4 }],
    ["level", { cut: "level", fascia: 5 }, { board: 23, below: 10 }],
    ["no overhang: the seat's corner is the low end", { overhang: 0 }, { board: 4.2, below: 0 }],
  ])("by the 3-4-5 triangle: %s", (_, other, expected) => {
    const tail = tailOf({ ...given, ...other });
    expect(tail).toEqual({ board: expect.closeTo(expected.board, 12), below: expect.closeTo(expected.below, 12) });
  });

  it("is what a saw leaves of the board", () => {
    fc.assert(
      fc.property(shape, (one) => {
        const tail = tailOf(one);
        // Small overhangs are refused below, where the saw would meet the seat.
        if (tail instanceof Failure) {
          expect(["square tail cuts the seat", "fascia above the plate"]).toContain(tail.problem.kind);
          return;
        }
        const wood = measured(one);
        expect(tail.board).toBeCloseTo(wood.board, 9);
        expect(tail.below).toBeCloseTo(wood.below, 9);
      }),
      { seed: 1, numRuns: 500 },
    );
  });

  it("scales with its lengths", () => {
    fc.assert(
      fc.property(shape, fc.double({ min: 0.1, max: 30, noNaN: true }), (one, k) => {
        const tail = tailOf(one);
        const large = tailOf({
          ...one,
          overhang: one.overhang * k,
          depth: one.depth * k,
          heel: one.heel * k,
          fascia: one.fascia === null ? null : one.fascia * k,
        });
        if (tail instanceof Failure || large instanceof Failure) return;
        expect(large.board / k).toBeCloseTo(tail.board, 9);
        expect(large.below / k).toBeCloseTo(tail.below, 9);
      }),
      { seed: 2 },
    );
  });

  // Each limit as a figure: just past it there is a tail.
  it.each<[string, Partial<Given>, string, keyof Given, "least" | "most", number]>([
    ["a heel of the plumb depth", { heel: 10 }, "heel above depth", "heel", "most", 10],
    [
      "a square cut into the seat",
      { cut: "square", overhang: 3 },
      "square tail cuts the seat",
      "overhang",
      "least",
      3.36,
    ],
    ["a fascia deeper than the rafter", { cut: "level", fascia: 10 }, "fascia too deep", "fascia", "most", 10],
    [
      "a level cut above the plate",
      { cut: "level", overhang: 2, fascia: 5 },
      "fascia above the plate",
      "fascia",
      "least",
      5.5,
    ],
  ])("refuses %s, with the limit", (_, other, kind, key, bound, limit) => {
    const reason = tailOf({ ...given, ...other }) as Failure;
    expect(reason.problem).toEqual({ kind, [bound]: expect.closeTo(limit, 12) });
    const within =
      (reason.problem as unknown as Record<string, number>)[bound]! * (bound === "most" ? 1 - 1e-9 : 1 + 1e-9);
    expect(tailOf({ ...given, ...other, [key]: within })).not.toBeInstanceOf(Failure);
  });

  it("takes what lies just on a limit", () => {
    // Heel 6.25: 6.25 x 3/4 over 25/16 is 3. Heel 7, overhang 2: the plate lies 7 - 1.5 = 5.5 under the tip.
    expect(tailOf({ ...given, cut: "square", heel: 6.25, overhang: 3 })).toEqual({
      board: 3.75,
      below: expect.closeTo(0, 12),
    });
    expect(tailOf({ ...given, cut: "level", overhang: 2, fascia: 5.5 })).toEqual({
      board: expect.closeTo(2.5 + 3.3, 12),
      below: 0,
    });
  });

  it("a square cut that the notch ends hangs no lower than the plate line lets it", () => {
    // The cut would be 8 x 4/5 = 6.4 tall; from 3.6 out the plate line is met 3.6 / (3/4) = 4.8 under the tip.
    expect(tailOf({ ...given, cut: "square", overhang: 3.6 })).toEqual({
      board: expect.closeTo(4.5, 12),
      below: expect.closeTo(3.6 * 0.75 + 4.8 - 7, 12),
    });
  });

  it("without overhang a level cut needs a fascia down to the plate, and then takes the seat's corner only", () => {
    expect(tailOf({ ...given, cut: "level", overhang: 0, fascia: 7 })).toEqual({
      board: expect.closeTo(4.2, 12),
      below: 0,
    });
    expect(tailOf({ ...given, cut: "level", overhang: 0, fascia: 6.5 })).toEqual(
      new Failure({ kind: "fascia above the plate", least: 7 }),
    );
  });

  it("refuses a fascia where none counts, and none where one does", () => {
    expect(tailOf({ ...given, fascia: 5 })).toEqual(new Failure({ kind: "fascia not used" }));
    expect(tailOf({ ...given, cut: "square", fascia: 5 })).toEqual(new Failure({ kind: "fascia not used" }));
    expect(tailOf({ ...given, cut: "level" })).toEqual(new Failure({ kind: "fascia missing" }));
  });
});

describe("soffitCut", () => {
  it("is the level edge that the saw leaves", () => {
    fc.assert(
      fc.property(
        shape.filter(({ cut }) => cut === "level"),
        (one) => {
          const outline = tailOutline(one);
          const lowest = Math.min(...outline.map(([, z]) => z));
          const edge = outline.filter(([, z]) => z - lowest < 1e-9).map(([x]) => x);
          expect(soffitCut({ ...one, fascia: one.fascia! })).toBeCloseTo(Math.max(...edge) - Math.min(...edge), 8);
        },
      ),
      { seed: 3 },
    );
  });

  it("refuses a fascia that leaves nothing to cut level", () => {
    expect(soffitCut({ pitch: 0.75, overhang: 16, depth: 8, fascia: 10 })).toEqual(
      new Failure({ kind: "fascia too deep", most: 10 }),
    );
  });
});

describe("levelOverhang", () => {
  it("brings both fascias to one height", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 2, noNaN: true }),
        fc.double({ min: 0.1, max: 2, noNaN: true }),
        fc.double({ min: 0, max: 60, noNaN: true }),
        (one, two, overhang) => {
          expect(levelOverhang(one, overhang, two) * two).toBeCloseTo(overhang * one, 10);
        },
      ),
      { seed: 4 },
    );
  });
});
