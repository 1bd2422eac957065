import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boardRun } from "../../../src/roof/frame/bearers.ts";
import { frame, hipsIn, ridgeIn, type Frame } from "../../../src/roof/frame/frame.ts";
import type { FrameProblem } from "../../../src/roof/frame/frameProblem.ts";
import { Failure } from "../../../src/measure/result.ts";
import { pieces } from "../../../src/roof/frame/pieces.ts";
import { placedBoards } from "../../../src/roof/frame/placedBoards.ts";
import type { RoofSpec } from "../../../src/roof/frame/roofSpec.ts";
import { anyFrame, framed, usual } from "../anySpec.ts";
import { sidesOf } from "../sides.ts";

const jacksAlike = ({ marks }: Frame) => [...marks.values()].includes("J1");

describe("frame", () => {
  it("sets a plain roof out as on paper: end runs of 144, ridge 144 and half a rafter past each end", () => {
    const roof = framed();
    const { main, end } = sidesOf(roof);
    const { commons, heel } = roof;
    const ridge = ridgeIn(roof)!;
    expect([main.run, end.run, main.king, end.king, ridge.run, boardRun(ridge)]).toEqual([
      144, 144, 144, 144, 144, 145.5,
    ]);
    expect(main.jacks.map(({ offset }) => offset)).toEqual([120, 96, 72, 48, 24]);
    expect([commons.stations, commons.lastBay, jacksAlike(roof), hipsIn(roof)[0]!.overhang]).toEqual([
      [168, 192, 216, 240, 264],
      null,
      true,
      0,
    ]);
    // Depth over the cosine less the seat's rise, 5.5 x sqrt(1.25) - 3.5 / 2.
    expect(heel).toBeCloseTo(4.39919, 5);
  });

  it("puts the apex of a steeper end nearer to it: run times pitch over end pitch", () => {
    const roof = framed({ endPitch: 1 });
    const { main, end } = sidesOf(roof);
    expect([end.run, main.king, end.king, ridgeIn(roof)!.run, jacksAlike(roof)]).toEqual([72, 72, 144, 288, false]);
  });

  it("takes ends that differ by a last bit only for alike: 45° and 12 in 12, 1.001 m and 1001 mm, and a level fascia's overhang", () => {
    const roof = framed({ pitch: 1, endPitch: Math.tan(Math.PI / 4), overhang: 1.001 * 1000, endOverhang: 1001 });
    expect(jacksAlike(roof)).toBe(true);
    expect(hipsIn(roof)[0]).toMatchObject({ near: { tan: 1 }, far: { tan: 1 } });
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 18 }), fc.integer({ min: 0, max: 40 * 16 }), (rise, sixteenths) => {
        const roof = framed({ pitch: rise / 12, overhang: sixteenths / 16 });
        const { main, end } = sidesOf(roof);
        expect([jacksAlike(roof), end.overhang, end.run]).toEqual([true, main.overhang, main.run]);
      }),
      { seed: 5 },
    );
  });

  // Ends of 2 in 12 to 5 in 12 have a run of 360.00000000000006 in.
  it.each([
    ["hip and hip", 723, 722],
    ["hip and gable", 366, 365],
  ] as const)(
    "takes the least length that it names, whatever the last bit of a run: %s, %s in",
    (ends, least, less) => {
      expect(ridgeIn(framed({ pitch: 5 / 12, endPitch: 2 / 12, ends, length: least }))).toBeDefined();
      expect(frame({ ...usual, pitch: 5 / 12, endPitch: 2 / 12, ends, length: less })).toMatchObject({
        problem: { kind: "ridge too short" },
      });
    },
  );

  it("makes a pyramid where the end runs meet: no ridge, no commons", () => {
    const roof = framed({ length: 288 });
    expect([ridgeIn(roof), roof.commons.stations]).toEqual([undefined, []]);
  });

  it("runs a ridge to the gable's plate line, the last pair's outer face on it", () => {
    const roof = framed({ ends: "hip and gable" });
    const { commons } = roof;
    const ridge = ridgeIn(roof)!;
    expect([ridge.run, boardRun(ridge), commons.stations.at(-1), commons.lastBay]).toEqual([
      288, 288.75, 431.25, 23.25,
    ]);
  });

  it("mirrors a roof whose left end is the gable: the same pieces, each board across from where it stood", () => {
    const [right, left] = (["hip and gable", "gable and hip"] as const).map((ends) => framed({ ends, endPitch: 0.75 }));
    const brief = (roof: Frame) =>
      pieces(roof).map(({ stands: _, planes, ...piece }) => ({ ...piece, ends: planes.map(({ end }) => end) }));
    expect(brief(left!)).toEqual(brief(right!));
    const places = (roof: Frame, mirrored: boolean) =>
      placedBoards(roof, pieces(roof))
        .map(({ piece, hand, to: { x, y } }) => {
          const turned =
            mirrored && piece.member !== "ridge" ? { left: "right", right: "left", plain: "plain" }[hand] : hand;
          return `${piece.mark} ${turned} ${(mirrored ? 432 - x : x).toFixed(6)} ${y.toFixed(6)}`;
        })
        .sort();
    expect(places(left!, true)).toEqual(places(right!, false));
  });

  it("leaves out the jacks whose heads would land on their seats, and counts them", () => {
    // At an offset of 4 the short point's run is 4 - 0.75 sqrt 2 - 0.75 = 2.19, under the seat of 3.5.
    const { main } = sidesOf(framed({ span: 296, length: 440 }));
    expect(main.jacks.at(-1)!.offset).toBe(28);
    expect(main.dropped).toBe(1);
  });

  it("takes the larger heel of two pitches, so that neither seat is wider than the one given", () => {
    const roof = framed({ endPitch: 1 });
    const { heel } = roof;
    const { main, end } = sidesOf(roof);
    expect([main.seat, end.seat].map((seat) => Number(seat.toFixed(4)))).toEqual([3.5, 3.379]);
    expect(heel).toBeCloseTo(4.39919, 5);
  });

  it.each<[string, Partial<RoofSpec>, number]>([
    // Level along the hip: where both fascias meet, or square on the nearer one at the hip's face.
    ["a level fascia: the corner of the fascias", { overhang: 16 }, 16 * Math.SQRT2],
    [
      "a shorter end overhang: the end fascia at the hip's face",
      { overhang: 16, endOverhang: 12 },
      12 * Math.SQRT2 + 0.75,
    ],
    ["a longer one: the main fascia at the hip's face", { overhang: 12, endOverhang: 16 }, 12 * Math.SQRT2 + 0.75],
    ["none at the end: only what its face reaches", { overhang: 16, endOverhang: 0 }, 0.75],
  ])("keeps a hip's tail inside both fascias: %s", (_, change, level) => {
    expect(hipsIn(framed(change))[0]!.overhang).toBeCloseTo(level, 9);
  });

  it("runs a ridge as far as the cheek of a shifted hip reaches on its end side", () => {
    // Pitches 6 and 9: tan f = 3/2. The far face stands 1.5 x (2/3) / (3/2 + 2/3) = 6/13 x 1.5 off the meeting line; the cheek ends (0.75 cos f + that) / sin f past the apex.
    const sine = 3 / Math.sqrt(13);
    const past = (0.75 * (2 / Math.sqrt(13)) + (1.5 * 4) / 13) / sine;
    const roof = framed({ endPitch: 0.75, hipTop: "shifted", hipHead: "ridge" });
    expect(ridgeIn(roof)!.tail[0]!.at).toBeCloseTo(past, 9);
  });

  it("names the bay over an apex without a king common, and the last one to the jack past the other apex", () => {
    expect(framed({ hipHead: "ridge" }).commons).toMatchObject({ apexBay: 48, lastBay: 48 });
    expect(framed({ hipHead: "ridge", length: 440 }).commons).toMatchObject({ apexBay: 48, lastBay: 32 });
  });

  it("is symmetric: an end of the main pitch has the main side's jacks", () => {
    fc.assert(
      fc.property(anyFrame, (made) => {
        if (!jacksAlike(made)) return;
        const { main, end } = sidesOf(made);
        expect(end.jacks).toEqual(main.jacks);
      }),
      { seed: 5 },
    );
  });

  it("has every jack clear of its seat and the king common farthest", () => {
    fc.assert(
      fc.property(anyFrame, (roof) => {
        const { spec } = roof;
        const { main, end } = sidesOf(roof);
        for (const { jacks, seat, king } of [main, end]) {
          for (const { offset, runs } of jacks) {
            expect(runs.short).toBeGreaterThanOrEqual(seat);
            expect(offset).toBeLessThan(king - spec.rafter.thickness);
          }
        }
      }),
      { seed: 6 },
    );
  });

  it.each<[FrameProblem["kind"], Partial<RoofSpec>]>([
    ["length too short", { length: 280 }],
    ["length too short", { length: 140, ends: "hip and gable" }],
    ["ridge too short", { length: 290 }],
    ["ridge too short", { length: 147, ends: "hip and gable" }],
    ["spacing wider than run", { spacing: 144 }],
    ["spacing too narrow", { spacing: 2.9 }],
    ["no ridge for the hips", { hipHead: "ridge", ridge: null }],
    ["no ridge for the hips", { hipHead: "ridge", length: 288 }],
    ["seat too wide", { seat: 13 }],
    ["nothing left to notch", { seat: null, heel: 6.2 }],
    ["no seat on the flatter side", { pitch: 0.25, endPitch: 1, seat: 1 }],
    ["hip does not reach the plate", { hip: { name: "2x4", thickness: 1.5, depth: 3.5 } }],
    ["no jack fits", { spacing: 143 }],
    ["too many rafters", { length: 30_000 }],
    ["correction below plate", { correction: -100 }],
    ["correction below plate", { endCorrection: -100 }],
  ])("refuses: %s", (kind, change) => {
    const made = frame({ ...usual, ...change });
    expect(made).toMatchObject({ problem: { kind } });
  });

  // By hand from the plain roof: runs of 144, plumb depth 5.5 x sqrt(1.25), so the roof stands or falls on each figure.
  it.each<[string, Partial<RoofSpec>, Partial<RoofSpec>, FrameProblem]>([
    [
      "two rafters of spacing",
      { spacing: 3 },
      { spacing: 2.999 },
      { kind: "spacing too narrow", at: "spacing", least: 3 },
    ],
    [
      "a length of a thousand spacings",
      { length: 24_000 },
      { length: 24_001 },
      { kind: "too many rafters", at: "length", rafters: 1000, spacing: 24, most: 24_000 },
    ],
    [
      "a span of a thousand spacings",
      { span: 3000, length: 3000, spacing: 3 },
      { span: 3001, length: 4000, spacing: 3 },
      { kind: "too many rafters", at: "span", rafters: 1000, spacing: 3, most: 3000 },
    ],
    [
      "a length over the limit beside a span at it",
      { span: 3000, length: 3000, spacing: 3 },
      { span: 3000, length: 4000, spacing: 3 },
      { kind: "too many rafters", at: "length", rafters: 1000, spacing: 3, most: 3000 },
    ],
    [
      "a spacing under the shorter run",
      { endPitch: 1, spacing: 60 },
      { endPitch: 1, spacing: 72 },
      { kind: "spacing wider than run", at: "spacing", run: 72, spacing: 72 },
    ],
    [
      "two rafters between the king commons",
      { length: 288 + 3 },
      { length: 288 + 2.99 },
      { kind: "ridge too short", at: "length", pyramid: 288, least: 291 },
    ],
    [
      "no ridge at all, or one with room",
      { length: 288 },
      { length: 287.99 },
      { kind: "length too short", at: "length", pyramid: 288, least: 291 },
    ],
    [
      "four rafters before a gable, where no hips meet in a point",
      { length: 150, ends: "hip and gable" },
      { length: 144, ends: "hip and gable" },
      { kind: "ridge too short", at: "length", pyramid: null, least: 150 },
    ],
    [
      "a length to the last bit of a pyramid's",
      { length: 288 * (1 + 5e-10) },
      { length: 288 * (1 + 2e-9) },
      { kind: "ridge too short", at: "length", pyramid: 288, least: 291 },
    ],
    [
      "a ridge that leaves the hips a head",
      { hipHead: "ridge", ridge: { name: "thick", thickness: 5.5, depth: 8 } },
      { hipHead: "ridge", ridge: { name: "all of it", thickness: 144, depth: 8 } },
      { kind: "roof too narrow", at: "span", span: 288 },
    ],
  ])("holds the limit: %s", (_, taken, refused, problem) => {
    expect(frame({ ...usual, ...taken })).not.toBeInstanceOf(Failure);
    expect(frame({ ...usual, ...refused })).toEqual(new Failure(problem));
  });

  // Each limit is named as a figure; just inside it there is a roof, on it and past it there is none.
  it.each<
    [FrameProblem["kind"], Partial<RoofSpec>, "correction" | "endCorrection" | "heel" | "seat", "least" | "most"]
  >([
    ["correction below plate", { correction: -100 }, "correction", "least"],
    ["correction below plate", { endPitch: 0.75, endCorrection: -100 }, "endCorrection", "least"],
    ["correction over a step", { correction: 100 }, "correction", "most"],
    ["correction over a step", { endPitch: 0.75, endCorrection: 100 }, "endCorrection", "most"],
    ["nothing left to notch", { seat: null, heel: 50 }, "heel", "most"],
    ["heel under the drop", { seat: null, heel: 0.01 }, "heel", "least"],
    ["hip drops below plate", { seat: 12.2 }, "seat", "most"],
    ["seat too wide", { seat: 13 }, "seat", "most"],
    ["no seat on the flatter side", { pitch: 0.25, endPitch: 1, seat: 1 }, "seat", "least"],
  ])("refuses %s on the limit that it names, and takes what lies just inside", (kind, change, at, bound) => {
    const made = frame({ ...usual, ...change }) as Failure<FrameProblem>;
    expect(made.problem).toMatchObject({ kind, at });
    const limit = (made.problem as unknown as Record<string, number>)[bound]!;
    const inward = (bound === "most") === limit > 0 ? 1 - 1e-9 : 1 + 1e-9;
    const [inside, outside] = [inward, 2 - inward].map((by) => frame({ ...usual, ...change, [at]: limit * by }));
    if (inside instanceof Failure) expect(inside.problem.kind).not.toBe(kind);
    expect(outside).toMatchObject({ problem: { at } });
  });

  it("a jack is a step too far off at the step itself, in either direction: 24 in at 6 in 12 is 12 sqrt 5", () => {
    const step = 12 * Math.sqrt(5);
    for (const by of [step, -step])
      expect(frame({ ...usual, correction: by })).toMatchObject({
        problem: { kind: expect.stringMatching(/^correction/) },
      });
    expect(frame({ ...usual, correction: step - 1e-9 })).not.toBeInstanceOf(Failure);
    expect((frame({ ...usual, correction: 99 }) as Failure<FrameProblem>).problem).toMatchObject({
      most: expect.closeTo(step, 9),
    });
  });
});
