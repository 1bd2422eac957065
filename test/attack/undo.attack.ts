import { loadBundled } from "../../src/build/loadBundled.ts";
import type { Headless } from "../hosts/embedded/headless.ts";
import { random, type Attack } from "./attack.ts";

type Sheets = typeof import("../hosts/embedded/headless.ts");
type Step = readonly [what: string, does: (t: Headless) => unknown];

const SPAN = { sheet: "Sheet1", row: 2, column: 0, rows: 5, columns: 2 };
const BLOCK = [
  ["Span", "24'"],
  ["Length", "36'"],
  ["Pitch", 6],
  ["Spacing", 24],
] as const;

/** Beside the block, and within it: a formula there that reads a table of the block goes in a circle, which is an error. */
const COLUMNS = "BDEGHK";

/** What a user may do next. */
function nextStep(pick: (most: number) => number, made: number): Step {
  const cell = () => `${COLUMNS[pick(COLUMNS.length)]}${1 + pick(14)}`;
  const [at, text] = [cell(), ["12", "=A1+B3", "", "mine", "=RAFTER.HIPLEN(6,B3)", '=IF(1,"48""",A2)&B1'][pick(6)]!];
  const row = pick(12);
  const steps: Step[] = [
    [`type ${at} ${text}`, (t) => t.type(at, /^\d+$/.test(text) ? Number(text) : text)],
    [`type ${at} ${text}`, (t) => t.type(at, /^\d+$/.test(text) ? Number(text) : text)],
    [`span ${20 + row}'`, (t) => t.type("B3", `${20 + row}'`)],
    [`spacing ${12 + row}`, (t) => t.type("B6", 12 + row)],
    [`table at ${at}`, (t) => t.type(at, "=RAFTER.JACKTABLE(RoofBlock)")],
    [`insert ${1 + (row % 3)} rows at ${row}`, (t) => t.worksheet().insertRowsBefore(row, 1 + (row % 3))],
    [`delete a row at ${row}`, (t) => t.worksheet().deleteRows(row, 1)],
    [`insert a column at ${2 + (row % 6)}`, (t) => t.worksheet().insertColumnBefore(2 + (row % 6))],
    [
      `write ${made}`,
      (t) =>
        t.host.write({
          title: "x",
          blocks: [{ sheet: "Sheet1", row, column: 20, cells: [[{ content: made }, { content: "=A1" }]] }],
        }),
    ],
    [
      `new sheet ${made}`,
      (t) =>
        t.host.write({
          title: "x",
          blocks: [{ sheet: `New ${made}`, newSheet: true, row: 0, column: 0, cells: [[{ content: "=Sheet1!A1" }]] }],
        }),
    ],
  ];
  return steps[pick(steps.length)]!;
}

/** All that stands in the sheets, and the names. */
async function everything(t: Headless): Promise<string> {
  await t.sheet.calculation.settled();
  const cells = await Promise.all(
    (await t.host.sheets()).map(async (sheet) => [
      sheet,
      (await t.host.read({ sheet, row: 0, column: 0, rows: 60, columns: 30 })).map((line) =>
        line.map(({ formula, value }) => [formula, value]),
      ),
    ]),
  );
  return JSON.stringify([cells, [...(await t.host.namedAreas())]]);
}

/** The first cell in which two states of the sheets differ. */
function difference(before: string, after: string): string {
  const [a, b] = [before, after].map((text) => JSON.parse(text) as [[string, unknown[][]][], unknown]);
  for (const [i, [sheet, rows]] of a![0].entries())
    for (const [r, line] of rows.entries())
      for (const [c, cell] of line.entries()) {
        const there = b![0][i]?.[1][r]?.[c];
        if (JSON.stringify(cell) !== JSON.stringify(there))
          return `${sheet} ${String.fromCharCode(65 + c)}${r + 1}: ${JSON.stringify(cell)} is ${JSON.stringify(there)}`;
      }
  return `${JSON.stringify(a![1])} is ${JSON.stringify(b![1])}`;
}

/** Every step is undone and done again: the sheet is the one before, then the one after. Then all of them are undone. */
export const undo: Attack = {
  name: "undo and redo of every step in the embedded sheet",
  async run(seed, more) {
    const { headless, real } = await loadBundled<Sheets>("test/hosts/embedded/headless.ts");
    const found: string[] = [];
    let tried = 0;
    for (let round = 0; more(); round++) {
      const pick = random(seed + round);
      const t = headless(real, 200);
      BLOCK.forEach(([label, value], i) => (t.type(`A${3 + i}`, label), t.type(`B${3 + i}`, value)));
      await t.host.nameArea("RoofBlock", SPAN);
      const done: string[] = [];
      for (let i = 0; i < 12 && more(); i++) {
        const before = await everything(t);
        const [what, does] = nextStep(pick, i);
        done.push(what);
        await does(t);
        const after = await everything(t);
        if (after === before) continue;
        tried++;
        const tell = (how: string, is: string, was: string) =>
          found.push(
            `seed ${seed + round}, ${how} of "${what}" after ${done.slice(0, -1).join("; ")}: ${difference(was, is)}`,
          );
        t.undo();
        const undone = await everything(t);
        if (undone !== before) tell("undo", undone, before);
        t.redo();
        const again = await everything(t);
        if (again !== after) tell("redo", again, after);
        if (found.length > 0) break;
      }
      t.dispose();
      if (found.length > 4) break;
    }
    return { tried, found };
  },
};
