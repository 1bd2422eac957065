import { expect, it } from "vitest";
import { axeFindings } from "./axeFindings.ts";
import { open } from "./open.ts";
import { openExcelPane } from "./openExcelPane.ts";

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

it("shows the drawing in a dialog of Excel, in the place of the one before, and in the browser where Excel opens none", async () => {
  const t = await openExcelPane();
  const pane = t.page.locator("#pane");
  const given = (name: "dialog" | "openedElsewhere") =>
    t.page.evaluate((key) => (globalThis as { [key: string]: unknown })[key] ?? "", name);
  const press = () => pane.getByRole("button", { name: "Larger" }).click();
  await press();
  await expect.poll(() => given("dialog")).toContain("drawing.html#");
  const first = (await given("dialog")) as string;
  await pane.getByLabel("Span", { exact: true }).fill("20'");
  await press();
  await expect.poll(() => given("dialog")).not.toBe(first);
  expect(await given("openedElsewhere")).toBe("");
  const { hash } = new URL((await given("dialog")) as string);
  await t.page.evaluate(() => Object.assign(globalThis, { dialogRefused: true }));
  await press();
  await expect.poll(() => given("openedElsewhere")).toContain("drawing.html#");

  const { page, problems, requests, url, close } = await open("excel", `drawing.html${hash}`, {
    viewport: { width: 1280, height: 800 },
  });
  await page.locator('.lp-drawn polygon[data-piece="J1"]').first().waitFor();
  expect(await page.locator(".lp-values").textContent()).toContain(`Span20' 0"`);
  await page.getByRole("button", { name: "3-D" }).click();
  await page.locator('.lp-drawn [data-view="frame"]').waitFor({ state: "attached" });
  // A piece's card by keyboard.
  await page.locator('tr[data-piece="J2"] button').press("Enter");
  await page.getByRole("region", { name: "Card of J2" }).waitFor();
  expect(await axeFindings(page)).toEqual([]);
  expect([problems, requests.filter((one) => !one.startsWith(url))]).toEqual([[], []]);
  await close();
  const elsewhere = await open("excel", "drawing.html#nonsense");
  await elsewhere.page.getByText("no roof in this page's address").waitFor();
  await elsewhere.close();
  await t.close();
});
