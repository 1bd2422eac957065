import { afterEach, beforeEach, vi } from "vitest";

/** Gives every test of the file that calls this a clock of its own; `later` lets it run until all that waits has come. */
export function ownClock(): { later(): Promise<unknown> } {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());
  return { later: () => vi.advanceTimersByTimeAsync(2000) };
}
