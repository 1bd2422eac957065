import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { functions } from "../../functions/index.ts";
import { Refusal } from "../../src/registry/refusal.ts";
import { asked, number } from "./asked.ts";

// Laws that hold whatever the figures are: geometry of similar triangles, and units. They need no table and no second program.

/** Lengths in inches that most functions take together; what a function refuses of them is left out of the law. */
const lengths: Readonly<Record<string, readonly [number, number]>> = {
  run: [60, 300],
  offset: [24, 200],
  distance: [24, 200],
  overhang: [4, 30],
  depth: [5, 12],
  heel: [4, 8],
  seat: [2, 5],
  spacing: [12, 30],
  tape: [24, 200],
  rise: [20, 100],
  fascia: [3, 6],
};
const THICK = [1, 3.5] as const;

const between = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
const pitch = between(2, 18);

/** Functions whose answer is a length in the unit of what goes in, or an angle or a pitch, which no scale changes. */
const measured = functions.filter(
  ({ name, result, parameters }) =>
    result === "value" &&
    parameters.some(({ quantity }) => quantity === "length") &&
    !["INCHES", "TOMM", "TAPE", "TAPEROUND", "BOARDPICK", "BOARDFEET", "AGREE"].includes(name),
);
const plain = new Set(["PITCHFROM", "CORNERDEG"]);

type Given = readonly (readonly [quantity: string, value: unknown])[];

/** Cells for a function, each with its quantity; optional ones too, and the one text among them, a tail cut. */
function given({ parameters }: (typeof measured)[number]): fc.Arbitrary<Given> {
  return fc.tuple(
    ...parameters.map(({ name, quantity }): fc.Arbitrary<readonly [string, unknown]> => {
      const one: fc.Arbitrary<unknown> =
        quantity === "length"
          ? between(...(lengths[name] ?? (/side|diagonal/.test(name) ? ([90, 110] as const) : THICK)))
          : quantity === "pitch"
            ? pitch
            : quantity === "angle"
              ? fc.constant(90)
              : fc.constant("level");
      return one.map((value) => [quantity, value] as const);
    }),
  );
}

/** What it answers, or null where it refuses. */
function answer(name: string, cells: readonly unknown[]): number | null {
  const value = asked(name, ...cells);
  return value instanceof Refusal ? null : (value as number);
}

/** Holds a law on cells that the function takes; most of them must be. */
function holds(definition: (typeof measured)[number], law: (cells: Given, value: number) => void): void {
  let taken = 0;
  fc.assert(
    fc.property(given(definition), (cells) => {
      const value = answer(
        definition.name,
        cells.map(([, cell]) => cell),
      );
      if (value === null) return;
      taken++;
      law(cells, value);
    }),
    { seed: 7, numRuns: 60 },
  );
  expect(taken).toBeGreaterThan(8);
}

describe.each(measured.map((one) => [one.name, one] as const))("RAFTER.%s", (name, definition) => {
  it("answers a roof of twice the size with twice the length, or the same angle", () => {
    holds(definition, (cells, value) => {
      const doubled = answer(
        name,
        cells.map(([quantity, cell]) => (quantity === "length" ? 2 * (cell as number) : cell)),
      );
      // A limit of size may refuse the larger one.
      if (doubled !== null) expect(doubled).toBeCloseTo(plain.has(name) ? value : 2 * value, 7);
    });
  });

  it("answers the same in millimeters as in inches", () => {
    holds(definition, (cells, value) => {
      const metric = answer(
        name,
        cells.map(([quantity, cell]) => (quantity === "length" ? `${25.4 * (cell as number)} mm` : cell)),
      );
      expect(metric).not.toBeNull();
      expect(metric! / (plain.has(name) ? 1 : 25.4)).toBeCloseTo(value, 6);
    });
  });
});

describe("a hip seen from its other side", () => {
  const pair = fc.tuple(pitch, pitch, between(60, 300));
  const both = (law: (p: number, q: number, run: number) => void) =>
    fc.assert(
      fc.property(pair, ([p, q, run]) => law(p, q, run)),
      { seed: 8, numRuns: 80 },
    );

  it("has the same pitch, angle and length: the run of each side is the other's, by the pitches", () => {
    both((p, q, run) => {
      expect(number("HIPDEG", p, q)).toBeCloseTo(number("HIPDEG", q, p), 9);
      expect(number("HIPRISE", p, q)).toBeCloseTo(number("HIPRISE", q, p), 9);
      expect(number("HIPLEN", p, run, q)).toBeCloseTo(number("HIPLEN", q, (run * p) / q, p), 7);
      expect(number("HIPRUN", p, run, q)).toBeCloseTo(number("HIPRUN", q, (run * p) / q, p), 7);
    });
  });

  it("makes saw tilts of the two sides' jacks that are one square corner", () => {
    both((p, q) => {
      expect(number("JACKTILT", p, q) + number("JACKTILT", q, p)).toBeCloseTo(90, 9);
    });
  });
});

describe("what grows with what", () => {
  const more = (name: string, at: number, cells: readonly number[], by: number, sign: 1 | -1 = 1) => {
    const before = number(name, ...cells);
    const after = number(name, ...cells.map((cell, i) => (i === at ? cell + by : cell)));
    expect(sign * (after - before)).toBeGreaterThan(0);
  };
  const step = between(0.25, 6);

  it.each<[string, number, readonly fc.Arbitrary<number>[], (1 | -1)?]>([
    ["SLOPELEN", 0, [pitch, between(60, 300)]],
    ["COMMONLEN", 1, [pitch, between(60, 300), between(1, 3)]],
    ["COMMONLEN", 2, [pitch, between(60, 300), between(1, 3)], -1],
    ["HIPLEN", 1, [pitch, between(60, 300), pitch]],
    ["HIPDEG", 0, [pitch, pitch]],
    ["JACKLEN", 1, [pitch, between(24, 200), between(1, 3), between(1, 3), pitch]],
    ["JACKLEN", 2, [pitch, between(24, 200), between(1, 3), between(1, 3), pitch], -1],
    ["JACKSTEP", 1, [pitch, between(12, 30), pitch]],
    [
      "JACKBOARD",
      6,
      [pitch, between(40, 200), between(1, 3), between(1, 3), between(6, 9), between(4, 5), between(2, 24)],
    ],
    ["TAILLEN", 1, [pitch, between(4, 30)]],
    ["HIPDROP", 1, [pitch, between(1, 3), pitch]],
  ])("%s, with its cell %i", (name, at, cells, sign = 1) => {
    fc.assert(
      fc.property(fc.tuple(...cells), step, (values, by) => more(name, at, values, by, sign)),
      { seed: 9, numRuns: 60 },
    );
  });
});
