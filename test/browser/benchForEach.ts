import { afterAll, afterEach, beforeEach, expect } from "vitest";
import type { Opened } from "./open.ts";
import { closeBrowser, openBench } from "./open.ts";

/** The bench page opened afresh for every test of the file that calls this; whatever a test did, the console must be clean after it. */
export function benchForEach(): Omit<Opened, "close"> {
  let opened: Opened;
  beforeEach(async () => {
    opened = await openBench();
  });
  afterEach(async () => {
    const { problems } = opened;
    await opened.close();
    expect(problems).toEqual([]);
  });
  afterAll(closeBrowser);
  return {
    get page() { return opened.page; },
    get url() { return opened.url; },
    get problems() { return opened.problems; },
    get requests() { return opened.requests; },
  };
}
