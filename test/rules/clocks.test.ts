import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { projectFiles } from "./projectFiles.ts";

const clock = new RegExp(
  ["performance\\.no" + "w", "Date\\.no" + "w", "hrti" + "me", "cpuUsa" + "ge", "readyAft" + "er"].join("|"),
);

/** A machine that is busy must not fail a test: what takes time is measured in test/bench, and what never ends runs into the runner's own limit. */
describe("no test reads a clock", () => {
  it.each(projectFiles("test", ".test.ts"))("%s", (file) => {
    expect(
      readFileSync(file, "utf8")
        .split("\n")
        .filter((line) => clock.test(line)),
    ).toEqual([]);
  });
  it("finds one that does", () => expect(clock.test("const start = performance.no" + "w();")).toBe(true));
});
