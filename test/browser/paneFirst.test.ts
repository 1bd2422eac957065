import { describe, expect, it } from "vitest";
import { bench } from "./bench.ts";
import { panePage } from "./panePage.ts";

const t = bench();
const { letGo } = panePage(t);
const pane = () => t.page.locator("#pane");
const press = (key: string) => t.page.keyboard.press(key);
/** What is drawn: every element with its attributes, in any order, and its text. */
const drawn = () =>
  pane()
    .locator(".lp-drawn svg")
    .evaluate((svg) =>
      [svg, ...svg.querySelectorAll("*")]
        .map((one) => {
          const attributes = [...one.attributes].map(({ name, value }) => `${name}="${value}"`).sort();
          return [one.tagName, ...attributes, one.children.length > 0 ? "" : one.textContent].join(" ");
        })
        .join("\n"),
    );

/** Whether all of an element stands in the window and under nothing else. */
async function stands(selector: string): Promise<boolean> {
  return pane()
    .locator(selector)
    .first()
    .evaluate((one) => {
      const { left, right, top, bottom } = one.getBoundingClientRect();
      const inside = top >= 0 && bottom <= innerHeight && left >= 0 && right <= innerWidth;
      const at = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
      return inside && (one.contains(at) || at!.contains(one));
    });
}

describe("the first right number", () => {
  it("takes at most 12 keys at 1280 x 720, with plan and fields in view and nothing scrolled", async () => {
    await t.open("", { viewport: { width: 1280, height: 720 } });
    await letGo();
    const before = await drawn();
    await pane().getByLabel("Span", { exact: true }).focus();
    await pane().getByLabel("Span", { exact: true }).selectText();
    const keys = ["2", "0", "'", "Tab", "3", "2", "'", "Tab", "7"];
    expect(keys.length).toBeLessThanOrEqual(12);
    for (const key of keys) await press(key);
    // A square 7 in 12 roof 20' wide: the planes meet 70 in over the plate, and the height above plate on top of it.
    await expect.poll(() => pane().locator(".lp-facts").textContent()).toMatch(/32 jacks in 4 lengths.*Ridge 6'/);
    expect(await drawn()).not.toBe(before);
    for (const part of [".lp-drawn svg", ".lp-facts", "#lp-span", "#lp-ridge", ".lp-fold summary"])
      expect([part, await stands(part)]).toEqual([part, true]);
    expect(await pane().evaluate((one) => one.scrollTop)).toBe(0);
  });

  it("keeps the drawing in view while the fields run under it", async () => {
    for (const [width, height] of [
      [1280, 720],
      [360, 760],
    ] as const) {
      await t.open("", { viewport: { width, height } });
      await pane().getByLabel("Saw settings").focus();
      await press("Tab");
      expect(await stands(".lp-drawn svg")).toBe(true);
      // What has the focus does not stand behind it.
      expect(
        await t.page.evaluate(() => {
          const { left, right, top, bottom } = document.activeElement!.getBoundingClientRect();
          return document.activeElement!.contains(document.elementFromPoint((left + right) / 2, (top + bottom) / 2));
        }),
      ).toBe(true);
    }
  });

  it("moves nothing while something typed cannot be read, and says whose roof is drawn", async () => {
    await t.open("", { viewport: { width: 1280, height: 720 } });
    await letGo();
    const places = () =>
      pane()
        .locator(".lp-view, .lp-stage, .lp-drawn svg, .lp-entry")
        .evaluateAll((all) => all.map((one) => JSON.stringify(one.getBoundingClientRect())));
    // The field in hand is lit in the plan before it is typed into.
    await pane().getByLabel("Length", { exact: true }).focus();
    await expect.poll(drawn).toContain("--drawing-lit");
    const before = await places();
    const svg = await drawn();
    await pane().getByLabel("Length", { exact: true }).fill("18'");
    await pane().locator("#lp-length-wrong").waitFor();
    expect((await places()).slice(0, 11)).toEqual(before.slice(0, 11));
    expect(await drawn()).toBe(svg);
    expect(await pane().locator(".lp-facts").textContent()).toContain("Fix Length to go on.");
  });

  it("moves no field while one types over a block that is followed", async () => {
    await t.open("", { viewport: { width: 1280, height: 720 } });
    await pane().getByText("Follows the roof block").first().waitFor();
    const places = () =>
      pane()
        .locator(".lp-view, .lp-entry:visible")
        .evaluateAll((all) => all.map((one) => JSON.stringify(one.getBoundingClientRect())));
    const before = await places();
    await pane().getByLabel("Pitch", { exact: true }).fill("9");
    await pane().getByText("Not yet in the sheet").waitFor();
    expect(await places()).toEqual(before);
    // The page around the pane has nothing to scroll to.
    expect(await t.page.evaluate(() => document.documentElement.scrollHeight)).toBe(720);
  });
});

describe("the drawing", () => {
  it("lights up the length of the field that has the keyboard, and says the same to a reader", async () => {
    await t.open("", { viewport: { width: 1280, height: 720 } });
    await letGo();
    const lit = () => pane().locator('.lp-drawn text[style*="--drawing-lit"]').allTextContents();
    const says = () => pane().locator(".lp-drawn desc").textContent();
    const before = await says();
    expect(await lit()).toEqual([]);
    for (const [row, text] of [
      ["Overhang", `1' 6"`],
      ["Span", `24' 0"`],
    ] as const) {
      await pane().getByLabel(row, { exact: true }).focus();
      await expect.poll(lit).toEqual([text]);
    }
    await pane().getByLabel("Span", { exact: true }).fill("20'");
    await expect.poll(lit).toEqual([`20' 0"`]);
    await pane().getByLabel("Span", { exact: true }).fill("24'");
    await pane().locator(".lp-stage").focus();
    await expect.poll(lit).toEqual([]);
    expect(await says()).toBe(before);
  });

  it("begins at the top of what is higher than its room, and moves to its foot by keys and wheel", async () => {
    await t.open("", { viewport: { width: 1280, height: 720 } });
    const stage = pane().locator(".lp-stage");
    const edges = () =>
      stage.evaluate((room) => {
        const [a, b] = [room.getBoundingClientRect(), room.querySelector("svg")!.getBoundingClientRect()];
        return [Math.round(b.top - a.top), Math.round(b.bottom - a.bottom)] as const;
      });
    for (const view of ["Plates", "Hip"]) {
      await pane().getByRole("button", { name: view, exact: true }).click();
      await expect.poll(async () => (await edges())[1]).toBeGreaterThan(20);
      expect((await edges())[0]).toBe(0);
      await stage.hover();
      await t.page.mouse.wheel(0, 5000);
      await expect.poll(async () => (await edges())[1]).toBe(0);
      await stage.focus();
      for (let i = 0; i < 30; i++) await press("ArrowUp");
      await expect.poll(async () => (await edges())[0]).toBe(0);
    }
  });

  it("zooms and moves by wheel and keys, and fits again", async () => {
    await t.open("", { viewport: { width: 1280, height: 720 } });
    const width = async () => Number(await pane().locator(".lp-drawn svg").getAttribute("width"));
    const fit = await width();
    await pane().locator(".lp-stage").hover();
    await t.page.mouse.wheel(0, -100);
    await expect.poll(width).toBeGreaterThan(fit);
    await pane().locator(".lp-stage").focus();
    await press("+");
    await press("+");
    await expect.poll(width).toBeGreaterThan(2 * fit);
    const place = () => pane().locator(".lp-drawn").getAttribute("style");
    const at = await place();
    await press("ArrowRight");
    await expect.poll(place).not.toBe(at);
    // As large as it goes, to a few parts in a hundred: the first guess is another than the last time.
    const fits = async () => Math.abs((await width()) / fit - 1) < 0.07;
    await press("0");
    await expect.poll(fits).toBe(true);
    await pane().getByRole("button", { name: "Zoom in" }).click();
    await expect.poll(width).toBeGreaterThan(1.2 * fit);
    await pane().getByRole("button", { name: "Fit", exact: true }).click();
    await expect.poll(fits).toBe(true);
  });

  it("zooms by two fingers round their middle, and moves by one", async () => {
    await t.open("", { viewport: { width: 1280, height: 720 } });
    const svg = pane().locator(".lp-drawn svg");
    const { x, y, width, height } = (await pane().locator(".lp-stage").boundingBox())!;
    const [cx, cy] = [x + width / 2, y + height / 2];
    const first = (await svg.boundingBox())!;
    const hand = await t.page.context().newCDPSession(t.page);
    const touch = (type: "touchStart" | "touchMove" | "touchEnd", ...at: (readonly [number, number])[]) =>
      hand.send("Input.dispatchTouchEvent", {
        type,
        touchPoints: at.map(([left, top], id) => ({ x: left, y: top, id })),
      });
    await touch("touchStart", [cx - 30, cy], [cx + 30, cy]);
    for (const apart of [40, 60, 80, 90]) await touch("touchMove", [cx - apart, cy], [cx + apart, cy]);
    await touch("touchEnd");
    await expect.poll(async () => (await svg.boundingBox())!.width).toBeGreaterThan(2 * first.width);
    // What lay under the middle of the fingers lies there still, to the few pixels that labels take.
    const middle = async () => {
      const box = (await svg.boundingBox())!;
      return [(cx - box.x) / box.width, (cy - box.y) / box.height] as const;
    };
    const before = [(cx - first.x) / first.width, (cy - first.y) / first.height] as const;
    const after = await middle();
    for (const i of [0, 1] as const) expect(Math.abs(after[i] - before[i])).toBeLessThan(0.08);
    const from = (await svg.boundingBox())!;
    await touch("touchStart", [cx, cy]);
    for (const by of [10, 20, 40]) await touch("touchMove", [cx + by, cy + by]);
    await touch("touchEnd");
    await expect.poll(async () => Math.round((await svg.boundingBox())!.x - from.x)).toBeGreaterThan(20);
    await hand.detach();
  });

  it("turns the frame by dragging, by arrow keys and to four standing views", async () => {
    await t.open("", { viewport: { width: 1280, height: 720 } });
    await pane().getByRole("button", { name: "3-D" }).click();
    await expect.poll(() => pane().locator('.lp-drawn [data-view="frame"]').count()).toBe(1);
    const seen = new Set([await drawn()]);
    for (const stand of ["Front", "End", "Above"]) {
      await pane().getByRole("button", { name: stand, exact: true }).click();
      await expect.poll(async () => seen.has(await drawn())).toBe(false);
      seen.add(await drawn());
    }
    await pane().locator(".lp-stage").focus();
    for (const key of ["ArrowLeft", "ArrowDown", "ArrowDown", "ArrowLeft"]) {
      await press(key);
      await expect.poll(async () => seen.has(await drawn())).toBe(false);
      seen.add(await drawn());
    }
    const { x, y, width, height } = (await pane().locator(".lp-stage").boundingBox())!;
    await t.page.mouse.move(x + width / 2, y + height / 2);
    await t.page.mouse.down();
    await t.page.mouse.move(x + width / 2 + 60, y + height / 2 + 10, { steps: 4 });
    await t.page.mouse.up();
    await expect.poll(async () => seen.has(await drawn())).toBe(false);
    // The end of a drag over a board opens no card.
    expect(
      await pane()
        .getByRole("region", { name: /^Card of/ })
        .count(),
    ).toBe(0);
    await pane().getByRole("button", { name: "Angle" }).click();
    await expect.poll(drawn).toBe([...seen][0]);
  });

  it("grows with the pane, whose edge is dragged or moved by arrow keys", async () => {
    await t.open("", { viewport: { width: 1440, height: 900 } });
    const width = async () => (await pane().boundingBox())!.width;
    const [first, drawing] = [await width(), (await pane().locator(".lp-stage").boundingBox())!.width];
    const grip = t.page.getByRole("separator", { name: "Width of the pane" });
    await grip.focus();
    for (let i = 0; i < 5; i++) await press("ArrowLeft");
    await expect.poll(width).toBe(first + 5 * 24);
    expect(Number(await grip.getAttribute("aria-valuenow"))).toBe(first + 5 * 24);
    await expect.poll(async () => (await pane().locator(".lp-stage").boundingBox())!.width).toBe(drawing + 5 * 24);
    const { x, y, width: wide, height } = (await grip.boundingBox())!;
    await t.page.mouse.move(x + wide / 2, y + height / 2);
    await t.page.mouse.down();
    await t.page.mouse.move(500, y + height / 2, { steps: 3 });
    await t.page.mouse.up();
    await expect.poll(width).toBe(940);
    // Wide enough for drawing and fields side by side.
    expect((await pane().getByLabel("Span", { exact: true }).boundingBox())!.x).toBeGreaterThan(1000);
    await t.page.mouse.move(502, 400);
    await t.page.mouse.down();
    await t.page.mouse.move(1439, 400, { steps: 3 });
    await t.page.mouse.up();
    await expect.poll(width).toBe(360);
  });

  it("fills the window on a press, keeps the keyboard, and Escape goes back to the sheet", async () => {
    await t.open("", { viewport: { width: 1440, height: 900 } });
    const small = (await pane().locator(".lp-stage").boundingBox())!;
    await pane().getByRole("button", { name: "Larger" }).click();
    const large = (await pane().locator(".lp-stage").boundingBox())!;
    expect(large.width).toBeGreaterThan(2.5 * small.width);
    expect(await t.page.locator("#sheet").getAttribute("inert")).not.toBeNull();
    // Drawing left, fields right, both in view.
    const span = (await pane().getByLabel("Span", { exact: true }).boundingBox())!;
    expect(span.x).toBeGreaterThan(large.x + large.width);
    await press("Escape");
    await expect.poll(() => t.page.locator("#sheet").getAttribute("inert")).toBeNull();
    expect((await pane().locator(".lp-stage").boundingBox())!.width).toBe(small.width);
  });
});
