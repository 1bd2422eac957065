import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { ADDRESS } from "../hosts/office/loadOffice.ts";
import type { Calculate, OfficeHost } from "./officeBeneath.ts";
import { type Opened } from "./open.ts";
import { openOfficePane } from "./openExcelPane.ts";

type Page = typeof globalThis & { excel: OfficeHost; calculate: Calculate };

let t: Opened;
beforeEach(async () => {
  t = await openOfficePane();
});
afterEach(async () => {
  const { problems } = t;
  await t.close();
  // The content security policy of the page is in force: what it stops is reported here.
  expect(problems).toEqual([]);
});
const pane = () => t.page.locator("#pane");
const says = () => pane().locator(".lp-says").textContent();
const everything = () => t.page.evaluate(() => JSON.stringify((globalThis as Page).excel.everything()));

describe("the built pane on the vendor's own office.js", () => {
  it("fills the workbook, the table spills through the vendor's runtime, and an undo leaves nothing", async () => {
    const before = await everything();
    await pane().getByLabel("Span", { exact: true }).fill("28'");
    await pane().getByRole("button", { name: "Fill the sheet" }).click();
    await expect.poll(says).toContain("Roof block, Jack schedule written to");
    const rows = await t.page.evaluate(() => (globalThis as Page).calculate("Jacks", 0, 0));
    // Half of 28 ft less the last bay: jacks at 24 in from the king common, and a heading.
    expect(rows).toBeGreaterThan(6);
    await pane()
      .getByRole("button", { name: /^Undo this fill/ })
      .click();
    await expect.poll(says).toContain("Undone");
    expect(await everything()).toBe(before);
    const heaviest = await t.page.evaluate(() =>
      Math.max(...(globalThis as Page).excel.seen.map(({ bytes }) => bytes)),
    );
    expect(heaviest).toBeLessThan(500_000);
    expect(t.requests.filter((url) => !url.startsWith(t.url) && !url.startsWith(ADDRESS))).toEqual([]);
  });

  it("follows a change that is made in the sheet", async () => {
    await pane().getByRole("button", { name: "Fill the sheet" }).click();
    await expect.poll(says).toContain("written to");
    await t.page.evaluate(() => (globalThis as Page).excel.type("Roof", 1, 1, "31'"));
    await expect.poll(() => pane().getByLabel("Span", { exact: true }).inputValue()).toBe("31'");
  });
});
