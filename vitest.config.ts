import { defineConfig } from "vitest/config";

/** Their files put what a page or Excel brings in the place of globals. */
const OWN_GLOBALS = [
  "test/hosts/office/**/*.test.ts",
  "test/hosts/excel/**/*.test.ts",
  "test/hosts/lumberOrder.test.ts",
];

/** The unit tests: everything in test/ but the browser's and the benchmarks, which have runners of their own. */
export default defineConfig({
  test: {
    // Two cores are the machine this must be quick on.
    maxWorkers: 2,
    // A busy machine takes more than what is usual, by far: these end what hangs.
    testTimeout: 180_000,
    hookTimeout: 300_000,
    projects: [
      {
        extends: true,
        test: {
          name: "unit",
          include: ["test/**/*.test.ts"],
          exclude: ["test/browser/**", "test/bench/**", "node_modules/**", ...OWN_GLOBALS],
          // A worker reads a module once, not once a file, which halves the time; so no test may leave anything behind.
          isolate: false,
        },
      },
      { extends: true, test: { name: "hosts", include: OWN_GLOBALS } },
    ],
  },
});
