import { describe, expect, it } from "vitest";
import { sayIn } from "../../../functions/words/words.ts";
import { fieldText, messageOf } from "../../../functions/words/problemText.ts";
import { Refusal, type Place } from "../../../src/registry/refusal.ts";
import type { Unit } from "../../../src/measure/unit.ts";
import type { Problem } from "../../../functions/problem.ts";
import { START_INPUTS } from "../../../src/pane/state/fields.ts";
import { report } from "../../../src/pane/state/report.ts";

const refusal = (problem: Problem, place: Place | null, unit: Unit | null = null) => new Refusal(problem, place, unit);

describe("messageOf", () => {
  it.each<[string, Refusal, string]>([
    ["an argument", refusal({ kind: "no size" }, { argument: "size" }), "size: nothing was given."],
    ["a row of a roof block", refusal({ kind: "row of 0" }, { argument: "roof", row: "Seat" }), "Seat: 0 was read, "],
    [
      "a cell of a list",
      refusal({ kind: "no size" }, { argument: "pieces", row: 3, heading: "Size" }),
      "pieces, row 3: Size: nothing",
    ],
    [
      "a value of a range",
      refusal({ kind: "no pitch" }, { argument: "pitches", value: 2 }),
      "pitches, value 2: nothing",
    ],
    [
      "the whole call",
      refusal({ kind: "too many arguments", name: "TAPE", most: 2, given: 3 }, null),
      "TAPE takes 2 arguments at most",
    ],
  ])("begins with %s", (_, failure, words) => expect(messageOf(failure).startsWith(words)).toBe(true));

  it("says a limit in the unit of what was read, rounded to the side that works", () => {
    const problem = { kind: "spacing too narrow", at: "spacing", least: 3.01 } as const;
    const place = { argument: "roof", row: "Spacing" };
    expect(messageOf(refusal(problem, place, "in"))).toContain(`Type 3 1/16" or more`);
    expect(messageOf(refusal({ ...problem, least: 75.2 }, place, "mm"))).toContain("Type 76 mm or more");
  });
});

describe("fieldText", () => {
  it.each<[string, Refusal, string]>([
    [
      "no name at the field itself",
      refusal({ kind: "no pitch" }, { argument: "pitch" }),
      "Nothing was given. Type a rise in 12, such as 6, or text such as 6/12.",
    ],
    [
      "the place in a list",
      refusal({ kind: "not a size", read: "a" }, { argument: "pieces", row: 2, heading: "Size" }),
      `pieces, row 2: Size: "a" was read, which is no lumber size. Type 2x8, 1.5 x 7.25 or 38 x 184.`,
    ],
    [
      "several values without braces",
      refusal({ kind: "no values", examples: [6, [4, 6, 8]] }, { argument: "pitches" }),
      "Nothing was given. Type 6, or 4, 6, 8.",
    ],
  ])("has %s", (_, failure, words) => expect(fieldText(failure)).toBe(words));

  it("says only what can be typed there", () => {
    for (const bad of ["x", "0x8", "2 by 8"]) {
      const message = report({ ...START_INPUTS, Rafter: bad }).messages.Rafter!;
      const examples = message.slice(message.indexOf("Type ") + 5, -1).split(/, | or /);
      expect(examples.length).toBeGreaterThan(1);
      for (const example of examples)
        expect(report({ ...START_INPUTS, Rafter: example }).messages.Rafter ?? "", example).not.toMatch(/was read/);
    }
  });
});

describe("sayIn", () => {
  it("says a length in its unit, and as a bare number where there is none", () => {
    expect([null, "in" as const, "mm" as const].map((unit) => sayIn(unit, "formula").length(18.00004))).toEqual([
      "18",
      `1' 6"`,
      "18 mm",
    ]);
  });
});
