import { expect, it } from "vitest";
import type { Page } from "playwright-core";
import { sawAddress } from "../../src/pane/writing/printAddress.ts";
import { PACKET_ROOFS, typed } from "../pages/packet/roofs.ts";
import { axeFindings } from "./axeFindings.ts";
import { open, openBench, type Opened } from "./open.ts";

const PHONE = { viewport: { width: 390, height: 844 }, touch: true } as const;
const SAMPLE = PACKET_ROOFS.sample;
const addressOf = (inputs = SAMPLE as Parameters<typeof typed>[0]) => sawAddress("saw.html", typed(inputs));

async function atSaw(path: string, more = {}): Promise<Opened> {
  const t = await open("bench", path, { ...PHONE, ...more });
  await t.page.locator("h2").first().waitFor();
  return t;
}

const button = (page: Page, name: string | RegExp) => page.getByRole("button", { name });
const counted = (page: Page) => page.locator("header [role=status]").textContent();

/** A finger drawn across the page. */
async function swipe(page: Page, from: number, to: number): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const touch = (type: "touchStart" | "touchMove" | "touchEnd", x?: number) =>
    session.send("Input.dispatchTouchEvent", { type, touchPoints: x === undefined ? [] : [{ x, y: 300 }] });
  await touch("touchStart", from);
  await touch("touchMove", (from + to) / 2);
  await touch("touchMove", to);
  await touch("touchEnd");
  await session.detach();
  // A browser takes no tap while a finger's way still rolls out.
  await page.waitForTimeout(500);
}

/** Goes on to the next piece. A browser that is very busy drops a tap, as a user sees and taps again. */
async function next(page: Page, mark: string): Promise<void> {
  const there = () => page.locator("h2", { hasText: mark }).waitFor({ timeout: 4_000 });
  for (let tries = 1; ; tries++) {
    await button(page, /^Next/).tap();
    try {
      return await there();
    } catch (error) {
      if (tries === 3) throw error;
    }
  }
}

/** Buttons and fields that are smaller than a thumb, and what reaches beyond the screen. */
const faults = (page: Page) =>
  page.evaluate(() => [
    ...[...document.querySelectorAll<HTMLElement>("button,input[type=text]")]
      .filter((one) => one.offsetParent !== null || one.closest("nav"))
      .filter((one) => one.getBoundingClientRect().height < 47.5 || one.getBoundingClientRect().width < 43.5)
      .map((one) => `small: ${one.textContent}`),
    ...(document.documentElement.scrollWidth > innerWidth ? [`wide: ${document.documentElement.scrollWidth}`] : []),
  ]);

it("a whole roof is ticked by touch, one cut wrong, one tape measured, reloaded without a network in the middle", async () => {
  const t = await atSaw(addressOf(), { offline: true });
  const { page } = t;
  expect(await counted(page)).toBe("0 of 61 cut");
  await page.evaluate(() => navigator.serviceWorker.ready);
  expect([await faults(page), await axeFindings(page)]).toEqual([[], []]);

  // The first piece by its boards, the next by a swipe.
  const tickAll = async () => {
    for (const board of await page.locator(".board[aria-pressed=false]").all()) await board.scrollIntoViewIfNeeded();
    for (let left = await page.locator(".board[aria-pressed=false]").count(); left > 0; left--)
      await page.locator(".board[aria-pressed=false]").first().tap();
  };
  await tickAll();
  await swipe(page, 320, 60);
  await expect.poll(() => page.locator("h2").first().textContent()).toContain("C, K, KE");
  expect(await faults(page)).toEqual([]);
  await swipe(page, 60, 320);
  await expect.poll(() => page.locator("h2").first().textContent()).toContain("R Ridge");
  for (const mark of ["C, K, KE", "H"]) {
    await next(page, mark);
    await tickAll();
  }
  await next(page, "J1");

  // Two of J1 are cut, then one tape says that the rest must be longer.
  await button(page, "J1 left, board 1").tap();
  await button(page, "J1 left, board 2").tap();
  const before = await page.locator(".figures dd").first().textContent();
  await button(page, "Enter a measured tape").tap();
  const tape = page.getByLabel("Tape on the roof");
  await tape.tap();
  await page.keyboard.type("11");
  await button(page, "feet").tap();
  await page.keyboard.type(" 4 7");
  await button(page, "fraction bar").tap();
  await page.keyboard.type("8");
  await button(page, "inches").tap();
  expect(await tape.inputValue()).toBe(`11' 4 7/8"`);
  expect([await faults(page), await axeFindings(page)]).toEqual([[], []]);
  await page.getByText('That is 1/8" over.').waitFor();
  await button(page, 'Add 1/8" to every jack left').tap();
  await page.getByText("What is ticked stays as it was cut.").waitFor();
  await button(page, /Keep the card/).tap();
  expect(await page.locator(".figures dd").first().textContent()).not.toBe(before);
  expect((await page.locator(".boards").first().textContent())!.replaceAll("\u00a0", " ")).toContain(
    `2 ticked before were cut at ${before!.replaceAll("\u00a0", " ")}.`,
  );

  // The browser has no network, and the page is loaded anew.
  const now = await counted(page);
  await t.unplug();
  await page.reload();
  await page.locator("h2").first().waitFor();
  expect(await counted(page)).toBe(now);
  expect(await page.locator("h2").first().textContent()).toContain("J1");

  // One is cut wrong, and becomes a J2.
  await button(page, "Cut wrong").tap();
  await page.getByLabel("Long point as cut").fill(`10' 6`);
  await page.getByText("Keep the board: it still makes").first().waitFor();
  expect([await faults(page), await axeFindings(page)]).toEqual([[], []]);
  await button(page, "Make it J2 left").tap();
  await page.getByText("Ticked: J2 left.").waitFor();
  await tickAll();
  for (const mark of ["J2", "J3", "J4", "J5"]) {
    await next(page, mark);
    await tickAll();
  }
  expect(await counted(page)).toBe("61 of 61 cut");
  await page.getByText("All pieces are cut.").waitFor();
  await button(page, "All pieces").tap();
  await page.getByText("This page opens without a network from now on.").waitFor();
  expect([await axeFindings(page), t.problems]).toEqual([[], []]);
  await t.close();
});

it("a roof that was changed in the sheet says which ticked pieces still serve, and changes nothing by itself", async () => {
  const t = await atSaw(addressOf());
  await t.page.locator(".board").first().tap();
  await t.page.keyboard.press("ArrowRight");
  await t.page.keyboard.press("ArrowRight");
  await t.page.getByRole("button", { name: "H, board 1" }).tap();
  await t.again(addressOf({ ...SAMPLE, Length: "38'" }), PHONE);
  await t.page.getByText("The roof has changed").waitFor();
  await t.page.getByText("1 piece still serve as cut.").waitFor();
  await t.page.getByText("no longer needed").waitFor();
  // Left without an answer, nothing has become of it.
  await t.again(addressOf(), PHONE);
  await expect.poll(() => counted(t.page)).toBe("2 of 61 cut");
  await t.again(addressOf({ ...SAMPLE, Length: "38'" }), PHONE);
  await button(t.page, "Go on with the changed roof").tap();
  await expect.poll(() => counted(t.page)).toMatch(/^1 of /);
  expect(t.problems).toEqual([]);
  await t.close();
});

it("where the browser keeps nothing it says so, and one can work on", async () => {
  const t = await open(
    "bench",
    addressOf(),
    PHONE,
    {},
    "Object.defineProperty(window, 'localStorage', { get() { throw new Error('forbidden'); } })",
  );
  await t.page.getByText("This browser keeps nothing for this page").waitFor();
  await t.page.locator(".board").first().tap();
  await expect.poll(() => counted(t.page)).toBe("1 of 61 cut");
  await t.close();
});

it("a roof of some 500 pieces with a name of 10,000 letters is counted, not drawn, and stays on the screen", async () => {
  const t = await atSaw(addressOf({ ...PACKET_ROOFS.long, "Job name": "W".repeat(10_000) }));
  await button(t.page, /^Next/).tap();
  await button(t.page, "One more cut").first().tap();
  await expect.poll(() => counted(t.page)).toMatch(/^1 of [5-9]\d\d cut$/);
  expect(await faults(t.page)).toEqual([]);
  await button(t.page, "All pieces").tap();
  expect(await faults(t.page)).toEqual([]);
  await t.close();
});

it("a job of the browser's sheet is found without an address, and a phone shows sheet and pane one tap apart", async () => {
  const t = await openBench("", PHONE, undefined);
  await t.page.locator("#tabs").getByRole("button", { name: "Sheet" }).tap();
  expect(await t.page.locator("#sheet").isVisible()).toBe(true);
  expect(await t.page.locator("#pane").isVisible()).toBe(false);
  await t.page.locator("#tabs").getByRole("button", { name: "Roof" }).tap();
  const span = t.page.locator("#pane").getByRole("textbox", { name: "Span" }).first();
  await span.tap();
  const { height } = (await span.boundingBox())!;
  expect([height >= 44, await span.evaluate((one) => getComputedStyle(one).fontSize)]).toEqual([true, "16px"]);
  await span.fill("26");
  await button(t.page, "feet").tap();
  expect(await span.inputValue()).toBe("26'");
  expect(await t.page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  await expect.poll(() => t.page.locator(".jobs").textContent()).toContain("This job is kept.");
  await t.again("saw.html", PHONE);
  await t.page.locator("main .list button").last().tap();
  await expect.poll(() => counted(t.page)).toMatch(/^0 of \d+ cut$/);
  expect(t.problems).toEqual([]);
  await t.close();
});
