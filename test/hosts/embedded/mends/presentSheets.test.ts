import { expect, it } from "vitest";
import type { Book, BookCell } from "../../../../src/xlsx/book.ts";
import type { Headless } from "../headless.ts";
import { useHeadless } from "../useHeadless.ts";

let t: Headless;
useHeadless((fresh) => (t = fresh));

/** A file with a sheet of goods, and sums over it. */
const fileWith = (goods: BookCell[][]): Book => ({
  title: "Goods",
  sheets: [
    { name: "Sums", rows: [[{ value: null, formula: "=SUM(Goods!B2:B9)" }], [{ value: null, formula: "=A1*2" }]] },
    { name: "Goods", rows: goods },
  ],
});
const files = {
  "a table": { book: fileWith([[{ value: null, formula: "=RAFTER.ROWS(4)" }]]), sums: [[90], [180]] },
  "plain numbers": { book: fileWith([[], [{ value: "Nails" }, { value: 3 }]]), sums: [[3], [6]] },
} as const;

it.each([
  ["a table", "plain numbers"],
  ["a table", "a table"],
] as const)(
  "undo and redo of an opened file: sums read the sheet that is there, with %s, not its namesake with %s",
  async (one, other) => {
    const [before, after] = [files[one], files[other]];
    await t.openBook(t.sheet, before.book);
    expect(await t.values("Sums!A1:A2")).toEqual(before.sums);
    await t.openBook(t.sheet, after.book);
    expect(await t.values("Sums!A1:A2")).toEqual(after.sums);
    t.undo();
    expect(await t.values("Sums!A1:A2")).toEqual(before.sums);
    t.redo();
    expect(await t.values("Sums!A1:A2")).toEqual(after.sums);
  },
);
