import { afterAll, afterEach, beforeEach, expect } from "vitest";
import type { Opened, View } from "./open.ts";
import { openBench } from "./open.ts";

/** The bench page of a test. */
export type Bench = Pick<Opened, "page" | "url" | "requests"> & {
  /** Opens it, as fresh as the first time; `path` is what follows its address. */
  open(path?: string, view?: View): Promise<void>;
  /** Has the browser forget what the page keeps in it. */
  clear(): Promise<void>;
};

/** The tab that the files of a worker take over from each other: a new one would compile the page's scripts once more. */
let opened: Opened | undefined;

/** The bench page, to be opened by every test of the file that calls this; whatever a test did, the console must be clean after it. */
export function bench(): Bench {
  afterEach(() => expect(opened!.problems).toEqual([]));
  afterAll(() => opened?.clear());
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
    clear: async () => opened?.clear(),
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
