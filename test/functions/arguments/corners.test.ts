import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { andThen, atCorner, otherSide } from "../../../functions/arguments/corners.ts";
import * as corners from "../../../functions/arguments/corners.ts";
import { functions } from "../../../functions/index.ts";
import { degrees } from "../../../src/measure/degrees.ts";
import { Failure } from "../../../src/measure/result.ts";
import { between } from "../../roof/arbitraries.ts";
import { number } from "../asked.ts";

describe("atCorner", () => {
  it("takes the same pitch where the other one is left out", () => {
    fc.assert(
      fc.property(between(0.1, 2), between(30, 150), (pitch, angle) => {
        const given = { pitch, otherPitch: null, corner: degrees(angle) };
        expect(atCorner(given, (at) => at)).toEqual(atCorner({ ...given, otherPitch: pitch }, (at) => at));
      }),
      { seed: 1 },
    );
  });
  it("hands on why there is no corner, and works on none", () => {
    const answer = atCorner({ pitch: 0.25, otherPitch: 1, corner: degrees(150) }, () => {
      throw new Error("worked");
    });
    expect(answer).toMatchObject({ problem: { kind: "no hip" } });
  });
});

describe("andThen", () => {
  it("works on with a value, and hands a reason on", () => {
    const reason = new Failure({ kind: "none" });
    expect([andThen(3, (n) => n * 2), andThen(3, () => reason), andThen(reason, () => 1)]).toEqual([6, reason, reason]);
  });
  // A module with an export named "then" looks like a promise to import(), which waits for it for ever.
  it("is not named then", async () =>
    expect(Object.keys(await import("../../../functions/arguments/corners.ts"))).toEqual(Object.keys(corners)));
});

describe("every function of a corner", () => {
  const ofCorner = functions.filter(({ parameters }) => parameters.some(({ name }) => name === "corner"));
  it("is a family of many", () => expect(ofCorner.length).toBeGreaterThan(20));
  it.each(ofCorner.map((definition) => [definition.name, definition] as const))(
    "%s takes pitch first, otherPitch and corner last, both optional",
    (_, { parameters }) => {
      expect(parameters[0]!.name).toBe("pitch");
      expect(parameters.slice(-2).map(({ name, optional }) => [name, optional])).toEqual(
        otherSide.map(({ name }) => [name, true]),
      );
    },
  );
  it.each(ofCorner.map((definition) => [definition.name, definition] as const))(
    "%s at equal pitches and a square corner is the general corner's",
    (name, { examples, parameters }) => {
      const [pitch, ...rest] = examples[0].cells.slice(0, parameters.length - 2);
      expect(number(name, pitch, ...rest)).toBeCloseTo(number(name, pitch, ...rest, pitch, 90), 9);
      // The same corner a hair from square gives the same to as much: no second code path stands at 90 degrees.
      expect(number(name, pitch, ...rest, pitch, 90 + 1e-9)).toBeCloseTo(number(name, pitch, ...rest), 6);
    },
  );
});
