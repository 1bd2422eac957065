import { defineConfig } from "vitest/config";

/** The built pages in a real browser. Two files at a time, for a page waits more than it works: a third less time on two cores. */
export default defineConfig({
  test: {
    include: ["test/browser/**/*.test.ts"],
    globalSetup: ["test/browser/build.ts"],
    maxWorkers: 2,
    // A worker reads a module once, not once a file, and keeps its browser and its tab; so no test may leave anything behind.
    isolate: false,
    // A busy machine takes more than what is usual, by far: these end what hangs.
    testTimeout: 180_000,
    hookTimeout: 300_000,
    expect: { poll: { timeout: 90_000 } },
  },
});
