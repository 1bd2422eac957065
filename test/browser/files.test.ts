import type { Cell } from "hucre";
import { writeXlsx } from "hucre/xlsx";
import { describe, expect, it } from "vitest";
import { bench } from "./bench.ts";
import { fileHands, sampleBytes, withoutLink } from "./fileHands.ts";
import { hold } from "./hold.ts";

const t = bench();
const { says, said, shown, choose, saved } = fileHands(t);

it("the file bar keeps the focus of a user at the keyboard, and still does one thing at a time", async () => {
  await t.open();
  const save = t.page.getByRole("button", { name: "Save .xlsx" });
  await save.focus();
  let downloads = 0;
  t.page.on("download", () => void downloads++);
  // What writes files is held back until both are pressed, or a busy machine saves twice, one after the other.
  const scripts = await hold(t.page, "**/*.js");
  await t.page.keyboard.press("Enter");
  await t.page.keyboard.press("Enter");
  await scripts.asked();
  await scripts.go();
  await said("holds");
  expect(await save.evaluate((button) => document.activeElement === button)).toBe(true);
  expect(downloads).toBe(1);
});

describe("files of the user's own", () => {
  it("that cannot be opened are refused in words and the sheets stay", async () => {
    await t.open();
    await t.page.evaluate(() =>
      window.longpoint.host.write({
        title: "test",
        blocks: [{ sheet: "Bid", row: 30, column: 0, cells: [[{ content: "mine" }]] }],
      }),
    );
    const before = await shown();
    for (const [name, bytes, words] of [
      ["letter.xlsx", Buffer.from("Dear carpenter"), "This is a text file"],
      ["cut off.xlsx", sampleBytes("bid").subarray(0, 9000), "The file is broken"],
      ["nothing.xlsx", Buffer.alloc(0), "is empty"],
    ] as const) {
      await choose(name, bytes);
      await said(words);
      expect(await says().textContent()).toContain(`${name} was not opened.`);
      expect(await says().textContent()).toContain("Your sheets are as they were.");
      expect(await shown()).toEqual(before);
    }
    await t.page.getByRole("button", { name: "Close this message" }).click();
    expect(await says().textContent()).toBe("");
  });

  it("can be stopped while they are opened, and the sheets stay", async () => {
    await t.open();
    const before = await shown();
    const reader = await hold(t.page, "**/reader.*.js");
    await choose("bid.xlsx", sampleBytes("bid"));
    await t.page.locator("#files .message").getByRole("button", { name: "Stop" }).click();
    await said("bid.xlsx was not opened. You stopped it. Your sheets are as they were.");
    await reader.go();
    expect(await shown()).toEqual(before);
  });

  it("that were changed on the disk after they were chosen are asked for again", async () => {
    await t.open();
    await t.page.evaluate(() => {
      File.prototype.arrayBuffer = () => Promise.reject(new DOMException("no", "NotReadableError"));
    });
    await choose("bid.xlsx", sampleBytes("bid"));
    await expect
      .poll(() => says().textContent())
      .toContain("was changed or moved after you chose it. Choose it again.");
  });

  it("carry what the pane remembers: opened again, the fields are as they were, and undo gives the others back", async () => {
    await t.open();
    const span = t.page.locator("#lp-span");
    const remembered = () => t.page.evaluate(() => window.longpoint.host.recall("pane"));
    await span.fill("27' 3");
    await expect.poll(remembered).toContain("27' 3");
    const file = await saved();
    expect(file.left).toEqual([]);
    expect(await says().textContent()).not.toContain("Not kept");
    expect(file.book.kept!["pane"]).toBe(await remembered());
    await span.fill("30' 6");
    await expect.poll(remembered).toContain("30' 6");
    await choose("again.xlsx", file.bytes);
    await expect.poll(() => span.inputValue()).toBe("27' 3");
    expect(await remembered()).toBe(file.book.kept!["pane"]);
    await t.page.evaluate(() => window.longpoint.undo());
    await expect.poll(() => span.inputValue()).toBe("30' 6");
    await t.page.evaluate(() => window.longpoint.redo());
    await expect.poll(() => span.inputValue()).toBe("27' 3");
    await t.page.getByLabel("Samples").selectOption("Metric job");
    await said("is open");
    // It remembers nothing, and has a block.
    const job = await t.page.evaluate(() =>
      window.longpoint.host.read({ sheet: "Job", row: 0, column: 0, rows: 30, columns: 2 }),
    );
    const there = job.find(([label]) => label!.value === "Span")!;
    await expect.poll(() => span.inputValue()).toBe(String(there[1]!.value));
    await t.page.locator("#pane").getByText("Follows the roof block at Job!A").waitFor();
  });

  it("are asked for before the page is left with edits that nothing keeps yet", async () => {
    await t.open();
    const asks = () => t.page.evaluate(() => !window.dispatchEvent(new Event("beforeunload", { cancelable: true })));
    const edit = () =>
      t.page.evaluate(() =>
        window.longpoint.host.write({
          title: "test",
          blocks: [{ sheet: "Bid", row: 30, column: 0, cells: [[{ content: "mine" }]] }],
        }),
      );
    expect(await asks()).toBe(false);
    await edit();
    expect(await asks()).toBe(true);
    // The browser keeps it.
    await expect.poll(asks).toBe(false);
    // One that keeps nothing.
    await t.page.evaluate(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException("no room", "QuotaExceededError");
      };
    });
    await t.page.evaluate(() => window.longpoint.undo());
    await t.page.locator("#files summary", { hasText: "not kept" }).waitFor();
    expect(await asks()).toBe(true);
    await saved();
    await expect.poll(asks).toBe(false);
    await t.page.evaluate(() => window.longpoint.redo());
    expect(await asks()).toBe(true);
  });

  it("from elsewhere open with what can be kept, and the rest is named", async () => {
    await t.open();
    const bytes = await writeXlsx({
      sheets: [
        {
          name: "Shop list",
          rows: [],
          cells: new Map<string, Partial<Cell>>([
            ["0,0", { value: 2, comment: { text: "two" } }],
            ["1,0", { value: 3 }],
            [
              "0,1",
              {
                formula: "A1*10",
                formulaType: "shared",
                formulaSharedIndex: 0,
                formulaRef: "B1:B2",
                formulaResult: 20,
              },
            ],
            ["1,1", { formula: "", formulaType: "shared", formulaSharedIndex: 0, formulaResult: 30 }],
            // The file's own result is an old one.
            ["0,2", { formula: "Spacing*2", formulaResult: 48 }],
            ["1,2", { formula: "SUM(B1:B2)", formulaResult: 50 }],
          ]),
        },
      ],
      namedRanges: [
        { name: "Spacing", range: "'Shop list'!$A$1" },
        { name: "Own", range: "'Shop list'!$A$1", scope: "Shop list" },
      ],
    });
    await choose("list.xlsx", Buffer.from(bytes));
    await said("is open");
    const text = await says().textContent();
    expect(text).toContain("list is open.");
    expect(text).toContain("saved with the file as it is: names that one sheet has for itself (Own).");
    expect(text).toContain("This cell shows another value here than in the file: 'Shop list'!C1.");
    const [[, rows]] = (await shown()) as [[string, unknown[][]]];
    expect(
      rows
        .slice(0, 2)
        .map((row) => (row as [string | null, unknown][]).slice(1, 3).map(([formula, value]) => [formula, value])),
    ).toEqual([
      [
        ["=A1*10", 20],
        ["=Spacing*2", 4],
      ],
      [
        ["=A2*10", 30],
        ["=SUM(B1:B2)", 50],
      ],
    ]);
    const file = await saved();
    expect(file.book.names).toEqual([{ name: "Spacing", formula: "='Shop list'!$A$1" }]);
    expect(file.book.sheets[0]!.rows[1]![1]).toMatchObject({ value: 30 });
    await t.page.evaluate(() => window.longpoint.undo());
    await t.page.evaluate(() => window.longpoint.settled());
    expect(withoutLink((await saved()).book).names).toBeUndefined();
  });

  it("an edit goes into the saved file, with everything that hangs on it", async () => {
    await t.open();
    await t.page.evaluate(() =>
      window.longpoint.host.write({
        title: "test",
        blocks: [
          {
            sheet: "Bid",
            row: 30,
            column: 0,
            cells: [
              [
                { content: "=RAFTER.JACKLEN(6,48,1.5,1.5)", format: "0.00" },
                { content: "mine", style: "heading" },
              ],
            ],
          },
        ],
      }),
    );
    const { name, book } = await saved();
    // With a number behind it, where the browser keeps the job already.
    expect(name).toMatch(/^Ferry landing( \(\d+\))?\.xlsx$/);
    const row = book.sheets[0]!.rows[30]!;
    expect(row[0]).toMatchObject({ formula: "=RAFTER.JACKLEN(6,48,1.5,1.5)", look: { format: "0.00" } });
    expect(row[0]!.value).toBeCloseTo(53.3183, 4);
    expect(row[1]).toMatchObject({ value: "mine", look: { bold: true } });
    const jacks = book.sheets[1]!;
    expect(jacks.frozenRows).toBe(1);
    expect(jacks.rows[0]![0]!.spill!.rows).toBeGreaterThan(5);
    expect(await says().textContent()).toContain(`${name} holds all 2 sheets with formulas, values and formats.`);
  });
});
