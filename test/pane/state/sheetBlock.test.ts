import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ROWS } from "../../../functions/arguments/roofBlock.ts";
import { EMPTY_INPUTS, START_INPUTS, type Inputs } from "../../../src/pane/state/fields.ts";
import { differing, followed } from "../../../src/pane/state/sheetBlock.ts";

const anyInputs = fc.record(
  Object.fromEntries(ROWS.map((row) => [row, fc.constantFrom("", "1", "2")])) as Record<
    keyof Inputs,
    fc.Arbitrary<string>
  >,
);

describe("followed", () => {
  it("takes over what changed in the sheet and keeps what was typed in the pane since", () => {
    const seen = { ...EMPTY_INPUTS, Span: "24'", Pitch: "6" };
    expect(followed({ ...seen, Pitch: "8" }, seen, { ...seen, Span: "26'" })).toEqual({
      ...seen,
      Span: "26'",
      Pitch: "8",
    });
  });
  it("is the pane's own where nothing changed, the very same", () => {
    fc.assert(
      fc.property(anyInputs, anyInputs, (pane, seen) => {
        expect(followed(pane, seen, { ...seen })).toBe(pane);
      }),
    );
  });
  it("is the sheet's where the pane said the same as the sheet before", () => {
    fc.assert(
      fc.property(anyInputs, anyInputs, (seen, now) => {
        expect(followed(seen, seen, now)).toEqual(now);
      }),
    );
  });
});

describe("differing", () => {
  it("compares texts without the blanks around them", () => {
    expect(differing({ ...START_INPUTS, Span: " 24' " }, START_INPUTS)).toEqual([]);
  });
});
