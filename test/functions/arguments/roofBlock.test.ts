import { Failure } from "../../../src/measure/result.ts";
import { describe, expect, it } from "vitest";
import { DEFAULTS, readRoofBlock } from "../../../functions/arguments/roofBlock.ts";
import type { RoofSpec } from "../../../src/roof/frame/roofSpec.ts";
import { rows } from "../asked.ts";

type Rows = readonly (readonly unknown[])[];
const usual: Rows = [
  ["Span", `24'`],
  ["Length", `36'`],
  ["Pitch", 6],
];

function read(block: unknown): RoofSpec {
  const spec = readRoofBlock("roof", block);
  if (spec instanceof Failure) throw new Error(JSON.stringify(spec));
  return spec;
}

describe("readRoofBlock", () => {
  it("needs span, length and pitch; the rest has defaults", () => {
    expect(read(usual)).toEqual({
      unit: "in",
      span: 288,
      length: 432,
      pitch: 0.5,
      endPitch: null,
      ends: "hip and hip",
      spacing: 24,
      overhang: 0,
      endOverhang: null,
      rafter: { name: "2x6", thickness: 1.5, depth: 5.5 },
      hip: { name: "2x8", thickness: 1.5, depth: 7.25 },
      valley: { name: "2x8", thickness: 1.5, depth: 7.25 },
      wings: [],
      ridge: { name: "2x8", thickness: 1.5, depth: 7.25 },
      seat: 3.5,
      heel: null,
      setOutFrom: "king common",
      hipTop: "dropped",
      hipHead: "king commons",
      correction: 0,
      endCorrection: 0,
      boards: DEFAULTS.in.boards,
      endTrim: 0.5,
      crownDown: false,
      tailCut: "plumb",
      fascia: null,
      subFascia: null,
      blocking: "none",
      waste: 0,
      spares: 0,
    });
  });

  it("reads every row, in any order, whatever case, blanks and colons its label has", () => {
    expect(
      read([
        [" spares: ", 2],
        ["WASTE", "10%"],
        ["Boards", `8', 12'`],
        ["end  correction", -0.25],
        ["Correction", 0.125],
        ["Hip Head", "Ridge"],
        ["Hip top", "Backed"],
        ["Set out from", "corner"],
        ["Heel", 4],
        ["Ridge", "2x10"],
        ["Hip", "2x10"],
        ["Rafter", "2x8"],
        ["End overhang", 12],
        ["Overhang", `1' 4"`],
        ["Spacing", 16],
        ["Ends", "gable and hip"],
        ["End pitch", "8:12"],
        ["pitch:", "6/12"],
        ["LENGTH", 480],
        ["span ", 240],
        [null, null],
        ["", ""],
      ]),
    ).toMatchObject({
      spares: 2,
      waste: 10,
      boards: [96, 144],
      endCorrection: -0.25,
      correction: 0.125,
      hipHead: "ridge",
      hipTop: "backed",
      setOutFrom: "corner",
      heel: 4,
      seat: null,
      ridge: { depth: 9.25 },
      hip: { depth: 9.25 },
      rafter: { depth: 7.25 },
      endOverhang: 12,
      overhang: 16,
      spacing: 16,
      ends: "gable and hip",
      endPitch: 8 / 12,
      pitch: 0.5,
      length: 480,
      span: 240,
    });
  });

  it("a blank row takes its default, and a cell that a host hands over as 0 for blank is blank for the end pitch", () => {
    expect(read([...usual, ["Spacing", ""], ["End pitch", 0], ["Overhang", null]])).toMatchObject({
      spacing: 24,
      endPitch: null,
      overhang: 0,
    });
  });

  it.each(["End pitch", "Ends", "Rafter", "Hip", "Ridge", "Set out from", "Hip top", "Hip head", "Boards", "Unit"])(
    "a 0 in the row %s can only be an empty cell",
    (row) => {
      expect(read([...usual, [row, 0]])).toEqual(read(usual));
    },
  );

  it("blanks within a word's words do not count", () =>
    expect(read([...usual, ["Ends", " Hip  and\u00a0gable "]])).toMatchObject({ ends: "hip and gable" }));

  it("an empty third column may come as 0 too", () =>
    expect(read(usual.map((row) => [...row, 0]) as unknown as Rows)).toEqual(read(usual)));

  it("is metric when every length text is, or when the row Unit says so", () => {
    const metric = {
      unit: "mm",
      span: 6000,
      length: 9000,
      spacing: 600,
      seat: 89,
      rafter: { name: "38 x 140 mm", thickness: 38, depth: 140 },
      hip: { depth: 184 },
      boards: DEFAULTS.mm.boards,
    };
    expect(
      read([
        ["Span", "6 m"],
        ["Length", "900 cm"],
        ["Pitch", "30°"],
      ]),
    ).toMatchObject(metric);
    expect(
      read([
        ["Span", 6000],
        ["Length", 9000],
        ["Pitch", "30°"],
        ["Unit", "mm"],
      ]),
    ).toMatchObject(metric);
    // A nominal size is a name in either unit; in a metric block it is what it is dressed to, in whole millimeters.
    expect(
      read([
        ["Span", 6000],
        ["Length", 9000],
        ["Pitch", "30°"],
        ["Unit", "mm"],
        ["Rafter", "2x6"],
      ]),
    ).toMatchObject({
      rafter: { name: "2x6", thickness: 38, depth: 140 },
      hip: { name: "2x8", thickness: 38, depth: 184 },
    });
  });
});

/** Rows put in place of the usual ones of the same label, or beside them. */
describe("a metric block", () => {
  const block: Rows = [
    ["Span", "6 m"],
    ["Length", "9 m"],
    ["Pitch", "30°"],
    ["Overhang", "400 mm"],
    ["Boards", "3 m, 4.2 m"],
    ["Waste", 10],
  ];
  it("has its schedule, marks and boards in millimeters, its quantities in meters", () => {
    expect(rows("JACKTABLE", block)[0]).toMatchObject({ Offset: 2400, "Plate mark": 2381 });
    expect(rows("PLATEMARKS", block)[0]).toMatchObject({
      Mark: 581,
      Note: "hook at the left corner, seen from outside; 600 mm left at the corner: block it",
    });
    const units = new Set(rows("TAKEOFF", block).map((row) => row["Unit"]));
    expect(units).toEqual(new Set(["m", "m2", "sheets of 1200 x 2400 mm", "pieces", "board feet"]));
    const area = rows("TAKEOFF", block).find((row) => row["Item"] === "Roof, sloped")!["Amount"];
    expect(area).toBeCloseTo((6.8 * 9.8) / Math.cos(Math.PI / 6), 9);
    expect(
      rows("CAUTIONS", block)
        .map((row) => row["Here"])
        .join(" "),
    ).not.toContain(`"`);
  });
});
