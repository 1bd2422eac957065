import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Row } from "../../../functions/arguments/roofBlock.ts";
import { ROWS } from "../../../functions/arguments/roofBlock.ts";
import { START_INPUTS } from "../../../src/pane/state/fields.ts";
import { report } from "../../../src/pane/state/report.ts";

const typed = (changes: Partial<Record<Row, string>>) => report({ ...START_INPUTS, ...changes });

describe("report", () => {
  it("frames the start values and shows how each was read", () => {
    const { model, unit, messages, general, understood } = typed({});
    expect(model).not.toBeNull();
    expect({ unit, messages, general }).toEqual({ unit: "in", messages: {}, general: null });
    expect(understood).toMatchObject({
      Span: `24' 0"`,
      Length: `36' 0"`,
      Pitch: "6 in 12, 26.57°",
      "End pitch": "6 in 12, 26.57°",
      Spacing: `2' 0"`,
      Rafter: "1 1/2 × 7 1/4",
      Seat: `3 1/2"`,
      Boards: `9 lengths, 8' 0" to 24' 0"`,
    });
  });

  it("reads lengths as people write them", () => {
    for (const text of ["24' 6", "24-6", `24' 6"`, "294"]) expect(typed({ Span: text }).understood.Span).toBe(`24' 6"`);
    const metric = typed({
      Span: "7320 mm",
      Length: "11 m",
      Spacing: "600",
      Overhang: "450",
      Seat: "89",
      Boards: "",
      Unit: "mm",
    });
    expect([metric.understood.Span, metric.understood.Length, metric.unit]).toEqual(["7320 mm", "11000 mm", "mm"]);
  });

  it.each<[string, Partial<Record<Row, string>>, Row[], RegExp]>([
    ["nothing where something is needed", { Span: " " }, ["Span"], /Type the width of the building/],
    ["bare feet", { Span: "24" }, ["Span"], /Type 24' for feet/],
    ["a date", { Pitch: "45000" }, ["Pitch"], /Type 6, 6\/12 or/],
    ["a length too short for the hips, found when framed", { Length: "20'" }, ["Length"], /24' 0" for a pyramid/],
    ["two fields at once", { Span: "🪚", Rafter: "2x7" }, ["Span", "Rafter"], /no length/],
    ["a word for a number", { Waste: "lots" }, ["Waste"], /from 0 to 100/],
    ["Heel and Seat", { Heel: "6" }, ["Heel"], /both Heel and Seat/],
    ["metric among feet", { Span: "7320 mm" }, ["Span"], /metric/],
  ])("says at the field: %s", (_, changes, rows, words) => {
    const { model, messages, general } = typed(changes);
    expect(model).toBeNull();
    expect(Object.keys(messages)).toEqual(rows);
    expect(general).toBeNull();
    expect(messages[rows[0]!]).toMatch(words);
    expect(messages[rows[0]!]).not.toMatch(new RegExp(`^${rows[0]}:`));
  });

  it("frames the roof or says where it is wrong, whatever is typed, and never throws", () => {
    const texts = fc.oneof(
      fc.string(),
      fc.constantFrom("", "0", "-1", "1e308", "NaN", "6/12", "24'", "=1+1", "x".repeat(10_000), "#VALUE!", "🪚"),
    );
    fc.assert(
      fc.property(fc.constantFrom(...ROWS), texts, fc.constantFrom(...ROWS), texts, (a, first, b, second) => {
        const { model, messages, general } = typed({ [a]: first, [b]: second });
        expect(model !== null).toBe(Object.keys(messages).length === 0 && general === null);
      }),
    );
  });
});
