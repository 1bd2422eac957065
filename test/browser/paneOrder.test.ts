import { mkdirSync } from "node:fs";
import { beforeEach, describe, expect, it } from "vitest";
import { benchForEach } from "./bench.ts";
import { panePage } from "./panePage.ts";

const t = benchForEach();
const { letGo, pane, field, sheets, keepPrints, printed } = panePage(t);
beforeEach(letGo);

const section = () =>
  pane().locator("section", { has: t.page.locator("summary", { hasText: "Lumber order and cutting plan" }) });
const unfold = () => section().locator("summary").click();
const total = () => section().locator("[role=status]").first().textContent();

/** Types over a field and reads what the order and the plan show when that keystroke's turn ends: a search has not begun by then. */
async function typed(name: string, text: string): Promise<{ total: string; plan: string }> {
  return field(name).evaluate(async (input, value) => {
    (input as HTMLInputElement).value = value;
    input.dispatchEvent(new Event("input", { bubbles: true }));
    await new Promise((resolve) => queueMicrotask(() => setTimeout(resolve)));
    const order = [...document.querySelectorAll("#pane section")].find(
      (section) => section.querySelector("summary")?.textContent === "Lumber order and cutting plan",
    )!;
    return {
      total: order.querySelector("[role=status]")!.textContent!,
      plan: document.querySelector("#pane .lp-drawn svg")!.outerHTML,
    };
  }, text);
}

async function column(sheet: string, heading: string): Promise<(number | string | boolean)[]> {
  await t.page.evaluate(() => window.longpoint.settled());
  const cells = (
    await t.page.evaluate(
      (name) => window.longpoint.host.read({ sheet: name, row: 0, column: 0, rows: 80, columns: 12 }),
      sheet,
    )
  ).map((line) => line.map(({ value }) => value));
  const at = cells[0]!.indexOf(heading);
  return cells
    .slice(1)
    .map((line) => line[at]!)
    .filter((value) => value !== "");
}

describe("the order in the pane", () => {
  it("says what to buy and draws how it is cut, the same as the sheet's functions say", async () => {
    await unfold();
    await expect.poll(total).toMatch(/^\d+ boards to buy, \d+' \d+" in all\.$/);
    expect(await section().textContent()).toContain("Proved: no order of these boards is shorter in all.");
    const counts = (await section().locator("tbody tr td:nth-child(2)").allTextContents()).map(Number);
    const drawn = await section().locator("svg g[data-view^='board ']").count();
    const pieces = await section().locator("svg polygon[data-piece]:not([data-piece=''])").count();
    await section().getByRole("button", { name: "Write order and plan into the sheet" }).click();
    await expect.poll(sheets).toEqual(["Bid", "Jacks", "Roof", "Lumber order", "Cutting plan"]);
    // Then the block has the name that the tables read it by.
    await pane().getByText("Follows the roof block at Roof!A2").waitFor();
    const bought = (await column("Lumber order", "Count")) as number[];
    const sum = (numbers: readonly number[]) => numbers.reduce((all, one) => all + one, 0);
    expect(sum(bought)).toBe(sum(counts));
    expect(sum(bought)).toBe(Number((await total())!.split(" ")[0]));
    // Boards cut alike are drawn once: as many drawings as the plan has different lines that follow one another.
    const lines = (await column("Cutting plan", "Pieces")) as string[];
    expect(drawn).toBeLessThanOrEqual(lines.length);
    expect(pieces).toBeGreaterThanOrEqual(drawn);
    expect(drawn).toBeGreaterThanOrEqual(new Set(lines).size);
  });

  it("follows the fields and the kerf, shows no answer of the roof before, and says what is wrong with the kerf", async () => {
    await unfold();
    await expect.poll(total).toMatch(/boards to buy/);
    const before = await total();
    expect((await typed("Span", "30'")).total).toBe("Working the order out.");
    await field("Boards").evaluate((input) => input.closest("details")!.setAttribute("open", ""));
    await field("Boards").fill("8' to 30' by 2'");
    await expect.poll(total).toMatch(/boards to buy/);
    expect(await total()).not.toBe(before);
    const kerf = section().getByLabel("Kerf, width of the saw cut");
    await kerf.fill("thin");
    await expect.poll(() => section().locator("#lp-kerf-wrong").textContent()).toMatch(/"thin" was read.*1\/8/);
    expect(await kerf.getAttribute("aria-invalid")).toBe("true");
    expect(await section().getByRole("button", { name: "Print the cutting plan" }).count()).toBe(0);
    await kerf.fill(`3/32"`);
    await expect.poll(total).toMatch(/boards to buy/);
    expect(await section().locator("#lp-kerf-read").textContent()).toBe(`3/32"`);
    await expect.poll(() => t.page.evaluate(() => window.longpoint.host.recall("pane"))).toContain("3/32");
    await field("Boards").fill("8'");
    await expect.poll(total).toBe('0 boards to buy, 0" in all.');
    const tooShort = (await section().locator(".lp-wrong").allTextContents()).filter((words) => words !== "");
    expect(tooShort.length).toBeGreaterThan(0);
    for (const words of tooShort)
      expect(words).toMatch(/^Boards: .+ Add a longer length to the row Boards, under Ordering\.$/);
  });

  it("lets typing go on while it searches: the plan follows, and only the last roof is answered", async () => {
    await unfold();
    await expect.poll(total).toMatch(/boards to buy/);
    const seen = new Set<string>();
    for (const length of ["60'", "62'", "64'"]) {
      const shown = await typed("Length", length);
      expect(shown.total).toBe("Working the order out.");
      seen.add(shown.plan);
    }
    expect(seen.size).toBe(3);
    await expect.poll(total).toMatch(/boards to buy/);
    const last = await total();
    await typed("Length", "36'");
    await expect.poll(total).toMatch(/boards to buy/);
    expect(await total()).not.toBe(last);
    await typed("Length", "64'");
    await expect.poll(total).toMatch(/boards to buy/);
    expect(await total()).toBe(last);
  });

  it("prints the plan on its own pages: every board once, its cautions, black and white", async () => {
    await unfold();
    await expect.poll(total).toMatch(/boards to buy/);
    await keepPrints();
    const drawn = await section().locator("svg g[data-view^='board ']").count();
    await section().getByRole("button", { name: "Print the cutting plan" }).click();
    const html = await printed(1);
    expect(html.match(/<figure>/g)).toHaveLength(drawn);
    expect(html.replace(/&nbsp;|\u00a0/g, " ")).toMatch(
      /For a roof of 24' 0" by 36' 0" over the plates\. Kerf 1\/8"\./,
    );
    expect(html).toMatch(/Geometry only: follow local code, span tables and a licensed designer/);
    const page = await t.page.context().newPage();
    await page.setContent(html);
    await page.emulateMedia({ media: "print" });
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
    expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g)!.length).toBeLessThanOrEqual(3);
    mkdirSync(".cache/screenshots", { recursive: true });
    await page.setViewportSize({ width: 740, height: 980 });
    await page.screenshot({ path: ".cache/screenshots/cutting-plan.png" });
    expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(
      0,
    );
  });
});
