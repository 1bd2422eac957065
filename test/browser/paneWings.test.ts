import { beforeEach, describe, expect, it } from "vitest";
import { axeFindings } from "./axeFindings.ts";
import { benchForEach } from "./bench.ts";
import { panePage } from "./panePage.ts";

const t = benchForEach();
const { letGo, pane, button, says, values, enter, sheets } = panePage(t);
beforeEach(letGo);
const wing = (letter: string) => pane().getByRole("group", { name: `Wing ${letter}` });
const inWing = (letter: string, row: string) => wing(letter).getByLabel(row, { exact: true });
const press = (key: string) => t.page.keyboard.press(key);

describe("wings in the pane", () => {
  it("are added by keyboard, changed and removed; the block gets a column for each, and follows", async () => {
    await button("Add a wing").focus();
    await press("Enter");
    await expect.poll(() => inWing("A", "Wall").evaluate((one) => one === document.activeElement)).toBe(true);
    expect(await says().textContent()).toContain("Wing A added");
    await inWing("A", "From left corner").fill("8'");
    await button("Add a wing").click();
    await inWing("B", "Ends").selectOption("hip");
    await button("Fill the sheet").click();
    await expect.poll(() => says().textContent()).toContain("Roof block, Jack schedule written to Roof!A1");
    const block = await values("Roof", 1, 0, 24, 4);
    expect(block.slice(0, 2)).toEqual([
      ["", "Main roof", "Wing A", "Wing B"],
      ["Wall", "", "front", "back"],
    ]);
    const at = (label: string) => block.findIndex(([one]) => one === label) + 1;
    expect(block[at("Span") - 1]).toEqual(["Span", "24'", `12' 0"`, `12' 0"`]);
    expect((await values("Jacks 2", 0, 0, 2))[0]).toEqual(["Piece"]);

    await enter("Roof", at("From left corner"), 2, "9'");
    await expect.poll(() => inWing("A", "From left corner").inputValue()).toBe("9'");
    await button("Remove wing A").click();
    await expect.poll(() => button("Add a wing").evaluate((one) => one === document.activeElement)).toBe(true);
    expect(await wing("A").count()).toBe(0);
    expect(await inWing("B", "Wall").inputValue()).toBe("back");
    await button("Write into the block").click();
    await t.page.getByRole("dialog").getByRole("button", { name: "Change them" }).click();
    await expect.poll(async () => (await values("Roof", 1, 2, 10)).flat().join("")).toBe("");
    expect((await values("Roof", 1, 3, 1))[0]).toEqual(["Wing B"]);
  });

  it("come into a block that was written before there were any, and its tables read them", async () => {
    await button("Fill the sheet").click();
    await expect.poll(() => says().textContent()).toContain("written to Roof!A1");
    const [, jacks] = (await sheets()).slice(2);
    const pieces = async () => (await values(jacks!, 0, 0, 90)).flat().filter((value) => value !== "");
    const before = await pieces();
    await button("Add a wing").click();
    await button("Write into the block").click();
    const dialog = t.page.getByRole("dialog");
    await dialog.getByRole("button", { name: "Change them" }).click();
    await expect.poll(() => says().textContent()).toContain("Block");
    // By its name, which has grown.
    const named = await t.page.evaluate(async () => (await window.longpoint.host.namedAreas()).get("RoofBlock2"));
    const formula = await t.page.evaluate(
      async (sheet) =>
        (await window.longpoint.host.read({ sheet, row: 0, column: 0, rows: 1, columns: 1 }))[0]![0]!.formula,
      jacks!,
    );
    expect(formula).toBe("=RAFTER.JACKTABLE(RoofBlock2)");
    expect([named?.sheet, named?.columns]).toEqual(["Roof", 3]);
    expect((await pieces()).length).toBeGreaterThan(before.length);
    expect(await pane().getByText("Not yet in the sheet").count()).toBe(0);
  });

  it("are refused at their own fields, and nothing is written until they are right", async () => {
    await button("Add a wing").click();
    await inWing("A", "Out from wall").fill("10");
    await expect
      .poll(() => wing("A").locator("#lp-a-out-from-wall-wrong").textContent())
      .toContain("Type 10' for feet");
    expect(await inWing("A", "Out from wall").getAttribute("aria-invalid")).toBe("true");
    await button("Fill the sheet").click();
    await expect.poll(() => says().textContent()).toBe("Nothing was written. Fix Wing A, Out from wall first.");
    await expect.poll(() => inWing("A", "Out from wall").evaluate((one) => one === document.activeElement)).toBe(true);
    // A fault below the fold opens it.
    await inWing("A", "Out from wall").fill("8'");
    await wing("A").locator("summary").click();
    await inWing("A", "Pitch").fill("45000");
    expect(await wing("A").locator("details").getAttribute("open")).not.toBeNull();
    expect(await axeFindings(t.page, "#pane")).toEqual([]);
    await t.page.setViewportSize({ width: 320, height: 800 });
    expect(await pane().evaluate((one) => one.scrollWidth <= one.clientWidth)).toBe(true);
  });
});
