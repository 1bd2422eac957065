import { describe, expect, it, vi } from "vitest";
import { newestOnly } from "../../../src/pane/state/newestOnly.ts";
import { ownClock } from "../ownClock.ts";

ownClock();

/** A task that takes 1000 ms, and what became of it. */
function slow() {
  const started: string[] = [];
  const found: string[] = [];
  let running = 0;
  let most = 0;
  const newest = newestOnly(
    300,
    async (asked: string) => {
      started.push(asked);
      most = Math.max(most, ++running);
      await new Promise((resolve) => setTimeout(resolve, 1000));
      running--;
      return asked.toUpperCase();
    },
    (asked, answer) => found.push(`${asked} ${answer}`),
  );
  return { newest, started, found, most: () => most };
}

describe("newestOnly", () => {
  it("waits until typing has come to rest, and does only what was asked last", async () => {
    const { newest, started, found } = slow();
    for (const asked of ["a", "b", "c"]) {
      newest.ask(asked);
      await vi.advanceTimersByTimeAsync(299);
    }
    expect(started).toEqual([]);
    await vi.advanceTimersByTimeAsync(2000);
    expect([started, found]).toEqual([["c"], ["c C"]]);
  });

  it("never does two at once, leaves out what was overtaken, and gives no stale answer", async () => {
    const { newest, started, found, most } = slow();
    for (const asked of ["a", "b", "c"]) {
      newest.ask(asked);
      await vi.advanceTimersByTimeAsync(310);
    }
    await vi.advanceTimersByTimeAsync(3000);
    expect([started, found, most()]).toEqual([["a", "c"], ["c C"], 1]);
    newest.ask("d");
    await vi.advanceTimersByTimeAsync(3000);
    expect(found).toEqual(["c C", "d D"]);
  });

  it("says nothing more once it was stopped", async () => {
    const { newest, started, found } = slow();
    newest.ask("a");
    await vi.advanceTimersByTimeAsync(500);
    newest.ask("b");
    newest.stop();
    await vi.advanceTimersByTimeAsync(3000);
    expect([started, found]).toEqual([["a"], []]);
  });

  it("goes on after a task that failed, and says nothing of it", async () => {
    const found: string[] = [];
    const newest = newestOnly(
      0,
      (asked: string) => (asked === "bad" ? Promise.reject(new Error("busy")) : Promise.resolve(asked)),
      (_, answer) => found.push(answer),
    );
    for (const asked of ["bad", "good"]) {
      newest.ask(asked);
      await vi.advanceTimersByTimeAsync(10);
    }
    expect(found).toEqual(["good"]);
  });
});
