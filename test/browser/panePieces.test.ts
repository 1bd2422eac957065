import { describe, expect, it } from "vitest";
import { bench } from "./bench.ts";
import { panePage } from "./panePage.ts";

const t = bench();
const { letGo } = panePage(t);
const pane = () => t.page.locator("#pane");
const press = (key: string) => t.page.keyboard.press(key);
const card = () => pane().getByRole("region", { name: /^Card of / });
const row = (mark: string) => pane().locator(`section[aria-labelledby=lp-schedule] tr[data-piece="${mark}"]`);
/** The color of a piece's lines in a drawing. */
const color = (place: string, mark: string) =>
  pane()
    .locator(`${place} polygon[data-piece="${mark}"]`)
    .first()
    .evaluate((one) => getComputedStyle(one).stroke);
const ACCENT = "rgb(29, 79, 163)";

describe("a piece is one thing", () => {
  it("pointed at in the plan, it is marked in the schedule and the cutting plan; and the other way round", async () => {
    await t.open("", { viewport: { width: 1280, height: 720 } });
    await letGo();
    await pane().locator("summary", { hasText: "Lumber order" }).click();
    await pane().locator(".lp-sticks svg").waitFor();
    const plain = await color(".lp-drawn", "J2");
    expect(plain).not.toBe(ACCENT);
    await pane().locator('.lp-drawn polygon[data-piece="J2"]').first().dispatchEvent("pointerover");
    await expect.poll(() => color(".lp-drawn", "J2")).toBe(ACCENT);
    expect(await color(".lp-sticks", "J2")).toBe(ACCENT);
    expect(await color(".lp-drawn", "J3")).toBe(plain);
    const ground = (mark: string) =>
      row(mark)
        .locator("td")
        .first()
        .evaluate((one) => getComputedStyle(one).backgroundColor);
    expect(await ground("J2")).not.toBe(await ground("J3"));
    expect(await pane().locator(".lp-facts").textContent()).toMatch(/^J2 .*4 left and 4 right/);
    await row("J3").dispatchEvent("pointerover");
    await expect.poll(() => color(".lp-drawn", "J3")).toBe(ACCENT);
    expect(await color(".lp-drawn", "J2")).toBe(plain);
  });

  it("pressed in the plan, its card stands on the screen, with the way to the others", async () => {
    await t.open("", { viewport: { width: 1280, height: 720 } });
    await letGo();
    await pane().locator('.lp-drawn polygon[data-piece="J2"][data-hand="right"]').first().click({ force: true });
    await card().waitFor();
    expect(await card().locator("h2").textContent()).toBe("J2 right");
    // Its length is that of the schedule.
    const long = await row("J2").locator("td").nth(1).textContent();
    expect(await card().locator("dd").first().textContent()).toBe(long!.replace(/\u00a0/g, " "));
    const box = (await card().boundingBox())!;
    expect(box.y + box.height).toBeLessThanOrEqual(720);
    await card().getByRole("button", { name: "Next, J3" }).click();
    await expect.poll(() => card().locator("h2").textContent()).toBe("J3 right");
    await card().getByRole("button", { name: "Previous, J2" }).click();
    await card().getByRole("button", { name: "Previous, J1" }).click();
    await expect.poll(() => card().locator("h2").textContent()).toBe("J1 right");
    await card().getByRole("button", { name: "Close the card" }).click();
    await expect.poll(() => card().count()).toBe(0);
  });

  it("goes by keyboard alone: from its row to its card, through the others and back to the row", async () => {
    await t.open("", { viewport: { width: 1280, height: 720 } });
    await letGo();
    await row("J4").getByRole("button").focus();
    await expect.poll(() => color(".lp-drawn", "J4")).toBe(ACCENT);
    await press("Enter");
    await card().waitFor();
    await expect.poll(() => card().evaluate((one) => one === document.activeElement)).toBe(true);
    const marks = new Set<string>();
    for (let i = 0; i < 20; i++) {
      marks.add((await card().locator("h2").textContent())!.split(" ")[0]!);
      await press("ArrowRight");
    }
    for (const mark of ["R", "H", "C", "K", "KE", "J1", "J5"]) expect([...marks]).toContain(mark);
    await press("Escape");
    await expect.poll(() => card().count()).toBe(0);
    await expect
      .poll(() =>
        row("J4")
          .getByRole("button")
          .evaluate((one) => one === document.activeElement),
      )
      .toBe(true);
  });

  it("goes by keyboard straight to the card of a hip and of a common", async () => {
    await t.open("", { viewport: { width: 1280, height: 720 } });
    for (const mark of ["H", "C"]) {
      const button = pane()
        .locator("#lp-schedule ~ .lp-marks")
        .getByRole("button", { name: `Open the card of ${mark}`, exact: true });
      await button.press("Enter");
      await pane()
        .getByRole("region", { name: `Card of ${mark}`, exact: true })
        .waitFor();
      await t.page.keyboard.press("Escape");
      await expect.poll(() => button.evaluate((one) => one === document.activeElement)).toBe(true);
    }
  });

  it("goes with the roof: a card follows what is typed and closes when its piece is no more", async () => {
    await t.open("", { viewport: { width: 1440, height: 900 } });
    await letGo();
    await row("J5").getByRole("button").click();
    const long = () => card().locator("dd").first().textContent();
    const before = await long();
    await pane().getByLabel("Pitch", { exact: true }).fill("9");
    await expect.poll(long).not.toBe(before);
    await pane().getByLabel("Span", { exact: true }).fill("14'");
    await expect.poll(() => card().count()).toBe(0);
  });
});
