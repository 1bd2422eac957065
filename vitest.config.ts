import { defineConfig } from "vitest/config";

/** The unit tests: everything in test/ but the browser's and the benchmarks, which have runners of their own. */
export default defineConfig({
  test: {
    include: ["test/**/*.test.ts"],
    exclude: ["test/browser/**", "test/bench/**", "node_modules/**"],
    // Two cores are the machine this must be quick on.
    maxWorkers: 2,
    testTimeout: 20_000,
  },
});
