import { whenRefused } from "../../functions/words/whenRefused.ts";
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { functions } from "../../functions/index.ts";
import { GUIDE_WIDTHS, guideDrawings } from "../../src/build/guideDrawings.ts";
import { referencePage } from "../../src/registry/referencePage.ts";

describe("generated files", () => {
  it("functions/REFERENCE.md is what `npm run generate` writes today", () => {
    expect(readFileSync("functions/REFERENCE.md", "utf8")).toBe(referencePage(functions, whenRefused));
  });

  it("functions/drawings holds what `npm run generate` writes today, and nothing else", () => {
    const drawings = guideDrawings(GUIDE_WIDTHS.wide);
    expect(readdirSync("functions/drawings").sort()).toEqual(Object.keys(drawings).sort());
    for (const [name, drawing] of Object.entries(drawings))
      expect(readFileSync(`functions/drawings/${name}`, "utf8") === drawing, name).toBe(true);
  });
});
