import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dressedSizes } from "../../src/measure/dressedSizes.ts";
import { readSize } from "../../src/measure/readSize.ts";
import { Failure } from "../../src/measure/result.ts";
import { anyText } from "./anyText.ts";
import { refusesLongTexts } from "./refusesLongTexts.ts";

describe("readSize", () => {
  // Lumber table (dimension, timbers, common boards; nominal and actual size in inches) published at vterrain.org, Hawaii section.
  it.each([
    ["2x4", 1.5, 3.5],
    ["2x6", 1.5, 5.5],
    ["2x8", 1.5, 7.25],
    ["2x10", 1.5, 9.25],
    ["2x12", 1.5, 11.25],
    ["4x6", 3.5, 5.5],
    ["4x8", 3.5, 7.25],
    ["4x10", 3.5, 9.25],
    ["6x6", 5.5, 5.5],
    ["6x8", 5.5, 7.25],
    ["6x10", 5.5, 9.25],
    ["8x8", 7.25, 7.25],
    ["8x10", 7.25, 9.25],
    ["1x4", 0.75, 3.5],
    ["1x6", 0.75, 5.5],
    ["1x8", 0.75, 7.25],
    ["1x10", 0.75, 9.25],
    ["1x12", 0.75, 11.25],
  ])("dresses %s to %d x %d in, as published", (text, thickness, depth) => {
    expect(readSize(text)).toEqual({ thickness, depth, unit: "in", name: text });
  });

  // PS 20, from memory.
  it.each([
    ["2x2", 1.5, 1.5],
    ["2x3", 1.5, 2.5],
    ["2x5", 1.5, 4.5],
    ["3x6", 2.5, 5.5],
    ["2x14", 1.5, 13.25],
    ["2x16", 1.5, 15.25],
    ["4x16", 3.5, 15.25],
  ])("dresses %s to %d x %d in", (text, thickness, depth) => {
    expect(readSize(text)).toEqual({ thickness, depth, unit: "in", name: text });
  });

  it.each([
    ["2 x 8", "2x8", 1.5, 7.25],
    ["2×8", "2x8", 1.5, 7.25],
    ["2X10", "2x10", 1.5, 9.25],
    [`2" x 8"`, "2x8", 1.5, 7.25],
    ["2 in x 8 in.", "2x8", 1.5, 7.25],
    ["2 in. x 8 in.", "2x8", 1.5, 7.25],
    ["2 inches x 8 inches", "2x8", 1.5, 7.25],
    ["2 in. x 8. in.", "2.0 x 8.0 in", 2, 8],
    ["1/16 x 100", "0.0625 x 100 in", 1 / 16, 100],
    ["1.5 x 7.25", "1.5 x 7.25 in", 1.5, 7.25],
    ["1 1/2 x 7 1/4", "1.5 x 7.25 in", 1.5, 7.25],
    [`1-1/2" x 7-1/4"`, "1.5 x 7.25 in", 1.5, 7.25],
    ["1½×7¼", "1.5 x 7.25 in", 1.5, 7.25],
    ["1.75 x 9.5 in", "1.75 x 9.5 in", 1.75, 9.5],
    ["2.0 x 8", "2.0 x 8.0 in", 2, 8],
    ["3/4 x 5", "0.75 x 5 in", 0.75, 5],
  ])("reads %s as %s", (text, name, thickness, depth) => {
    expect(readSize(text)).toEqual({ thickness, depth, unit: "in", name });
  });

  it.each([
    ["38 x 184", 38, 184],
    ["38x184", 38, 184],
    ["38x184 mm", 38, 184],
    ["38 mm x 184 mm", 38, 184],
    ["38.5 x 184", 38.5, 184],
    ["12 x 140 mm", 12, 140],
    ["38 mm. x 184 mm.", 38, 184],
    ["2 x 2540 mm", 2, 2540],
    ["15x15", 15, 15],
  ])("reads %s in millimeters", (text, thickness, depth) => {
    expect(readSize(text)).toEqual({ thickness, depth, unit: "mm", name: `${thickness} x ${depth} mm` });
  });

  it.each([["7x9"], ["2x7"], ["2x9"], ["1x1"], ["6x16"]])("refuses %s: no such nominal size", (text) => {
    expect(readSize(text)).toEqual(new Failure({ kind: "no such nominal size" }));
  });

  it.each([
    ["8x2", "2x8"],
    ["16x2", "2x16"],
    ["184 x 38", "38 x 184 mm"],
    ["7.25 x 1.5", "1.5 x 7.25 in"],
  ])("refuses %s: turned round, write %s", (text, instead) => {
    expect(readSize(text)).toEqual(new Failure({ kind: "size turned round", instead }));
  });

  it.each([
    ["", "not a size"],
    ["2", "not a size"],
    ["x", "not a size"],
    ["2x", "not a size"],
    ["2x8x10", "not a size"],
    ["0x8", "not a size"],
    ["2x0", "not a size"],
    ["-2x8", "not a size"],
    ["2x1e9", "not a size"],
    ["2 x 8 cm", "not a size"],
    ["2x8 in x", "not a size"],
    ["38 mm x 7 in", "not a size"],
    ["1 x 200", "not a size"],
    ["1/17 x 8", "not a size"],
    ["2.0 x 100.01", "not a size"],
    ["1 x 20 mm", "not a size"],
    ["38 x 2541 mm", "not a size"],
    ["38 mm 1 x 184", "not a size"],
    ["1,5 by 7", "not a size"],
    ["3/0 x 8", "not a size"],
    ["38 x 9999", "not a size"],
    ["two by eight", "not a size"],
    ["📐x📐", "not a size"],
    ["1,5 x 7,25", "decimal comma"],
    ["38,5x184", "decimal comma"],
  ])("refuses %j: %s", (text, tag) => {
    expect(readSize(text)).toEqual(new Failure({ kind: tag }));
  });

  it("reads every name back to the same size", () => {
    const sixteenths = fc.integer({ min: 2, max: 320 }).map((n) => n / 16);
    const texts = fc.oneof(
      fc.constantFrom(...dressedSizes).map((size) => `${size.nominalThickness}x${size.nominalDepth}`),
      fc
        .tuple(sixteenths, sixteenths)
        .map(([a, b]) => `${Math.min(a, b)}.0 x ${Math.max(a, b)} in`.replace(/(\.\d+)\.0/, "$1")),
      fc
        .tuple(fc.integer({ min: 5, max: 600 }), fc.integer({ min: 5, max: 600 }))
        .map(([a, b]) => `${Math.min(a, b)}x${Math.max(a, b)}mm`),
    );
    fc.assert(
      fc.property(texts, (text) => {
        const size = readSize(text);
        expect(size).not.toBeInstanceOf(Failure);
        expect(readSize((size as { name: string }).name)).toEqual(size);
      }),
      { seed: 1, numRuns: 500 },
    );
  });

  it("never throws, and gives a size no wider than deep or a reason", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const size = readSize(text);
        expect(size instanceof Failure || (size.thickness > 0 && size.thickness <= size.depth)).toBe(true);
      }),
      { seed: 2, numRuns: 2_000 },
    );
  });

  refusesLongTexts(readSize, "not a size");
});
