import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { projectFiles } from "./projectFiles.ts";

const MOST = 300;

/** Files that may be longer, each with the reason why splitting them would make them harder to read. */
const reasons: Record<string, string> = {};

const files = ["src", "functions", "test"]
  .flatMap((top) => projectFiles(top))
  .filter((file) => /\.(ts|tsx|js|mjs|cjs|css|html)$/.test(file));

describe(`files of at most ${MOST} lines`, () => {
  const long = files.filter((file) => readFileSync(file, "utf8").split("\n").length - 1 > MOST);
  it("but where a reason is listed", () => {
    expect(long.filter((file) => reasons[file] === undefined)).toEqual([]);
  });
  it("and no reason outlives its file's length", () => {
    expect(Object.keys(reasons).filter((file) => !long.includes(file))).toEqual([]);
  });
});
