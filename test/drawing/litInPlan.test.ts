import { describe, expect, it } from "vitest";
import { drawPlan } from "../../src/drawing/views/drawPlan.ts";
import { seenInPlan } from "../../src/drawing/views/litInPlan.ts";
import { placedBoards } from "../../src/roof/frame/placedBoards.ts";
import { framed, HALL } from "../roof/outlineSpecs.ts";
import { inches } from "./allDrawings.ts";
import { WINGED_ROOFS } from "./wingedRoofs.ts";

const seen = (spec: typeof HALL, row: string, wing?: string) => {
  const { frame, pieces } = framed(spec);
  return seenInPlan(frame, placedBoards(frame, pieces), { row, text: "", ...(wing === undefined ? {} : { wing }) });
};
const long = (found: ReturnType<typeof seen>) =>
  Math.hypot(found!.to!.x - found!.from!.x, found!.to!.y - found!.from!.y);

describe("what is in hand, in the plan", () => {
  const hall = { ...HALL, overhang: 18, endOverhang: null };
  const wing = WINGED_ROOFS["T"]!;

  // Each line is as long in plan as what is typed: a pitch's is its run, half the span.
  it.each([
    ["Spacing", undefined, hall, hall.spacing],
    ["Overhang", undefined, hall, 18],
    ["Pitch", undefined, hall, hall.span / 2],
    ["From left corner", "A", wing, 150],
    ["Out from wall", "A", wing, 120],
    ["Span", "A", wing, 192],
    ["Wall", "A", wing, wing.length],
  ] as const)("%s of %s is as long as it is typed", (row, letter, spec, length) => {
    expect(long(seen(spec, row, letter))).toBeCloseTo(length, 9);
  });

  it("has its members for a size, its own length for span and length, and nothing for what no plan shows", () => {
    expect(seen(hall, "Hip")!.member!("hip")).toBe(true);
    expect(seen(hall, "Rafter")!.member!("hip")).toBe(false);
    expect(seen(hall, "Span")).toEqual({ overall: "span" });
    expect(seen(hall, "Waste")).toBeNull();
    expect(seen({ ...hall, overhang: 0 }, "Overhang")).toBeNull();
    expect(seen(hall, "Span", "A")).toBeNull();
  });

  it.each([320, 900])("lights what is in hand alone, and says the same to a reader, at %s px", (width) => {
    const { frame, pieces } = framed(hall);
    const plan = (row?: string) =>
      drawPlan(frame, pieces, {
        width,
        length: inches,
        brief: width < 600,
        inHand: row === undefined ? null : { row, text: "in hand" },
      });
    const says = (svg: string) => /<desc>.*<\/desc>/.exec(svg)![0];
    expect(plan()).not.toContain("--drawing-lit");
    for (const row of ["Span", "Length", "Overhang", "Spacing", "Pitch", "End pitch", "End overhang", "Hip"]) {
      expect(plan(row), row).toContain("--drawing-lit");
      expect(says(plan(row))).toBe(says(plan()));
    }
    expect(plan("Overhang")).toContain(">in hand<");
    expect(plan("Waste")).toBe(plan());
  });
});
