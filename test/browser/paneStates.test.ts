import { mkdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { axeFindings } from "./axeFindings.ts";
import { bench } from "./bench.ts";
import { panePage } from "./panePage.ts";

/** Where screenshots are kept, to be looked at; set LONGPOINT_SHOTS=1 to have them taken. */
const SHOTS = ".cache/screenshots";
const shooting = process.env["LONGPOINT_SHOTS"] === "1";

const t = bench();
const { inWindow, letGo, showPane } = panePage(t);
const pane = () => t.page.locator("#pane");
const field = (name: string) => pane().getByLabel(name, { exact: true });
const unfold = (name: string) => pane().locator("summary", { hasText: name }).first().click();
const card = () => pane().getByRole("region", { name: /^Card of / });

const findings = () => axeFindings(t.page, "#pane");

/** What is laid over what: of all that is typed into or pressed, pairs that share more than a hair, and what leaves the pane. */
async function misplaced(): Promise<string[]> {
  return pane().evaluate((root) => {
    const shown = [
      ...root.querySelectorAll<HTMLElement>(
        ".lp-form input, .lp-form select, .lp-form button, .lp-form label, .lp-wrong",
      ),
    ]
      .filter((one) => one.checkVisibility() && !one.closest(".lp-scroll"))
      .map((one) => ({ one, box: one.getBoundingClientRect() }));
    const name = (one: HTMLElement) => `${one.tagName} ${one.id || one.textContent!.slice(0, 30)}`;
    const found: string[] = [];
    const edge = root.getBoundingClientRect();
    for (const { one, box } of shown) {
      if (box.left < edge.left - 1 || box.right > edge.right + 1) found.push(`${name(one)} leaves the pane`);
      for (const { one: other, box: its } of shown) {
        if (one === other || one.contains(other) || other.contains(one)) continue;
        const across = Math.min(box.right, its.right) - Math.max(box.left, its.left);
        const down = Math.min(box.bottom, its.bottom) - Math.max(box.top, its.top);
        if (across > 2 && down > 2) found.push(`${name(one)} on ${name(other)}`);
      }
    }
    return found;
  });
}

/** Every state that a pane can be seen in, and how it is come to. */
const STATES: Readonly<Record<string, () => Promise<void>>> = {
  start: async () => undefined,
  block: async () => {
    await pane().getByText("Follows the roof block").first().waitFor();
  },
  wings: async () => {
    await pane().getByRole("button", { name: "Add a wing" }).click();
    await pane().locator('.lp-drawn polygon[data-piece^="V"]').first().waitFor({ state: "attached" });
  },
  card: async () => {
    await pane().locator('tr[data-piece="J2"] button').click();
    await card().waitFor();
  },
  cautions: async () => {
    await unfold("Ends");
    await field("End pitch").fill("9");
    await unfold("Ends");
    await pane().locator(".lp-outside").waitFor();
  },
  "3-D": async () => {
    await pane().getByRole("button", { name: "3-D" }).click();
    await pane().locator('.lp-drawn [data-view="frame"]').waitFor({ state: "attached" });
  },
  refusal: async () => {
    await field("Length").fill("18'");
    await pane().locator("#lp-length-wrong").waitFor();
  },
  empty: async () => {
    for (const name of ["Span", "Length", "Pitch"]) await field(name).fill("");
    await pane().locator("#lp-pitch-wrong").waitFor();
  },
  help: async () => {
    await field("Overhang").focus();
    await t.page.keyboard.press("F1");
    await pane().locator("#lp-help").waitFor();
  },
  "order running": async () => {
    await unfold("Lumber order");
    await pane().locator("progress, .lp-sticks").first().waitFor();
  },
  error: async () => {
    await t.page.evaluate(() => window.longpoint.host.show({ sheet: "Bid", row: 24, column: 4, rows: 1, columns: 1 }));
    await pane().locator(".lp-cell").waitFor();
  },
};

describe("every state", () => {
  it.each(Object.entries(STATES))(
    "%s: no finding light or dark, nothing on anything else, no sideways scroll",
    async (name, make) => {
      mkdirSync(SHOTS, { recursive: true });
      await t.open("", { viewport: { width: 1280, height: 720 } });
      if (name !== "block") await letGo();
      await make();
      for (const colorScheme of ["light", "dark"] as const) {
        await t.page.emulateMedia({ colorScheme });
        expect([colorScheme, await findings()]).toEqual([colorScheme, []]);
        // Colors change no size: the dark pane need not be laid out again, but to be looked at.
        if (colorScheme === "dark" && !shooting) return;
        for (const [width, height] of [
          [320, 640],
          [360, 760],
          [390, 844],
          [1280, 720],
          [1440, 900],
          [1920, 1080],
        ] as const) {
          await inWindow(width, height);
          expect([width, await pane().evaluate((one) => one.scrollWidth - one.clientWidth)]).toEqual([width, 0]);
          expect([width, await misplaced()]).toEqual([width, []]);
          if (shooting)
            await t.page.screenshot({
              path: `${SHOTS}/state-${name.replaceAll(" ", "-")}-${width}-${colorScheme}.png`,
            });
        }
      }
    },
  );
});

describe("bad input at 360 px", () => {
  const start = async () => {
    await t.open("", { viewport: { width: 1280, height: 760 } });
    await letGo();
    await t.page.setViewportSize({ width: 360, height: 760 });
    await showPane();
  };
  const holds = async () => {
    expect(await pane().evaluate((one) => one.scrollWidth - one.clientWidth)).toBe(0);
    expect(await t.page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    expect(await misplaced()).toEqual([]);
  };

  it("nonsense in every field: each says what to type, and the last roof stays", async () => {
    await start();
    await pane().getByRole("button", { name: "Add a wing" }).click();
    for (const summary of await pane().locator(".lp-fold > summary").all()) await summary.click();
    for (const entry of await pane().locator(".lp-entry > input").all()) await entry.fill("🪚 about right ".repeat(9));
    await expect.poll(() => pane().locator(".lp-wrong:visible").count()).toBeGreaterThan(20);
    for (const words of await pane().locator(".lp-wrong:visible").allTextContents())
      expect(words).toMatch(/Type|Choose|type|Keep/);
    await holds();
    expect(await pane().locator(".lp-drawn polygon").count()).toBeGreaterThan(40);
    expect(await findings()).toEqual([]);
  });

  it("a job's name of 200 letters, and a roof of 1,000 pieces", async () => {
    await start();
    await unfold("Job");
    await field("Job name").fill("Weighhouse".repeat(20));
    await holds();
    await field("Span").fill("200'");
    await field("Length").fill("600'");
    await field("Rafter").fill("2x12");
    await expect.poll(() => pane().locator(".lp-drawn polygon").count()).toBeGreaterThan(700);
    await holds();
    await unfold("Job");
    await holds();
  });

  it("a roof that cannot be framed: the sentence says what to type, and no button writes it", async () => {
    await start();
    await field("Spacing").fill("14'");
    await pane().locator("#lp-spacing-wrong").waitFor();
    expect(await pane().locator("#lp-spacing-wrong").textContent()).toMatch(
      /^Spacing .*(less|smaller|narrower|under|Type)/i,
    );
    await pane().getByRole("button", { name: "Fill the sheet" }).click();
    await expect.poll(() => pane().locator(".lp-says").textContent()).toContain("Fix Spacing first.");
    await holds();
  });

  it("printing denied: says so where it was pressed", async () => {
    await start();
    await unfold("Cut cards");
    await t.page.evaluate(() => {
      new MutationObserver(() => {
        for (const frame of document.querySelectorAll<HTMLIFrameElement>("#pane iframe.lp-pages"))
          frame.addEventListener("load", () => (frame.contentWindow!.print = () => undefined), {
            capture: true,
            once: true,
          });
      }).observe(document.getElementById("pane")!, { childList: true, subtree: true });
    });
    await pane().getByRole("button", { name: "Print the cut cards" }).click();
    await pane().locator(".lp-wrong", { hasText: "No print window came" }).waitFor();
    await holds();
  });
});
