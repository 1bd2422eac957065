import { afterEach, beforeAll, beforeEach } from "vitest";
import { bundled } from "./bundled.ts";
import type { Headless } from "./headless.ts";

type Make = typeof import("./headless.ts").headless;

/** Gives every test of a file a fresh embedded sheet. Returns what makes a further one; all go with their test. */
export function useHeadless(use: (fresh: Headless) => void): Make {
  let headless: Make;
  const made: Headless[] = [];
  const make: Make = (...as) => {
    const one = headless(...as);
    made.push(one);
    return one;
  };
  beforeAll(async () => {
    ({ headless } = await bundled());
  });
  beforeEach(() => use(make()));
  afterEach(() => made.splice(0).forEach((one) => one.dispose()));
  return make;
}
