import { describe, expect, it } from "vitest";
import { benchForEach } from "./bench.ts";
import { panePage } from "./panePage.ts";

const t = benchForEach();
const { pane, show, sheets, field, button, says, values, enter, unfold, keepPrints, printed } = panePage(t);

/** Inserts rows above a row of the active sheet, as a user does from the menu of its heading. */
async function insertAbove(row: number, count: number): Promise<void> {
  const { x, y, height } = await t.page.evaluate((at) => window.longpoint.rect(at, 0), row);
  const at = [x - 15, y + height / 2] as const;
  await t.page.mouse.click(...at);
  await t.page.mouse.click(...at, { button: "right" });
  const item = t.page.locator("button", { hasText: "rows above" });
  await item.locator("input").fill(String(count));
  await item.locator("svg").click();
  await t.page.evaluate(() => window.longpoint.settled());
}

async function renameSheet(from: string, to: string): Promise<void> {
  const tab = t.page.locator("#sheet").getByText(from, { exact: true });
  await tab.click();
  await tab.dblclick();
  // The sheet selects the name a moment after the double click, and what was typed before that goes.
  const typed = async (): Promise<string | null | undefined> => {
    await t.page.keyboard.press("Control+a");
    await t.page.keyboard.type(to);
    return t.page.evaluate(() => document.activeElement?.textContent);
  };
  await expect.poll(typed).toBe(to);
  await t.page.keyboard.press("Enter");
  await expect.poll(sheets).toContain(to);
}

/** The page of cards that is printed, as the number `count` of those printed so far. */
async function cardsPrinted(count: number): Promise<string> {
  await button(/^Print the cut cards, roof/).click();
  return printed(count);
}

const jacks = (sheet: string) => values(sheet, 0, 0, 60, 12);
const formulaAt = (sheet: string) =>
  t.page.evaluate(
    async (name) =>
      (await window.longpoint.host.read({ sheet: name, row: 0, column: 0, rows: 1, columns: 1 }))[0]![0]!.formula,
    sheet,
  );

describe("the block that the pane follows", () => {
  it("is taken up at the start, and stays the same roof when rows come above it and its sheet gets another name", async () => {
    await pane().getByText("Follows the roof block at Bid!A5:B15.").waitFor();
    await unfold("Cut cards");
    await keepPrints();
    const roof = [await field("Span").inputValue(), await field("Rafter").inputValue()];
    const [before, cards] = [await values("Bid", 4, 0, 11, 2), await cardsPrinted(1)];
    await button("Fill the sheet").click();
    await expect.poll(sheets).toEqual(["Bid", "Jacks", "Jacks 2"]);
    expect(await formulaAt("Jacks 2")).toBe("=RAFTER.JACKTABLE(RoofBlock)");
    const table = await jacks("Jacks 2");
    await show("Bid", 0, 0);
    await insertAbove(2, 7);
    await pane().getByText("Follows the roof block at Bid!A12:B22.").waitFor();
    await renameSheet("Bid", "Ferry landing");
    await pane().getByText("Follows the roof block at 'Ferry landing'!A12:B22.").waitFor();
    expect(await values("Ferry landing", 11, 0, 11, 2)).toEqual(before);
    expect([await field("Span").inputValue(), await field("Rafter").inputValue()]).toEqual(roof);
    expect(await says().textContent()).not.toMatch(/no longer|deleted/);
    expect([await jacks("Jacks 2"), await cardsPrinted(2)]).toEqual([table, cards]);

    // What is typed there is read by pane and table, and a row that is added belongs to the block.
    await enter("Ferry landing", 15, 1, "16");
    await expect.poll(() => field("Spacing").inputValue()).toBe("16");
    expect(await jacks("Jacks 2")).not.toEqual(table);
    await enter("Ferry landing", 22, 0, "Valley");
    await enter("Ferry landing", 22, 1, "2x12");
    await pane().getByText("Follows the roof block at 'Ferry landing'!A12:B23.").waitFor();
    await expect.poll(() => field("Valley").inputValue()).toBe("2x12");
  });
});
