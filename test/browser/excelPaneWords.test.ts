import { expect, it } from "vitest";
import { open } from "./open.ts";
import { openExcelPane } from "./openExcelPane.ts";

const OFFICE = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";
const OUTSIDE = `Office = { HostType: { Excel: "Excel" }, onReady: async (ready) => ready({ host: null }) };`;

// Microsoft, "Support older Microsoft webviews and Office versions": a graceful message where the pane cannot run.
it.each([
  ["Office.js is missing", ""],
  ["it is opened outside Excel", OUTSIDE],
])("the page's own words say what to do where %s", async (_, office) => {
  const t = await open("excel", "pane.html", {}, { [OFFICE]: office });
  expect(await t.page.locator("#pane").textContent()).toMatch(/Connect to the internet.*Home tab of Excel.*WebView2/s);
  expect(t.problems).toEqual([]);
  await t.close();
});

it("they go when the pane runs", async () => {
  const t = await openExcelPane();
  expect(await t.page.locator("#pane").textContent()).not.toContain("If these words stay");
  await t.close();
});
