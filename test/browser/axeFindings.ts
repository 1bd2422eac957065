import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** What the automatic check finds on a page, or in a part of it, by rule and element. */
export async function axeFindings(page: Page, where = "html"): Promise<string[]> {
  await page.evaluate(AXE);
  return page.evaluate(async (part) => {
    const { axe } = window as unknown as {
      axe: { run(where: string): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    const { violations } = await axe.run(part);
    return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
  }, where);
}
