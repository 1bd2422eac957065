import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Failure } from "../../../src/measure/result.ts";
import { pieces } from "../../../src/roof/frame/pieces.ts";
import { salvage, type CutJack } from "../../../src/roof/tables/salvage.ts";
import { refusal, rows } from "../../functions/asked.ts";
import { anyFrame, framed } from "../anySpec.ts";

const of = (cut: CutJack, change: Parameters<typeof framed>[0] = {}) => {
  const frame = framed(change);
  const found = salvage(frame, pieces(frame), cut);
  if (found instanceof Failure) throw new Error(found.problem.kind);
  return found.map(({ piece, hand, lost, short }) => [
    `${piece.mark} ${hand}`,
    Number(lost.toFixed(4)),
    Number(short.toFixed(4)),
  ]);
};
/** At 6 in 12: t tan f / cos A = 1.5 x sqrt(1.25), and the step 24 x sqrt(1.25) (framing-square table: 26.83). */
const turn = 1.5 * Math.sqrt(1.25);
const step = 24 * Math.sqrt(1.25);
// J1's: (120 - 0.75 sqrt 2 + 0.75) sqrt 1.25.
const longest = (120 - 0.75 * Math.SQRT2 + 0.75) * Math.sqrt(1.25);

describe("salvage", () => {
  it("a jack cut to the wrong hand becomes the next shorter one of either hand, the turn being less than a step", () => {
    const found = of({ end: null, hand: "left", longPoint: longest });
    expect(found.slice(0, 3)).toEqual([
      ["J1 left", 0, 0],
      ["J2 left", Number(step.toFixed(4)), 0],
      ["J2 right", Number(step.toFixed(4)), 0],
    ]);
  });

  it("left a turn too long it becomes its own opposite, which loses the turn and no more", () => {
    expect(of({ end: null, hand: "left", longPoint: longest + turn })).toContainEqual([
      "J1 right",
      Number(turn.toFixed(4)),
      0,
    ]);
    expect(
      of({ end: null, hand: "left", longPoint: longest + turn - 0.26 }).some(([name]) => name === "J1 right"),
    ).toBe(false);
  });

  it("a piece a little short can often still be used; one shorter than that becomes the next", () => {
    expect(of({ end: null, hand: "right", longPoint: longest - 0.25 })[0]).toEqual(["J1 right", 0, 0.25]);
    expect(of({ end: null, hand: "right", longPoint: longest - 0.26 })[0]![0]).toBe("J2 right");
  });

  it("keeps to jacks of its own pitch and tail", () => {
    const names = (end: boolean, change: Parameters<typeof framed>[0]) =>
      new Set(of({ end, hand: "left", longPoint: 200 }, change).map(([name]) => String(name).slice(0, 2)));
    expect(names(false, { endPitch: 9 / 12 })).toEqual(new Set(["JM"]));
    expect(names(true, { endPitch: 9 / 12 })).toEqual(new Set(["JE"]));
    expect(names(false, { endOverhang: 6 })).toEqual(new Set(["JM"]));
    // A correction moves heads, not tails or pitches: the end's jacks can come of a main one.
    expect(names(false, { endCorrection: 0.25 })).toEqual(new Set(["JM", "JE"]));
  });

  it("has to know the side where they differ", () => {
    const frame = framed({ endPitch: 9 / 12 });
    expect(salvage(frame, pieces(frame), { end: null, hand: "left", longPoint: 100 })).toEqual(
      new Failure({ kind: "sides differ" }),
    );
  });

  it("never needs more wood than there is, and comes with the least lost first", () => {
    fc.assert(
      fc.property(
        anyFrame,
        fc.double({ min: 5, max: 300, noNaN: true }),
        fc.constantFrom("left", "right" as const),
        (frame, longPoint, hand) => {
          const found = salvage(frame, pieces(frame), { end: false, hand, longPoint });
          if (found instanceof Failure) throw new Error(found.problem.kind);
          found.forEach(({ piece, hand: other, turn: turned, short, lost }, i) => {
            expect(piece.longPoint + (other === hand ? 0 : turned)).toBeLessThanOrEqual(longPoint + 0.25 + 1e-6);
            expect(short === 0 || lost < turned + 1e-6).toBe(true);
            if (i > 0) expect(lost).toBeGreaterThanOrEqual(found[i - 1]!.lost);
          });
        },
      ),
      { seed: 15 },
    );
  });
});

describe("SALVAGE", () => {
  const block = [
    ["Span", `24'`],
    ["Length", `36'`],
    ["Pitch", 6],
  ];
  it("says how", () => {
    expect(
      rows("SALVAGE", block, "Both", "left", longest + turn)
        .slice(0, 2)
        .map((row) => [row["Piece"], row["Hand"], row["How"], row["Needed"]]),
    ).toEqual([
      ["J1", "left", `cut 1 11/16" off along the head cut`, 4],
      ["J1", "right", `re-cut the head to the other hand: 1 11/16" lost by that`, 4],
    ]);
    expect(rows("SALVAGE", block, "Both", "left", longest - 0.125)[0]!["How"]).toBe(
      `as it is; 1/8" short, which can often still be used (common practice, no source): try it in place`,
    );
    expect(rows("SALVAGE", block, "Main", "left", 10)).toMatchObject([{ Piece: "none", Hand: "left" }]);
  });

  it("in millimeters", () => {
    // J3 stands at 3000 - 3 x 600 = 1200, hips 38 thick: (1200 - 19 sqrt 2 + 19) / cos 30.
    const longPoint = (1200 - 19 * Math.SQRT2 + 19) / Math.cos(Math.PI / 6);
    expect(
      rows(
        "SALVAGE",
        [
          ["Span", "6 m"],
          ["Length", "9 m"],
          ["Pitch", "30°"],
        ],
        "End",
        "right",
        2000,
      )[0],
    ).toMatchObject({
      Piece: "J3",
      Hand: "right",
      "Long point": expect.closeTo(longPoint, 9),
      "Cut off": expect.closeTo(2000 - longPoint, 9),
    });
  });

  it.each([
    [["Both", "left", "3 m"], /^longPoint: .*metric.*roof/],
    [["Both", "up", 50], /^hand: /],
    [["North", "left", 50], /^side: /],
    [["Both", "left", 0], /^longPoint: /],
  ])("refuses %j", (cells, words) => {
    expect(refusal("SALVAGE", block, ...cells)).toMatch(words);
  });

  it("refuses Both where the sides differ", () => {
    expect(refusal("SALVAGE", [...block, ["End pitch", 9]], "Both", "left", 50)).toMatch(/^side: .*Type Main or End/);
  });
});
