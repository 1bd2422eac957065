import prepare from "../browser/build.ts";
import { closeBrowser, openBench } from "../browser/open.ts";
import { random, type Attack } from "./attack.ts";

/** Bytes that a round of actions may leave behind once all caches are warm. */
const MOST_LEFT = 4_000_000;
/** Actions in a round. */
const ROUND = 150;

/** What stands in the cells that only this writes into. */
const OWN = { sheet: "Bid", row: 60, column: 12, rows: 3, columns: 3 };

/**
 * The built page for a long time: fields typed over, cells written, undone and done again, sheets gone through. The cells hold what a model of
 * them holds, the console stays clean, and no round leaves memory behind.
 */
export const soak: Attack = {
  name: "pane and sheet in a browser, with memory",
  async run(seed, more) {
    await prepare();
    const found: string[] = [];
    let tried = 0;
    try {
      const { page, problems, close } = await openBench();
      const session = await page.context().newCDPSession(page);
      const heap = async () => {
        for (let i = 0; i < 3; i++) await session.send("HeapProfiler.collectGarbage");
        return (await session.send("Runtime.getHeapUsage")).usedSize;
      };
      const pick = random(seed);
      const empty = Array.from({ length: OWN.rows }, () => Array<number | string>(OWN.columns).fill(""));
      // What stands there, and what undo and redo come to.
      let now = empty;
      let past: (typeof empty)[] = [];
      let future: (typeof empty)[] = [];
      const act = async () => {
        const what = pick(10);
        if (what < 3) {
          const field = ["span", "length", "pitch", "overhang"][pick(4)]!;
          const text = field === "pitch" ? String(3 + pick(9)) : `${16 + pick(20)}'`;
          await page.evaluate(
            ([id, typed]) => {
              const input = document.getElementById(`lp-${id!}`) as HTMLInputElement;
              input.value = typed!;
              input.dispatchEvent(new Event("input", { bubbles: true }));
            },
            [field, text],
          );
          return `type ${text} into ${field}`;
        }
        if (what < 7) {
          const [row, column, value] = [pick(OWN.rows), pick(OWN.columns), pick(100)];
          await page.evaluate(
            (block) => window.longpoint.host.write({ title: "soak", blocks: [block] }).then(() => undefined),
            { sheet: OWN.sheet, row: OWN.row + row, column: OWN.column + column, cells: [[{ content: value }]] },
          );
          past = [...past, now].slice(-10);
          future = [];
          now = now.map((line, i) => (i === row ? line.map((old, j) => (j === column ? value : old)) : line));
          return `write ${value}`;
        }
        const back = what < 9;
        const from = back ? past : future;
        const next = from.at(-1);
        if (!next) return "nothing";
        await page.evaluate((undo) => (undo ? window.longpoint.undo() : window.longpoint.redo()), back);
        if (back) [past, future] = [past.slice(0, -1), [...future, now]];
        else [past, future] = [[...past, now], future.slice(0, -1)];
        now = next;
        return back ? "undo" : "redo";
      };
      let before: number | null = null;
      while (more() && found.length === 0) {
        for (let i = 0; i < ROUND && more(); i++) {
          const what = await act();
          tried++;
          const read = await page.evaluate((area) => window.longpoint.host.read(area), OWN);
          const values = read.map((line) => line.map(({ value }) => value));
          if (JSON.stringify(values) !== JSON.stringify(now)) {
            found.push(
              `seed ${seed}, action ${tried}, ${what}: ${JSON.stringify(values)} is not ${JSON.stringify(now)}`,
            );
            break;
          }
        }
        const after = await heap();
        if (before !== null && after - before > MOST_LEFT)
          found.push(
            `seed ${seed}, after ${tried} actions: ${((after - before) / 1e6).toFixed(1)} MB more than a round before`,
          );
        before = after;
        found.push(...problems.splice(0).map((problem) => `seed ${seed}, by action ${tried}: ${problem}`));
      }
      await close();
    } finally {
      await closeBrowser();
    }
    return { tried, found };
  },
};
