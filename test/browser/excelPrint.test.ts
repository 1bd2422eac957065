import { afterAll, expect, it } from "vitest";
import { closeBrowser, open } from "./open.ts";
import { openExcelPane } from "./openExcelPane.ts";

afterAll(closeBrowser);

it("says so where no print comes, and the browser gets a page that prints the same, with the roof behind the #", async () => {
  const t = await openExcelPane();
  // As Excel on the web shows a pane: in a frame that may not open a print window.
  await t.page.evaluate(() => {
    const frame = document.createElement("iframe");
    frame.setAttribute("sandbox", "allow-scripts allow-same-origin");
    frame.src = "pane.html";
    frame.style.cssText = "width:360px;height:900px";
    document.body.replaceChildren(frame);
  });
  const frame = t.page.frameLocator("iframe").first();
  const pane = frame.locator("#pane");
  const opened = () =>
    t.page.evaluate(() => (frames[0] as unknown as { openedElsewhere?: string }).openedElsewhere ?? "");
  for (const [fold, press, shows] of [
    ["Cut cards", "Print the cut cards", '[data-piece="H"]'],
    ["Lumber order", "Print the cutting plan", "figure"],
  ] as const) {
    const section = pane.locator("details", { has: frame.locator("summary", { hasText: fold }) });
    await section.locator("summary").click();
    await section.getByRole("button", { name: press }).click();
    await section.locator(".lp-wrong", { hasText: "No print window came" }).waitFor();
    await section.getByRole("button", { name: "Open it in the browser and print there" }).click();
    await expect.poll(opened).toContain("print.html#");
    const address = new URL(await opened());
    expect(t.requests.filter((url) => url.includes("print.html"))).toEqual([]);
    const page = await open("excel", `print.html${address.hash}`);
    await page.page.frameLocator("iframe").locator(shows).first().waitFor();
    expect(await page.page.getByRole("button", { name: "Print, or save as PDF" }).count()).toBe(1);
    expect([page.problems, page.requests.filter((url) => !url.startsWith(page.url))]).toEqual([[], []]);
    // What goes to a server of it has no roof in it: nothing but the build's own mark behind a ?.
    for (const url of page.requests) expect(new URL(url).search).toMatch(/^(\?[0-9a-f]{8})?$/);
    await page.close();
    await t.page.evaluate(() => Object.assign(frames[0]!, { openedElsewhere: "" }));
  }
  const elsewhere = await open("excel", "print.html#nonsense");
  await expect.poll(() => elsewhere.page.locator("#says").textContent()).toContain("no roof in this page's address");
  await elsewhere.close();
  await t.close();
});
