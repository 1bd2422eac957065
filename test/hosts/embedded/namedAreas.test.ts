import { beforeEach, describe, expect, it } from "vitest";
import { functions } from "../../../functions/index.ts";
import type { Headless } from "./headless.ts";
import { useHeadless } from "./useHeadless.ts";

let t: Headless;
const make = useHeadless((fresh) => (t = fresh));

const at = (row: number, column: number, rows: number, columns: number, sheet = "Sheet1") => ({
  sheet,
  row,
  column,
  rows,
  columns,
});
const now = async () => (await t.host.namedAreas()).get("RoofBlock");

describe("a named area", () => {
  beforeEach(() => t.host.nameArea("RoofBlock", at(4, 0, 4, 2)));

  it("goes with its cells, and undo brings it back", async () => {
    t.worksheet().insertRowsBefore(0, 7);
    expect(await now()).toEqual(at(11, 0, 4, 2));
    t.worksheet().insertColumnBefore(0);
    expect(await now()).toEqual(at(11, 1, 4, 2));
    t.undo();
    t.undo();
    expect(await now()).toEqual(at(4, 0, 4, 2));
  });

  it("grows with a row inside, and shrinks with one that goes", async () => {
    t.worksheet().insertRowBefore(6);
    expect(await now()).toEqual(at(4, 0, 5, 2));
    t.worksheet().deleteRows(5, 2);
    expect(await now()).toEqual(at(4, 0, 3, 2));
  });

  it("goes with its sheet's new name, and is nowhere when its cells are gone", async () => {
    t.worksheet().setName("Ferry landing");
    expect(await now()).toEqual(at(4, 0, 4, 2, "Ferry landing"));
    t.worksheet("Ferry landing").deleteRows(3, 9);
    expect(await now()).toBeNull();
  });
});

it("a formula on a named block follows every change of its cells and of the name", async () => {
  t = make(functions, 200);
  const block = [
    ["Span", "24'"],
    ["Length", "36'"],
    ["Pitch", 6],
    ["Spacing", 16],
  ] as const;
  block.forEach(([label, value], i) => (t.type(`A${5 + i}`, label), t.type(`B${5 + i}`, value)));
  await t.host.nameArea("RoofBlock", at(4, 0, 3, 2));
  t.type("D1", "=ROWS(RAFTER.JACKTABLE(RoofBlock))");
  const wide = (await t.values("D1"))[0]![0];
  await t.host.nameArea("RoofBlock", at(4, 0, 4, 2));
  const narrow = (await t.values("D1"))[0]![0];
  expect(Number(narrow)).toBeGreaterThan(Number(wide));
  t.worksheet().insertRowsBefore(3, 7);
  t.type("B15", 24);
  expect((await t.values("D1"))[0]![0]).toBe(wide);
  t.type("B15", 16);
  expect((await t.values("D1"))[0]![0]).toBe(narrow);
});

it("a formula that was there before the name is calculated once there is one, and again when the name moves", async () => {
  t.type("A1", 5);
  t.type("A2", 7);
  t.type("D1", '=IF(TRUE,SUM(roofblock)&"""",0)');
  t.type("D2", "=SUM(RoofBlock)+1");
  expect(await t.values("D1:D2")).toEqual([["#NAME?"], ["#NAME?"]]);
  await t.host.nameArea("RoofBlock", at(0, 0, 1, 1));
  expect((await t.values("D2"))[0]).toEqual([6]);
  await t.host.nameArea("RoofBlock", at(0, 0, 2, 1));
  expect((await t.values("D2"))[0]).toEqual([13]);
});
