import { afterEach, describe, expect, it } from "vitest";
import type { PlacedPiece } from "../../src/cutting/stock.ts";
import { assemble } from "./assemble.ts";
import { seed } from "./chance.ts";
import { nestingFaults, orderFor } from "./nested.ts";
import { fuzzedRoofs, regular, roofCases } from "./roofCases.ts";
import { Shop } from "./shop.ts";
import type { RoofPlan } from "./roofPlan.ts";

/** Boards that differ by less than what a pair head to head saves. */
const CLOSE = [[`20' to 24' by 1"`]];

const shop = new Shop();
afterEach(() => shop.sweep());

/** What is wrong with a roof's boards when its own pieces, framed in place first, are laid into them. */
async function wrong(plan: RoofPlan, kerf: number, boards?: unknown[][], crownDown = false): Promise<string[]> {
  const order = await orderFor(plan, kerf, boards, crownDown);
  expect(order.plan.proved).toBe(true);
  const found = await nestingFaults(shop, assemble(shop, plan), order);
  shop.sweep();
  return found;
}

describe("pieces nested by the plan", { timeout: 120_000 }, () => {
  it.each(Object.entries(roofCases))(
    "%s: fit in their boards and do not overlap, at no kerf and at 1/8 in, and no saw cut runs into one",
    async (_, plan) => {
      expect(await wrong(plan, 0)).toEqual([]);
      expect(await wrong(plan, 0.125)).toEqual([]);
    },
  );

  it("lie crown down where that saves, and share the cut of their heads", async () => {
    for (const plan of [regular, roofCases["steeper ends"]!, roofCases["hips on the ridge"]!]) {
      const order = await orderFor(plan, 0.125, CLOSE, true);
      expect(order.plan.boards.some(({ pieces }) => pieces.some(({ flipped }) => flipped))).toBe(true);
      expect(await wrong(plan, 0.125, CLOSE, true)).toEqual([]);
    }
  });

  it("lie in long boards of one length too, where most of them share cuts", async () => {
    for (const plan of [regular, roofCases["steeper ends"]!, roofCases["hips on the ridge"]!])
      expect(await wrong(plan, 0.125, [[480]])).toEqual([]);
  });

  it("lie with pieces of another slant in one board: one size for rafters, hips and ridge", async () => {
    const one = { thickness: 1.5, depth: 7.25 };
    const plan: RoofPlan = { ...roofCases["steeper ends"]!, rafter: one, hip: one, ridge: one, heel: 6 };
    const order = await orderFor(plan, 0.125, [[480]]);
    expect(order.plan.boards.some(({ pieces }) => pieces.filter(({ shares }) => shares === "none").length > 1)).toBe(
      true,
    );
    expect(await wrong(plan, 0.125, [[480]])).toEqual([]);
  });

  it("a ridge longer than every board, in its parts", async () => {
    const plan: RoofPlan = { ...regular, length: 960 };
    const order = await orderFor(plan, 0.125, [[288]]);
    expect(order.joined[0]?.joints.length).toBe(2);
    expect(await wrong(plan, 0.125, [[288]])).toEqual([]);
  });

  it(`by chance too: LONGPOINT_SEED=${seed}`, async () => {
    const found: string[] = [];
    for (const plan of fuzzedRoofs(shop, 8, 77))
      found.push(...(await wrong(plan, 3 / 32, [[`8' to 50' by 2'`]], true)));
    expect(found).toEqual([]);
  });
});

describe("the proof finds what it is there to find", { timeout: 60_000 }, () => {
  const spoilt = async (
    plan: RoofPlan,
    kerf: number,
    spoil: (pieces: readonly PlacedPiece[]) => readonly PlacedPiece[],
  ) => nestingFaults(shop, assemble(shop, plan), await orderFor(plan, kerf, CLOSE, true), spoil);
  /** The second piece of every shared cut, changed. */
  const second =
    (change: (piece: PlacedPiece) => PlacedPiece, shares: PlacedPiece["shares"]) => (pieces: readonly PlacedPiece[]) =>
      pieces.map((piece) => (piece.shares === shares ? change(piece) : piece));
  const by =
    (inches: number) =>
    (piece: PlacedPiece): PlacedPiece => ({ ...piece, start: piece.start + inches });

  it.each(["regular", "steeper ends"] as const)("a piece of a pair 1/16 in nearer, at no kerf: %s", async (name) => {
    expect(
      (await spoilt(roofCases[name]!, 0, second(by(-1 / 16), "compound"))).some((words) => words.includes("overlap")),
    ).toBe(true);
  });

  it("a piece 1/16 in nearer, with a kerf: the saw cut runs into it", async () => {
    const found = await spoilt(regular, 0.125, second(by(-1 / 16), "compound"));
    expect(found.some((words) => words.includes("the saw cut"))).toBe(true);
    expect(found.some((words) => words.includes("overlap"))).toBe(false);
  });

  it("a piece after a plumb cut 1/16 in nearer, at no kerf", async () => {
    expect(
      (await spoilt(roofCases["no ridge between the commons"]!, 0, second(by(-1 / 16), "plumb"))).some((words) =>
        words.includes("overlap"),
      ),
    ).toBe(true);
  });

  it("a pair of one hand", async () => {
    const found = await spoilt(
      regular,
      0,
      second((piece) => ({ ...piece, hand: piece.hand === "left" ? "right" : "left" }), "compound"),
    );
    expect(found.some((words) => words.includes("overlap"))).toBe(true);
  });

  it("the second of a pair that is not turned end for end", async () => {
    expect(
      (
        await spoilt(
          regular,
          0,
          second((piece) => ({ ...piece, flipped: false }), "compound"),
        )
      ).some((words) => words.includes("overlap")),
    ).toBe(true);
  });

  it("a board that is a sixteenth too short", async () => {
    const order = await orderFor(regular, 0);
    const short = {
      ...order,
      plan: { ...order.plan, boards: order.plan.boards.map((board) => ({ ...board, length: board.used - 1 / 16 })) },
    };
    const found = await nestingFaults(shop, assemble(shop, regular), short);
    expect(found.filter((words) => words.includes("out of the board"))).toHaveLength(order.plan.boards.length);
  });
});
