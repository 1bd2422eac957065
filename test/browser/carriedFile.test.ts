import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { readBook } from "../../src/xlsx/readBook.ts";
import { byExceljs, office, partsOf, shownByOffice, withMore } from "../xlsx/carry/otherPrograms.ts";
import { bench } from "./bench.ts";
import { fileHands } from "./fileHands.ts";

const t = bench();
const { says, said, choose } = fileHands(t);
const NOTES = "xl/worksheets/sheet2.xml";
/** Where the pane's fields are kept, once one was typed: they are no part of the user's own. */
const KEPT = ["[Content_Types].xml", "_rels/.rels", "docProps/custom.xml"];
const SHEET = "xl/worksheets/sheet1.xml";

let estimate: Buffer;
beforeAll(async () => void (estimate = Buffer.from(withMore(await byExceljs()))));

async function open(bytes = estimate, name = "estimate.xlsx"): Promise<void> {
  await t.open();
  await choose(name, bytes);
  await said("Undo brings back");
}

async function type(row: number, column: number, content: string | number): Promise<void> {
  await t.page.evaluate(
    ([r, c, text]) =>
      window.longpoint.host.write({
        title: "test",
        blocks: [{ sheet: "Estimate", row: r, column: c, cells: [[{ content: text }]] }],
      }),
    [row, column, content] as const,
  );
}

async function download(press: () => Promise<void>): Promise<{ name: string; bytes: Buffer }> {
  const coming = t.page.waitForEvent("download");
  await press();
  const file = await coming;
  return { name: file.suggestedFilename(), bytes: readFileSync(await file.path()) };
}

/** Saves for the first time: presses Save, then takes a name. */
async function saveAs(name?: string): Promise<{ name: string; bytes: Buffer }> {
  await t.page.getByRole("button", { name: "Save .xlsx" }).click();
  const field = t.page.locator("#files .message").getByLabel("Name");
  await field.waitFor();
  if (name !== undefined) await field.fill(name);
  return download(() => field.press("Enter"));
}

const save = () => download(() => t.page.getByRole("button", { name: "Save .xlsx" }).click());

function changedParts(before: Uint8Array, after: Uint8Array): string[] {
  const [a, b] = [partsOf(before), partsOf(after)];
  return [...new Set([...Object.keys(a), ...Object.keys(b)])]
    .filter((path) => a[path] !== b[path] && !KEPT.includes(path))
    .sort();
}

describe("an estimator's own workbook", () => {
  it("says what is not shown, offers another name at the first save, and carries every part but the cells that changed", async () => {
    await open();
    expect(await says().textContent()).toMatch(
      /Not shown here, but saved with the file as it is: (?!.*pictures).*charts/,
    );
    await type(1, 1, 50);
    await t.page.getByRole("button", { name: "Save .xlsx" }).click();
    const field = t.page.locator("#files .message").getByLabel("Name");
    await expect.poll(() => field.inputValue()).toBe("estimate (changed)");
    expect(await says().textContent()).toBe("Save under another name, so that estimate stays as it is.");
    expect(await field.evaluate((one) => document.activeElement === one)).toBe(true);
    const file = await download(() => field.press("Enter"));
    expect(file.name).toBe("estimate (changed).xlsx");
    expect(await says().textContent()).toBe(
      "estimate (changed).xlsx holds all 2 sheets with formulas, values and formats.",
    );
    expect(changedParts(estimate, file.bytes)).toEqual(["xl/workbook.xml", SHEET, NOTES]);
    const [before, after] = [partsOf(estimate)[SHEET]!, partsOf(file.bytes)[SHEET]!];
    const cells = (xml: string) => xml.replace(/ spans="[^"]*"|<dimension[^>]*>/g, "").split(/(?=<c )/);
    const differ = cells(after).filter((cell, i) => cell !== cells(before)[i]);
    expect(differ.map((cell) => /r="(\w+)"/.exec(cell)![1])).toEqual(["B2", "D2", "D5"]);
    // Once it is named, it is saved at once.
    await type(1, 1, 60);
    const next = await save();
    expect(next.name).toBe("estimate (changed).xlsx");
    if (office) {
      const shown = shownByOffice({ "a.xlsx": file.bytes, "b.xlsx": next.bytes });
      expect([shown["a.xlsx"]![4]![3], shown["b.xlsx"]![4]![3]].map(String)).toEqual(["1018.9", "1203.9"]);
    }
  });

  it("without a change is saved as it is", async () => {
    await open();
    expect(changedParts(estimate, (await saveAs()).bytes)).toEqual([]);
  });

  it("takes its parts along where rows come in and go, undo included", async () => {
    await open();
    const insert = () =>
      t.page
        .evaluate(() => window.longpoint.insertRows("Estimate", 2, 2))
        .then(() => t.page.evaluate(() => window.longpoint.settled()));
    await insert();
    const moved = partsOf((await saveAs("more rows")).bytes);
    expect(moved["xl/charts/chart1.xml"]).toContain("<c:f>Estimate!$D$2:$D$6</c:f>");
    expect(moved["xl/tables/table1.xml"]).toContain('ref="A16:B18"');
    await t.page.evaluate(() => window.longpoint.undo());
    await t.page.evaluate(() => window.longpoint.settled());
    expect(changedParts(estimate, (await save()).bytes)).toEqual([]);
  });

  it("is kept with its job: gone on with after a reload, it is still whole", async () => {
    await open();
    await type(1, 1, 50);
    await t.page.locator("#files .jobs").getByText("This job is kept.", { exact: true }).waitFor({ state: "attached" });
    await t.open();
    await t.page.locator("#files .message").getByRole("button", { name: "Continue" }).click();
    await expect.poll(() => says().textContent()).toBe("estimate is as you left it.");
    const { bytes } = await save();
    expect(changedParts(estimate, bytes)).toEqual(["xl/workbook.xml", SHEET, NOTES]);
  });
});

describe("a copy with plain values", () => {
  it("has every RAFTER formula as its value and tables as plain cells, and reads well elsewhere; the save says what does not", async () => {
    await open();
    await type(20, 0, "=RAFTER.JACKLEN(6,48,1.5,1.5)");
    await type(20, 1, "=A21*2");
    await t.page.evaluate(() => window.longpoint.settled());
    const whole = await saveAs("with formulas");
    expect((await readBook(whole.bytes, "")).book.sheets[0]!.rows[20]![0]).toMatchObject({
      formula: "=RAFTER.JACKLEN(6,48,1.5,1.5)",
    });
    expect(await says().textContent()).toContain("show #NAME? in 1 cell of RAFTER functions");
    const plain = await download(() => t.page.getByRole("button", { name: "Save a copy with plain values" }).click());
    expect(plain.name).toBe("with formulas (plain values).xlsx");
    expect(await says().textContent()).toContain("with the value of every RAFTER formula in its place");
    const [length, double] = (await readBook(plain.bytes, "")).book.sheets[0]!.rows[20]!;
    expect(length!.formula).toBeUndefined();
    expect(length!.value).toBeCloseTo(53.3183, 4);
    expect(double).toMatchObject({ formula: "=A21*2" });
    expect(partsOf(plain.bytes)["xl/charts/chart1.xml"]).toBe(partsOf(estimate)["xl/charts/chart1.xml"]);
  });

  it("of a book that was made here has its tables as cells", async () => {
    await t.open();
    const { bytes } = await download(() =>
      t.page.getByRole("button", { name: "Save a copy with plain values" }).click(),
    );
    const { book } = await readBook(bytes, "");
    const cells = book.sheets.flatMap(({ rows }) => rows.flat());
    expect(cells.some((cell) => cell?.formula?.includes("RAFTER") || cell?.spill || cell?.spilled)).toBe(false);
    expect(book.sheets[1]!.rows.length).toBeGreaterThan(5);
  });
});

describe("what may go wrong", () => {
  it("a file that was changed on the disk meanwhile is said, and what is saved has a name of its own", async () => {
    await open();
    await t.page.evaluate(() => {
      File.prototype.slice = () =>
        ({ arrayBuffer: () => Promise.reject(new DOMException("no", "NotReadableError")) }) as never;
    });
    await saveAs("mine");
    expect(await says().textContent()).toContain(
      "estimate.xlsx was changed or moved on the disk after it was opened here.",
    );
  });

  it("a chart that is broken, and parts of a newer program, do no harm and stay", async () => {
    const broken = Buffer.from(withMore(await byExceljs(), "<c:chartSpace><c:chart>"));
    await open(broken);
    expect(await t.page.evaluate(() => window.longpoint.host.sheets())).toEqual(["Estimate", "Notes"]);
    await type(1, 1, 50);
    const { bytes } = await saveAs();
    expect(partsOf(bytes)["xl/charts/chart1.xml"]).toBe("<c:chartSpace><c:chart>");
    expect(partsOf(bytes)["xl/future/thing1.xml"]).toBe(partsOf(broken)["xl/future/thing1.xml"]);
  });
});
