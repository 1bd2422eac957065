import { expect, it, vi } from "vitest";
import { planCuts } from "../../../src/cutting/planCuts.ts";
import { planSteps } from "../../../src/cutting/search/planSteps.ts";
import { planOf } from "../checkPlan.ts";
import { slantedInstance, twoPitchRoof, village } from "../instances.ts";
import { planCutsNow } from "../planCutsNow.ts";

it("a long list that takes all the work leaves what a short one needs, whichever is listed first", () => {
  const long = village(1, false, 2);
  const asked = slantedInstance(1);
  const short = asked.pieces.map((one) => ({ ...one, size: "2x4" }));
  const stock = [...long.boards, ...asked.boards.map((board) => ({ ...board, size: "2x4" }))];
  for (const pieces of [
    [...long.pieces, ...short],
    [...short, ...long.pieces],
  ]) {
    const { sizes, boards: planned } = planOf(planCutsNow(pieces, stock, { kerf: 0.125, steps: 3e5 }));
    const listed = [...new Set(pieces.map(({ size }) => size))];
    expect(sizes.map(({ size, proved }) => [size, proved])).toEqual(listed.map((size) => [size, size === "2x4"]));
    expect([...new Set(planned.map(({ size }) => size))]).toEqual(listed);
  }
});

it("planCuts lets the page have its turn every 8 ms, not sooner", async () => {
  const { pieces, boards, ...options } = twoPitchRoof(1, false);
  let steps = 0;
  for (const all = planSteps(pieces, boards, options); !all.next().done;) steps++;
  // Every look at the clock takes a millisecond: eight steps from the first look of a slice to the last.
  let now = 0;
  const clock = vi.spyOn(performance, "now").mockImplementation(() => now++);
  const turns = vi.spyOn(globalThis, "setTimeout");
  await planCuts(pieces, boards, options);
  const taken = turns.mock.calls.filter(([, delay]) => delay === 0).length;
  clock.mockRestore();
  turns.mockRestore();
  expect(steps).toBeGreaterThan(80);
  expect(taken).toBe(Math.floor(steps / 8));
});
