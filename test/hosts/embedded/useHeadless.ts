import { afterEach, beforeAll, beforeEach } from "vitest";
import { bundled } from "./bundled.ts";
import type { Headless } from "./headless.ts";

/** A fresh embedded sheet for every test of a file; `again` puts another in its place, made as `headless` says. */
export function useHeadless(): { readonly t: Headless; again(...made: Parameters<typeof import("./headless.ts").headless>): void } {
  let headless: typeof import("./headless.ts").headless;
  let t: Headless;
  beforeAll(async () => {
    ({ headless } = await bundled());
  }, 60_000);
  beforeEach(() => {
    t = headless();
  });
  afterEach(() => t.dispose());
  return {
    get t() {
      return t;
    },
    again(...made) {
      t.dispose();
      t = headless(...made);
    },
  };
}
