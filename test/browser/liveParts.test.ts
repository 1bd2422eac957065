import { readFileSync } from "node:fs";
import { beforeAll, expect, it } from "vitest";
import { byExceljs, partsOf, withMore } from "../xlsx/carry/otherPrograms.ts";
import { bench } from "./bench.ts";
import { fileHands } from "./fileHands.ts";
import { sheetKeys } from "./sheetKeys.ts";

const t = bench();
const keys = sheetKeys(t);
const { says, said, choose } = fileHands(t);
const SHEET = "xl/worksheets/sheet1.xml";

let estimate: Buffer;
beforeAll(async () => void (estimate = Buffer.from(withMore(await byExceljs()))));

async function open(): Promise<void> {
  await t.open();
  await choose("estimate.xlsx", estimate);
  await said("Undo brings back");
}

async function saved(): Promise<Record<string, string>> {
  await t.page.getByRole("button", { name: "Save .xlsx" }).click();
  const field = t.page.locator("#files .message").getByLabel("Name");
  await field.waitFor();
  const coming = t.page.waitForEvent("download");
  await field.press("Enter");
  return partsOf(readFileSync(await (await coming).path()));
}

const value = async (row: number, column: number) =>
  (
    await t.page.evaluate(
      ([r, c]) => window.longpoint.host.read({ sheet: "Estimate", row: r, column: c, rows: 1, columns: 1 }),
      [row, column] as const,
    )
  )[0]![0]!.value;

it("a rule of the file holds for what is typed, its list can be chosen from, and it goes with its cells into the saved file", async () => {
  await open();
  expect(await says().textContent()).not.toContain("rules for what may be typed");
  // From 1 to 500, as the file says.
  await keys.type(1, 1, [["900", 0]]);
  await t.page.getByText("between 1 and 500").waitFor();
  await t.page.getByRole("button", { name: "OK" }).click();
  await t.page.getByText("between 1 and 500").waitFor({ state: "hidden" });
  expect(await value(1, 1)).toBe(40);
  await keys.type(1, 1, [["50", 0]]);
  await expect.poll(() => value(1, 1)).toBe(50);
  await t.page.evaluate(() => window.longpoint.insertRows("Estimate", 2, 2));
  await t.page.evaluate(() => window.longpoint.settled());
  const parts = await saved();
  expect(parts[SHEET]).toMatch(
    /<dataValidation type="list"[^>]*sqref="A12"><formula1>&quot;pine,fir&quot;<\/formula1>/,
  );
  expect(parts[SHEET]).toMatch(
    /<dataValidation type="whole"[^>]*sqref="B2"><formula1>1<\/formula1><formula2>500<\/formula2>/,
  );
  expect(t.requests.filter((url) => !url.startsWith(t.url))).toEqual([]);
});

it("formats that depend on values are shown, follow what is typed, and are in the file as they were", async () => {
  await open();
  expect(await says().textContent()).not.toContain("formats that depend on values");
  // Over 100 dollars on amber: 740 is, 43.5 is not.
  await expect.poll(() => inkOf(1, 3)).toBe("#ffc000");
  expect(await inkOf(2, 3)).not.toBe("#ffc000");
  await keys.type(2, 1, [["60", 0]]);
  await expect.poll(() => inkOf(2, 3)).toBe("#ffc000");
  const parts = await saved();
  const formats = (xml: string) => xml.match(/<conditionalFormatting.*<\/conditionalFormatting>/s)![0];
  expect(formats(parts[SHEET]!)).toBe(formats(partsOf(estimate)[SHEET]!));
});

it("a note is shown at its cell, typed over and made there, goes with its row, and is in the saved file; undo brings back what was typed", async () => {
  await open();
  expect(await says().textContent()).not.toContain("comments");
  const box = t.page.getByPlaceholder("Type here");
  await keys.click(5, 0);
  await expect.poll(() => box.inputValue()).toBe("Measured on site");
  await box.fill("Measured twice");
  await keys.click(2, 3);
  await box.waitFor({ state: "hidden" });
  await t.page.mouse.click(...(await middle(2, 3)), { button: "right" });
  await t.page.getByText("Add Note").click();
  await box.waitFor();
  await t.page.keyboard.type("Sill & level");
  // It is taken over a moment after the last key.
  await expect
    .poll(async () => {
      await keys.click(12, 3);
      await box.waitFor({ state: "hidden" });
      await keys.click(2, 3);
      // Where no note is shown yet it is not waited for: the cells are pressed again.
      return box.inputValue({ timeout: 1_000 });
    })
    .toBe("Sill & level");
  await keys.click(12, 3);
  // The row of the first note goes and comes back, with the text as it was then.
  await t.page.mouse.click(...(await rowHead(5)), { button: "right" });
  await t.page.getByText("Delete Selected Row").click();
  await keys.settled();
  await t.page.evaluate(() => window.longpoint.undo());
  await keys.settled();
  await t.page.evaluate(() => window.longpoint.insertRows("Estimate", 2, 2));
  await keys.settled();
  const parts = await saved();
  const comments = Object.entries(parts).find(([path]) => /comments\d*\.xml$/.test(path))![1];
  expect(
    [...comments.matchAll(/ref="(\w+)".*?<t(?: [^>]*)?>([^<]*)/g)].map(([, place, text]) => [place, text]),
  ).toEqual([
    ["A8", "Measured twice"],
    ["D5", "Sill &amp; level"],
  ]);
});

it("a link of the file shows its address and opens only when pressed; one is made on a text, none of what is typed or of a number", async () => {
  await open();
  expect(await says().textContent()).not.toContain("links");
  await t.page.getByRole("button", { name: "Close this message" }).click();
  await t.page.evaluate(() => {
    const opened: unknown[][] = ((window as any).opened = []);
    window.open = (...how: unknown[]) => (opened.push(how), null);
  });
  const opened = () => t.page.evaluate(() => (window as any).opened);
  const { x, y, height } = await t.page.evaluate(() => window.longpoint.rect(6, 0));
  await t.page.mouse.move(x + 15, y + height / 2);
  await t.page.mouse.move(x + 20, y + height / 2, { steps: 3 });
  const address = t.page.getByText("https://example.org/plans");
  await address.waitFor();
  expect(await opened()).toEqual([]);
  await address.click();
  await expect.poll(opened).toEqual([["https://example.org/plans", "_blank", "noopener,noreferrer"]]);
  const link = async (row: number, column: number) => {
    await keys.click(row, column);
    await t.page.keyboard.press("Control+k");
    await t.page.getByPlaceholder("Enter link").fill("https://example.org/boards");
    await t.page.getByRole("button", { name: "Confirm" }).click();
  };
  await link(1, 0);
  await link(1, 1);
  await t.page.getByText("Put the link on a cell with a text.").first().waitFor();
  await keys.type(10, 2, [["8.in", 0]]);
  await t.page.evaluate(() => window.longpoint.insertRows("Estimate", 2, 2));
  await keys.settled();
  const parts = await saved();
  expect([...parts[SHEET]!.matchAll(/<hyperlink [^>]*ref="(\w+)"/g)].map(([, place]) => place)).toEqual(["A9", "A2"]);
  expect(parts["xl/worksheets/_rels/sheet1.xml.rels"]).toContain(
    'Target="https://example.org/boards" TargetMode="External"',
  );
  expect(parts[SHEET]).toMatch(/<c r="A2"[^>]* t="s"/);
  expect(parts[SHEET]).toMatch(/<c r="B2"[^>]*><v>40<\/v>/);
  expect(t.requests.filter((url) => !url.startsWith(t.url))).toEqual([]);
});

it("a picture of the file is shown at its cells, and goes with them", async () => {
  await open();
  expect(await says().textContent()).not.toContain("pictures");
  const green = "#80ff80";
  await expect.poll(() => inkOf(2, 5)).toBe(green);
  await t.page.evaluate(() => window.longpoint.insertRows("Estimate", 0, 1));
  await keys.settled();
  await expect.poll(() => inkOf(3, 5)).toBe(green);
  // Where the new row is there is none, though the selection may shade it.
  await expect.poll(() => inkOf(1, 5)).not.toBe(green);
});

it("a filter of the file has its arrows, hides by what is chosen there, goes with its cells, and is in the file with what it hides; another is set", async () => {
  await open();
  expect(await says().textContent()).not.toContain("filters");
  const height = async (row: number) => (await t.page.evaluate((r) => window.longpoint.rect(r, 0), row)).height;
  const { x, y, width, height: high } = await t.page.evaluate(() => window.longpoint.rect(0, 0));
  await t.page.mouse.click(x + width - 9, y + high - 9);
  const panel = t.page.locator('[data-u-comp="sheets-filter-panel"]').first();
  await panel.getByText("Nails").waitFor();
  expect(await panel.getByText(/sort/i).count()).toBe(0);
  expect(await panel.getByText("By Colors").isVisible()).toBe(false);
  const nails = (await panel.getByText("Nails").boundingBox())!;
  await t.page.mouse.click(nails.x - 20, nails.y + nails.height / 2);
  await panel.getByRole("button", { name: "Confirm" }).click();
  await expect.poll(() => height(2)).toBe(0);
  await t.page.evaluate(() => window.longpoint.insertRows("Estimate", 0, 1));
  await expect.poll(async () => [(await height(2)) > 0, await height(3)]).toEqual([true, 0]);
  await t.page.evaluate(() => window.longpoint.undo());
  await expect.poll(async () => [await height(2), (await height(3)) > 0]).toEqual([0, true]);
  await t.page.evaluate(() => window.longpoint.redo());
  await expect.poll(async () => [(await height(2)) > 0, await height(3)]).toEqual([true, 0]);
  const first = (await saved())[SHEET]!;
  expect(first).toContain(
    '<autoFilter ref="A2:D5"><filterColumn colId="0"><filters><filter val="Boards"/><filter val="Hangers"/></filters></filterColumn></autoFilter>',
  );
  expect(first.match(/<row [^>]*hidden="1"[^>]*>/g)).toEqual([expect.stringContaining('r="4"')]);
  await keys.click(1, 0);
  await t.page.keyboard.press("Control+Shift+L");
  await expect.poll(async () => (await height(3)) > 0).toBe(true);
  await t.page.keyboard.down("Shift");
  await keys.click(4, 2);
  await t.page.keyboard.up("Shift");
  await t.page.keyboard.press("Control+Shift+L");
  const coming = t.page.waitForEvent("download");
  await t.page.getByRole("button", { name: "Save .xlsx" }).click();
  const second = partsOf(readFileSync(await (await coming).path()))[SHEET]!;
  expect(second).toContain('<autoFilter ref="A2:C5"/>');
  expect(second).not.toContain("hidden=");
});

/** The middle of a cell on the page. */
async function middle(row: number, column: number): Promise<[number, number]> {
  const { x, y, width, height } = await t.page.evaluate(([r, c]) => window.longpoint.rect(r, c), [
    row,
    column,
  ] as const);
  return [x + width / 2, y + height / 2];
}

/** The middle of a row's number, left of its first cell. */
async function rowHead(row: number): Promise<[number, number]> {
  const { x, y, height } = await t.page.evaluate((r) => window.longpoint.rect(r, 0), row);
  return [x - 15, y + height / 2];
}

/** The color near a cell's upper left corner, as a user sees it. */
async function inkOf(row: number, column: number): Promise<string> {
  const { x, y } = await t.page.evaluate(([r, c]) => window.longpoint.rect(r, c), [row, column] as const);
  const shot = await t.page.screenshot({ clip: { x: x + 3, y: y + 3, width: 2, height: 2 } });
  return t.page.evaluate(async (base64) => {
    const image = await createImageBitmap(new Blob([Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0))]));
    const canvas = new OffscreenCanvas(1, 1).getContext("2d")!;
    canvas.drawImage(image, 0, 0);
    return `#${[...canvas.getImageData(0, 0, 1, 1).data.slice(0, 3)].map((part) => part.toString(16).padStart(2, "0")).join("")}`;
  }, shot.toString("base64"));
}
