import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { commonStations, jackOffsets } from "../../../src/roof/frame/setOut.ts";

const thickness = 1.5;

describe("jackOffsets", () => {
  it.each([
    ["from the king common", "king common", 24, 144, [120, 96, 72, 48, 24]],
    ["from it, an odd bay left at the corner", "king common", 24, 130, [106, 82, 58, 34, 10]],
    ["from it, none where the corner comes first", "king common", 24, 24, []],
    ["from the corner", "corner", 24, 144, [120, 96, 72, 48, 24]],
    ["from it, an odd bay left at the king common", "corner", 24, 130, [120, 96, 72, 48, 24]],
    // A clear thickness between the faces: 123 - 120 = 3 is two thicknesses, center to center.
    ["from it, a jack just clear of the king common", "corner", 24, 123, [120, 96, 72, 48, 24]],
    ["from it, none that is not", "corner", 24, 122.9, [96, 72, 48, 24]],
  ] as const)("%s", (_, setOutFrom, spacing, king, offsets) => {
    expect(jackOffsets({ setOutFrom, spacing, thickness }, king)).toEqual(offsets);
  });

  it("stand on no corner that a last bit alone keeps them from: ends of 2 in 12 to 5 in 12 put the king common 360.00000000000006 in out", () => {
    expect(
      jackOffsets({ setOutFrom: "king common", spacing: 24, thickness }, 144 * (5 / 12 / (2 / 12))).at(-1),
    ).toBeCloseTo(24, 9);
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 40 }),
        fc.integer({ min: 12, max: 600 }),
        fc.constantFrom(-1, 0, 1),
        (bays, spacing, bit) => {
          expect(
            jackOffsets({ setOutFrom: "king common", spacing, thickness }, bays * spacing * (1 + bit * Number.EPSILON)),
          ).toHaveLength(bays - 1);
        },
      ),
      { seed: 4 },
    );
  });

  it("are a spacing apart, farthest first, between corner and king common, with no room for one more", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("king common", "corner" as const),
        fc.double({ min: 12, max: 30, noNaN: true }),
        fc.double({ min: 31, max: 400, noNaN: true }),
        (setOutFrom, spacing, king) => {
          const offsets = jackOffsets({ setOutFrom, spacing, thickness }, king);
          offsets.slice(1).forEach((offset, i) => expect(offsets[i]! - offset).toBeCloseTo(spacing, 9));
          const [first, last] = [offsets[0] ?? (setOutFrom === "corner" ? 0 : king), offsets.at(-1) ?? king];
          expect(last).toBeGreaterThan(0);
          if (setOutFrom === "king common") expect(last).toBeLessThanOrEqual(spacing * (1 + 1e-9));
          else expect(king - first).toBeLessThan(spacing + 2 * thickness + 1e-6);
        },
      ),
      { seed: 3 },
    );
  });
});

describe("commonStations", () => {
  it.each([
    ["whole bays", 24, 144, [24, 48, 72, 96, 120]],
    ["an odd last bay", 24, 150, [24, 48, 72, 96, 120, 144]],
    ["one that would touch the far king common is left out", 24, 145, [24, 48, 72, 96, 120]],
    ["none in a short ridge", 24, 20, []],
  ])("%s", (_, spacing, length, stations) => {
    expect(commonStations(spacing, length, thickness)).toEqual(stations);
  });
});
