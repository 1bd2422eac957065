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

  it("shows the worked example: every plane, each piece with the number of its sheet", () => {
    const svg = drawn(worked);
    expect(svg).toContain("<desc>22 sheets. ");
    const texts = drawnTexts(svg)
      .map(({ text }) => text)
      .join(" ");
    for (const part of [
      "Main plane 1: 8 new sheets",
      `Course 1, 26' 8": first piece 5' 7 3/16", 4 new`,
      "Main plane 2: 7 new sheets",
      `Course 1, 26' 8": first piece 5' 7 3/16" off sheet 1, 3 new`,
      "End plane 2: 3 new sheets",
      `Course 3, 5' 10 3/8": first piece 5' 10 3/8", 1 new`,
    ])
      expect(texts).toContain(part);
    const boards = drawnBoards(svg);
    expect(boards.map(({ piece }) => piece).slice(0, 9)).toEqual(["1", "2", "3", "4", "5", "6", "4", "7", "8"]);
    // The first piece: 67.2 in along the eave, its end leaning 38.4 in over a sheet's width.
    const corners = boards[0]!.points.map((point) => measured(boards[0]!, point));
    for (const [i, [x, y]] of [
      [0, 0],
      [67.2, 0],
      [67.2, 48],
      [38.4, 48],
    ].entries())
      expect([corners[i]!.x, corners[i]!.y]).toEqual([expect.closeTo(x!, 1), expect.closeTo(y!, 1)]);
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
        for (const { length } of courses) expect(lengths.some((one) => Math.abs(one - length) < 0.1)).toBe(true);
        expect(lengths.length).toBe(courses.length);
        expect(new Set(shown.map(({ board }) => `${board.view.x} ${board.view.y}`)).size).toBe(
          planes.flatMap(({ faces }) => faces).length,
        );
      }),
      { numRuns: 30, seed: 7 },
    );
  });
});
