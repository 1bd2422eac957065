import { describe, expect, it } from "vitest";
import { START_INPUTS, type Inputs } from "../../../src/pane/state/fields.ts";
import { cautionTable, exceededIn } from "../../../src/pane/state/exceeded.ts";
import { report } from "../../../src/pane/state/report.ts";

const model = (changes: Partial<Inputs>) => report({ ...START_INPUTS, ...changes }).model!;

describe("exceededIn", () => {
  it("finds none on the roof that the pane starts with", () => {
    expect(exceededIn(model({}))).toEqual([]);
  });

  it("puts the saw's tilt at the jacks that are past it, at their heads, and at the hips", () => {
    // Ends of 9 in 12 on sides of 6: the main jacks are cut at the angle whose tangent is 9/6, the end ones at its complement.
    const roof = model({ "End pitch": "9" });
    const found = exceededIn(roof);
    const tilt = found.find(({ check }) => check === "Saw tilt, jacks, main sides")!;
    expect(tilt.here).toBe(`${((Math.atan(9 / 6) * 180) / Math.PI).toFixed(2)}°`);
    expect(tilt.end).toBe("head");
    const marks = roof.pieces.filter(({ member }) => member === "jack").map(({ mark }) => mark);
    expect(tilt.marks).toEqual(marks.filter((mark) => mark.startsWith("JM")));
    expect(found.find(({ check }) => check === "Saw tilt, hip's head")!.marks).toEqual(["H"]);
  });

  it("puts a notch at every rafter of the side, at its foot", () => {
    // A 2x8 without a tail: a seat of 4" at 12 in 12 notches 4" x cos 45 = 2.83", more than a quarter of 7 1/4".
    const notch = exceededIn(model({ Pitch: "12", Overhang: "0", Seat: "4" })).find(({ check }) =>
      /^Notch/.test(check),
    )!;
    expect(notch.end).toBe("foot");
    expect(notch.marks).toEqual(expect.arrayContaining(["C", "J1"]));
    expect(notch.marks).not.toContain("H");
    expect(notch.marks).not.toContain("R");
  });

  it("has the words of the table, where what is outside stands first", () => {
    const roof = model({ "End pitch": "9" });
    const [, ...rows] = cautionTable(roof);
    const found = exceededIn(roof);
    expect(found.map(({ check }) => check)).toEqual(rows.slice(0, found.length).map(([check]) => check));
    expect(rows[found.length]![4]).not.toMatch(/^OUTSIDE/);
  });
});
