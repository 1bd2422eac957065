import { beforeAll, expect, it } from "vitest";
import { bench } from "./bench.ts";
import { sheetKeys } from "./sheetKeys.ts";

const t = bench();
beforeAll(() => t.open());
const keys = sheetKeys(t);

/** Which part of the page has the keyboard. */
const part = () =>
  t.page.evaluate(() =>
    ["files", "sheet", "pane"].find((id) => document.getElementById(id)!.contains(document.activeElement)),
  );

it("F6 leaves the sheet and comes back, Shift+F6 the other way, and what is being typed is kept", async () => {
  await keys.type(4, 7, [["12", 0]], "");
  await t.page.keyboard.press("F6");
  expect(await part()).toBe("pane");
  expect((await keys.cell("Bid", 4, 7)).value).toBe(12);
  for (const next of ["files", "sheet"]) {
    await t.page.keyboard.press("F6");
    expect(await part()).toBe(next);
  }
  await t.page.keyboard.type("34");
  await t.page.keyboard.press("Enter");
  expect((await keys.cell("Bid", 4, 7)).value).toBe(34);
  for (const next of ["files", "pane", "sheet"]) {
    await t.page.keyboard.press("Shift+F6");
    expect(await part()).toBe(next);
  }
});

it("Ctrl+S saves, an open edit included", async () => {
  await keys.type(6, 7, [["=1+1", 0]], "");
  const saved = t.page.waitForEvent("download");
  await t.page.keyboard.press("Control+s");
  expect((await saved).suggestedFilename()).toMatch(/\.xlsx$/);
  expect((await keys.cell("Bid", 6, 7)).value).toBe(2);
});

it("Ctrl+F finds cells by what they show or hold, forward and back, and gives the keyboard back; it replaces what is found", async () => {
  await keys.type(4, 7, [["zig ZIG 1", 0]]);
  await keys.click(0, 0);
  await t.page.keyboard.press("Control+f");
  await t.page.keyboard.type("longest board");
  await t.page.keyboard.press("Enter");
  const says = t.page.locator("#files .find [role=status]");
  await expect.poll(() => says.textContent()).toMatch(/^1 of \d+$/);
  const found = await t.page.evaluate(() => window.longpoint.host.selection());
  expect((await keys.cell("Bid", found.row, found.column)).value).toMatch(/Longest board/);
  await t.page.keyboard.press("Shift+Enter");
  await expect.poll(() => says.textContent()).toMatch(/^(\d+) of \1$/);
  await t.page.getByRole("searchbox", { name: "Find in all sheets" }).fill("zig");
  await t.page.getByRole("textbox", { name: "Replace with" }).fill("zag");
  await t.page.getByRole("button", { name: "Replace all" }).click();
  await expect.poll(() => says.textContent()).toBe("Replaced in 1 cell; one undo takes it back.");
  expect((await keys.cell("Bid", 4, 7)).value).toBe("zag zag 1");
  await t.page.keyboard.press("Escape");
  expect(await part()).toBe("sheet");
});

it("Ctrl+P prints the sheet, and asks where several cells are selected", async () => {
  await t.page.evaluate(() => {
    const printed: string[] = ((window as any).printed = []);
    const own = Object.getOwnPropertyDescriptor(HTMLIFrameElement.prototype, "contentWindow")!;
    Object.defineProperty(HTMLIFrameElement.prototype, "contentWindow", {
      get() {
        const pages = own.get!.call(this);
        pages.print = () => {
          printed.push(pages.document.body.innerText);
          pages.dispatchEvent(new Event("afterprint"));
        };
        return pages;
      },
    });
  });
  const printed = () => t.page.evaluate(() => (window as any).printed as string[]);
  await keys.click(4, 0);
  await t.page.keyboard.press("Control+p");
  await expect.poll(async () => (await printed()).length).toBe(1);
  expect((await printed())[0]).toContain("Ferry landing");
  await expect
    .poll(() => t.page.locator("#files .message [role=status]").textContent())
    .toContain("went to the printer");
  // The keyboard is in the sheet again, at the same cell.
  await t.page.keyboard.press("Shift+ArrowRight");
  await t.page.keyboard.press("Control+p");
  await t.page.getByRole("button", { name: "The selection, Bid!A5:B5" }).click();
  await expect.poll(async () => (await printed()).length).toBe(2);
  expect((await printed())[1]!.trim().split(/\s+/)).toEqual(["Span", "24'"]);
  // In the pane it is left to the browser: on paper the page is the roof, without the sheet and what is pressed.
  await t.page.locator("#lp-span").focus();
  await t.page.evaluate(() => {
    addEventListener("keydown", (event) => {
      (window as any).left = event.key === "p" && !event.defaultPrevented;
      event.preventDefault();
    });
  });
  await t.page.keyboard.press("Control+p");
  expect(await t.page.evaluate(() => (window as any).left as boolean)).toBe(true);
  expect(await printed()).toHaveLength(2);
  await t.page.emulateMedia({ media: "print" });
  const shown = (where: string) => t.page.locator(where).first().isVisible();
  for (const where of [".lp-drawn svg", ".lp-values", "#lp-schedule"])
    expect([where, await shown(where)]).toEqual([where, true]);
  for (const where of ["#sheet", "#files", "#lp-span", ".lp-foot"])
    expect([where, await shown(where)]).toEqual([where, false]);
  expect(await t.page.locator("#pane").innerText()).not.toContain("Fill the sheet");
  await t.page.emulateMedia({ media: null });
});
