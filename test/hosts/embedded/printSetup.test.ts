import { beforeEach, describe, expect, it } from "vitest";
import type { Book } from "../../../src/xlsx/book.ts";
import type { Headless } from "./headless.ts";
import { useHeadless } from "./useHeadless.ts";

let t: Headless;
useHeadless((fresh) => (t = fresh));

const rows = Array.from({ length: 20 }, (_, i) => [{ value: i }, { value: `row ${i}` }]);
const book: Book = {
  title: "Print",
  sheets: [
    { name: "Bob's bid", rows, tab: "#c00000", print: { landscape: true, area: "$A$2:$B$12", titleRows: "$1:$1" } },
    { name: "Plain", rows, print: { paper: "a4" } },
  ],
};
const now = () => {
  const { book, left } = t.bookOf(t.sheet, "Print");
  expect(left).toEqual([]);
  return book.sheets[0]!.print;
};

describe("a sheet's print set-up", () => {
  beforeEach(() => t.openBook(t.sheet, book));

  it("is kept as it was, with the color of the tab", () => {
    const [first, second] = t.bookOf(t.sheet, "Print").book.sheets;
    expect([first!.print, first!.tab]).toEqual([book.sheets[0]!.print, "#c00000"]);
    expect([second!.print, second!.tab]).toEqual([{ paper: "a4" }, undefined]);
  });

  it("goes with its cells: rows inserted above and inside, rows that go, a new name, undo", async () => {
    const sheet = t.worksheet("Bob's bid");
    sheet.insertRowsBefore(0, 3);
    expect(now()).toEqual({ landscape: true, area: "$A$5:$B$15", titleRows: "$4:$4" });
    sheet.insertRowsBefore(8, 2);
    expect(now()!.area).toBe("$A$5:$B$17");
    sheet.setName("Bid 2");
    expect(now()!.area).toBe("$A$5:$B$17");
    t.undo();
    t.undo();
    expect(now()!.area).toBe("$A$5:$B$15");
    sheet.deleteRows(5, 4);
    expect(now()!.area).toBe("$A$5:$B$11");
  });

  it("has no area once the cells of it are gone", () => {
    t.worksheet("Bob's bid").deleteRows(1, 15);
    expect(now()).toEqual({ landscape: true, titleRows: "$1:$1" });
  });
});
