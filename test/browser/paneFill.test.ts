import { beforeEach, describe, expect, it } from "vitest";
import { benchForEach } from "./bench.ts";
import { panePage } from "./panePage.ts";

const t = benchForEach();
const { letGo, pane, show, sheets, field, button, says, everything, values, enter } = panePage(t);
beforeEach(letGo);

describe("the pane fills the sheet", () => {
  it("keeps tape text right as a table grows and shrinks, follows its block, and takes it back when nothing was edited", async () => {
    const before = await everything();
    await button("Fill the sheet").click();
    await expect.poll(() => says().textContent()).toContain("Roof block, Jack schedule written to Roof!A1");
    const schedule = async () => (await values("Jacks 2", 1, 0, 40, 22)).filter(([piece]) => piece !== "");
    const tapes = async () =>
      (await values("Jacks 2", 1, 19, 40, 3)).filter((line) => line.some((value) => value !== "")).length;
    const then = await schedule();
    // NAVEDTRA 14044, ch. 2: neighbors differ by the common difference, 26.83 in at rise 6 and 24 in on center.
    const lengths = then.map((row) => row[5] as number);
    lengths.slice(1).forEach((length, i) => expect(lengths[i]! - length).toBeCloseTo(26.83, 2));
    const feet = Math.floor(lengths[0]! / 12);
    expect(then[0]![19]).toMatch(new RegExp(`^${feet}' ${Math.floor(lengths[0]! - 12 * feet)}\\b`));
    let edits = 0;
    const retype = async (changes: Record<string, string>) => {
      const labels = (await values("Roof", 0, 0, 30)).map(([label]) => label);
      for (const [label, text] of Object.entries(changes)) {
        await enter("Roof", labels.indexOf(label), 1, text);
        edits++;
      }
    };
    for (const [span, compare] of [
      ["40'", 1],
      ["20'", -1],
    ] as const) {
      await retype({ Span: span, Length: "60'" });
      const now = await schedule();
      expect(Math.sign(now.length - then.length)).toBe(compare);
      expect(await tapes()).toBe(now.length);
      await expect.poll(() => field("Span").inputValue()).toBe(span);
    }
    // Turned to millimeters, the tape column must not make feet of them.
    await retype({
      Span: "9000",
      Length: "14000",
      Spacing: "600",
      Overhang: "450",
      Seat: "89",
      Boards: "4.8 m",
      Unit: "mm",
    });
    const metric = await schedule();
    expect(metric.length).toBeGreaterThan(3);
    for (const row of metric) expect(row[19]).toBe(`${Math.round(row[5] as number)} mm`);
    await button(/^Undo this fill/).click();
    await expect.poll(() => says().textContent()).toContain("Nothing was undone: Roof!B2");
    for (let i = 0; i < edits; i++) await t.page.evaluate(() => window.longpoint.undo());
    await button(/^Undo this fill/).click();
    await expect.poll(sheets).toEqual(["Bid", "Jacks"]);
    expect(await everything()).toEqual(before);
    expect(await button(/^Undo this fill/).count()).toBe(0);
  });

  it("writes beside what is there, on new sheets, or over it when told twice", async () => {
    await show("Bid", 4, 3);
    await pane()
      .getByLabel(/at the selected cell/)
      .check();
    await expect.poll(() => pane().getByLabel("at the selected cell, Bid!D5").count()).toBe(1);
    const before = await everything();
    const press = async () => {
      await button("Fill the sheet").focus();
      await t.page.keyboard.press("Enter");
      await t.page.getByRole("dialog").waitFor();
    };
    const takeBack = async () => {
      await expect.poll(() => says().textContent()).toContain("written to");
      await button(/^Undo this fill/).click();
      await expect.poll(() => says().textContent()).toContain("Undone");
      expect(await everything()).toEqual(before);
      await show("Bid", 4, 3);
    };
    await press();
    expect(await t.page.getByRole("dialog").textContent()).toMatch(/cells are filled.*Bid!D5/);
    await t.page.keyboard.press("Escape");
    await expect.poll(() => t.page.getByRole("dialog").count()).toBe(0);
    expect(await t.page.evaluate(() => document.activeElement?.textContent)).toBe("Fill the sheet");
    expect(await says().textContent()).toBe("Nothing was written.");
    expect(await everything()).toEqual(before);

    await press();
    await button("Further right, where it is free").click();
    await expect.poll(() => says().textContent()).toContain("written to");
    expect(await values("Bid", 4, 3, 16, 3)).toEqual(
      before[0]!.slice(4, 20).map((line) => line.slice(3, 6).map(({ value }) => value)),
    );
    await takeBack();

    await press();
    await button("On new sheets").click();
    await takeBack();

    await press();
    await button("Overwrite them").click();
    expect(await everything()).toEqual(before);
    await button(/^Yes, replace \d+ cells/).click();
    await takeBack();
  });

  it("uses the block under the selection, follows it, and writes back only what was changed and agreed to", async () => {
    await button("Use this block").click();
    expect([await field("Length").inputValue(), await field("End pitch").inputValue()]).toEqual(["40'", "8"]);
    await enter("Bid", 8, 1, "16");
    await expect.poll(() => field("Spacing").inputValue()).toBe("16");
    await field("Span").fill("25'");
    await button("Write into the block").click();
    expect(await t.page.getByRole("dialog").textContent()).toContain("Bid!B5: 24' becomes 25'");
    await button("Change them").click();
    await expect.poll(async () => (await values("Bid", 4, 1, 1))[0]).toEqual(["25'"]);
    expect(await pane().getByText("Not yet in the sheet").count()).toBe(0);
    // What the fields follow hangs on the block that is there: no second one is written.
    await button("Fill the sheet").click();
    await expect.poll(sheets).toEqual(["Bid", "Jacks", "Jacks 2"]);
    const [line] = await t.page.evaluate(() =>
      window.longpoint.host.read({ sheet: "Jacks 2", row: 0, column: 0, rows: 1, columns: 1 }),
    );
    expect(line![0]!.formula).toBe("=RAFTER.JACKTABLE(RoofBlock)");
  });

  it("writes every table together, and every cell of them has its value", async () => {
    await pane()
      .locator("section[aria-labelledby=lp-fill] input[type=checkbox]:not(:checked)")
      .evaluateAll((all) => all.forEach((box) => (box as HTMLElement).click()));
    await button("Fill the sheet").click();
    await expect.poll(() => says().textContent()).toContain("written to");
    const made = (await sheets()).slice(2);
    expect(made).toEqual([
      "Roof",
      "Jacks 2",
      "Members",
      "Plate marks",
      "Take-off",
      "Sheathing",
      "Saw settings",
      "Piece list",
      "Cautions",
      "Lumber order",
      "Cutting plan",
    ]);
    for (const sheet of made) {
      const all = (await values(sheet, 0, 0, 60, 26)).flat();
      expect(
        all.filter((value) => typeof value === "string" && /^#/.test(value)),
        sheet,
      ).toEqual([]);
      expect(all.filter((value) => value !== "").length, sheet).toBeGreaterThan(20);
    }
  });
});
