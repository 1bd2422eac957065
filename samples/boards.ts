import type { BookSheet } from "../src/xlsx/book.ts";
import { input, note, numbers } from "./cells.ts";

/** A board that can be bought: its size, its length and what one costs. */
export type Priced = readonly [size: string, length: string, price: number];

/** A sheet named Boards with what can be bought, for LUMBERORDER and STICKPLAN to choose from. */
export function boardsSheet(prices: readonly Priced[], format: string): BookSheet {
  return {
    name: "Boards",
    rows: [
      [
        numbers("Size"),
        numbers("Length"),
        numbers("Price"),
        null,
        note(
          "Boards that can be bought, with invented prices: the sheet Lumber order buys from these. Change or overwrite a shaded row.",
        ),
      ],
      ...prices.map(([size, length, price]) => [input(size), input(length), input(price, format)]),
    ],
    columns: [{ size: 96 }, { size: 84 }, { size: 84 }],
    frozenRows: 1,
    print: { fit: { across: 1, down: 1 }, footer: "&LInvented figures&RPage &P of &N" },
  };
}

/** The cells of that sheet that a call is pointed to. */
export function boardsRange(prices: readonly Priced[]): string {
  return `Boards!$A$1:$C$${prices.length + 1}`;
}
