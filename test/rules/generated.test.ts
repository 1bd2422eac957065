import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { functions } from "../../functions/index.ts";
import { referencePage } from "../../src/registry/referencePage.ts";

describe("generated files", () => {
  it("functions/REFERENCE.md is what `npm run generate` writes today", () => {
    expect(readFileSync("functions/REFERENCE.md", "utf8")).toBe(referencePage(functions));
  });
});
