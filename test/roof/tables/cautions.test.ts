import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cautions } from "../../../src/roof/tables/cautions.ts";
import { pieces } from "../../../src/roof/frame/pieces.ts";
import { rows } from "../../functions/asked.ts";
import { anyFrame, framed } from "../anySpec.ts";

const of = (change: Parameters<typeof framed>[0]) => {
  const frame = framed(change);
  return Object.fromEntries(cautions(frame, pieces(frame)).map(({ tag, here, limit }) => [tag, { here, limit }]));
};
const least = (value: number) => ({ kind: "least", value: expect.closeTo(value, 9) });
const most = (value: number) => ({ kind: "most", value: expect.closeTo(value, 9) });

// Published figures: International Residential Code 2021, by section in each line.
describe("cautions", () => {
  it("a plain roof's figures", () => {
    const here = of({});
    const cutEnd = 5.5 * Math.sqrt(1.25);
    const notch = 3.5 / Math.sqrt(5);
    expect(here).toMatchObject({
      "ridge thickness": { here: 1.5, limit: least(0.75) }, // R802.3: 1 in nominal
      "ridge depth": { here: 7.25, limit: least(cutEnd) }, // R802.3: the cut end of the rafter
      "hip thickness": { here: 1.5, limit: least(1.5) }, // R802.4.3: 2 in nominal
      "hip depth": { here: 7.25, limit: least(cutEnd) }, // R802.4.3
      "hip deeper than commons": { here: 1.75, limit: least(2) }, // Canadian housing guide: about 50 mm
      "main pitch": { here: 0.5, limit: least(0.25) }, // R802.4.4: 3 in 12
      "main seat": { here: expect.closeTo(3.5, 9), limit: least(1.5) }, // R802.6
      "main notch": { here: expect.closeTo(notch, 9), limit: most(1.375) }, // R802.7, R502.8: a quarter of the depth
      "heel left": { here: expect.closeTo(cutEnd - 1.75, 9), limit: null },
      "toe below hip": { here: 0 },
      "jacks proud": { here: 0 },
      "main jacks' tilt": { here: 45, limit: most(45) },
      "widest bay": { here: expect.closeTo(24, 9), limit: most(24) },
      sizing: { here: null, limit: null },
    });
  });

  it("the steeper side's cut end is the one that hip and ridge are held to", () => {
    expect(of({ endPitch: 1 })["hip depth"]!.limit).toEqual(least(5.5 * Math.SQRT2));
  });

  it("no ridge board has no figures", () => {
    expect(of({ ridge: null })["ridge depth"]!.here).toBeNull();
    expect(of({ length: 288 })["ridge depth"]!.here).toBeNull();
  });

  it("jacks stand proud of a dropped hip at unequal pitches by the difference of its drops, and of none that is backed or shifted", () => {
    // Pitches 6 and 9: tan f = 3/2 and 2/3, hip slope 0.5 sin f; drops (T / 2) mh / tan f.
    const slope = (0.5 * 3) / Math.sqrt(13);
    expect(of({ endPitch: 0.75 })["jacks proud"]!.here).toBeCloseTo(0.75 * slope * (3 / 2 - 2 / 3), 9);
    expect(of({ endPitch: 0.75, hipTop: "backed" })["jacks proud"]!.here).toBe(0);
    expect(of({ endPitch: 0.75, hipTop: "shifted" })["jacks proud"]!.here).toBeCloseTo(0, 9);
  });

  it("a hip of the rafters' depth is too shallow for their whole cut", () => {
    expect(of({ hip: { name: "2x6", thickness: 1.5, depth: 5.5 } })["toe below hip"]!.here).toBeGreaterThan(0.2);
  });

  it("a double bay over an apex without king commons is the widest", () => {
    expect(of({ hipHead: "ridge" })["widest bay"]!.here).toBe(48);
  });

  it("every figure is finite, and none is below 0", () => {
    fc.assert(
      fc.property(anyFrame, (frame) => {
        for (const { tag, here } of cautions(frame, pieces(frame)))
          if (here !== null && tag !== "hip deeper than commons") expect(here, tag).toBeGreaterThanOrEqual(0);
      }),
      { seed: 14 },
    );
  });
});

describe("CAUTIONS", () => {
  const block = (...more: readonly (readonly [string, unknown])[]) => [
    ["Span", `24'`],
    ["Length", `36'`],
    ["Pitch", 6],
    ...more,
  ];
  const row = (check: string, ...more: readonly (readonly [string, unknown])[]) =>
    rows("CAUTIONS", block(...more)).find((one) => one["Check"] === check)!;

  it("compares in words and defers to the local code in every row; it never passes anything", () => {
    for (const given of [
      block(),
      block(["End pitch", 14], ["Rafter", "2x10"]),
      block(["Pitch", 2]).filter(([label], i) => label !== "Pitch" || i > 2),
    ]) {
      for (const one of rows("CAUTIONS", given)) {
        expect(one["Remark"]).toMatch(/the local code governs$/);
        expect(Object.values(one).join(" ")).not.toMatch(
          /\b(pass|passes|passed|ok|okay|approved|complies|compliant|safe|fail|fails)\b/i,
        );
        expect(one["Source"]).toMatch(
          /^(IRC 2021, (R802|chapter 8)|Canadian housing guide|common practice, no source)/,
        );
      }
    }
  });

  it.each([
    ["Notch at the plate, main sides", [], /^3\/16" more here/],
    ["Hip, thickness", [], /^the same here/],
    ["Pitch, main sides", [["End pitch", 6]], /^steeper here/],
    ["Saw tilt, main jacks", [["End pitch", 9]], /^over 45° here: lay out both faces/],
    ["Saw tilt, main jacks", [["End pitch", 12]], /^over 60° here/],
    ["Jacks above the hip's top corner", [["End pitch", 9]], /^17\/64" here/],
  ] as const)("%s, %j", (check, more, remark) => {
    expect(row(check, ...more)["Remark"]).toMatch(remark);
  });
});
