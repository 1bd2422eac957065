import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { functions } from "../../functions/index.ts";
import { guidePage, narrowName } from "../../src/build/guidePage.ts";
import { writeHelp } from "../../src/build/writeHelp.ts";

describe("guidePage", () => {
  const page = guidePage(`# A <title>

See [the reference](REFERENCE.md), [JACKLEN](REFERENCE.md#jacklen) and [below](#two-words-here).

![A "plan"](drawings/plan.svg)

## Two words, here

| Row | Meaning |
|---|---|
| Span | across |
`);

  it("keeps links among the help pages", () => {
    expect([...page.matchAll(/<a href="([^"]*)"/g)].map(([, href]) => href)).toEqual([
      "index.html",
      "index.html",
      "JACKLEN.html",
      "#two-words-here",
    ]);
    expect(page).toContain('<h2 id="two-words-here">Two words, here</h2>');
  });

  it("shows a phone's drawing on a phone", () => {
    expect(page).toContain('srcset="drawings/narrow/plan.svg"><img src="drawings/plan.svg" alt="A &#34;plan&#34;">');
    expect(narrowName("plan.svg")).toBe("narrow/plan.svg");
  });

  it("lets a table scroll by itself, and takes a title for text", () => {
    expect(page).toMatch(
      /<div class="wide words" tabindex="0" role="region" aria-label="Two words, here: Row, Meaning"><table>[^]*<\/table>\s*<\/div>/,
    );
    expect(page).toContain("<title>A &#60;title&#62; - Longpoint</title>");
  });
});

describe("the written help", () => {
  let folder = "";
  const file = (name: string) => readFileSync(join(folder, "help", name), "utf8");
  beforeAll(() => writeHelp((folder = mkdtempSync(join(tmpdir(), "longpoint-help-"))), functions));
  afterAll(() => rmSync(folder, { recursive: true }));

  it.each(["index.html", "guide.html", "JACKTABLE.html"])(
    "%s points to nothing that is not there, and to nothing outside",
    (name) => {
      const page = file(name);
      const targets = [...page.matchAll(/(?:href|src|srcset)="(?!data:,)([^"]*)"/g)].map(([, target]) => target!);
      expect(targets.length).toBeGreaterThan(1);
      for (const target of targets)
        expect(
          target.startsWith("#")
            ? page.includes(`id="${target.slice(1)}"`)
            : existsSync(join(folder, "help", target.replace(/#.*$/, ""))),
          target,
        ).toBe(true);
      expect(page).not.toMatch(/https?:|<script|@import|url\(/);
    },
  );

  it("has the guide's own drawings, wide and narrow", () => {
    const width = (name: string) => Number(/ width="(\d+)"/.exec(file(name))![1]);
    expect(file("drawings/plan.svg")).toBe(readFileSync("functions/drawings/plan.svg", "utf8"));
    expect(width("drawings/plan.svg")).toBeLessThanOrEqual(48 * 16 - 32);
    expect(width("drawings/narrow/plan.svg")).toBeLessThanOrEqual(360 - 32);
  });
});
