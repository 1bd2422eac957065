import { describe, expect, it } from "vitest";
import type { Book } from "../../src/xlsx/book.ts";
import { cellsOfOurs, plainBook } from "../../src/xlsx/plainBook.ts";

const book: Book = {
  title: "Test",
  names: [{ name: "Long", formula: "=RAFTER.JACKLEN(6,48,1.5,1.5)" }],
  sheets: [
    {
      name: "Bid",
      rows: [
        [
          { value: 53.3, formula: "=rafter.JACKLEN(6,48,1.5,1.5)", look: { bold: true } },
          { value: 106.6, formula: "=A1*2" },
          { value: "RAFTER.JACKLEN(", formula: '="RAFTER.JACKLEN("' },
          { value: 53.3, formula: "=Long" },
        ],
        [
          { value: "J1", formula: "=RAFTER.JACKTABLE(F1:G2)", spill: { rows: 2, columns: 2 } },
          { value: 24, spilled: true },
          { value: 1, formula: "=SEQUENCE(2)", spill: { rows: 2, columns: 1 } },
        ],
        [
          { value: "J2", spilled: true },
          { value: 48, spilled: true, look: { format: "0.00" } },
          { value: 2, spilled: true },
        ],
      ],
    },
    { name: "Notes", rows: [[{ value: "mine" }]] },
  ],
};

describe("a book with plain values", () => {
  it("has the value in the place of every formula of ours, and of all that it spills over; other formulas stay", () => {
    const [bid, notes] = plainBook(book).sheets;
    expect(bid!.rows).toEqual([
      [
        { value: 53.3, look: { bold: true } },
        book.sheets[0]!.rows[0]![1],
        book.sheets[0]!.rows[0]![2],
        { value: 53.3 },
      ],
      [{ value: "J1" }, { value: 24 }, book.sheets[0]!.rows[1]![2]],
      [{ value: "J2" }, { value: 48, look: { format: "0.00" } }, book.sheets[0]!.rows[2]![2]],
    ]);
    expect(notes).toBe(book.sheets[1]);
  });

  it("counts the cells that show #NAME? without the add-in, a plain one none", () => {
    expect(cellsOfOurs(book)).toBe(6);
    expect(cellsOfOurs(plainBook(book))).toBe(0);
  });
});
