import { describe, expect, it } from "vitest";
import { CellError } from "../../src/registry/refusal.ts";
import { asked, number, refusal } from "./asked.ts";

/** Each heading is a sentence of "How arguments are read"; each row a cell that a user may have. */

describe("a pitch: a bare number from 1 to 24 is the rise in 12", () => {
  it.each([1, 6, 6.5, 24])("%s", (cell) => expect(number("PITCHRISE", cell)).toBeCloseTo(cell, 12));
  // tan 26.565... = 1/2; 50 percent is 1 in 2.
  it.each([
    "6/12",
    "6:12",
    "6 in 12",
    "26.565051177078 deg",
    "26.565051177078°",
    "50%",
    "6",
    " 6 / 12 ",
    "6/12 ",
    " 6 : 12",
    "6in12",
    "6 IN 12",
    "６／１２",
  ])("text %s is 6 in 12", (cell) => expect(number("PITCHRISE", cell)).toBeCloseTo(6, 10));
  it.each(["0.1/12", "84.9°", "1100%"])("text may be any slope above 0 and below 85 degrees: %s", (cell) =>
    expect(number("PITCHDEG", cell)).toBeLessThan(85),
  );
  it.each(["0/12", "85°", "-6/12", "90 deg"])("and none other: %s", (cell) =>
    expect(refusal("PITCHDEG", cell)).toMatch(/^pitch: /),
  );
});

describe("a pitch: a bare number below 1 is refused, for it is what a sheet made of 6:12, 6/12 or 50%", () => {
  // A quarter of a day is the time 6:00; 6:12 is 0.258333.
  it.each([0.25, 0.258333, 0.5, 0.999])("%s", (cell) => {
    const message = refusal("PITCHDEG", cell);
    expect(message).toContain(`pitch: ${cell} was read`);
    expect(message).toMatch(/6:12 \(a time\).*Type 6, or "6\/12"/);
  });
  it.each([0, -6])("%s does not rise", (cell) =>
    expect(refusal("PITCHDEG", cell)).toMatch(/^pitch: .*must rise.*Type/),
  );
});

describe("a pitch: above 24 is refused, for it is a date or degrees", () => {
  // 45819 is a June 12th; 30 may be meant as degrees.
  it.each([24.01, 30, 45819])("%s", (cell) =>
    expect(refusal("PITCHDEG", cell)).toMatch(/^pitch: .* was read.*\(a date\).*Type 6, "6\/12" or "30°"/),
  );
});

describe("a length: a bare number is in the call's unit, and results come back in it", () => {
  it("whatever goes in comes out", () => {
    expect(number("SLOPELEN", 9, 12)).toBeCloseTo(15, 12);
    expect(number("SLOPELEN", 9, 3600)).toBeCloseTo(4500, 9);
    expect(number("JACKLEN", 6, 480, 15, 15)).toBeCloseTo(10 * number("JACKLEN", 6, 48, 1.5, 1.5), 9);
  });
  it("bare numbers beside a text are in the text's unit", () => {
    expect(number("JACKLEN", 6, `4'`, 1.5, 1.5)).toBe(number("JACKLEN", 6, 48, 1.5, 1.5));
    expect(number("JACKLEN", 6, "1.2 m", 38, 38)).toBe(number("JACKLEN", 6, 1200, 38, 38));
    expect(number("JACKLEN", 6, 1200, 38, "38 mm")).toBe(number("JACKLEN", 6, 1200, 38, 38));
  });
});

describe("a length: text with marks decides the unit", () => {
  it.each([
    [`9' 4 5/8"`, 112.625],
    ["9-4-5/8", 112.625],
    [`24'`, 288],
    [`112 5/8"`, 112.625],
    ["112 5/8", 112.625],
  ])("%s is %s inches", (cell, inches) => {
    expect(number("INCHES", cell)).toBe(inches);
    expect(number("TOMM", cell)).toBeCloseTo(inches * 25.4, 9);
  });
  it.each([
    ["2.86 m", 2860],
    ["2860 mm", 2860],
    ["286 cm", 2860],
  ])("%s is %s millimeters", (cell, millimeters) => {
    expect(number("TOMM", cell)).toBe(millimeters);
    expect(number("INCHES", cell)).toBeCloseTo(millimeters / 25.4, 12);
  });
  it.each([
    ["24' 6", 294],
    [`12'-6"`, 150],
    [`12' - 6 1/2"`, 150.5],
    ["24\u00a0' 6", 294],
    ["½", 0.5],
    ["２４'\u3000６", 294],
  ])("%s is %s inches, as people write it", (cell, inches) => expect(number("INCHES", cell)).toBe(inches));
  it("a text with no marks is a bare number", () => expect(number("TOMM", "48")).toBe(48));
});

describe("a length: feet-and-inch text and metric text in one call are refused", () => {
  it("the second one is named, with what it says and the one it goes against", () => {
    const message = refusal("JACKLEN", 6, `4'`, "38 mm", 1.5);
    expect(message).toMatch(
      /^hipThickness: "38 mm" is metric, but offset is feet and inches\. Type both in the same unit\.$/,
    );
  });
  it("the other way round", () =>
    expect(refusal("JACKLEN", 6, "1.2 m", 38, `1 1/2"`)).toMatch(
      /^jackThickness: "1 1\/2"" is feet and inches, but offset is metric/,
    ));
  it("across a bare number, which takes no side", () =>
    expect(refusal("JACKLEN", 6, 48, `1.5"`, "38 mm")).toMatch(
      /^jackThickness: .*but hipThickness is feet and inches/,
    ));
});

describe("a length: a whole number from 43000 to 56000 is refused as a likely date, with the way out", () => {
  it.each([43000, 45833, 46000, 56000])("%s", (cell) =>
    expect(refusal("COMMONLEN", 6, cell, 0)).toMatch(
      new RegExp(
        `^run: ${cell} was read, which is a date that a sheet makes of 24-6\\. Type 24' 6", or "${cell / 1000} m"`,
      ),
    ),
  );
  it.each([42999, 56001, 46000.5])("%s is a length", (cell) =>
    expect(number("SLOPELEN", 9, cell)).toBeCloseTo(cell * 1.25, 8),
  );
  it("the way out is taken", () => expect(number("SLOPELEN", 9, "46 m")).toBeCloseTo(57500, 9));
});

describe("blank: an optional argument takes its default", () => {
  const regular = number("JACKLEN", 6, 48, 1.5, 1.5);
  it.each([
    ["left out", []],
    ["undefined", [undefined, undefined]],
    ["null", [null, null]],
    ["empty text", ["", ""]],
    ["0, as some hosts pass an empty cell", [0, 0]],
    ["written out", [6, 90]],
    ["text", ["6/12", "90°"]],
  ] as const)("otherPitch and corner %s", (_, cells) =>
    expect(number("JACKLEN", 6, 48, 1.5, 1.5, ...cells)).toBe(regular),
  );
  it("each on its own", () => {
    expect(number("JACKLEN", 6, 48, 1.5, 1.5, "", 120)).toBe(number("JACKLEN", 6, 48, 1.5, 1.5, 6, 120));
    expect(number("JACKLEN", 6, 48, 1.5, 1.5, 9, 0)).toBe(number("JACKLEN", 6, 48, 1.5, 1.5, 9, 90));
  });
  it.each([undefined, null, ""])("another optional argument: %s", (cell) =>
    expect(asked("TAPE", 112.6, cell)).toBe(`9' 4 5/8"`),
  );
});

describe("blank: a required argument is refused by name", () => {
  it.each([undefined, null, ""])("%s", (cell) => {
    expect(refusal("JACKLEN", cell, 48, 1.5, 1.5)).toMatch(/^pitch: nothing was given\. Type /);
    expect(refusal("JACKLEN", 6, cell, 1.5, 1.5)).toMatch(/^offset: nothing was given\. Type /);
    expect(refusal("JACKLEN", 6, 48, 1.5, cell)).toMatch(/^jackThickness: nothing was given\. Type /);
  });
  it("one left out at the end", () =>
    expect(refusal("JACKLEN", 6, 48, 1.5)).toMatch(/^jackThickness: nothing was given/));
  it("all left out", () => expect(refusal("JACKLEN")).toMatch(/^pitch: nothing was given/));
});

describe("0 is a value for overhang and ridgeThickness; elsewhere it is refused", () => {
  it("a value", () => {
    expect(number("COMMONLEN", 9, 80, 0)).toBeCloseTo(100, 12);
    expect(number("TAILLEN", 9, 0)).toBe(0);
    expect(number("COMMONBOARD", 9, 80, 0, 8, 5, 0)).toBeCloseTo(103, 12);
    expect(number("HIPTORIDGE", 6, 144, 0)).toBe(number("HIPLEN", 6, 144));
    // A hip of 7.2 in 12 over 3-4-5 triangles: half its thickness reaches 0.75 x 3/5 past the run of 144.
    expect(number("HIPRIDGEBOARD", 9, 144, 1.5, 0, 9.25, 7, 16, 12)).toBeCloseTo(
      (144 + 0.45 + 16) * 1.25 * Math.sqrt(1.36) + 9.25 * 0.6,
      9,
    );
  });
  it.each([
    ["offset", [6, 0, 1.5, 1.5]],
    ["hipThickness", [6, 48, 0, 1.5]],
    ["jackThickness", [6, 48, 1.5, 0]],
  ])("%s", (name, cells) =>
    expect(refusal("JACKLEN", ...cells)).toMatch(new RegExp(`^${name}: 0 was read; it must be more than 0\\. Type `)),
  );
  it.each([
    ["spacing", "JACKSTEP", [6, 0]],
    ["depth", "CUTEND", [6, 0]],
  ])("%s", (name, fn, cells) => expect(refusal(fn, ...cells)).toMatch(new RegExp(`^${name}: 0 was read`)));
  it("for the length without thickness there is JACKLINE", () => expect(number("JACKLINE", 9, 48)).toBeCloseTo(60, 12));
  it("nothing may be negative but a correction", () =>
    expect(refusal("COMMONLEN", 6, 144, -1)).toMatch(/^ridgeThickness: -1 was read; it must not be negative/));
});

describe("a range where one value is expected", () => {
  it("is its single cell when it is 1 x 1", () =>
    expect(number("JACKLEN", [[6]], [[48]], 1.5, [[1.5]], [[""]], [[null]])).toBe(number("JACKLEN", 6, 48, 1.5, 1.5)));
  it.each([
    ["a row", [[6, 7]]],
    ["a column", [[48], [50]]],
    [
      "a block",
      [
        [1, 2],
        [3, 4],
      ],
    ],
    ["nothing", []],
    ["an empty row", [[]]],
  ])("is refused else: %s", (_, cells) =>
    expect(refusal("JACKLEN", 6, cells, 1.5, 1.5)).toMatch(
      /^offset: a range of cells was given where one value is expected\. Point to a single cell\.$/,
    ),
  );
});

describe("error inputs pass through", () => {
  const error = new CellError("#DIV/0!");
  it.each([[[error, 48, 1.5, 1.5]], [[6, error, 1.5, 1.5]], [[6, 48, 1.5, 1.5, error]], [[6, 48, 1.5, [[error]]]]])(
    "%#",
    (cells) => expect(asked("JACKLEN", ...cells)).toBe(error),
  );
  it("the first of them, and before anything further right is refused", () =>
    expect(asked("JACKLEN", 6, error, "junk", new CellError("#N/A"))).toBe(error));
});

describe("angles come back in degrees", () => {
  it("of a pitch, a saw and a corner", () => {
    expect(number("PITCHDEG", 12)).toBeCloseTo(45, 12);
    expect(number("JACKTILT", 6)).toBeCloseTo(45, 12);
    expect(number("CORNERDEG", 3, 4, 5)).toBeCloseTo(90, 12);
  });
});

describe("corner is the angle between the two plate lines, 90 for a square corner, for hips and valleys alike", () => {
  it.each([
    [135, 135],
    ["135°", 135],
    ["135 deg", 135],
    ["135 deg.", 135],
    ["135", 135],
    ["１３５°", 135],
  ])("%s", (cell, angle) => expect(number("JACKTILT", 6, 6, cell)).toBeCloseTo(angle / 2, 10));
  it.each([180, -90, 360, 1e9, "square", "π"])("%s is none", (cell) =>
    expect(refusal("JACKTILT", 6, 6, cell)).toMatch(/^corner: .*more than 0 and less than 180 degrees\. Type 90/),
  );
});
