import { describe, expect, it } from "vitest";
import { planCuts } from "../../../src/cutting/planCuts.ts";
import { planOf } from "../checkPlan.ts";
import { planCutsNow } from "../planCutsNow.ts";
import { whyNot } from "../../../src/cutting/model/whyNot.ts";
import { Failure } from "../../../src/measure/result.ts";
import type { StockProblem } from "../../../src/cutting/model/stockProblem.ts";
import type { StockBoard, StockPiece } from "../../../src/cutting/stock.ts";

const piece: StockPiece = { name: "jack", size: "2x6", length: 90, count: 2 };
const board: StockBoard = { size: "2x6", length: 96 };

describe("whyNot", () => {
  it("is null for lists that can be planned", () => {
    expect(whyNot([piece, { ...piece, count: 0, size: "2x12" }])).toBeNull();
  });

  // By hand: a piece of 90 whose foot and head turn on one face to the same side is as long as ever; to two sides, both turns come off that face.
  it.each<[string, Partial<StockPiece>, boolean]>([
    ["a head that ends at its tail's corner", { turn: 90, hand: "left" }, true],
    ["a head past it", { turn: 90.001, hand: "left" }, false],
    ["of the other hand", { turn: 90.001, hand: "right" }, false],
    ["one that is not wanted", { turn: 91, hand: "left", count: 0 }, true],
    ["parallel ends", { slants: [89, 89] }, true],
    ["ends that lean to each other on the left face", { slants: [-46, 46] }, false],
    ["on the right face", { slants: [46, -46] }, false],
    ["but no farther than it is long", { slants: [-45, 45] }, true],
  ])("tells whether a piece can be: %s", (_, more, can) => {
    expect(whyNot([piece, { ...piece, ...more }]) === null).toBe(can);
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
  ])("%s", async (_, pieces, boards, expected) => {
    const lists = [pieces.map((own) => ({ ...piece, ...own })), boards.map((own) => ({ ...board, ...own }))] as const;
    expect(planCutsNow(...lists, { kerf: 0 })).toEqual(new Failure(expected));
    expect(await planCuts(...lists, { kerf: 0 })).toEqual(new Failure(expected));
  });
});

describe("missingSizes", () => {
  it.each<[string, Partial<StockPiece>[], Partial<StockBoard>[], number, StockProblem[]]>([
    [
      "a size that is not sold",
      [{}, { size: "2x8" }],
      [{}],
      0,
      [{ kind: "no board of that size", row: 2, name: "jack", size: "2x8" }],
    ],
    [
      "sold, but none there",
      [{}],
      [{ count: 0 }],
      0,
      [{ kind: "no board of that size", row: 1, name: "jack", size: "2x6" }],
    ],
    [
      "too long",
      [{}, { length: 97 }],
      [{}],
      0,
      [{ kind: "piece too long", row: 2, name: "jack", size: "2x6", length: 97, needs: 97, longest: 96 }],
    ],
    [
      "too long with its slant",
      [{ length: 94, lean: 3 }],
      [{}],
      0,
      [{ kind: "piece too long", row: 1, name: "jack", size: "2x6", length: 94, needs: 97, longest: 96 }],
    ],
    [
      "but not for the slant of a piece that is not wanted",
      [
        { length: 94, slant: "a" },
        { length: 40, lean: 3, slant: "a", count: 0 },
      ],
      [{}],
      0,
      [],
    ],
    ["no boards", [{}], [], 0, [{ kind: "no board of that size", row: 1, name: "jack", size: "2x6" }]],
    ["none", [{}], [{}], 0, []],
    [
      "with its trim",
      [{ length: 95.75 }, { size: "2x8" }],
      [{}, { size: "2x8" }],
      0.5,
      [{ kind: "piece too long", row: 1, name: "jack", size: "2x6", length: 95.75, needs: 96.25, longest: 96 }],
    ],
    ["as long as its board, which it takes whole", [{ length: 96 }], [{}], 0.5, []],
    [
      "the longest of several",
      [{ length: 97 }, { length: 99 }, { length: 98 }],
      [{}],
      0,
      [{ kind: "piece too long", row: 2, name: "jack", size: "2x6", length: 99, needs: 99, longest: 96 }],
    ],
  ])("%s: left out, and nothing else", (_, pieces, boards, trim, missing) => {
    const lists = [pieces.map((own) => ({ ...piece, ...own })), boards.map((own) => ({ ...board, ...own }))] as const;
    const plan = planOf(planCutsNow(...lists, { kerf: 0, trim }));
    expect(plan.missing).toEqual(missing);
    const out = new Set(missing.map((one) => ("size" in one ? one.size : "")));
    expect(plan.boards.flatMap((one) => one.pieces.flatMap(() => Array(one.repeat).fill(0)))).toHaveLength(
      lists[0].filter(({ size }) => !out.has(size)).reduce((sum, { count }) => sum + count, 0),
    );
  });
});
