import { describe, expect, it } from "vitest";
import { mainBlock } from "../../../src/roof/frame/blocks.ts";
import { faceWidth } from "../../../src/roof/frame/surface.ts";
import { planeGroups } from "../../../src/roof/tables/planeGroups.ts";
import { sheathingCourses } from "../../../src/roof/tables/sheathingCourses.ts";
import { framed, usual } from "../anySpec.ts";

const sheet = { long: 96, wide: 48 };

/**
 * Worked by hand: span 16', length 24', 9 in 12, overhang 16 in, rafters at 24 in.
 *
 * Eave to ridge is 112 level and 140 along the slope: courses of 48, 48 and 44. Each hip takes 38.4 off a course's length, 48 x 4/5.
 *
 *   main   320.0   4 sheets (384), off-cut 64, two bays and more: it starts the next course
 *          243.2   64 + 2 sheets (192) = 256, off-cut 12.8: waste
 *          166.4   2 sheets (192), off-cut 25.6: waste                       8 sheets, twice
 *   end    224.0   3 sheets (288), off-cut 64
 *          147.2   64 + 1 sheet (96) = 160, off-cut 12.8
 *           70.4   1 sheet (96), off-cut 25.6                                 5 sheets, twice
 */
describe("sheetCourses", () => {
  const courses = sheathingCourses(
    planeGroups(framed({ span: 192, length: 288, pitch: 0.75, overhang: 16 })),
    sheet,
    24,
  );

  it("the worked example: 26 sheets", () => {
    const main = [
      [320, 0, 4, 64],
      [243.2, 64, 2, 12.8],
      [166.4, 0, 2, 25.6],
    ];
    const end = [
      [224, 0, 3, 64],
      [147.2, 64, 1, 12.8],
      [70.4, 0, 1, 25.6],
    ];
    expect(courses.map(({ length, start, sheets, offCut }) => [length, start, sheets, offCut])).toEqual(
      [...main, ...main, ...end, ...end].map((row) => row.map((value) => expect.closeTo(value, 9))),
    );
    expect(courses.reduce((sum, { sheets }) => sum + sheets, 0)).toBe(26);
    expect(
      courses.map(({ side, plane, course, from }) => `${side} ${plane}.${course} from ${from}`).slice(2, 5),
    ).toEqual(["Main 1.3 from 96", "Main 2.1 from 0", "Main 2.2 from 48"]);
  });

  const level = (width: number, up: number) => {
    const figures = { pitch: 1e-9, run: up, overhang: 0, seat: 0, correction: 0 };
    const [plane] = mainBlock(usual, { heel: 0, side: figures, end: figures }).sides;
    const part = [0, up].map((at) => ({ at, from: 0, to: width }));
    const face = { plane, parts: [part], top: up, plan: 0, sloped: 0, eave: 0, gableRake: 0, cornerRake: 0 };
    return { side: "Main", faces: [face], plan: 0, sloped: 0 } as const;
  };
  const brief = (width: number, up: number, bay: number) =>
    sheathingCourses([level(width, up)], sheet, bay).map(({ start, sheets, offCut }) => [start, sheets, offCut]);

  it.each([
    [
      "whole sheets leave nothing",
      192,
      96,
      24,
      [
        [0, 2, 0],
        [0, 2, 0],
      ],
    ],
    [
      "an off-cut of two bays starts the next course",
      144,
      96,
      24,
      [
        [0, 2, 48],
        [48, 1, 0],
      ],
    ],
    [
      "a shorter one is waste",
      145,
      96,
      24,
      [
        [0, 2, 47],
        [0, 2, 47],
      ],
    ],
    [
      "at 16 in on centers two bays are 32",
      160,
      96,
      16,
      [
        [0, 2, 32],
        [32, 2, 64],
      ],
    ],
    [
      "a course that an off-cut holds takes no sheet",
      40,
      96,
      16,
      [
        [0, 1, 56],
        [40, 0, 16],
      ],
    ],
    [
      "a course ripped at the ridge takes whole sheets",
      96,
      50,
      24,
      [
        [0, 1, 0],
        [0, 1, 0],
      ],
    ],
  ])("%s", (_, width, up, bay, expected) => {
    expect(brief(width, up, bay)).toEqual(expected);
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
