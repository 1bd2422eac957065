import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { findInstalled } from "./findBrowser.ts";

let home: string;
const put = (path: string) => {
  const file = join(home, path);
  mkdirSync(join(file, ".."), { recursive: true });
  writeFileSync(file, "");
  return file;
};
beforeAll(() => {
  home = mkdtempSync(join(tmpdir(), "longpoint-browser-"));
});
afterAll(() => rmSync(home, { recursive: true }));

describe("findInstalled", () => {
  it("takes the browser that is named, before any other", () => {
    const named = put("named/my-chrome");
    put("bin/chromium");
    expect(findInstalled({ CHROMIUM: named, PATH: join(home, "bin") }, "linux")).toBe(named);
    expect(findInstalled({ CHROME_PATH: named, PATH: "" }, "linux")).toBe(named);
  });
  it("says so when the named one is not there", () => {
    expect(() => findInstalled({ CHROMIUM: join(home, "missing") }, "linux")).toThrow(/missing/);
  });
  it("looks along PATH, and where Windows and macOS keep their programs", () => {
    const chromium = put("bin/chromium");
    expect(findInstalled({ PATH: `${join(home, "none")}:${join(home, "bin")}` }, "linux")).toBe(chromium);
    const edge = put("programs/Microsoft/Edge/Application/msedge.exe");
    expect(findInstalled({ PROGRAMFILES: join(home, "programs") }, "win32")).toBe(edge);
    const chrome = put("Applications/Google Chrome.app/Contents/MacOS/Google Chrome");
    expect(findInstalled({ HOME: home }, "darwin")).toBe(chrome);
  });
  it("takes the one without a window before others beside it", () => {
    const shell = put("both/chromium-headless-shell");
    put("both/chromium");
    expect(findInstalled({ PATH: join(home, "both") }, "linux")).toBe(shell);
  });
  it("finds nothing where there is nothing", () => {
    expect(findInstalled({ PATH: join(home, "none") }, "linux")).toBeNull();
  });
});
