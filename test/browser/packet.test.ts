import { expect, it } from "vitest";
import { printAddress, sawAddress } from "../../src/pane/writing/printAddress.ts";
import { PACKET_ROOFS, typed } from "../pages/packet/roofs.ts";
import { axeFindings } from "./axeFindings.ts";
import { open, openBench } from "./open.ts";
import { openExcelPane } from "./openExcelPane.ts";

/** Points of a page of PDF, to the nearest. */
const SIZES = { letter: [612, 792], A4: [595, 842] } as const;

/** What is wrong with the pages as they stand: texts under 8 points, and what reaches beyond its page or its card. */
function faults(): string[] {
  const found: string[] = [];
  for (const [i, sheet] of [...document.querySelectorAll<HTMLElement>(".sheet")].entries()) {
    const page = sheet.getBoundingClientRect();
    const edge = sheet.classList.contains("stickers") ? 10 : 28;
    const walker = document.createTreeWalker(sheet, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const text = node.textContent!.trim();
      const own = node.parentElement!;
      if (text === "" || own.closest("title,desc")) continue;
      const svg = own.closest("svg");
      const scale = svg ? svg.getBoundingClientRect().width / Number(svg.getAttribute("viewBox")!.split(" ")[2]) : 1;
      const points = parseFloat(getComputedStyle(own).fontSize) * scale * 0.75;
      if (points < 7.999) found.push(`page ${i + 1}: ${points} pt: ${text}`);
      const range = document.createRange();
      range.selectNode(node);
      for (const box of range.getClientRects())
        if (
          box.left < page.left + edge ||
          box.right > page.right - edge ||
          box.top < page.top + edge ||
          box.bottom > page.bottom - 20
        )
          found.push(`page ${i + 1}: over the edge: ${text}`);
    }
    for (const inner of sheet.querySelectorAll(".body,.card,.sticker,td,h1,p,.foot"))
      if (inner.scrollHeight > inner.clientHeight + 1 && inner.clientHeight > 0)
        found.push(`page ${i + 1}: too high: ${inner.className} ${inner.textContent.slice(0, 40)}`);
  }
  return found;
}

it.each(["sample", "winged", "metric"] as const)(
  "prints every part of the %s roof on letter and A4: pages of the size, nothing cut off, no text under 8 points",
  async (name) => {
    const t = await open("bench", printAddress(typed(PACKET_ROOFS[name]), { packet: true }));
    await t.page.locator(".sheet").first().waitFor();
    for (const box of await t.page.locator(".ask input").all()) await box.check();
    for (const paper of ["letter", "A4"] as const) {
      await t.page.getByLabel("Paper").selectOption(paper);
      for (const perPage of ["4", "2"]) {
        await t.page.getByLabel("Cards to a page").selectOption(perPage);
        expect([paper, perPage, await t.page.evaluate(faults)]).toEqual([paper, perPage, []]);
      }
      const sheets = await t.page.locator(".sheet").count();
      const pdf = (await t.page.pdf({ preferCSSPageSize: true })).toString("latin1");
      expect(pdf.match(/\/Type \/Page\b(?!s)/g)).toHaveLength(sheets);
      for (const [, width, height] of pdf.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g))
        expect([Math.round(Number(width)), Math.round(Number(height))]).toEqual(SIZES[paper]);
      expect(await t.page.locator(".foot").last().textContent()).toContain(`${sheets} of ${sheets}`);
    }
    expect([t.problems, t.requests.filter((url) => !url.startsWith(t.url))]).toEqual([[], []]);
    await t.close();
  },
);

it("opens from the pane by one press with the roof as it is typed, and shows only what is chosen", async () => {
  const t = await openBench();
  await t.page.locator("#pane").getByRole("textbox", { name: "Length" }).first().fill("40'");
  const opened = t.page.context().waitForEvent("page");
  await t.page.getByRole("button", { name: "Print the job" }).click();
  const packet = await opened;
  await packet.locator(".sheet").first().waitFor();
  expect(await packet.locator(".sheet").first().innerText()).toMatch(/length 40'\s0"/);
  for (const box of await packet.locator(".ask input").all()) await box.uncheck();
  expect(await packet.getByRole("button", { name: "Print, or save as PDF" }).isDisabled()).toBe(true);
  expect(await packet.getByRole("status").textContent()).toContain("Choose at least one part.");
  await packet.getByLabel("Boards to buy").check();
  expect(await packet.locator(".sheet").count()).toBe(1);

  // The roof is typed over while the packet is open; and back.
  const length = t.page.locator("#pane").getByRole("textbox", { name: "Length" }).first();
  await length.fill("42'");
  await packet.getByText("The roof in the sheet has changed").waitFor();
  await length.fill("40'");
  await packet.getByText("The roof in the sheet has changed").waitFor({ state: "detached" });
  await t.close();
});

it("shows its pages on a phone as wide as the screen, and the automatic check finds nothing", async () => {
  const t = await open("bench", printAddress(typed(PACKET_ROOFS.sample), { packet: true }), {
    viewport: { width: 390, height: 844 },
  });
  await t.page.locator(".sheet").first().waitFor();
  expect(await t.page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  expect(await axeFindings(t.page)).toEqual([]);
  await t.close();
});

it("opens in the browser from Excel's pane, the roof behind the #", async () => {
  const t = await openExcelPane();
  await t.page.getByRole("button", { name: "Print the job" }).click();
  const opened = () => t.page.evaluate(() => (window as unknown as { openedElsewhere?: string }).openedElsewhere ?? "");
  await expect.poll(opened).toContain("print.html#");
  const packet = await open("excel", `print.html${new URL(await opened()).hash}`);
  await packet.page.locator(".sheet").first().waitFor();
  expect(await packet.page.locator(".sheet").count()).toBeGreaterThan(8);
  expect([packet.problems, packet.requests.filter((url) => !url.startsWith(packet.url))]).toEqual([[], []]);
  await packet.close();
  await t.close();
});

it.each([
  ["the packet", printAddress(typed(PACKET_ROOFS.sample), { packet: true }), ".sheet"],
  ["the saw", sawAddress("saw.html", typed(PACKET_ROOFS.sample)), ".board"],
])("no request leaves from the page for %s, and none has the roof in it", async (_, path, shows) => {
  const page = await open("bench", path);
  await page.page.locator(shows).first().waitFor();
  expect(page.requests.filter((url) => !url.startsWith(page.url))).toEqual([]);
  for (const url of page.requests) expect(decodeURIComponent(new URL(url).search)).not.toContain("Span");
  expect(page.problems).toEqual([]);
  await page.close();
});
