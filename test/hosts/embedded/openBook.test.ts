import { describe, expect, it } from "vitest";
import type { Book } from "../../../src/xlsx/book.ts";
import type { Headless } from "./headless.ts";
import { useHeadless } from "./useHeadless.ts";

let t: Headless;
useHeadless((fresh) => (t = fresh));

const ROWS = 300;
const book: Book = {
  title: "Goods",
  sheets: [
    {
      name: "Goods",
      rows: Array.from({ length: ROWS }, (_, i) => [
        { value: `Item ${i}`, look: { bold: true } },
        { value: i },
        { value: 2 * i, formula: `=B${i + 1}*2` },
      ]),
    },
    {
      name: "Sums",
      rows: [
        [
          { value: null, formula: "=SUM(Goods!C:C)" },
          { value: 7, formula: "=1+1" },
        ],
      ],
    },
  ],
};
const SUM = ROWS * (ROWS - 1);
const everything = () => JSON.stringify(t.bookOf(t.sheet, "x").book);

describe("a book that is opened", () => {
  it("stands in the place of the sheets with every formula calculated, says which differ, and goes and comes with undo and redo", async () => {
    t.type("A1", "=1+2");
    await t.values("A1");
    const before = everything();
    expect(await t.openBook(t.sheet, book)).toEqual(["Sums!B1"]);
    expect(await t.host.sheets()).toEqual(["Goods", "Sums"]);
    expect(await t.values("Sums!A1:B1")).toEqual([[SUM, 2]]);
    const opened = everything();
    t.type("Goods!B300", 1000);
    expect(await t.values("Sums!A1")).toEqual([[SUM + 2 * (1000 - 299)]]);
    t.undo();
    t.undo();
    await t.values("A1");
    expect(everything()).toBe(before);
    t.redo();
    expect(await t.values("Sums!A1:B1")).toEqual([[SUM, 2]]);
    expect(everything()).toBe(opened);
  });

  it("that is stopped half-way leaves the sheets as they were, and can be opened again", async () => {
    t.type("A1", "=1+2");
    await t.values("A1");
    const before = everything();
    const stopping = new AbortController();
    const told: number[] = [];
    const opening = t.openBook(t.sheet, book, {
      signal: stopping.signal,
      progress(done, of) {
        told.push(done);
        expect(of).toBe(3 * ROWS + 2);
        if (done > of / 2) stopping.abort(new Error("stop"));
      },
    });
    await expect(opening).rejects.toThrow("stop");
    expect(told.at(-1)).toBeLessThan(3 * ROWS);
    await t.sheet.calculation.settled();
    expect(everything()).toBe(before);
    t.type("A2", "=A1+1");
    expect(await t.values("A2")).toEqual([[4]]);
    await t.openBook(t.sheet, book);
    expect(await t.values("Sums!A1")).toEqual([[SUM]]);
  });
});
