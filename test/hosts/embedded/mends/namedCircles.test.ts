import { beforeEach, describe, expect, it } from "vitest";
import type { Headless } from "../headless.ts";
import { useHeadless } from "../useHeadless.ts";
import { bundled } from "../bundled.ts";

let t: Headless;
const make = useHeadless(() => undefined);
beforeEach(async () => {
  const { real } = await bundled();
  t = make(real, 200);
  const block = [
    ["Span", "24'"],
    ["Length", "36'"],
    ["Pitch", 6],
    ["Spacing", 24],
  ] as const;
  block.forEach(([label, value], i) => (t.type(`A${i + 1}`, label), t.type(`B${i + 1}`, value)));
});

const everything = () => t.values("A1:P40").then((rows) => JSON.stringify(rows));
const why = (row: number, column: number) => t.host.messageAt("Sheet1", row, column);
const TABLE = "=RAFTER.JACKTABLE(A1:B4)";

describe("a circle of formulas", () => {
  it("is an error with words, and what hangs on it too", async () => {
    t.type("H1", "=J1+1");
    t.type("J1", "=H1+1");
    t.type("J2", "=J2");
    t.type("J3", "=H1+J3*0+5");
    t.type("J4", "=2+2");
    expect(await t.values("H1")).toEqual([["#VALUE!"]]);
    expect((await t.values("J1:J4")).flat()).toEqual(["#VALUE!", "#VALUE!", "#VALUE!", 4]);
    for (const [row, column] of [
      [0, 7],
      [0, 9],
      [1, 9],
    ] as const)
      expect(await why(row, column)).toMatch(/round in a circle/);
    t.type("J1", 5);
    t.type("J3", "=H1+5");
    expect([await t.values("H1"), await t.values("J1:J3")]).toEqual([[[6]], [[5], ["#VALUE!"], [11]]]);
  });

  it("through a table that runs over a cell which its block reads is one too, whatever stood there before", async () => {
    t.type("D1", TABLE);
    const whole = await everything();
    expect((await t.values("D1"))[0]![0]).toBe("Piece");
    // The spacing from the table that hangs on it.
    t.type("B4", "=D3*0+24");
    expect((await t.values("B4"))[0]![0]).toBe("#VALUE!");
    expect((await t.values("D1:D3")).flat()).toEqual(["#VALUE!", "", ""]);
    expect(await why(3, 1)).toMatch(/round in a circle/);
    expect(await why(0, 3)).toMatch(/round in a circle/);
    const circle = await everything();
    t.undo();
    expect(await everything()).toBe(whole);
    t.redo();
    expect(await everything()).toBe(circle);
    // Another edit of the block leaves it one; the table gone, or the cell right again, it is none.
    t.type("B1", "30'");
    expect((await t.values("B4"))[0]![0]).toBe("#VALUE!");
    t.type("B1", "24'");
    expect(await everything()).toBe(circle);
    t.type("B4", 24);
    expect(await everything()).toBe(whole);
  });

  it("is the same whichever of its two came first, and ends when the table goes", async () => {
    t.type("B4", '=IF(D3="",24,16)');
    expect(await t.values("B4")).toEqual([[24]]);
    t.type("D1", TABLE);
    expect([await t.values("B4"), (await t.values("D1:D2")).flat()]).toEqual([[["#VALUE!"]], ["#VALUE!", ""]]);
    const second = await everything();
    t.type("D1", "");
    expect([await t.values("B4"), await t.values("D1")]).toEqual([[[24]], [[""]]]);
    t.undo();
    expect(await everything()).toBe(second);
  });

  it("is none where the table ends above the cell, though it once ran over it", async () => {
    t.type("D1", TABLE);
    t.type("B1", "60'");
    t.type("B2", "80'");
    const long = (await t.values("D1:D40")).flat().filter((name) => name !== "").length;
    t.type("B1", "24'");
    t.type("B2", "36'");
    const short = (await t.values("D1:D40")).flat().filter((name) => name !== "").length;
    expect(short).toBeLessThan(long - 1);
    t.type("B4", `=IF(D${short + 2}="",24,16)`);
    const right = await everything();
    expect(await t.values("B4")).toEqual([[24]]);
    t.type("B1", "60'");
    t.type("B2", "80'");
    expect(await t.values("B4")).toEqual([["#VALUE!"]]);
    t.type("B2", "36'");
    t.type("B1", "24'");
    expect(await everything()).toBe(right);
  });

  it("through a table's own cells hangs on nothing that stood there: one that fills none of them is none", async () => {
    t.type("H1", "=SEQUENCE(4)");
    await t.values("H1");
    // Nothing is counted where nothing is filled, which fills nothing: it stays so.
    t.type("H1", "=SEQUENCE(COUNT(H2:H5))");
    expect(await t.values("H1:H3")).toEqual([["#CALC!"], [""], [""]]);
    t.type("H1", "=SEQUENCE(COUNT(H2:H5)+2)");
    expect(await t.values("H1:H3")).toEqual([["#VALUE!"], [""], [""]]);
    expect(await why(0, 7)).toContain("goes round in a circle");
  });
});
