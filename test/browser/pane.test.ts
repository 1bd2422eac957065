import { beforeEach, describe, expect, it } from "vitest";
import { texts } from "../../src/pane/words/texts.ts";
import { benchForEach } from "./bench.ts";
import { panePage } from "./panePage.ts";

const t = benchForEach();
beforeEach(panePage(t).letGo);

const button = (name: string) => t.page.locator("#pane").getByRole("button", { name, exact: true });
const sheets = () => t.page.evaluate(() => window.longpoint.host.sheets());

async function cells(
  sheet: string,
  row: number,
  column: number,
  rows: number,
  columns: number,
): Promise<(number | string | boolean)[][]> {
  const got = await t.page.evaluate((area) => window.longpoint.host.read(area), { sheet, row, column, rows, columns });
  return got.map((line) => line.map(({ value }) => value));
}

/** Types over a cell of a sheet with the keyboard. */
async function type(sheet: string, row: number, column: number, text: string): Promise<void> {
  const place = { sheet, row, column, rows: 1, columns: 1 };
  await t.page.evaluate((area) => window.longpoint.host.show(area), place);
  // A sheet just turned to is drawn a moment later.
  const rect = () => t.page.evaluate(([r, c]) => window.longpoint.rect(r!, c!), [row, column]);
  for (
    let last = await rect(), now = null;
    JSON.stringify(last) !== JSON.stringify(now);
    [last, now] = [now ?? last, await rect()]
  )
    await t.page.waitForTimeout(200);
  const { x, y, width, height } = await rect();
  await t.page.mouse.click(x + width / 2, y + height / 2);
  await expect.poll(() => t.page.evaluate(() => window.longpoint.host.selection())).toEqual(place);
  await t.page.keyboard.type(text);
  await t.page.keyboard.press("Enter");
  await t.page.evaluate(() => window.longpoint.settled());
}

/** Fills new sheets from the pane; gives the names of the sheets with the roof block and the schedule. */
async function fill(): Promise<{ roof: string; jacks: string }> {
  const before = await sheets();
  await button(texts.fill).click();
  await expect.poll(async () => (await sheets()).length).toBeGreaterThan(before.length + 1);
  const [roof, jacks] = (await sheets()).filter((name) => !before.includes(name)) as [string, string];
  await t.page.evaluate(() => window.longpoint.settled());
  return { roof, jacks };
}

/** The row of the block that has this label. */
async function rowOf(sheet: string, label: string): Promise<number> {
  const row = (await cells(sheet, 0, 0, 40, 1)).findIndex(([value]) => value === label);
  expect(row).toBeGreaterThanOrEqual(0);
  return row;
}

// A square corner of equal pitches with boards 1 1/2 in thick, as trade manuals have it: half the 45-degree thickness of the hip off the
// center line, half the jack's own thickness on, along the slope.
const longPoint = (offset: number, pitch: number) =>
  (offset - (1.5 / 2) * Math.SQRT2 + 1.5 / 2) * Math.hypot(1, pitch / 12);

/** Every filled row of a schedule must be the jack that its offset says, at the king common's offset less whole spacings. */
async function expectSchedule(jacks: string, run: number, pitch: number): Promise<void> {
  const [headings, ...rows] = (await cells(jacks, 0, 0, 40, 12)).filter(([piece]) => piece !== "") as [
    string[],
    ...(string | number)[][],
  ];
  const at = (name: string) => headings.indexOf(name);
  const kept = Array.from({ length: 40 }, (_, i) => run - 24 * (i + 1)).filter((offset) => offset >= 12);
  expect(rows.map((row) => row[at("Offset")])).toEqual(kept);
  for (const row of rows) expect(row[at("Long point")]).toBeCloseTo(longPoint(Number(row[at("Offset")]), pitch), 9);
}

describe("the pane beside the sheet", () => {
  it("fills live schedules: the span changed in the sheet changes every row", async () => {
    const { roof, jacks } = await fill();
    await expectSchedule(jacks, 144, 6);
    await type(roof, await rowOf(roof, "Span"), 1, "30'");
    await expectSchedule(jacks, 180, 6);
    await type(roof, await rowOf(roof, "Pitch"), 1, "9");
    await expectSchedule(jacks, 180, 9);
    await type(roof, await rowOf(roof, "Span"), 1, "20'");
    await expectSchedule(jacks, 120, 9);
  });

  it("takes it back whole, and one undo does the same", async () => {
    const before = await sheets();
    await fill();
    await t.page
      .locator("#pane")
      .getByRole("button", { name: /^Undo this fill/ })
      .click();
    await expect.poll(() => t.page.locator("#pane").textContent()).toContain("Undone");
    expect(await sheets()).toEqual(before);
    await fill();
    await t.page.evaluate(() => window.longpoint.undo());
    await expect.poll(sheets).toEqual(before);
  });

  it("refuses to take back over a cell that was edited, and names it", async () => {
    const { roof } = await fill();
    const row = await rowOf(roof, "Spacing");
    await type(roof, row, 1, "16");
    await t.page
      .locator("#pane")
      .getByRole("button", { name: /^Undo this fill/ })
      .click();
    await expect.poll(() => t.page.locator("#pane").textContent()).toContain(`${roof}!B${row + 1}`);
    expect(await cells(roof, row, 1, 1, 1)).toEqual([[16]]);
  });

  it("asks before it writes over filled cells, and writes nothing when told so", async () => {
    await t.page.evaluate(() => window.longpoint.host.show({ sheet: "Bid", row: 4, column: 0, rows: 1, columns: 1 }));
    const before = await cells("Bid", 0, 0, 30, 8);
    await t.page.getByRole("radio", { name: texts.atSelection("Bid!A5") }).check();
    await button(texts.fill).click();
    const dialog = t.page.getByRole("dialog");
    await dialog.waitFor();
    expect(await dialog.textContent()).toContain("Bid!A5");
    expect(await cells("Bid", 0, 0, 30, 8)).toEqual(before);
    await dialog.getByRole("button", { name: texts.ask.cancel }).click();
    await dialog.waitFor({ state: "detached" });
    expect(await cells("Bid", 0, 0, 30, 8)).toEqual(before);
    expect(await sheets()).toEqual(["Bid", "Jacks"]);
  });

  it("keeps its keys to itself: what is typed, erased or undone in a field does not touch the sheet", async () => {
    const before = await cells("Bid", 0, 0, 30, 8);
    await t.page.evaluate(() => window.longpoint.host.show({ sheet: "Bid", row: 4, column: 1, rows: 1, columns: 1 }));
    const span = t.page.locator("#pane").getByLabel("Span", { exact: true });
    await span.click();
    for (const key of [
      "End",
      "Backspace",
      "Backspace",
      "Backspace",
      "3",
      "0",
      "'",
      "ArrowLeft",
      "Delete",
      "Control+z",
      "Control+a",
      "2",
      "8",
      "'",
      "Enter",
      "Tab",
    ])
      await t.page.keyboard.press(key);
    await t.page.evaluate(() => window.longpoint.settled());
    expect(await span.inputValue()).toBe("28'");
    expect(await cells("Bid", 0, 0, 30, 8)).toEqual(before);
  });
});
