import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { meetingLine } from "../../src/geometry/meetingLine.ts";
import { gradient } from "../../src/geometry/plane.ts";
import { vector3 } from "../../src/geometry/vector.ts";

const slope = fc.double({ min: -3, max: 3, noNaN: true });
const anyPlane = fc.tuple(slope, slope).map(([x, y]) => gradient(x, y));

describe("meetingLine", () => {
  it.each([
    [
      "two equal planes at a square corner: half way between them",
      gradient(0.5, 0),
      gradient(0, 0.5),
      vector3(0.5, 0.5, 0.25),
    ],
    ["a level plane: along the other one's contour", gradient(0, 0), gradient(0, 0.75), vector3(0.75, 0, 0)],
    ["and along a contour to the side", gradient(0.5, 0), gradient(0, 0), vector3(0, 0.5, 0)],
    ["3-4-5: 9 and 12 in 12", gradient(1, 0), gradient(0, 0.75), vector3(0.75, 1, 0.75)],
  ])("%s", (_, a, b, expected) => {
    expect(meetingLine(a, b)).toEqual(expected);
  });

  it("lies in both planes", () => {
    fc.assert(
      fc.property(anyPlane, anyPlane, (a, b) => {
        const line = meetingLine(a, b);
        if (line === null) return;
        expect(a.x * line.x + a.y * line.y).toBeCloseTo(line.z, 12);
        expect(b.x * line.x + b.y * line.y).toBeCloseTo(line.z, 12);
      }),
      { seed: 1 },
    );
  });

  it("is reversed when the planes are swapped", () => {
    fc.assert(
      fc.property(anyPlane, anyPlane, (a, b) => {
        const [line, back] = [meetingLine(a, b), meetingLine(b, a)];
        expect(line === null).toBe(back === null);
        if (line === null || back === null) return;
        expect([line.x + back.x, line.y + back.y]).toEqual([0, 0]);
        expect(line.z + back.z).toBeCloseTo(0, 12);
      }),
      { seed: 2 },
    );
  });

  it("is null for parallel planes", () => {
    fc.assert(
      fc.property(anyPlane, (a) => {
        expect(meetingLine(a, { ...a })).toBeNull();
      }),
      { seed: 3 },
    );
  });
});
