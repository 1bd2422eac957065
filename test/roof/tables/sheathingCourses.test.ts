import { describe, expect, it } from "vitest";
import { mainBlock } from "../../../src/roof/frame/blocks.ts";
import { faceWidth } from "../../../src/roof/frame/surface.ts";
import { planeGroups } from "../../../src/roof/tables/planeGroups.ts";
import { eachPiece, leanOf, sheathingCourses, type CoursePiece } from "../../../src/roof/tables/sheathingCourses.ts";
import { framed, usual } from "../anySpec.ts";

const sheet = { long: 96, wide: 48 };

/** A piece by its length half way up the sheet, and the sheet it comes from; in brackets where that was cut before. */
const said = ({ from, to, left, right, sheet: number, offCut }: CoursePiece) =>
  `${(to - from - (left + right) / 2).toFixed(1)} ${offCut ? `(${number})` : number}`;

/**
 * Worked by hand: span 16', length 24', 9 in 12, overhang 16 in, rafters at 24 in.
 *
 * Eave to ridge is 112 level and 140 along the slope: courses of 48, 48 and 44. Each hip takes 38.4 off a course's length, 48 x 4/5. A sheet cut on the
 * slant gives two ends that add up to 96 half way up, each 28.8 to 76.8 there: two bays along its longer edge at least, the sheet's length at most.
 *
 *   281.6 = 48 + 2 x 96 + 41.6, ends out of new sheets: left 48 and right 54.4 are kept. The next course, 204.8 = 54.4 + 96 + 54.4, uses the
 *   right one. 128 = 51.2 + 76.8 leaves 44.8 on the left, and 19.2 on the right, which is waste. And so on over both ends: 8 + 7 + 4 + 3 = 22.
 */
describe("sheathingCourses", () => {
  const courses = sheathingCourses(
    planeGroups(framed({ span: 192, length: 288, pitch: 0.75, overhang: 16 })),
    sheet,
    24,
  );

  it("the worked example: 22 sheets", () => {
    expect(courses.map((one) => [`${one.side} ${one.plane}.${one.course}`, ...eachPiece(one).map(said)])).toEqual([
      ["Main 1.1", "48.0 1", "96.0 2", "96.0 3", "41.6 4"],
      ["Main 1.2", "54.4 5", "96.0 6", "54.4 (4)"],
      ["Main 1.3", "51.2 7", "76.8 8"],
      ["Main 2.1", "48.0 (1)", "96.0 9", "96.0 10", "41.6 11"],
      ["Main 2.2", "54.4 12", "96.0 13", "54.4 (11)"],
      ["Main 2.3", "51.2 14", "76.8 15"],
      ["End 1.1", "41.6 (5)", "96.0 16", "48.0 17"],
      ["End 1.2", "60.8 18", "48.0 (17)"],
      ["End 1.3", "32.0 19"],
      ["End 2.1", "44.8 (7)", "96.0 20", "44.8 (19)"],
      ["End 2.2", "41.6 (12)", "67.2 21"],
      ["End 2.3", "32.0 22"],
    ]);
    expect(courses.reduce((sum, { sheets }) => sum + sheets, 0)).toBe(22);
    expect(courses.map(({ from }) => from).slice(0, 4)).toEqual([0, 48, 96, 0]);
    // atan(38.4 / 48).
    expect(leanOf(courses[0]!.runs[0]!.left, sheet)).toBeCloseTo(38.6598, 4);
  });

  /** A face whose ends lean in by so much on each 48 of its height. */
  const level = (width: number, up: number, left = 0, right = 0) => {
    const figures = { pitch: 1e-9, run: up, overhang: 0, seat: 0, correction: 0 };
    const [plane] = mainBlock(usual, { heel: 0, side: figures, end: figures }).sides;
    const part = [0, up].map((at) => ({ at, from: (left * at) / 48, to: width - (right * at) / 48 }));
    const face = { plane, parts: [part], top: up, plan: 0, sloped: 0, eave: 0, gableRake: 0, cornerRake: 0 };
    return { side: "Main", faces: [face], plan: 0, sloped: 0 } as const;
  };
  const brief = (width: number, up: number, bay: number) =>
    sheathingCourses([level(width, up)], sheet, bay).map((course) => eachPiece(course).map(said).join(", "));

  it.each([
    ["whole sheets leave nothing", 192, 96, 24, ["96.0 1, 96.0 2", "96.0 3, 96.0 4"]],
    ["an off-cut of two bays is used again", 144, 96, 24, ["96.0 1, 48.0 2", "96.0 3, 48.0 (2)"]],
    ["an end shorter than that takes from its neighbor", 120, 48, 24, ["72.0 1, 48.0 2"]],
    ["at 16 in on centers two bays are 32", 160, 96, 16, ["96.0 1, 64.0 2", "96.0 3, 64.0 4"]],
    [
      "a course that an off-cut holds takes no sheet, and an off-cut serves once",
      40,
      144,
      16,
      ["40.0 1", "40.0 (1)", "40.0 2"],
    ],
    ["strips of a ripped course serve another so wide", 96, 64, 24, ["96.0 1", "96.0 2"]],
  ])("%s", (_, width, up, bay, expected) => {
    expect(brief(width, up, bay)).toEqual(expected);
  });

  // Lengths half way up: of a sheet of 96 cut on the slant, one piece takes 40 and leaves 56, or 48 and leaves 48.
  it.each([
    ["a right end", [level(50, 48, 0, 20), level(60, 48, 0, 20)], ["40.0 1", "50.0 (1)"]],
    ["a left end", [level(150, 48, 20, 0), level(55, 48, 20, 0)], ["48.0 1, 92.0 2", "45.0 (1)"]],
    ["but not where it is cut to the other hand", [level(50, 48, 0, 20), level(60, 48, 20, 0)], ["40.0 1", "50.0 2"]],
  ])("an off-cut that leans serves again: %s", (_, groups, expected) => {
    expect(sheathingCourses(groups, sheet, 24).map((course) => eachPiece(course).map(said).join(", "))).toEqual(
      expected,
    );
  });

  it("a course that grows past a sheet towards its top takes two", () => {
    const [course] = sheathingCourses([level(80, 48, -20, -20)], sheet, 24);
    expect(eachPiece(course!).length).toBe(2);
  });

  it("rips one sheet for the last courses of two planes", () => {
    const two = { ...level(96, 64), faces: [...level(96, 64).faces, ...level(96, 64).faces] };
    const last = sheathingCourses([two], sheet, 24).filter(({ course }) => course === 2);
    expect(last.map(({ runs }) => said(runs[0]!))).toEqual(["96.0 2", "96.0 (2)"]);
  });
});

describe("faceWidth", () => {
  const plane = {
    parts: [
      [
        { at: 0, from: 20, to: 120 },
        { at: 10, from: 20, to: 120 },
        { at: 60, from: 70, to: 70 },
      ],
    ],
  };
  it.each([
    [0, 100],
    [5, 100],
    [10, 100],
    [35, 50],
    [60, 0],
    [61, 0],
  ])("at %d up is %d", (up, width) => {
    expect(faceWidth(plane, up)).toBeCloseTo(width, 12);
  });
});
