import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkCuts, differences, median, type Cut } from "../../../src/pane/state/checkCuts.ts";
import { START_INPUTS } from "../../../src/pane/state/fields.ts";
import { report } from "../../../src/pane/state/report.ts";
import { sideName, type SideName } from "../../../src/roof/frame/piece.ts";

const model = report(START_INPUTS).model!;
const uneven = report({ ...START_INPUTS, "End pitch": "8" }).model!;
const jack = model.pieces.find(({ member }) => member === "jack")!;
const cut = (offset: number, off: number, side: SideName = "Both"): Cut => ({
  piece: {
    ...jack,
    mark: `J${offset}`,
    offset,
    planes: jack.planes.filter(({ end }) => side === "Both" || end === (side === "End")),
  },
  tape: 0,
  longPoint: 0,
  off,
});
const only = (...cuts: Cut[]) => differences(cuts, "in")[0]!;

describe("checkCuts", () => {
  it("turns a measured tape into the long point that it means, by Pythagoras on the roof's rise and the height above plate", () => {
    const j1 = model.pieces.find(({ mark }) => mark === "J1")!;
    const { cuts, wrong } = checkCuts(model, { J1: String(j1.tape! + 0.5), J2: "" });
    expect(wrong).toEqual({});
    const [{ longPoint, off }] = cuts as [Cut];
    const run = longPoint * Math.cos(Math.atan(0.5));
    expect(Math.hypot(run, j1.heel + run / 2)).toBeCloseTo(j1.tape! + 0.5, 9);
    expect(off).toBeCloseTo(longPoint - j1.longPoint, 12);
  });
  it("finds nothing off where the computed tape was measured, on either side", () => {
    const tapes = Object.fromEntries(
      uneven.pieces.filter(({ member }) => member === "jack").map(({ mark, tape }) => [mark, String(tape)]),
    );
    const { cuts } = checkCuts(uneven, tapes);
    expect(cuts.length).toBe(Object.keys(tapes).length);
    for (const { off } of cuts) expect(off).toBeCloseTo(0, 9);
  });
  it.each([
    ["long", /J1: .*no length/],
    ["0", /J1: 0 was read/],
    ["2860 mm", /J1: .*metric/],
    // Height above plate: 7.25 x 13.4164 / 12 - 3.5 x 6 / 12 = 6.36 in, rounded up on the tape.
    ["3", /^J1: .*heel.*Type more than 6 3\/8"\.$/],
    ["x".repeat(10_000), /J1: /],
  ])("says why %s cannot be a tape", (text, words) => {
    expect(checkCuts(model, { J1: text }).wrong["J1"]).toMatch(words);
  });
  it("leaves what belongs to no jack alone", () => {
    expect(checkCuts(model, { H: "100", J99: "x" })).toEqual({ cuts: [], wrong: {} });
  });
});

describe("differences", () => {
  it("are told by side, with median and mean", () => {
    const found = differences([cut(48, 0.25, "Main"), cut(24, 0.125, "Main"), cut(24, -0.5, "End")], "in");
    expect(found.map(({ planes, count, median: middle, mean }) => [sideName(planes), count, middle, mean])).toEqual([
      ["Main", 2, 0.1875, 0.1875],
      ["End", 1, -0.5, -0.5],
    ]);
  });
  it("grow where each is farther off than the one nearer the corner", () => {
    expect(only(cut(72, 0.375), cut(24, 0.125), cut(48, 0.25)).grows).toEqual({ by: 0.25, over: 48 });
    expect(only(cut(24, 0), cut(48, -0.125), cut(72, -0.25)).grows).toEqual({ by: -0.25, over: 48 });
    expect(only(cut(24, 0.125), cut(48, 0.0625), cut(72, 0.375)).grows).toBeNull();
    expect(only(cut(24, 0.125), cut(48, 0.375)).grows).toBeNull();
  });
  it("have one that stands out where the others lie close together", () => {
    expect(only(cut(24, 0.125), cut(48, 0.5625), cut(72, 0.0625)).standsOut).toEqual({
      mark: "J48",
      by: 0.46875,
      others: 0.0625,
    });
    expect(only(cut(24, 0.125), cut(48, 0.1875), cut(72, 0.0625)).standsOut).toBeNull();
    expect(only(cut(24, 0), cut(48, 0.5), cut(72, 1)).standsOut).toBeNull();
  });
  it("take the middle one, which one slip of the tape does not move past its neighbors", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 2, maxLength: 9 }),
        fc.double({ min: -100, max: 100, noNaN: true }),
        (values, slip) => {
          const middle = median([...values, slip]);
          expect(middle).toBeGreaterThanOrEqual(Math.min(...values));
          expect(middle).toBeLessThanOrEqual(Math.max(...values));
        },
      ),
    );
  });
  it("are none where nothing was measured", () => {
    expect(differences([], "in")).toEqual([]);
  });
});
