import { describe, expect, it } from "vitest";
import { planCuts } from "../../../src/cutting/planCuts.ts";
import { planCutsNow } from "../planCutsNow.ts";
import { stockReason } from "../../../src/cutting/model/stockReason.ts";
import { Reason } from "../../../src/measure/reason.ts";
import type { StockBoard, StockPiece } from "../../../src/cutting/stock.ts";

const piece: StockPiece = { name: "jack", size: "2x6", length: 90, count: 2 };
const board: StockBoard = { size: "2x6", length: 96 };

describe("stockReason", () => {
  it("is null for lists that can be planned", () => {
    expect(stockReason([piece, { ...piece, count: 0, size: "2x12" }], [board], 0)).toBeNull();
  });

  it.each<[string, Partial<StockPiece>[], Partial<StockBoard>[], number, Reason]>([
    ["no pieces", [], [{}], 0, new Reason("noPieces")],
    ["none wanted", [{ count: 0 }], [{}], 0, new Reason("noPieces")],
    ["no boards", [{}], [], 0, new Reason("noBoards")],
    ["a kerf below zero", [{}], [{}], -1, new Reason("kerf", { kerf: -1 })],
    [
      "a piece of no length",
      [{}, { length: 0 }],
      [{}],
      0,
      new Reason("pieceLength", { row: 2, name: "jack", length: 0 }),
    ],
    [
      "a count that is no whole number",
      [{ count: 1.5 }],
      [{}],
      0,
      new Reason("pieceCount", { row: 1, name: "jack", count: 1.5 }),
    ],
    ["a count below zero", [{}, { count: -1 }], [{}], 0, new Reason("pieceCount", { row: 2, name: "jack", count: -1 })],
    ["a lean below zero", [{ lean: -1 }], [{}], 0, new Reason("pieceLean", { row: 1, name: "jack", lean: -1 })],
    [
      "a head that turns past its tail",
      [{ turn: 91, hand: "left" }],
      [{}],
      0,
      new Reason("pieceTurn", { row: 1, name: "jack", turn: 91, length: 90 }),
    ],
    [
      "a cut narrower than its kerf",
      [{ spread: 0.5 }],
      [{}],
      0,
      new Reason("pieceSpread", { row: 1, name: "jack", spread: 0.5 }),
    ],
    [
      "a board of no length",
      [{}],
      [{}, { length: -96 }],
      0,
      new Reason("boardLength", { row: 2, size: "2x6", length: -96 }),
    ],
    ["a price below zero", [{}], [{ price: -1 }], 0, new Reason("boardPrice", { row: 1, size: "2x6", price: -1 })],
    [
      "prices for some",
      [{}],
      [{ price: 9 }, { length: 120 }],
      0,
      new Reason("boardWithoutPrice", { row: 2, size: "2x6", length: 120 }),
    ],
    ["half a board in stock", [{}], [{ count: 0.5 }], 0, new Reason("boardCount", { row: 1, size: "2x6", count: 0.5 })],
    [
      "a size that is not sold",
      [{}, { size: "2x8" }],
      [{}],
      0,
      new Reason("noBoardOfSize", { row: 2, name: "jack", size: "2x8" }),
    ],
    [
      "sold, but none there",
      [{}],
      [{ count: 0 }],
      0,
      new Reason("noBoardOfSize", { row: 1, name: "jack", size: "2x6" }),
    ],
    [
      "too long",
      [{}, { length: 97 }],
      [{}],
      0,
      new Reason("pieceTooLong", { row: 2, name: "jack", size: "2x6", length: 97, needs: 97, longest: 96 }),
    ],
    [
      "too long with its slant",
      [{ length: 94, lean: 3 }],
      [{}],
      0,
      new Reason("pieceTooLong", { row: 1, name: "jack", size: "2x6", length: 94, needs: 97, longest: 96 }),
    ],
  ])("%s", async (_, pieces, boards, kerf, expected) => {
    const lists = [pieces.map((own) => ({ ...piece, ...own })), boards.map((own) => ({ ...board, ...own }))] as const;
    expect(planCutsNow(...lists, { kerf })).toEqual(expected);
    expect(await planCuts(...lists, { kerf })).toEqual(expected);
  });

  it.each([NaN, Infinity, -Infinity])("refuses %s wherever a number is expected", (bad) => {
    for (const own of [{ length: bad }, { count: bad }, { lean: bad }, { toe: bad }, { turn: bad }, { spread: bad }])
      expect(stockReason([{ ...piece, ...own }], [board], 0)).toBeInstanceOf(Reason);
    for (const own of [{ length: bad }, { count: bad }, { price: bad }])
      expect(stockReason([piece], [{ ...board, ...own }], 0)).toBeInstanceOf(Reason);
    expect(stockReason([piece], [board], bad)).toBeInstanceOf(Reason);
  });
});
