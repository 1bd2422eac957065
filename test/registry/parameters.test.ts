import { newReading, startOf, type Reading } from "../../src/registry/reading.ts";
import { messageOf } from "../../functions/words/problemText.ts";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  choice,
  cornerAngle,
  length,
  number,
  optionalLength,
  otherPitch,
  pitch,
  size,
} from "../../src/registry/parameters.ts";
import { Refusal } from "../../src/registry/refusal.ts";
import type { Parameter } from "../../src/registry/worksheetFunction.ts";
import { anyText } from "../measure/anyText.ts";

const blank = () => newReading();
const read = <T>(parameter: Parameter<T>, cell: unknown, reading = blank()) =>
  parameter.read(cell, startOf(reading, parameter.name));
const metric = (argument: string): Reading => ({ unit: "mm", unitFrom: { argument }, argument: "" });
const message = (parameter: Parameter, cell: unknown, reading = blank()): string => {
  const value = read(parameter, cell, reading);
  if (!(value instanceof Refusal)) throw new Error(`${String(value)} was not refused.`);
  return messageOf(value);
};

const all: readonly Parameter[] = [
  pitch("it", "It."),
  otherPitch(),
  length("it", "It."),
  optionalLength("it", "It.", "none"),
  cornerAngle(),
  size("it", "It."),
  number("it", "It.", { from: 1, to: 9, example: "pieces" }),
  choice("it", "It.", ["plumb", "square"] as const),
  choice("it", "It.", [2, 16, 64] as const, 16),
];

describe("every reader", () => {
  it("gives a value or a refusal that starts with the argument's name, whatever stands in the cell", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...all),
        fc.oneof(
          anyText,
          fc.double(),
          fc.integer(),
          fc.boolean(),
          fc.constantFrom(null, undefined, {}, [], [[1]], () => 1, 3n),
        ),
        (parameter, cell) => {
          const value = read(parameter, cell);
          if (!(value instanceof Refusal)) return;
          expect(messageOf(value).startsWith(`${parameter.name}: `)).toBe(true);
          expect(messageOf(value)).toMatch(/\.$/);
          expect(value.error).toBe("#VALUE!");
        },
      ),
      { seed: 1, numRuns: 3_000 },
    );
  });

  it.each(all.map((parameter, i) => [`${i} (${parameter.quantity})`, parameter] as const))(
    "says what to type instead: %s",
    (_, parameter) => expect(message(parameter, "no such thing")).toMatch(/Type |must be one of /),
  );
});

describe("a refused cell", () => {
  const problem = (parameter: Parameter, cell: unknown, reading = blank()) => {
    const value = read(parameter, cell, reading);
    return value instanceof Refusal ? value.problem : value;
  };
  const rise = length("rise", "It.", { example: ["4", "5"] });
  const count = number("count", "It.", { from: 1, to: 9, whole: true, example: "pieces" });
  it.each<[string, Parameter, unknown, object]>([
    ["no length", rise, "", { kind: "no length", examples: ["4", "5"] }],
    [
      "no length, of no examples of its own",
      length("it", "It."),
      null,
      { kind: "no length", examples: ["48", `9' 4 5/8"`] },
    ],
    ["a flag", rise, true, { kind: "not a length", read: true, examples: ["4", "5"] }],
    ["a text", rise, "high", { kind: "not a length", read: "high", examples: ["4", "5"] }],
    ["a decimal comma", rise, "4,5", { kind: "decimal comma", read: "4,5" }],
    ["a length of 0", rise, "0", { kind: "length of 0", read: "0", examples: ["4", "5"] }],
    ["a length below 0", rise, -2, { kind: "length below 0", read: -2, examples: ["4", "5"] }],
    ["no pitch", pitch("it", "It."), undefined, { kind: "no pitch" }],
    ["a flag for a pitch", pitch("it", "It."), false, { kind: "not a pitch", read: false }],
    ["no size", size("it", "It."), "", { kind: "no size" }],
    ["a number for a size", size("it", "It."), 2, { kind: "not a size", read: 2 }],
    ["no number", count, "", { kind: "no number", example: "pieces" }],
    [
      "a broken count",
      count,
      2.5,
      { kind: "number out of range", read: 2.5, from: 1, to: 9, whole: true, example: "pieces" },
    ],
    ["a comma in a count", count, "2,5", { kind: "decimal comma", read: "2,5" }],
    ["no word", choice("it", "It.", ["a", "b"]), "", { kind: "no word", choices: ["a", "b"] }],
    ["another word", choice("it", "It.", ["a", "b"]), "c", { kind: "no such word", read: "c", choices: ["a", "b"] }],
    ["a corner out of range", cornerAngle(), 180, { kind: "corner out of range", read: 180 }],
    ["a comma in a corner", cornerAngle(), "67,5", { kind: "decimal comma", read: "67,5" }],
  ])("is data that words and tests can rely on: %s", (_, parameter, cell, expected) =>
    expect(problem(parameter, cell)).toEqual(expected),
  );
  it("is not a number with a fraction, unless it is to be whole", () =>
    expect(read(number("it", "It.", { from: 1, to: 9, example: "pieces" }), 2.5)).toBe(2.5));
  it("names what decided the unit that a length or a size goes against", () => {
    const from = { argument: "span" };
    expect(problem(rise, `4"`, metric("span"))).toEqual({ kind: "other unit", read: `4"`, unit: "in", from });
    const feet: Reading = { unit: "in", unitFrom: from, argument: "" };
    expect(problem(size("it", "It."), "45 x 195 mm", feet)).toEqual({
      kind: "size in other unit",
      read: "45 x 195 mm",
      unit: "mm",
      from,
    });
  });
});

describe("length", () => {
  const zero = length("overhang", "It.", { zero: true, example: "16" });
  it("takes 0 only where it is a value, and less only where that is one", () => {
    expect([read(zero, 0), read(zero, "0"), read(zero, `0"`)]).toEqual([0, 0, 0]);
    expect(message(length("offset", "It."), 0)).toBe(
      "offset: 0 was read; it must be more than 0. Type a length such as 48.",
    );
    expect(message(zero, -1)).toBe("overhang: -1 was read; it must not be negative. Type a length such as 16.");
    expect(read(length("correction", "It.", { zero: true, negative: true }), `-1/4"`)).toBe(-0.25);
  });
  it("learns its unit from the first text that says one", () => {
    const reading = blank();
    expect([read(zero, 48, reading), reading.unit]).toEqual([48, null]);
    expect([read(zero, "1.2 m", reading), reading.unit, reading.unitFrom]).toEqual([
      1200,
      "mm",
      { argument: "overhang" },
    ]);
  });
  it("learns nothing from a text without a unit, and takes it in the unit that there is", () => {
    const reading = blank();
    expect([read(zero, "48", reading), reading.unit, reading.unitFrom]).toEqual([48, null, null]);
    expect([read(zero, "48", metric("span")), read(zero, "1.2 m", metric("span"))]).toEqual([48, 1200]);
  });
  it("names itself and the argument that it goes against", () =>
    expect(message(zero, `4'`, metric("span"))).toBe(
      `overhang: "4'" is feet and inches, but span is metric. Type both in the same unit.`,
    ));
  it("knows its bounds", () => {
    expect(read(zero, 1_000_000)).toBe(1_000_000);
    for (const cell of [1_000_001, -1_000_001, NaN]) expect(message(zero, cell)).toMatch(/too long|negative|no number/);
  });
  it("takes a text of a likely date for one only when it is bare", () => {
    expect(message(zero, "45000")).toContain("a date");
    expect(read(zero, "45000 mm")).toBe(45000);
    expect(message(zero, 45000, metric("span"))).toContain(`"45 m"`);
  });
});

describe("cornerAngle", () => {
  const corner = cornerAngle();
  it.each([
    [undefined, 90],
    [null, 90],
    ["", 90],
    [0, 90],
    [135, 135],
    ["67.5°", 67.5],
    [" 120 degrees ", 120],
    ["179.999", 179.999],
  ])("%j is %s", (cell, angle) => expect(read(corner, cell)).toBe(angle));
  it.each([180, 0.0 - 1, Infinity, NaN, true, "0", "180", "9O", "1e2", "-90", "90 90"])("%j is none", (cell) =>
    expect(message(corner, cell)).toMatch(/^corner: .*Type 90 for a square corner/),
  );
});

describe("number", () => {
  const count = number("count", "It.", { from: 0, to: 1000, whole: true, example: "count", fallback: 1 });
  it.each([
    [undefined, 1],
    [0, 0],
    ["12", 12],
    [1000, 1000],
  ])("%j is %s", (cell, value) => expect(read(count, cell)).toBe(value));
  it.each([-1, 1001, 2.5, "two", " ", true, NaN])("%j is refused with the bounds", (cell) =>
    expect(message(count, cell)).toContain("a whole number from 0 to 1000"),
  );
});

describe("choice", () => {
  const cut = choice("cut", "It.", ["plumb", "square"] as const, "plumb");
  it.each([
    [undefined, "plumb"],
    ["SQUARE", "square"],
    [" Plumb ", "plumb"],
  ])("%j is %s", (cell, value) => expect(read(cut, cell)).toBe(value));
  it.each(["round", 7, true, "squaree"])("%j is refused with the choices", (cell) =>
    expect(message(cut, cell)).toContain("one of plumb, square"),
  );
  it("is required where nothing is its default", () =>
    expect(message(choice("cut", "It.", ["plumb", "square"] as const), "")).toBe(
      `cut: nothing was given. Type "plumb" or "square".`,
    ));
  it("takes numbers as numbers or as texts", () =>
    expect([
      read(choice("mark", "It.", [8, 16] as const), "16"),
      read(choice("mark", "It.", [8, 16] as const), 8),
    ]).toEqual([16, 8]));
});

describe("size", () => {
  const it2 = size("size", "It.");
  it("reads a nominal size in any unit, and an actual one in the call's", () => {
    expect(read(it2, "2x8")).toMatchObject({ thickness: 1.5, depth: 7.25 });
    expect(read(it2, "2x8", metric("length"))).toMatchObject({ thickness: 1.5, unit: "in" });
    expect(message(it2, "1.5 x 7.25", metric("length"))).toContain("is inches, but length is metric");
  });
  it("lets millimeters decide the call's unit", () => {
    const reading = blank();
    read(it2, "38 x 184", reading);
    expect(reading).toMatchObject({ unit: "mm", unitFrom: { argument: "size" } });
  });
  it.each([
    ["8x2", "thickness comes first. Type 2x8"],
    ["2x7", "no nominal size of lumber"],
    [28, "no lumber size"],
    ["two by eight", "no lumber size"],
    ["", "nothing was given"],
  ])("refuses %j", (cell, words) => expect(message(it2, cell)).toContain(words));
});
