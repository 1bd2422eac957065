import fc from "fast-check";
import { Failure } from "../../src/measure/result.ts";
import { describe, expect, it } from "vitest";
import { planCuts } from "../../src/cutting/planCuts.ts";
import { planCutsNow } from "./planCutsNow.ts";
import { checkPlan, planOf } from "./checkPlan.ts";
import { hipRoof, randomInstance, twoPitchRoof } from "./instances.ts";
import type { Instance } from "./instances.ts";
import type { StockBoard, StockPiece } from "../../src/cutting/stock.ts";

const boards = (...lengths: number[]): StockBoard[] => lengths.map((length) => ({ size: "2x6", length }));
const piece = (length: number, count: number, more: Partial<StockPiece> = {}): StockPiece => ({
  name: "p",
  size: "2x6",
  length,
  count,
  ...more,
});
const left = { lean: 3, slant: "a", hand: "left", turn: 2 } as const;
const right = { ...left, hand: "right" } as const;

describe("planCuts, by hand", () => {
  // Each can be seen at a glance: what fits in one board to the last bit, and what does not.
  it.each<[string, StockPiece[], StockBoard[], number, number]>([
    ["one piece as long as its board needs no cut", [piece(96, 1)], boards(96, 120), 0.125, 96],
    ["two halves and a kerf", [piece(47.9375, 2)], boards(96, 120), 0.125, 96],
    ["two halves leave no room for the kerf", [piece(48, 2)], boards(96, 120), 0.125, 120],
    ["one slant is lost once: 2 x 46 + 1 + 3", [piece(46, 2, { lean: 3 })], boards(96, 120), 1, 96],
    [
      "two slants are lost on their own: 46 + 45 + 1 + 3 + 2 > 96",
      [piece(46, 1, { lean: 3, slant: "a" }), piece(45, 1, { lean: 2, slant: "b" })],
      boards(96, 120),
      1,
      120,
    ],
    ["a left and a right: 47 + 47 + 1 + 3 - 2", [piece(47, 1, left), piece(47, 1, right)], boards(96, 120), 1, 96],
    ["of different lengths: 60 + 34 + 1 + 3 - 2", [piece(60, 1, left), piece(34, 1, right)], boards(96, 120), 1, 96],
    ["two lefts save nothing", [piece(47, 2, left)], boards(96, 120), 1, 120],
    [
      "other turns are not parallel",
      [piece(47, 1, left), piece(47, 1, { ...right, turn: 2.5 })],
      boards(96, 120),
      1,
      120,
    ],
    [
      "other slants are not parallel",
      [piece(47, 1, left), piece(47, 1, { ...right, slant: "b" })],
      boards(96, 120),
      1,
      120,
    ],
    ["without a tail only the toe is lost", [piece(95, 1, { lean: 3, toe: 1 })], boards(96, 120), 1, 96],
    [
      "an oblique cut takes more than a kerf: 2 x 46 + 2 + 3",
      [piece(46, 2, { lean: 3, spread: 2 })],
      boards(96, 120),
      1,
      120,
    ],
    [
      "the cheap boards, though longer in all",
      [piece(90, 2)],
      [
        { size: "2x6", length: 96, price: 5 },
        { size: "2x6", length: 192, price: 11 },
      ],
      0,
      10,
    ],
    [
      "sizes are apart",
      [piece(40, 1), { ...piece(40, 1), size: "2x8" }],
      [...boards(96), { size: "2x8", length: 96 }],
      0,
      192,
    ],
    ["limited stock", [piece(40, 4)], [{ size: "2x6", length: 96, count: 1 }, ...boards(144)], 0, 240],
    [
      "a stock of one length limited in two rows",
      [piece(90, 3)],
      [
        { size: "2x6", length: 96, count: 1 },
        { size: "2x6", length: 96, count: 2 },
      ],
      0,
      288,
    ],
    [
      "free offcuts first",
      [piece(40, 3)],
      [
        { size: "2x6", length: 50, price: 0, count: 2 },
        { size: "2x6", length: 96, price: 8 },
      ],
      0,
      8,
    ],
  ])("%s", (_, pieces, stock, kerf, cost) => {
    const plan = planOf(planCutsNow(pieces, stock, { kerf, crownDown: true }));
    expect(plan).toMatchObject({ cost, bound: cost, proved: true });
    checkPlan(plan, { pieces, boards: stock, kerf, crownDown: true });
  });

  it("of plans that cost the same takes the one with fewer boards, then the longest left-over", () => {
    expect(planOf(planCutsNow([piece(90, 2)], boards(96, 192), { kerf: 0 })).boards).toHaveLength(1);
    const plan = planOf(planCutsNow([piece(50, 2), piece(20, 4)], boards(120), { kerf: 0 }));
    expect(plan.boards.map((board) => board.leftOver)).toEqual([0, 60]);
  });

  // 40 + 1 + 32 + 1 + 20 and the lean of 3 are 97: one turn of 2 brings them into 96.
  const three = [piece(40, 1, left), piece(32, 1, right), piece(20, 1, { lean: 3, slant: "a" })];

  it("says where every piece lies", () => {
    const [board] = planOf(planCutsNow(three, boards(96), { kerf: 1, crownDown: true })).boards;
    // Tail tip at the lean; 40 on to the left's long point; back by the turn, on by the kerf, and down to the bottom edge by the lean; and so on.
    expect(board).toEqual({
      size: "2x6",
      length: 96,
      price: 96,
      repeat: 1,
      trim: 0,
      used: 95,
      leftOver: 1,
      pieces: [
        { piece: 0, name: "p", hand: "left", start: 3, end: 43, flipped: false, shares: "none" },
        { piece: 1, name: "p", hand: "right", start: 39, end: 71, flipped: true, shares: "compound" },
        { piece: 2, name: "p", hand: "plain", start: 75, end: 95, flipped: false, shares: "plumb" },
      ],
    });
  });

  it("takes a jack as long as its board untrimmed, though others are turned head to head", () => {
    // 93 and the lean of 3 are the board; 46.75 twice and the lean less the turn are 94.5.
    const list = {
      pieces: [piece(93, 1, left), piece(46.75, 1, left), piece(46.75, 1, right)],
      boards: boards(96, 120),
    };
    const plan = planOf(planCutsNow(list.pieces, list.boards, { kerf: 0, trim: 0.5, crownDown: true }));
    expect(plan).toMatchObject({ cost: 192, proved: true });
    checkPlan(plan, { ...list, kerf: 0, trim: 0.5, crownDown: true });
  });

  it("turns no piece unless that is allowed and saves money", () => {
    const turned = (pieces: StockPiece[], stock: StockBoard[], crownDown: boolean): [number, number] => {
      const plan = planOf(planCutsNow(pieces, stock, { kerf: 1, crownDown }));
      checkPlan(plan, { pieces, boards: stock, kerf: 1, crownDown });
      return [plan.cost, plan.boards.flatMap((board) => board.pieces).filter(({ flipped }) => flipped).length];
    };
    expect(turned(three, boards(96), false)).toEqual([192, 0]);
    expect(turned(three, boards(96), true)).toEqual([96, 1]);
    expect(turned(three, boards(97), true)).toEqual([97, 0]);
    // Two pairs on the board, of which one turned is enough: 4 x 23 + 3 + 3 = 98.
    const pairs = [piece(23, 2, left), piece(23, 2, right)];
    expect(turned(pairs, boards(96), true)).toEqual([96, 1]);
    expect(turned(pairs, boards(94), true)).toEqual([94, 2]);
  });
});

describe("planCuts, with the ends taken off", () => {
  it.each<[string, StockPiece[], number, number]>([
    ["47 3/8 + 1/8 + 48 is a 96 less 1/2", [piece(47.375, 1), piece(48, 1)], 0.5, 96],
    ["a sixteenth more is not", [piece(47.4375, 1), piece(48, 1)], 0.5, 120],
    ["a piece as long as the board takes it whole", [piece(96, 3)], 0.5, 288],
    ["a little less than that does not", [piece(95.75, 1)], 0.5, 120],
    ["nor with another beside it", [piece(96, 1), piece(23.5, 1)], 0.5, 192],
    ["with its lean", [piece(93, 1, { lean: 3 })], 0.5, 96],
  ])("%s", (_, pieces, trim, cost) => {
    const list = { pieces, boards: boards(96, 120), kerf: 0.125, trim };
    const plan = planOf(planCutsNow(list.pieces, list.boards, list));
    expect(plan).toMatchObject({ cost, proved: true });
    checkPlan(plan, list);
  });

  it("leaves a size out that the longest board no longer holds", () => {
    const more = { ...piece(90, 1), size: "2x8" };
    const plan = planOf(
      planCutsNow([piece(119.75, 1), more], [...boards(96, 120), { size: "2x8", length: 96 }], {
        kerf: 0.125,
        trim: 0.5,
      }),
    );
    const missing = { row: 1, name: "p", size: "2x6", length: 119.75, needs: 120.25, longest: 120 };
    expect(plan).toMatchObject({ cost: 96, proved: true, missing: [{ kind: "piece too long", ...missing }] });
  });
});

describe("planCuts, by law", () => {
  const lists: [string, (seed: number) => Instance][] = [
    ["random lists", (seed) => randomInstance(seed)],
    ["hip roofs", (seed) => hipRoof(seed, false)],
    ["hip roofs with prices", (seed) => hipRoof(seed, true)],
    ["roofs of two pitches", (seed) => twoPitchRoof(seed, seed % 2 === 0)],
  ];
  it.each(lists)("every piece is cut as often as asked and none overlaps: %s", (_, make) => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100_000 }), (seed) => {
        const list = make(seed);
        checkPlan(planOf(planCutsNow(list.pieces, list.boards, list)), list);
      }),
      { seed: 3, numRuns: 40 },
    );
  });

  it("hip roofs of some hundred members are proved least", () => {
    for (let seed = 1; seed <= 20; seed++) {
      for (const make of [hipRoof, twoPitchRoof]) {
        const { pieces, boards: stock, kerf } = make(seed, seed % 2 === 0);
        expect([seed, planOf(planCutsNow(pieces, stock, { kerf })).proved]).toEqual([seed, true]);
      }
    }
  });

  it("more pieces never cost less, and longer kerfs neither", () => {
    for (let seed = 1; seed <= 25; seed++) {
      const { pieces, boards: stock, kerf } = randomInstance(seed * 5 + 2);
      const cost = (list: StockPiece[], width: number): number =>
        planOf(planCutsNow(list, stock, { kerf: width })).cost;
      const base = cost(pieces, kerf);
      expect(cost([...pieces, piece(50, 1)], kerf)).toBeGreaterThanOrEqual(base - 1e-9);
      expect(cost(pieces, kerf + 0.5)).toBeGreaterThanOrEqual(base - 1e-9);
    }
  });

  it("the unit does not matter", () => {
    for (let seed = 1; seed <= 20; seed++) {
      const { pieces, boards: stock, kerf } = hipRoof(seed, false);
      const mm = (x: number): number => x * 25.4;
      const metric = planOf(
        planCutsNow(
          pieces.map((p) => ({
            ...p,
            length: mm(p.length),
            lean: mm(p.lean!),
            ...(p.turn ? { turn: mm(p.turn) } : {}),
          })),
          stock.map((b) => ({ ...b, length: mm(b.length) })),
          { kerf: mm(kerf) },
        ),
      );
      expect(metric.cost).toBeCloseTo(mm(planOf(planCutsNow(pieces, stock, { kerf })).cost), 6);
    }
  });
});

describe("planCuts, asynchronous", () => {
  it("gives what planCutsNow gives, and lets others have their turn", async () => {
    const random = randomInstance(2);
    const pieces = Array.from({ length: 40 }, (_, n) => piece(20 + ((n * 37.7) % 150), 3, n % 2 ? left : right));
    let turns = 0;
    const timer = setInterval(() => turns++, 1);
    const plan = await planCuts(pieces, boards(96, 144, 192, 240), random);
    clearInterval(timer);
    expect(plan).toEqual(planCutsNow(pieces, boards(96, 144, 192, 240), random));
    expect(turns).toBeGreaterThan(0);
  });
});

describe("planCuts, at the limits", () => {
  it("says so when the work allowed is spent, and the bound still holds", () => {
    let unproved = 0;
    for (let seed = 1; seed <= 20; seed++) {
      const { pieces, boards: stock, kerf } = hipRoof(seed, true);
      const short = planOf(planCutsNow(pieces, stock, { kerf, steps: 1 }));
      const least = planOf(planCutsNow(pieces, stock, { kerf }));
      checkPlan(short, { pieces, boards: stock, kerf });
      expect(short.bound).toBeLessThanOrEqual(least.cost + 1e-9);
      expect(short.cost).toBeGreaterThanOrEqual(least.cost - 1e-9);
      if (!short.proved) unproved++;
    }
    expect(unproved).toBeGreaterThan(10);
  });

  it("says whether limited stock is proved too little", () => {
    const tooFew = new Failure({ kind: "too few boards", size: "2x6" });
    expect(planCutsNow([piece(90, 3)], [{ size: "2x6", length: 96, count: 2 }], { kerf: 0 })).toEqual(tooFew);
    // By material two boards are enough: only the places of the pieces forbid it.
    expect(planCutsNow([piece(50, 3)], [{ size: "2x6", length: 96, count: 2 }], { kerf: 0 })).toEqual(tooFew);
  });
});
