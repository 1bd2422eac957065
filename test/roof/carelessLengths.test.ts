import { describe, expect, it } from "vitest";
import { number, refusal } from "../functions/asked.ts";
import { expectSaid, jacks } from "./carelessRoofs.ts";
import { atY, dot, jackInSpace, meet, space } from "./inSpace.ts";

describe("Never multiply a rounded step: round each length once, at the end, half up, from the exact value.", () => {
  /** Sixteenths of an inch in n steps of 16 in at 8 in 12, rounded half up, in whole numbers: 16 n sqrt(208) / 12 x 16 is the root of (256 n)^2 x 208 / 144. */
  function sixteenths(n: number): bigint {
    const square = (256n * BigInt(n)) ** 2n * 208n * 4n;
    // The largest k with k <= 2 x value + 1, halved: floor(value + 1/2).
    let root = BigInt(Math.floor(Math.sqrt(Number(square / 144n))));
    while ((root + 1n) ** 2n * 144n <= square) root++;
    while (root ** 2n * 144n > square) root--;
    return (root + 1n) / 2n;
  }
  it("each of fifty jacks is rounded from its own length", () => {
    const rounded = number("TAPEROUND", number("JACKSTEP", 8, 16));
    let apart = 0;
    for (let n = 1; n <= 50; n++) {
      const length = number("TAPEROUND", number("JACKLINE", 8, 16 * n));
      expect(BigInt(length * 16)).toBe(sixteenths(n));
      if (length !== n * rounded) apart++;
    }
    expect(apart).toBeGreaterThan(25);
  });
  it("the schedule's lengths are the exact ones, which a tape rounds half up", () => {
    const [first] = jacks(["Pitch", 8], ["Spacing", 16]);
    expect(first!["Long point"]).toBeCloseTo(jackInSpace(space(8, 8), 128, 1.5, 1.5).long, 10);
    expect(number("TAPEROUND", 7 + 1 / 32)).toBe(7 + 1 / 16);
  });
});

describe("The shortest jack's head can land over its own seat: it does not exist as a jack (setting out); a single-cell JACKLEN still answers while its short point lies beyond the plate line, and refuses below.", () => {
  // Span 24' at 6 in 12, 22 in o.c.: offsets 122, 100 ... 12; at 28 in o.c. 116 ... 4, whose short point is 4 - 0.75 - 1.06 in: inside the seat of 3.5 in.
  const table = jacks(["Pitch", 6], ["Spacing", 28]);
  it("the schedule leaves it out and says so", () => {
    const { short } = jackInSpace(space(6, 6), 4, 1.5, 1.5);
    const level = short / Math.hypot(1, 0.5);
    expect(level).toBeGreaterThan(0);
    expect(level).toBeLessThan(3.5);
    expect(table.map((row) => row["Offset"])).toEqual([116, 88, 60, 32]);
    expect(table.at(-1)!["Note"]).toMatch(/a shorter jack would land on its (own )?seat/);
    expectSaid(table.at(-1), /([^;]+?) left at the corner/, 32);
  });
  it("a single cell answers", () =>
    expect(number("JACKLEN", 6, 4, 1.5, 1.5)).toBeCloseTo(jackInSpace(space(6, 6), 4, 1.5, 1.5).long, 10));
  it("and refuses a short point below the plate line, with the limit", () => {
    // Where the short side face, the hip's face and the plate line meet: solved from where the short point of one more inch lies.
    const slope = jackInSpace(space(6, 6), 5, 1.5, 1.5).short - jackInSpace(space(6, 6), 4, 1.5, 1.5).short;
    const limit = 4 - jackInSpace(space(6, 6), 4, 1.5, 1.5).short / slope;
    expect(refusal("JACKLEN", 6, limit - 1e-6, 1.5, 1.5)).toContain(`Type more than ${Math.ceil(limit * 1e4) / 1e4}`);
    expect(number("JACKSHORT", 6, limit + 1e-6, 1.5, 1.5)).toBeGreaterThan(0);
  });
});

describe("No overhang: the heel vanishes (see shortest board).", () => {
  // A rafter of 8 in at 9 in 12 with no tail, side view, from the plate's outer top edge: the head's two corners, the seat's corner, the top edge over it.
  it("the seat's corner is the low end", () => {
    const [run, depth, heel] = [80, 8, 5];
    const [c, s] = [4 / 5, 3 / 5];
    const corners = [
      [0, heel],
      [run, heel + (run * 3) / 4],
      [run, heel + (run * 3) / 4 - depth / c],
      [0, 0],
    ] as const;
    const along = corners.map(([x, z]) => x * c + z * s);
    const board = Math.max(...along) - Math.min(...along);
    expect(number("COMMONBOARD", 9, run, 0, depth, heel, 0)).toBeCloseTo(board, 10);
    expect(number("COMMONBOARD", 9, run, 0, depth, heel, 0)).toBeLessThan(
      number("COMMONBOARD", 9, run, 0, depth, heel, 0.001),
    );
    expect(number("JACKBOARD", 9, 48, 1.5, 1.5, depth, heel, 0) - number("JACKLEN", 9, 48, 1.5, 1.5)).toBeCloseTo(
      heel * s,
      10,
    );
  });
  it("in the schedule too", () => {
    const [jack] = jacks(["Pitch", 9], ["Rafter", "1.5 x 8"], ["Heel", 5]);
    expect(Number(jack!["Shortest board"]) - Number(jack!["Long point"])).toBeCloseTo((5 * 3) / 5, 10);
  });
});

it("a plane's points lie in it", () => {
  const at = space(6, 12, 110);
  const point = meet(at.near, at.far, atY(30));
  expect(dot(at.near.normal, point)).toBeCloseTo(0, 12);
  expect(dot(at.far.normal, point)).toBeCloseTo(0, 12);
  expect(Math.hypot(point[0], point[1]) * at.rise).toBeCloseTo(point[2], 10);
});
