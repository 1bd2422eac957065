import { afterAll, afterEach, beforeEach, expect } from "vitest";
import type { Opened, View } from "./open.ts";
import { closeBrowser, openBench } from "./open.ts";

/** The bench page of a test. */
export type Bench = Pick<Opened, "page" | "url" | "requests"> & {
  /** Opens it, as fresh as the first time; `path` is what follows its address. */
  open(path?: string, view?: View): Promise<void>;
};

/** The bench page, to be opened by every test of the file that calls this; whatever a test did, the console must be clean after it. */
export function bench(): Bench {
  let opened: Opened | undefined;
  afterEach(() => expect(opened!.problems).toEqual([]));
  afterAll(closeBrowser);
  return {
    get page() {
      return opened!.page;
    },
    get url() {
      return opened!.url;
    },
    get requests() {
      return opened!.requests;
    },
    async open(path = "", view = {}) {
      opened = await openBench(path, view, opened);
    },
  };
}

/** The same, opened before every test. */
export function benchForEach(): Bench {
  const t = bench();
  beforeEach(() => t.open());
  return t;
}
