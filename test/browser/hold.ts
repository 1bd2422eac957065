import type { Page } from "playwright-core";
import { expect } from "vitest";

/** Scripts that a page asks for and does not get yet, as over a slow network. */
export interface Held {
  /** Waits until the page has asked for one. */
  asked(): Promise<void>;
  /** Gives it those that it asked for, and lets the rest come as ever. */
  go(): Promise<void>;
}

/** Holds back the scripts whose address fits a pattern. The next page opened in the tab has them again. */
export async function hold(page: Page, script: string): Promise<Held> {
  let [asked, go] = [0, () => {}];
  const held = new Promise<void>((resolve) => (go = resolve));
  await page.route(script, async (route) => {
    asked++;
    await held;
    // One that the page has given up in the meantime cannot go on.
    await route.continue().catch(() => undefined);
  });
  return {
    asked: () => expect.poll(() => asked).toBeGreaterThan(0),
    async go() {
      go();
      await page.unroute(script);
    },
  };
}
