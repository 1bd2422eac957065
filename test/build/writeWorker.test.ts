import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { writeWorker } from "../../src/build/writeWorker.ts";

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "pages-"));
  mkdirSync(join(folder, "help"));
  for (const file of [
    "index.html",
    "help/a b.html",
    "x.01234567.js",
    "x.01234567.js.br",
    "x.01234567.js.gz",
    "licenses.json",
  ])
    writeFileSync(join(folder, file), file);
});
afterEach(() => rmSync(folder, { recursive: true }));

/** The worker's version, and the files that it keeps. */
function written(): { version: string; files: string[] } {
  writeWorker(folder);
  const [version, files] = readFileSync(join(folder, "sw.js"), "utf8").split("\n", 2) as [string, string];
  const value = (line: string) => JSON.parse(/= (.*);$/.exec(line)![1]!) as never;
  return { version: value(version), files: value(files) };
}

describe("writeWorker", () => {
  it("lists every file that a page may need, and not itself", () => {
    expect(written().files).toEqual(["help/a b.html", "index.html", "x.01234567.js"]);
    expect(written().files).not.toContain("sw.js");
  });
  it("has another version where any file differs, and the same where none does", () => {
    const { version } = written();
    expect(written().version).toBe(version);
    writeFileSync(join(folder, "index.html"), "other");
    expect(written().version).not.toBe(version);
  });
});
