import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pieceBoardFeet } from "../../../src/roof/tables/pieceBoardFeet.ts";
import { pieces } from "../../../src/roof/frame/pieces.ts";
import { eachPiece } from "../../../src/roof/tables/sheathingCourses.ts";
import { takeOff } from "../../../src/roof/tables/takeOff.ts";
import { anyFrame, framed } from "../anySpec.ts";

const of = (change: Parameters<typeof framed>[0]) => {
  const frame = framed(change);
  return takeOff(frame, pieces(frame));
};

describe("takeOff", () => {
  // 16' by 24', 9 in 12 (3-4-5), overhang 16: in plan 320 by 224 in; from fascia to apex 112 level, 84 up, and along a hip the root of 112² + 112² + 84².
  it("a roof of 3-4-5 triangles, by hand", () => {
    const total = of({ span: 192, length: 288, pitch: 0.75, overhang: 16 });
    expect(total.ridge).toBe(96);
    expect(total.hips).toEqual(Array(4).fill(expect.closeTo(Math.sqrt(112 ** 2 + 112 ** 2 + 84 ** 2), 9)));
    expect(total.eaves).toBeCloseTo(2 * 320 + 2 * 224, 9);
    expect(total.subFascia).toBe(total.eaves);
    expect(total.plan).toBeCloseTo(320 * 224, 9);
    expect(total.sloped).toBeCloseTo(320 * 224 * 1.25, 9);
    // A main plane is a trapezoid of 320 and 96 by 112, an end one a triangle of 224 by 112.
    expect(total.planes.map(({ side, faces }) => [side, faces.length, faces[0]!.plan])).toEqual([
      ["Main", 2, expect.closeTo(208 * 112, 9)],
      ["End", 2, expect.closeTo(112 * 112, 9)],
    ]);
  });

  // One gable: the plane is 288 + 16 + 16 at the eave, and 288 - 96 + 16 at the ridge; rakes are 112 level, 140 along the slope.
  it("the same roof with a gable", () => {
    const total = of({ span: 192, length: 288, pitch: 0.75, overhang: 16, ends: "hip and gable" });
    expect([total.ridge, total.gableRake, total.eaves]).toEqual([
      208,
      expect.closeTo(280, 9),
      expect.closeTo(2 * 320 + 224, 9),
    ]);
    expect(total.planes.map(({ faces }) => [faces.length, faces[0]!.plan])).toEqual([
      [2, expect.closeTo(((320 + 208) / 2) * 112, 9)],
      [1, expect.closeTo(112 * 112, 9)],
    ]);
  });

  // Overhang 16 at the sides, 4 at the ends: level fascias would meet at the hip; here the main planes are cut off 4 past the end plate, along the slope from 4 to 16 out.
  it("corner rakes where fascias do not meet level", () => {
    const total = of({ span: 192, length: 288, pitch: 0.75, overhang: 16, endOverhang: 4 });
    expect(total.cornerRake).toBeCloseTo(4 * 12 * 1.25, 9);
    expect(total.plan).toBeCloseTo(296 * 224, 9);
    expect(total.eaves).toBeCloseTo(2 * 296 + 2 * (192 + 8), 9);
    expect(of({ overhang: 16 }).cornerRake).toBe(0);
  });

  it("no sub-fascia where there are no tails", () => {
    expect([of({}).subFascia, of({ endOverhang: 12 }).subFascia]).toEqual([0, expect.closeTo(2 * 288, 9)]);
  });

  it("in plan every roof is its rectangle of fascias, and along the slope that over the cosine", () => {
    fc.assert(
      fc.property(anyFrame, (frame) => {
        const { spec } = frame;
        const { plan, sloped, planes } = takeOff(frame, pieces(frame));
        // A level fascia at equal heels: overhang times pitch is one figure all round. A gable has the overhang given, or the sides'.
        const hipped = spec.endOverhang ?? (spec.overhang * spec.pitch) / (spec.endPitch ?? spec.pitch);
        const other = spec.ends === "hip and hip" ? hipped : (spec.endOverhang ?? spec.overhang);
        const rectangle = (spec.length + hipped + other) * (spec.span + 2 * spec.overhang);
        expect(plan / rectangle).toBeCloseTo(1, 12);
        for (const { faces } of planes)
          for (const face of faces)
            expect(face.sloped * Math.cos(Math.atan(face.plane.pitch))).toBeCloseTo(face.plan, 6);
        expect(sloped).toBeGreaterThan(plan);
      }),
      { seed: 11 },
    );
  });

  it("sheets by courses cover the net area, and no sheet gives more than it has", () => {
    fc.assert(
      fc.property(anyFrame, (frame) => {
        const { courses, sheet, planes } = takeOff(frame, pieces(frame));
        const used = courses.reduce((sum, { sheets }) => sum + sheets, 0);
        const given = new Map<number, number>();
        for (const course of courses) {
          const { side, plane, from, length } = course;
          const own = eachPiece(course);
          const face = planes.find((one) => one.side === side)!.faces[plane - 1]!;
          const high = (face.plane.overhang + face.plane.run) / Math.cos(Math.atan(face.plane.pitch));
          const part = Math.min(sheet.wide, high - from) / sheet.wide;
          expect(own[0]!.from).toBe(0);
          expect(own.at(-1)!.to).toBeCloseTo(length, 6);
          own.slice(1).forEach((piece, i) => expect(piece.from).toBe(own[i]!.to));
          for (const { from: start, to, left, right, sheet: number } of own) {
            expect(Math.max(to - start, to - start - left - right)).toBeLessThanOrEqual(sheet.long + 1e-6);
            const area = (to - start - ((left + right) * part) / 2) * part;
            given.set(number, (given.get(number) ?? 0) + area);
          }
        }
        expect([...given.keys()].sort((a, b) => a - b)).toEqual(Array.from({ length: used }, (_, i) => i + 1));
        for (const [number, area] of given) expect([number, area <= sheet.long + 1e-6]).toEqual([number, true]);
      }),
      { seed: 12 },
    );
  });

  it("lumber by size counts what MEMBERS does; spares are commons more", () => {
    fc.assert(
      fc.property(anyFrame, (frame) => {
        const all = pieces(frame);
        const { sizes } = takeOff(frame, all);
        const count = all.reduce((sum, { left, right, plain }) => sum + left + right + plain, 0);
        expect(sizes.reduce((sum, size) => sum + size.pieces, 0)).toBe(count + frame.spec.spares);
        const feet = all.reduce((sum, piece) => sum + pieceBoardFeet(piece, "in"), 0);
        const spare =
          all.find(({ member }) => member === "common") ??
          all
            .filter(({ member }) => member !== "ridge" && member !== "hip")
            .sort((a, b) => b.shortestBoard - a.shortestBoard)[0]!;
        expect(sizes.reduce((sum, size) => sum + size.boardFeet, 0)).toBeCloseTo(
          feet + (frame.spec.spares * 2 * 14 * spare.shortestBoard) / 144,
          6,
        );
      }),
      { seed: 13 },
    );
  });
});
