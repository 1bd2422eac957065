import { describe, expect, it } from "vitest";
import { planCuts } from "../../../src/cutting/planCuts.ts";
import { planCutsNow } from "../planCutsNow.ts";
import { whyNot } from "../../../src/cutting/model/whyNot.ts";
import { Failure } from "../../../src/measure/result.ts";
import type { StockProblem } from "../../../src/cutting/model/stockProblem.ts";
import type { StockBoard, StockPiece } from "../../../src/cutting/stock.ts";

const piece: StockPiece = { name: "jack", size: "2x6", length: 90, count: 2 };
const board: StockBoard = { size: "2x6", length: 96 };

describe("whyNot", () => {
  it("is null for lists that can be planned", () => {
    expect(whyNot([piece, { ...piece, count: 0, size: "2x12" }], [board])).toBeNull();
  });

  it.each<[string, Partial<StockPiece>[], Partial<StockBoard>[], StockProblem]>([
    ["no pieces", [], [{}], { kind: "no pieces" }],
    ["none wanted", [{ count: 0 }], [{}], { kind: "no pieces" }],
    [
      "a head that turns past its tail",
      [{ turn: 91, hand: "left" }],
      [{}],
      { kind: "head longer than piece", row: 1, name: "jack", length: 90 },
    ],
    [
      "a size that is not sold",
      [{}, { size: "2x8" }],
      [{}],
      { kind: "no board of that size", row: 2, name: "jack", size: "2x8" },
    ],
    [
      "sold, but none there",
      [{}],
      [{ count: 0 }],
      { kind: "no board of that size", row: 1, name: "jack", size: "2x6" },
    ],
    [
      "too long",
      [{}, { length: 97 }],
      [{}],
      { kind: "piece too long", row: 2, name: "jack", size: "2x6", length: 97, needs: 97, longest: 96 },
    ],
    [
      "too long with its slant",
      [{ length: 94, lean: 3 }],
      [{}],
      { kind: "piece too long", row: 1, name: "jack", size: "2x6", length: 94, needs: 97, longest: 96 },
    ],
    ["no boards", [{}], [], { kind: "no board of that size", row: 1, name: "jack", size: "2x6" }],
  ])("%s", async (_, pieces, boards, expected) => {
    const lists = [pieces.map((own) => ({ ...piece, ...own })), boards.map((own) => ({ ...board, ...own }))] as const;
    expect(planCutsNow(...lists, { kerf: 0 })).toEqual(new Failure(expected));
    expect(await planCuts(...lists, { kerf: 0 })).toEqual(new Failure(expected));
  });
});
