import { beforeEach, describe, expect, it } from "vitest";
import { benchForEach } from "./bench.ts";
import { panePage } from "./panePage.ts";

const t = benchForEach();
const { letGo, pane, show, sheets, field, button, unfold, says, keepPrints, printed } = panePage(t);
beforeEach(letGo);

describe("the pane at work", () => {
  it("follows every keystroke, says how each field was read, and explains what is wrong at the field", async () => {
    const first = () => pane().locator("section[aria-labelledby=lp-schedule] tbody tr").first().textContent();
    const before = await first();
    await field("Span").fill("26' 6");
    await expect.poll(() => pane().locator("#lp-span-read").textContent()).toBe(`26' 6"`);
    await expect.poll(first).not.toBe(before);
    for (const bad of ["", "0", "-24'", "1e999", "NaN", "🪚", "x".repeat(500), "=1+1", "24", "6/12/2024"]) {
      await field("Span").fill(bad);
      await expect.poll(() => pane().locator("#lp-span-wrong").isVisible()).toBe(true);
      expect(await field("Span").getAttribute("aria-invalid")).toBe("true");
    }
    // Said once, at the field: what is worked out from it waits.
    for (const section of ["Check a cut", "Compare", "Lumber order", "Cut cards", "Your roof's figures"])
      await unfold(section);
    await expect.poll(() => pane().getByText("Shows here once every field above can be read.").count()).toBe(7);
    expect(await pane().locator(".lp-wrong:visible").count()).toBe(1);
    // The drawing stays, dimmed, and says whose roof it is.
    expect(await pane().locator(".lp-facts").textContent()).toBe(
      `Still the last roof, 26' 6" × 36' 0". Fix Span to go on.`,
    );
    expect(await pane().locator(".lp-drawn polygon").count()).toBeGreaterThan(40);
    await button("Fill the sheet").click();
    await expect.poll(() => says().textContent()).toContain("Nothing was written. Fix Span first.");
    expect(await t.page.evaluate(() => document.activeElement?.id)).toBe("lp-span");
    expect(await sheets()).toEqual(["Bid", "Jacks"]);
    await field("Span").fill("24'");
    await expect.poll(() => pane().locator("section[aria-labelledby=lp-schedule] tbody tr").count()).toBeGreaterThan(3);
    expect(await pane().locator(".lp-wrong:visible").count()).toBe(0);
  });

  it("offers the paper that goes with the unit until another is chosen", async () => {
    await unfold("Job");
    await unfold("Cut cards");
    const paper = pane().getByRole("combobox", { name: "Paper" });
    expect(await paper.inputValue()).toBe("letter");
    await field("Unit").selectOption("mm");
    await expect.poll(() => paper.inputValue()).toBe("A4");
    await field("Unit").selectOption("in");
    await expect.poll(() => paper.inputValue()).toBe("letter");
    await paper.selectOption("A4");
    await field("Unit").selectOption("mm");
    await paper.selectOption("letter");
    await field("Unit").selectOption("in");
    await field("Unit").selectOption("mm");
    await expect.poll(() => field("Unit").inputValue()).toBe("mm");
    expect(await paper.inputValue()).toBe("letter");
  });

  it("prints a card for each distinct piece, with the cautions on every one", async () => {
    await keepPrints();
    await unfold("Cut cards");
    await pane().getByLabel("Cards to a page").selectOption("4");
    await button("Print the cut cards").click();
    const html = await printed(1);
    for (const mark of ["R", "C", "K", "KE", "H", "J1", "J5"]) expect(html).toContain(`data-piece="${mark}"`);
    expect(html.match(/class="cautions"/g)!.length).toBe(html.match(/<article/g)!.length);
  });

  it("remembers its inputs in the workbook", async () => {
    await field("Span").fill("27' 3");
    await expect.poll(() => t.page.evaluate(() => window.longpoint.host.recall("pane"))).toContain("27' 3");
  });

  it("says why the selected cell is refused", async () => {
    await show("Bid", 24, 4);
    await expect.poll(() => pane().locator(".lp-cell").textContent()).toMatch(/^Bid!E25.*"6\/12"/);
    await show("Bid", 25, 4);
    await expect.poll(() => pane().locator(".lp-cell").count()).toBe(0);
  });

  it("has the plan drawn anew when a keystroke's turn ends, and the table once that is seen", async () => {
    const [before, after] = await t.page.evaluate(async () => {
      const plan = () => document.querySelector("#pane .lp-drawn svg")!.outerHTML;
      const table = () => document.querySelector("#pane section[aria-labelledby=lp-schedule] tbody")!.outerHTML;
      const input = document.getElementById("lp-span") as HTMLInputElement;
      const first = [plan(), table()] as const;
      input.value = "26' 6";
      input.dispatchEvent(new Event("input", { bubbles: true }));
      await new Promise((resolve) => queueMicrotask(() => setTimeout(resolve)));
      const then = plan();
      // The frame that shows the plan, and the turn after it.
      await new Promise((resolve) => requestAnimationFrame(() => setTimeout(() => setTimeout(resolve))));
      return [first, [then, table()] as const] as const;
    });
    expect(after[0]).not.toBe(before[0]);
    expect(after[1]).not.toBe(before[1]);
    await field("Span").fill("24'");
    await field("Span").fill("26' 6");
    const table = pane().locator("section[aria-labelledby=lp-schedule] tbody");
    await expect.poll(() => table.evaluate((body) => body.outerHTML)).toBe(after[1]);
  });
});
