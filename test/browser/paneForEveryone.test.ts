import { mkdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { axeFindings } from "./axeFindings.ts";
import { bench } from "./bench.ts";
import { panePage } from "./panePage.ts";

/** Where screenshots are kept, to be looked at; set LONGPOINT_SHOTS=1 to have them taken. */
const SHOTS = ".cache/screenshots";
const shooting = process.env["LONGPOINT_SHOTS"] === "1";

const t = bench();
const pane = () => t.page.locator("#pane");

/** What the automatic check finds in the pane, light and dark, by rule and element. */
async function findings(): Promise<string[]> {
  await t.page.emulateMedia({ colorScheme: "dark" });
  const dark = await axeFindings(t.page, "#pane");
  await t.page.emulateMedia({ colorScheme: "light" });
  return [...dark.map((one) => `dark: ${one}`), ...(await axeFindings(t.page, "#pane"))];
}

async function shot(name: string): Promise<void> {
  if (!shooting) return;
  mkdirSync(SHOTS, { recursive: true });
  // The whole pane, not only what fits: its own scrolling is taken off for the picture.
  await t.page.addStyleTag({ content: "#pane { height: auto !important; overflow: visible !important }" });
  await pane().screenshot({ path: `${SHOTS}/${name}.png` });
}

/** Opens everything that can be opened. */
async function openAll(): Promise<void> {
  await pane()
    .locator("details:not([open]) > summary")
    .evaluateAll((all) => all.forEach((summary) => (summary as HTMLElement).click()));
  await pane()
    .locator("button[aria-expanded=false]")
    .evaluateAll((all) => all.forEach((help) => (help as HTMLElement).click()));
  await pane().getByLabel("Tape measured, J1").waitFor();
  // The order is drawn once it is found.
  await pane().locator(".lp-sticks svg").waitFor();
}

describe("the pane", () => {
  it("has no finding in any state", async () => {
    await t.open();
    await panePage(t).letGo();
    expect(await findings()).toEqual([]);
    await openAll();
    expect(await findings()).toEqual([]);
    await pane().getByLabel("Kerf, width of the saw cut").fill("thin");
    await pane().locator("#lp-kerf-wrong").waitFor();
    expect(await findings()).toEqual([]);
    await pane().getByLabel("Kerf, width of the saw cut").fill("");
    await pane().getByLabel("Span", { exact: true }).fill("24 wide");
    await pane().getByLabel("Waste", { exact: true }).fill("all");
    await t.page.evaluate(() => window.longpoint.host.show({ sheet: "Bid", row: 24, column: 4, rows: 1, columns: 1 }));
    await pane().locator(".lp-cell").waitFor();
    await pane().getByRole("button", { name: "Fill the sheet" }).click();
    expect(await findings()).toEqual([]);
    await shot("pane-wrong");
    await pane().getByLabel("Span", { exact: true }).fill("24'");
    await pane().getByLabel("Waste", { exact: true }).fill("10");
    await pane()
      .getByLabel(/at the selected cell/)
      .check();
    await pane().getByRole("button", { name: "Fill the sheet" }).click();
    await t.page.getByRole("dialog").waitFor();
    expect(await findings()).toEqual([]);
    await t.page.keyboard.press("Escape");
    await pane().getByLabel("on new sheets").check();
    await pane().getByRole("button", { name: "Fill the sheet" }).click();
    await pane()
      .getByRole("button", { name: /^Undo this fill/ })
      .waitFor();
    expect(await findings()).toEqual([]);
    await shot("pane");
  });

  it("fits any width without scrolling sideways, and what is pressed is large enough", async () => {
    await t.open();
    await panePage(t).letGo();
    await openAll();
    // 180 px: a pane of 360 px at 200% zoom.
    for (const width of [180, 320, 360, 480]) {
      await panePage(t).inWindow(width, 800);
      // The bench's own bar is not what is looked at here.
      if (width >= 320)
        expect(await t.page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      expect([width, await pane().evaluate((element) => element.scrollWidth - element.clientWidth)]).toEqual([
        width,
        0,
      ]);
      const small = await pane()
        .locator("button:visible, input:visible, select:visible, summary:visible")
        .evaluateAll(
          (elements) =>
            elements
              .map((element) => (element.closest(".lp-check") ?? element).getBoundingClientRect())
              .filter(({ width: w, height: h }) => w < 24 || h < 24).length,
        );
      expect([width, small]).toEqual([width, 0]);
      // What is typed can be read.
      for (const wide of await pane()
        .locator(".lp-entry > input:visible, .lp-entry > select:visible")
        .evaluateAll((entries) => entries.map((entry) => entry.getBoundingClientRect().width)))
        expect(wide).toBeGreaterThan(90);
      if (shooting) await t.page.screenshot({ path: `${SHOTS}/pane-${width}.png` });
    }
  });
});

describe("the pane in forced colors", () => {
  it("shows what folds as text, not as a link", async () => {
    await t.open("", { colorScheme: "dark" });
    await t.page.emulateMedia({ forcedColors: "active" });
    try {
      const colors = (of: string) =>
        pane()
          .locator(of)
          .evaluateAll((all) => [...new Set(all.map((one) => getComputedStyle(one).color))]);
      expect(await colors("summary, summary *")).toEqual(await colors(".lp-field label"));
    } finally {
      await t.page.emulateMedia({ forcedColors: "none" });
    }
  });
});

describe("the pane by keyboard alone", () => {
  it("goes through its parts in the order they are read, shows where it is, and fills the sheet", async () => {
    await t.open();
    await panePage(t).letGo();
    await pane().getByLabel("Span", { exact: true }).focus();
    const order: string[] = [];
    for (let i = 0; i < 60; i++) {
      const at = await t.page.evaluate(() => {
        const element = document.activeElement as HTMLElement;
        const { outlineStyle } = getComputedStyle(element);
        return {
          name: element.id || element.textContent || element.getAttribute("aria-label") || "",
          seen: outlineStyle !== "none",
          y: element.getBoundingClientRect().top + (document.getElementById("pane")?.scrollTop ?? 0),
        };
      });
      expect(at.seen, at.name).toBe(true);
      order.push(at.name);
      if (at.name === "Fill the sheet") break;
      await t.page.keyboard.press("Tab");
    }
    const ids = ["lp-span", "lp-length", "lp-pitch", "lp-overhang", "lp-spacing", "lp-rafter", "lp-hip", "lp-ridge"];
    expect(order.filter((name) => ids.includes(name))).toEqual(ids);
    expect(order.at(-1)).toBe("Fill the sheet");
    await t.page.keyboard.press("Enter");
    await pane()
      .getByRole("button", { name: /^Undo this fill/ })
      .waitFor();
    expect(await t.page.evaluate(() => window.longpoint.host.sheets())).toContain("Roof");
  });
});
