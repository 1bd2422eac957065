import { beforeEach, describe, expect, it } from "vitest";
import type { Headless } from "./headless.ts";
import { useHeadless } from "./useHeadless.ts";

let t: Headless;
useHeadless((fresh) => (t = fresh));

const sum = async () => (await t.values("E1"))[0]![0];

// Our own function and the sheet's: both spill one row per number, B1 down; E1 depends on all of it, E2 on its fourth row alone, F1 on E1.
describe.each([
  ["our own function", "=RAFTER.ROWS(A1)", 10],
  ["SEQUENCE", "=SEQUENCE(A1,1,10,10)", 0],
])("a spill of %s", (_, formula, second) => {
  const total = (n: number) => (second ? ((n * (n + 1)) / 2) * 11 : ((n * (n + 1)) / 2) * 10);
  beforeEach(async () => {
    t.type("A1", 4);
    t.type("B1", formula);
    t.type("E1", "=SUM(B1:C9)");
    t.type("E2", "=B4");
    t.type("F1", "=E1*2");
    expect(await sum()).toBe(total(4));
  });

  it("grows and shrinks, and what depends on it follows", async () => {
    for (const n of [7, 2, 9, 1, 4]) {
      t.type("A1", n);
      expect([n, await sum(), (await t.values("F1"))[0]![0]]).toEqual([n, total(n), 2 * total(n)]);
      const cells = (await t.values("B1:B9")).map(([v]) => v);
      expect(cells.map((v) => v !== "")).toEqual(Array.from({ length: 9 }, (_, i) => i < n));
      expect((await t.values("E2"))[0]![0]).toBe(n >= 4 ? cells[3] : 0);
    }
  });
  it("turns into an error and back", async () => {
    t.type("A1", "=1/0");
    expect((await t.values("B1:B4")).map(([v]) => v)).toEqual(["#DIV/0!", "", "", ""]);
    expect((await t.values("E1:E2")).map(([v]) => v)).toEqual(["#DIV/0!", 0]);
    t.type("A1", 3);
    expect(await sum()).toBe(total(3));
  });
  it("is blocked by a filled cell and freed again", async () => {
    t.type("B3", 1000);
    expect((await t.values("B1:B4")).map(([v]) => v)).toEqual(["#SPILL!", "", 1000, ""]);
    expect((await t.values("E1:E2")).map(([v]) => v)).toEqual(["#SPILL!", 0]);
    t.type("B3", "");
    expect(await sum()).toBe(total(4));
    expect((await t.values("B3:B4")).every(([v]) => v !== "")).toBe(true);
  });
  it("leaves nothing behind where it is blocked, for what depends on a part of it", async () => {
    t.type("E3", "=SUM(B2:C9)");
    t.type("E4", "=SUM(B2:B3)");
    await sum();
    const before = await t.values("E3:E4");
    for (const cell of ["B3", "B4"]) {
      t.type(cell, 1000);
      expect([cell, (await t.values("E3:E4")).map(([v]) => v)]).toEqual([cell, [1000, cell === "B3" ? 1000 : 0]]);
      t.type(cell, "");
      expect(await t.values("E3:E4")).toEqual(before);
    }
  });
  it("grows into a filled cell and shrinks out of it", async () => {
    t.type("B6", 1000);
    expect(await sum()).toBe(total(4) + 1000);
    t.type("A1", 6);
    expect((await t.values("B1:B6")).map(([v]) => v)).toEqual(["#SPILL!", "", "", "", "", 1000]);
    t.type("A1", 5);
    expect(await sum()).toBe(total(5) + 1000);
  });
  it("is deleted, and comes back with undo and goes with redo", async () => {
    t.type("B1", "");
    expect((await t.values("B1:B4")).map(([v]) => v)).toEqual(["", "", "", ""]);
    expect((await t.values("E1:E2")).map(([v]) => v)).toEqual([0, 0]);
    t.undo();
    expect(await sum()).toBe(total(4));
    t.redo();
    expect((await t.values("E1:E2")).map(([v]) => v)).toEqual([0, 0]);
  });
  it("is replaced by one value", async () => {
    t.type("B1", 7);
    expect((await t.values("E1:E2")).map(([v]) => v)).toEqual([7, 0]);
    t.undo();
    expect(await sum()).toBe(total(4));
  });
  it("follows undo of a change of size", async () => {
    t.type("A1", 2);
    expect(await sum()).toBe(total(2));
    t.undo();
    expect(await sum()).toBe(total(4));
    t.redo();
    expect(await sum()).toBe(total(2));
  });
  it("moves with an inserted row, whole, and still follows", async () => {
    t.worksheet().insertRowBefore(0);
    expect((await t.values("B1:B6")).map(([v]) => v !== "")).toEqual([false, true, true, true, true, false]);
    expect((await t.values("E2"))[0]![0]).toBe(total(4));
    t.type("A2", 2);
    expect((await t.values("B1:B6")).map(([v]) => v !== "")).toEqual([false, true, true, false, false, false]);
    expect((await t.values("E2:E3")).map(([v]) => v)).toEqual([total(2), 0]);
    t.worksheet().deleteRow(0);
    expect((await t.values("B1:B4")).map(([v]) => v !== "")).toEqual([true, true, false, false]);
    expect(await sum()).toBe(total(2));
  });
  it("lets a second spill through when it gets out of the way", async () => {
    t.type("C3", "=SEQUENCE(1,3)");
    await sum();
    t.type("A1", 2);
    expect((await t.values("C3:E3"))[0]).toEqual([1, 2, 3]);
  });
});
