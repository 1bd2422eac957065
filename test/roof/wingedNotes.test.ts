import { describe, expect, it } from "vitest";
import { rows } from "../functions/asked.ts";
import { wingedCases } from "../solids/wings/cases.ts";
import { blockOf } from "../solids/wings/plan.ts";

/** Pieces whose note names the bay at the crossing, and how wide it is. */
const bays = (name: string) =>
  rows("MEMBERS", blockOf(wingedCases[name]!)).flatMap(({ Member, Side, Note }) => {
    const width = /(?:^|; )([^;]*) left at the crossing of wing (\w): block it/.exec(String(Note));
    return width ? [[Member, Side, width[1]]] : [];
  });

// Common practice, no source: what is too short to stand is blocking.
describe("the bay at a wing's crossing is named on the last piece before it", () => {
  it("of a T: valley jacks of the wing stand 24 apart from the inner corner on, cripples over the mouth from the main stations", () => {
    // The reach is 96; the last jack is at 72. The crossing is at 246 along the front; the main stations 240 and 264 leave 6 to it.
    expect(bays("a T with a lower ridge")).toEqual([
      ["valley jack", "Wing A", `2' 0"`],
      ["valley cripple", "Main", `6"`],
    ]);
  });

  it("of wings whose apex lies inside: a cripple to the hip is not the last", () => {
    expect(bays("a steep wing whose apex is inside, backed hips").map(([member]) => member)).toEqual([
      "valley cripple",
      "valley jack",
    ]);
  });
});
