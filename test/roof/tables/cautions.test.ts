import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cautions } from "../../../src/roof/tables/cautions.ts";
import { pieces } from "../../../src/roof/frame/pieces.ts";
import { rows } from "../../functions/asked.ts";
import { wingedCases } from "../../solids/wings/cases.ts";
import { modelOf } from "../../solids/wings/frameOf.ts";
import { anyFrame, framed } from "../anySpec.ts";

const of = (change: Parameters<typeof framed>[0]) => {
  const frame = framed(change);
  return Object.fromEntries(
    cautions(frame, pieces(frame)).map(({ kind, side, here, limit, outside }) => [
      side === null || side === "Both" ? kind : `${side} ${kind}`,
      { here, limit, outside },
    ]),
  );
};
const least = (value: number) => ({ kind: "least", value: expect.closeTo(value, 9) });
const most = (value: number) => ({ kind: "most", value: expect.closeTo(value, 9) });

// Published figures: International Residential Code 2021, by section in each line.
describe("cautions", () => {
  it("with a wing: a broken hip's foot always, valleys as R802.4.3 has them, and each wing's planes", () => {
    const { frame, pieces: cut } = modelOf(wingedCases["an L, flush left, lower ridge"]!);
    const all = cautions(frame, cut);
    expect(all.find(({ kind }) => kind === "broken hip")).toMatchObject({ here: null, outside: true });
    const of = (kind: string) => all.filter((one) => one.kind === kind).map(({ here, limit }) => [here, limit?.value]);
    const cutEnd = expect.closeTo(5.5 * Math.sqrt(1.25), 9) as number;
    expect(of("valley thickness")).toEqual([[1.5, 1.5]]);
    expect(of("valley depth")).toEqual([[7.25, cutEnd]]);
    expect(of("ridge depth")).toEqual([
      [7.25, cutEnd],
      [7.25, cutEnd],
    ]);
    expect(all.filter(({ wing }) => wing === "A").map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(["pitch", "seat", "wood left", "tail", "ridge depth"]),
    );
  });

  it("a plain roof's figures", () => {
    const here = of({ overhang: 16 });
    const cutEnd = 5.5 * Math.sqrt(1.25);
    const notch = 3.5 / Math.sqrt(5);
    expect(here).toMatchObject({
      "ridge thickness": { here: 1.5, limit: least(0.75) }, // R802.3: 1 in nominal
      "ridge depth": { here: 7.25, limit: least(cutEnd) }, // R802.3: the cut end of the rafter
      "hip thickness": { here: 1.5, limit: least(1.5) }, // R802.4.3: 2 in nominal
      "hip depth": { here: 7.25, limit: least(cutEnd) }, // R802.4.3
      "hip deeper than commons": { here: 1.75, limit: { kind: "about", value: 2 }, outside: false }, // Canadian housing guide: 50 mm
      pitch: { here: 0.5, limit: least(0.25) }, // R802.4.4: 3 in 12
      seat: { here: expect.closeTo(3.5, 9), limit: least(1.5) }, // R802.6
      "wood left": { here: expect.closeTo(5.5 - notch, 9), limit: least(3.5), outside: false }, // R802.7.1.1: 3 1/2 in
      tail: { here: 16, limit: most(24), outside: false }, // R802.7.1.1: 24 in
      heel: { here: expect.closeTo(cutEnd - 1.75, 9), limit: least(2) }, // NAVEDTRA 14044, p. 2-11: 2 in
      "toe below hip": { here: 0 },
      "jacks proud": { here: 0 },
      "jacks' tilt": { here: 45, limit: null, outside: false },
      "widest bay": { here: expect.closeTo(24, 9), limit: most(24) },
      sizing: { here: null, limit: null },
    });
  });

  it("holds a notch with no tail to a quarter of the depth, and a tail to 24 in", () => {
    // R802.7 with R502.8: 5.5 / 4 in.
    expect(of({ overhang: 0 })["notch"]).toEqual({
      here: expect.closeTo(3.5 / Math.sqrt(5), 9),
      limit: most(1.375),
      outside: true,
    });
    expect(of({ overhang: 0 })["tail"]).toBeUndefined();
    expect(of({ overhang: 25 })["tail"]).toMatchObject({ here: 25, outside: true });
  });

  it("puts what lies outside first, and says what both sides share once", () => {
    const frame = framed({ overhang: 25, endPitch: 1 });
    const list = cautions(frame, pieces(frame));
    const outside = list.map((one) => one.outside);
    expect(outside.lastIndexOf(true)).toBeLessThan(outside.indexOf(false));
    expect(list.filter(({ kind }) => kind === "pitch").map(({ side }) => side)).toEqual(["Main", "End"]);
    expect(of({})).not.toHaveProperty("Main pitch");
    const kinds = cautions(framed(), pieces(framed())).map(({ kind }) => kind);
    expect(kinds).toEqual([...new Set(kinds)]);
  });

  it("cries no wolf: an ordinary roof with a tail lies inside every figure", () => {
    const section = (name: string, depth: number) => ({ name, thickness: 1.5, depth });
    const lumber = { rafter: section("2x8", 7.25), hip: section("2x10", 9.25), ridge: section("2x10", 9.25) };
    for (const pitch of [3, 4, 6, 8]) {
      const roof = of({ ...lumber, overhang: 18, pitch: pitch / 12 });
      expect([pitch, Object.entries(roof).filter(([, { outside }]) => outside)]).toEqual([pitch, []]);
    }
  });

  it("asks of the saw that it reaches through the board at its tilt", () => {
    const thick = (thickness: number) => of({ rafter: { name: "2x6", thickness, depth: 5.5 } })["jacks' tilt"]!.outside;
    // 45 degrees through 1 3/4 in: common practice, no source.
    expect([thick(1.5), thick(1.75), thick(2)]).toEqual([false, false, true]);
    expect(of({ endPitch: 0.75 })["Main jacks' tilt"]).toMatchObject({ outside: true });
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
        for (const { kind, here } of cautions(frame, pieces(frame)))
          if (here !== null && kind !== "hip deeper than commons") expect(here, kind).toBeGreaterThanOrEqual(0);
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

  it("compares in words and defers to the local code once; it never passes anything", () => {
    for (const given of [
      block(),
      block(["End pitch", 14], ["Rafter", "2x10"]),
      block(["Pitch", 2]).filter(([label], i) => label !== "Pitch" || i > 2),
    ]) {
      const list = rows("CAUTIONS", given);
      expect(list.filter((one) => String(one["Remark"]).includes("the local code governs"))).toHaveLength(1);
      for (const one of list) {
        expect(Object.values(one).join(" ")).not.toMatch(
          /\b(pass|passes|passed|ok|okay|approved|complies|compliant|safe|fail|fails)\b/i,
        );
        expect(one["Source"]).toMatch(
          /^(IRC 2021, (R802|chapter 8)|Canadian housing guide|trade practice|NAVEDTRA 14044, p. 2-11)/,
        );
      }
    }
  });

  it.each([
    ["Notch, no tail", [], /^OUTSIDE by 3\/16": narrow the seat/],
    ["Hip, thickness", [], /^the same here/],
    ["Pitch", [["End pitch", 6]], /^steeper here/],
    ["Saw tilt, jacks, main sides", [["End pitch", 9]], /^OUTSIDE: mark both faces/],
    ["Jacks above the hip's top corner", [["End pitch", 9]], /^OUTSIDE by 1\/4": back the hip or shift it/],
  ] as const)("%s, %j", (check, more, remark) => {
    expect(row(check, ...more)["Remark"]).toMatch(remark);
  });
});
