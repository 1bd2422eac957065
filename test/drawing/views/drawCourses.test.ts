import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawCourses } from "../../../src/drawing/views/drawCourses.ts";
import { takeOff } from "../../../src/roof/tables/takeOff.ts";
import type { RoofSpec } from "../../../src/roof/frame/roofSpec.ts";
import { anyRoof, framed, HALL } from "../../roof/outlineSpecs.ts";
import { inches } from "../allDrawings.ts";
import { drawnBoards, drawnTexts, measured } from "../readDrawing.ts";

const counted = (spec: RoofSpec) => {
  const { frame, pieces } = framed(spec);
  return takeOff(frame, pieces);
};
const drawn = (spec: RoofSpec, width = 680) => drawCourses(counted(spec), { width, length: inches });

describe("drawCourses", () => {
  // The worked example of functions/GUIDE.md, counted by hand there and in sheetCourses.test.ts.
  const worked = { ...HALL, span: 192, length: 288, pitch: 0.75, endPitch: null, overhang: 16 };

  it("shows the worked example: both kinds of plane, each sheet numbered, off-cuts by the sheet they are left of", () => {
    const svg = drawn(worked);
    expect(svg).toContain("<desc>26 sheets. ");
    const texts = drawnTexts(svg)
      .map(({ text }) => text)
      .join(" ");
    for (const part of [
      "Main planes 1 and 2, each: 8 sheets",
      `Course 1, 26' 8": 4 sheets, 5' 4" left, starts the next`,
      `Course 2, 20' 3 3/16": off-cut 5' 4", 2 sheets, 1' 0 13/16" left, waste`,
      `Course 3, 13' 10 3/8": 2 sheets, 2' 1 5/8" left, waste`,
      "End planes 1 and 2, each: 5 sheets",
      `Course 1, 18' 8": 3 sheets, 5' 4" left, starts the next`,
      `Course 3, 5' 10 3/8": 1 sheet, 2' 1 5/8" left, waste`,
    ])
      expect(texts).toContain(part);
    expect(drawnBoards(svg).map(({ piece }) => piece)).toEqual([
      "1",
      "2",
      "3",
      "4",
      "4",
      "5",
      "6",
      "7",
      "8",
      "1",
      "2",
      "3",
      "3",
      "4",
      "5",
    ]);
    // The first off-cut: from the hip at 38.4 in, as long as it was left, one course high.
    const offCut = drawnBoards(svg)[4]!;
    const corners = offCut.points.map((point) => measured(offCut, point));
    for (const [i, [x, y]] of [
      [38.4, 48],
      [102.4, 48],
      [102.4, 96],
      [38.4, 96],
    ].entries())
      expect([corners[i]!.x, corners[i]!.y]).toEqual([expect.closeTo(x!, 2), expect.closeTo(y!, 2)]);
  });

  it("draws planes one by one where an off-cut passes between them", () => {
    // 320 in long, the first main plane's off-cut starts the second one.
    expect(
      counted({ ...worked, length: 320 })
        .courses.filter(({ course, start }) => course === 1 && start > 0)
        .map(({ side, plane }) => `${side} ${plane}`),
    ).toEqual(["Main 2", "End 1"]);
    expect(
      drawnTexts(drawn({ ...worked, length: 320 }))
        .map(({ text }) => text)
        .filter((text) => / plane \d: /.test(text)),
    ).toEqual([
      expect.stringMatching(/^Main plane 1/),
      expect.stringMatching(/^Main plane 2/),
      expect.stringMatching(/^End plane 1/),
      expect.stringMatching(/^End plane 2/),
    ]);
  });

  it("every course is covered from edge to edge, on any roof", () => {
    fc.assert(
      fc.property(anyRoof, (spec) => {
        const { courses, planes } = counted(spec);
        const shown = drawnBoards(drawn(spec, 1000)).map((board) => ({
          board,
          corners: board.points.map((point) => measured(board, point)),
        }));
        const rows = new Map<string, number>();
        for (const {
          board: { view },
          corners,
        } of shown) {
          const key = `${view.x} ${view.y} ${Math.round(corners[0]!.y)}`;
          rows.set(key, (rows.get(key) ?? 0) + corners[1]!.x - corners[0]!.x);
        }
        const lengths = [...rows.values()];
        // Planes that are laid alike are drawn once.
        for (const { length } of courses) expect(lengths.some((one) => Math.abs(one - length) < 0.1)).toBe(true);
        expect(lengths.length).toBeLessThanOrEqual(courses.length);
        expect(new Set(shown.map(({ board }) => `${board.view.x} ${board.view.y}`)).size).toBeGreaterThanOrEqual(
          planes.length,
        );
      }),
      { numRuns: 30, seed: 7 },
    );
  });
});
