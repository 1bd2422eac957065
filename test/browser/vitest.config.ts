import { defineConfig } from "vitest/config";

/** The built pages in a real browser. One at a time: two browsers on two cores are slower than one after the other. */
export default defineConfig({
  test: {
    include: ["test/browser/**/*.test.ts"],
    globalSetup: ["test/browser/build.ts"],
    maxWorkers: 1,
    fileParallelism: false,
    testTimeout: 60_000,
    hookTimeout: 120_000,
    // A busy machine takes more than the second that is usual.
    expect: { poll: { timeout: 20_000 } },
  },
});
