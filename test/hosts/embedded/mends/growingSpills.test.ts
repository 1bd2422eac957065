import { beforeEach, describe, expect, it } from "vitest";
import { functions } from "../../../../functions/index.ts";
import type { Headless } from "../headless.ts";
import { useHeadless } from "../useHeadless.ts";

let t: Headless;
const make = useHeadless((fresh) => (t = fresh));
const why = (row: number, column: number) => t.host.messageAt("Sheet1", row, column);
/** The cells of an area that may not be on the sheet yet. */
const area = async (row: number, column: number, rows: number, columns: number) => {
  await t.sheet.calculation.settled();
  const read = await t.host.read({ sheet: "Sheet1", row, column, rows, columns });
  return read.map((line) => line.map(({ value }) => value));
};
const one = async (a1: string) => (await t.values(a1))[0]![0];

describe("a spill past the sheet's edge", () => {
  it("makes the sheet wider, and what depends on it is right at once", async () => {
    t.type("A1", 3);
    t.type("B1", "=SUM(Y1:AD9)");
    t.type("Z1", "=RAFTER.ROWS(A1)");
    expect(await area(0, 25, 3, 2)).toEqual([
      [1, 10],
      [2, 20],
      [3, 30],
    ]);
    expect(await one("B1")).toBe(66);
    t.type("A1", 2);
    expect(await one("B1")).toBe(33);
  });

  it("makes it longer", async () => {
    t.type("A999", "=RAFTER.ROWS(5)");
    expect(await area(998, 0, 5, 2)).toEqual([1, 2, 3, 4, 5].map((n) => [n, n * 10]));
    expect(t.worksheet().getMaxRows()).toBe(1003);
  });

  it("of the sheet's own functions does the same", async () => {
    t.type("X2", "=SEQUENCE(2,8)");
    expect(await area(1, 23, 2, 8)).toEqual([
      [1, 2, 3, 4, 5, 6, 7, 8],
      [9, 10, 11, 12, 13, 14, 15, 16],
    ]);
  });

  it("stops at the most rows and columns that a workbook has", async () => {
    t.type("B3", "=SEQUENCE(1,16384)");
    expect(String(await one("B3"))).toMatch(/^#/);
    t.type("B3", "=SEQUENCE(1,3)");
    expect(await one("D3")).toBe(3);
  });
});

describe("a spill that finds no room", () => {
  beforeEach(async () => {
    t.type("K14", "mine");
    t.type("J12", "=RAFTER.ROWS(4)");
    await t.values("J12");
  });

  it("says which cell is in the way, and nothing more once it is empty", async () => {
    expect(await one("J12")).toBe("#SPILL!");
    expect(await why(11, 9)).toBe(
      "K14 is in the way. This table needs the cells J12:K15: empty them, or move the formula.",
    );
    t.type("K14", "");
    expect(await t.values("J12:K12")).toEqual([[1, 10]]);
    expect(await why(11, 9)).toBeNull();
  });

  it("does not make the sheet larger", async () => {
    t.type("A1", "=SEQUENCE(3,99)");
    t.type("C2", 1);
    const before = t.worksheet().getMaxColumns();
    t.type("A5", 1);
    t.type("A4", "=SEQUENCE(3,199)");
    expect(await one("A4")).toBe("#SPILL!");
    expect(t.worksheet().getMaxColumns()).toBe(before);
  });

  it("names a cell of another spill", async () => {
    t.type("K14", "");
    t.type("A20", "=SEQUENCE(3,3)");
    await t.values("A20");
    t.type("B18", "=SEQUENCE(4,1)");
    expect(await one("B18")).toBe("#SPILL!");
    expect(await why(17, 1)).toMatch(/^B20 is in the way/);
  });

  it("is one of two that come at once and cross", async () => {
    t.type("A20", "=SEQUENCE(3,3)");
    t.type("C19", "=SEQUENCE(3,1)");
    expect([await one("A20"), await one("C19")].filter((value) => value === "#SPILL!")).toHaveLength(1);
    t.type("C19", "");
    expect(await t.values("A20:C20")).toEqual([[1, 2, 3]]);
  });

  it("is named where its error shows", async () => {
    t.type("A1", "=J12");
    expect(await one("A1")).toBe("#SPILL!");
    expect(await why(0, 0)).toBe("The error comes from Sheet1!J12.");
  });
});

it("a jack table at the edge is whole", async () => {
  t = make(functions, 100);
  const block = [
    ["Span", "24'"],
    ["Length", "36'"],
    ["Pitch", 6],
    ["Overhang", 16],
  ] as const;
  block.forEach(([label, value], i) => (t.type(`A${90 + i}`, label), t.type(`B${90 + i}`, value)));
  t.type("R1", "=RAFTER.JACKTABLE(A90:B93)");
  t.type("A1", "=RAFTER.JACKTABLE(A90:B93)");
  const inside = await area(0, 0, 18, 17);
  expect(inside[0]![0]).toBe("Piece");
  expect(await area(0, 17, 18, 17)).toEqual(inside);
});
