import { beforeAll, describe, expect, it } from "vitest";
import { bench } from "./bench.ts";
import { sheetKeys } from "./sheetKeys.ts";

const t = bench();
beforeAll(() => t.open());
const keys = sheetKeys(t);
const LIST = 'ul[data-u-comp="sheets-formula-editor"]';

describe("a formula typed with a quote inside a text", () => {
  const formulas = [
    '=RAFTER.JACKLEN(6,"48""",1.5,1.5)',
    '=IF(1,"a""",2)&"b"',
    '="9\' 4 5/8"""&A1',
    '=IF(E8>0,"""",E8)',
    '=RAFTER.INCHES("12\'-6 1/2""")+1',
  ];
  it.each([0, 60])("stands in its cell as typed, at %i ms a key", async (delay) => {
    for (const [i, formula] of formulas.entries()) {
      await keys.type(4 + i, 7, [[formula, delay]]);
      expect((await keys.cell("Bid", 4 + i, 7)).formula).toBe(formula);
    }
  });

  it("goes with a copy", async () => {
    await keys.type(4, 7, [['=IF(1,"a""",A5)&A5', 0]]);
    await keys.click(4, 7);
    await t.page.keyboard.press("Control+c");
    await keys.click(6, 7);
    // The browser's clipboard takes a moment.
    await expect
      .poll(async () => {
        await t.page.keyboard.press("Control+v");
        return (await keys.cell("Bid", 6, 7)).formula;
      })
      .toBe('=IF(1,"a""",A7)&A7');
  });
});

describe("the list of functions", () => {
  // A pause in which the list comes, then the rest in haste: Enter is meant for the cell.
  const paused = [
    ["=SU", "M(1,2)"],
    ["=RAFTER.HIP", "LEN(6,144)"],
    ["=RAFTER.JACK", "LEN(6,48,1.5,1.5)"],
    ["=1+RAFTER.HI", "PDEG(6)"],
  ] as const;

  it("gives way to what is typed on, in haste or slowly, on a fast page and on one 4 times as slow", async () => {
    const types = async (row: number, [start, rest]: readonly [string, string], slow: number, delay: number) => {
      await keys.type(row, 7, [
        [start, 30, 700 * slow],
        [rest, delay],
      ]);
      expect((await keys.cell("Bid", row, 7)).formula).toBe(start + rest);
    };
    for (const [i, one] of paused.entries()) await types(10 + i, one, 1, 0);
    const slow = await keys.slow(4);
    await types(14, paused[1], 4, 60);
    await types(15, paused[2], 4, 150);
    await slow.end();
  });

  it("closes at the bracket", async () => {
    await keys.type(16, 7, [["=RAFTER.HIPL", 30]], "");
    await t.page.locator(LIST).waitFor();
    await t.page.keyboard.type("EN(");
    await t.page.locator(LIST).waitFor({ state: "detached" });
    await t.page.keyboard.press("Escape");
    await t.page.keyboard.press("Escape");
  });

  it.each([
    ["Enter", 17],
    ["Tab", 18],
  ])("gives its highlighted function to %s while the name is typed", async (key, row) => {
    await keys.type(row, 7, [["=RAFTER.HIPL", 30]], "");
    await t.page.locator(LIST).getByText("RAFTER.HIPLEN").waitFor();
    await t.page.keyboard.press(key);
    // The caret follows a moment later.
    await t.page.locator(LIST).waitFor({ state: "detached" });
    await t.page.waitForTimeout(1_000);
    await t.page.keyboard.type("6,144)", { delay: 30 });
    await t.page.keyboard.press("Enter");
    expect((await keys.cell("Bid", row, 7)).formula).toBe("=RAFTER.HIPLEN(6,144)");
  });
});
