import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import { bench } from "./bench.ts";
import { hold } from "./hold.ts";

const t = bench();

/** Clicks a cell of the active sheet, as a user does. */
async function click(row: number, column: number): Promise<void> {
  const { x, y, width, height } = await t.page.evaluate(([r, c]) => window.longpoint.rect(r!, c!), [row, column]);
  await t.page.mouse.click(x + width / 2, y + height / 2);
}

/** Types into a cell with the keyboard and waits for the results. */
async function enter(row: number, column: number, text: string): Promise<void> {
  await click(row, column);
  await t.page.keyboard.type(text);
  // The list of functions, when it is open, would take the first Enter for itself.
  await t.page.keyboard.press("Enter");
  await t.page.evaluate(() => window.longpoint.settled());
}

async function column(sheet: string, row: number, col: number, rows: number): Promise<(number | string | boolean)[]> {
  const got = await t.page.evaluate((area) => window.longpoint.host.read(area), {
    sheet,
    row,
    column: col,
    rows,
    columns: 1,
  });
  return got.map(([cell]) => cell!.value);
}

describe("the bench page", () => {
  beforeAll(() => t.open());

  it("asks for nothing but itself, and every cell of the sample job but one has its value", async () => {
    expect(await t.page.title()).toBe("Longpoint");
    expect(t.requests.length).toBeGreaterThan(0);
    expect(t.requests.filter((url) => !url.startsWith(t.url))).toEqual([]);
    const bid = await t.page.evaluate(() =>
      window.longpoint.host.read({ sheet: "Bid", row: 0, column: 0, rows: 30, columns: 8 }),
    );
    const errors = bid.flat().filter(({ value }) => typeof value === "string" && value.startsWith("#"));
    expect(errors.map(({ formula }) => formula)).toEqual(["=RAFTER.PITCHDEG(6/12)"]);
    // By hand: the main king common stands 144 x 6 / 8 = 108 in from the corner, so 84, 60, 36 and 12 in are main jacks; the end one at
    // 144 in leaves 120, 96, 72, 48 and 24: nine at each of the four corners.
    expect(await column("Bid", 17, 4, 1)).toEqual([4 * 4 + 4 * 5]);
  });

  it("shows the value of a formula typed with the keyboard", async () => {
    await enter(4, 7, "=RAFTER.JACKLEN(6,48,1.5,1.5)");
    const [value] = await column("Bid", 4, 7, 1);
    expect(value).toBeCloseTo(53.3183, 4);
  });

  it("keeps what a carpenter types as it is typed", async () => {
    const typed = ["24'", "9' 4 5/8\"", "9-4-5/8", '1 1/2"', "6 in 12", "30°", "2.86 m"];
    for (const [i, text] of typed.entries()) await enter(4 + i, 7, text);
    expect(await column("Bid", 4, 7, typed.length)).toEqual(typed);
  });

  it("offers the functions with their descriptions while one types", async () => {
    await click(4, 7);
    await t.page.keyboard.type("=RAFTER.JACKL");
    await t.page.getByText("RAFTER.JACKLEN", { exact: true }).first().waitFor();
    await t.page
      .getByText(/Length of a jack to its long point/)
      .first()
      .waitFor();
    await t.page.keyboard.type("EN(");
    await t.page
      .getByText(/hipThickness/)
      .first()
      .waitFor();
    await t.page.keyboard.press("Escape");
    await t.page.keyboard.press("Escape");
    // What the sheet says about its own functions has come by now, after the first view.
    await click(5, 7);
    await t.page.keyboard.type("=ROUNDU");
    await t.page.getByText("Rounds a number up, away from zero").first().waitFor();
    await t.page.keyboard.press("Escape");
    await t.page.keyboard.press("Escape");
  });

  it("says why a cell is refused when it is selected", async () => {
    await click(24, 4);
    const pane = t.page.locator("#pane");
    await expect.poll(() => pane.textContent()).toContain("0.5");
    await expect.poll(() => pane.textContent()).toContain('"6/12"');
    await click(25, 4);
    await expect.poll(() => pane.textContent()).not.toContain("0.5 was read");
  });

  it("grows and shrinks the schedule when the span is typed over, and the bid follows", async () => {
    const pieces = async () => (await column("Jacks", 1, 0, 60)).filter((name) => name !== "").length;
    const counted = async () => (await column("Bid", 17, 4, 1))[0];
    const byHand = async () =>
      [...(await column("Jacks", 1, 10, 60)), ...(await column("Jacks", 1, 11, 60))].reduce<number>(
        (sum, n) => sum + Number(n || 0),
        0,
      );
    const before = await pieces();
    await enter(4, 1, "34'");
    const grown = await pieces();
    expect(grown).toBeGreaterThan(before);
    expect(await counted()).toBe(await byHand());
    await enter(4, 1, "16'");
    expect(await pieces()).toBeLessThan(before);
    expect(await counted()).toBe(await byHand());
    await t.page.evaluate(() => window.longpoint.undo());
    await t.page.evaluate(() => window.longpoint.settled());
    expect(await pieces()).toBe(grown);
    expect(await counted()).toBe(await byHand());
  });

  it("takes bad input without an error of its own, and goes on calculating", async () => {
    for (const bad of ["0", "-3", "1e308", "🪚", "'", "2024-06-12", "6:12", "x".repeat(30)]) await enter(6, 1, bad);
    expect((await column("Jacks", 0, 0, 1))[0]).toBe("#VALUE!");
    await enter(6, 1, "6");
    expect((await column("Jacks", 0, 0, 1))[0]).toBe("Piece");
  });
});

describe("the bench page, opened anew", () => {
  beforeEach(() => t.open());

  it("answers in the pane while the sheet is still on its way, and keeps what is typed", async () => {
    const sheet = await hold(t.page, "**/sheet.*.js");
    await t.page.reload({ waitUntil: "domcontentloaded" });
    const span = t.page.getByLabel("Span", { exact: true });
    const facts = () => t.page.locator("#pane .lp-facts").textContent();
    await span.waitFor();
    const before = await facts();
    await span.fill("20'");
    await expect.poll(facts).not.toBe(before);
    expect(await t.page.evaluate(() => "longpoint" in window)).toBe(false);
    await sheet.go();
    await t.page.waitForFunction(() => "longpoint" in window);
    await t.page.evaluate(() => window.longpoint.ready);
    expect(await span.inputValue()).toBe("20'");
  });

  it("writes a step that one undo takes away, a new sheet included, and redo brings back", async () => {
    await t.page.evaluate(() =>
      window.longpoint.host.write({
        title: "test",
        blocks: [
          {
            sheet: "Made",
            newSheet: true,
            row: 0,
            column: 0,
            frozenRows: 1,
            cells: [[{ content: "Piece", style: "heading" }], [{ content: "=RAFTER.PITCHDEG(6)" }]],
          },
          { sheet: "Bid", row: 30, column: 0, cells: [[{ content: "=Made!A2*2" }]] },
        ],
      }),
    );
    expect((await column("Bid", 30, 0, 1))[0]).toBeCloseTo(53.1301, 4);
    await t.page.evaluate(() => window.longpoint.host.show({ sheet: "Made", row: 0, column: 0, rows: 1, columns: 1 }));
    await click(1, 0);
    await t.page.keyboard.press("Control+z");
    await expect.poll(() => t.page.evaluate(() => window.longpoint.host.sheets())).toEqual(["Bid", "Jacks"]);
    expect(await column("Bid", 30, 0, 1)).toEqual([""]);
    await t.page.evaluate(() => window.longpoint.redo());
    expect(await t.page.evaluate(() => window.longpoint.host.sheets())).toEqual(["Bid", "Jacks", "Made"]);
    expect((await column("Bid", 30, 0, 1))[0]).toBeCloseTo(53.1301, 4);
  });

  it("takes back a new sheet while it is looked at, and undo brings it back", async () => {
    const edited = await t.page.evaluate(async () => {
      const { host } = window.longpoint;
      const written = await host.write({
        title: "test",
        blocks: [
          { sheet: "Made", newSheet: true, row: 0, column: 0, cells: [[{ content: "=RAFTER.PITCHDEG(6)" }]] },
          { sheet: "Bid", row: 30, column: 0, cells: [[{ content: "=Made!A1" }]] },
        ],
      });
      await host.show({ sheet: "Made", row: 0, column: 0, rows: 1, columns: 1 });
      return host.takeBack(written);
    });
    expect(edited).toEqual([]);
    expect(await t.page.evaluate(() => window.longpoint.host.sheets())).toEqual(["Bid", "Jacks"]);
    expect(await column("Bid", 30, 0, 1)).toEqual([""]);
    await t.page.evaluate(() => window.longpoint.undo());
    expect((await column("Made", 0, 0, 1))[0]).toBeCloseTo(26.5651, 4);
  });

  it("lets a sheet be renamed in haste, and go", async () => {
    await t.page.locator("#sheet").getByText("Jacks", { exact: true }).click();
    await t.page.locator("#sheet").getByText("Jacks", { exact: true }).dblclick();
    await t.page.keyboard.press("Control+a");
    await t.page.keyboard.type("Cuts");
    await t.page.keyboard.press("Enter");
    await t.page.waitForTimeout(1_500);
    expect(await t.page.evaluate(() => window.longpoint.host.sheets())).toEqual(["Bid", "Cuts"]);
    await t.page.getByLabel("Samples").selectOption("check");
    await t.page.locator("#files .message [role=status]", { hasText: "is open" }).waitFor();
    await t.page.locator("#sheet").getByText("Measured", { exact: true }).waitFor();
    expect(await t.page.locator("#sheet").getByText("Cuts", { exact: true }).count()).toBe(0);
  });
});
