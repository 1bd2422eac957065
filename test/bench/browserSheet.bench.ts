import { build } from "esbuild";
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { CDPSession } from "playwright-core";
import { ROOT } from "../../src/build/root.ts";
import { texts } from "../../src/pane/words/texts.ts";
import type { BookCell } from "../../src/xlsx/book.ts";
import { MOST_CELLS } from "../../src/xlsx/checkCells.ts";
import { writeBook } from "../../src/xlsx/writeBook.ts";
import prepare from "../browser/build.ts";
import type { Opened } from "../browser/open.ts";
import { closeBrowser, open, openBench } from "../browser/open.ts";
import type { Row } from "./row.ts";

const PAGES = 3;
/** Most bytes of script, compressed, until the sheet is ready. */
const FIRST_VIEW = 1_200_000;
/** Most milliseconds in which the page takes no key. */
const LONGEST_TASK = 200;

/** The browser's sheet: how soon it is there, against its maker's page without anything of ours, and how long it holds the page up. */
export async function bench(): Promise<Row[]> {
  await prepare();
  try {
    const rows: Row[] = [];
    for await (const one of steps()) rows.push(one);
    return rows;
  } finally {
    await closeBrowser();
  }
}

async function buildBare(): Promise<void> {
  const folder = join(ROOT, "dist/bare");
  mkdirSync(folder, { recursive: true });
  await build({
    entryPoints: [join(import.meta.dirname, "bareSheet.ts")],
    outfile: join(folder, "bare.js"),
    bundle: true,
    minify: true,
    format: "iife",
    target: "es2022",
    define: { "process.env.NODE_ENV": '"production"' },
    logLevel: "error",
  });
  writeFileSync(
    join(folder, "index.html"),
    `<!doctype html><html><head><link rel="icon" href="data:,"><link rel="stylesheet" href="bare.css"><script defer src="bare.js"></script></head>
<body style="margin:0;height:100vh"><div id="app" style="height:100%"></div></body></html>`,
  );
}

async function starts(tabs: { readonly bare: Tab; readonly ours: Tab }, slow: number): Promise<Row[]> {
  const times = { bare: [] as number[], ready: [] as number[], answers: [] as number[], bytes: [] as number[] };
  for (let i = 0; i < PAGES; i++) {
    const [bare, ours] = [tabs.bare.opened, tabs.ours.opened];
    await slowed(tabs.bare, slow, async () => {
      times.bare.push(await drawn(bare));
      await takesKey(bare, () => window.bare.cell());
    });
    await slowed(tabs.ours, slow, async () => {
      times.ready.push(await drawn(ours));
      const got = await ours.page.evaluate(() => ({
        answers: (window as { answered?: number }).answered ?? Number.NaN,
        bytes: (performance.getEntriesByType("resource") as PerformanceResourceTiming[])
          .filter(({ name, responseEnd }) => name.endsWith(".js") && responseEnd <= window.longpoint.readyAfter)
          .reduce((sum, { encodedBodySize }) => sum + encodedBodySize, 0),
      }));
      times.answers.push(got.answers);
      times.bytes.push(got.bytes);
      await takesKey(ours, async () => {
        const rows = await window.longpoint.host.read({ sheet: "Bid", row: 0, column: 0, rows: 1, columns: 1 });
        return rows[0]![0]!.value;
      });
    });
  }
  const [bare, ready, answers, bytes] = [times.bare, times.ready, times.answers, times.bytes].map(median) as [
    number,
    number,
    number,
    number,
  ];
  const ms = (value: number) => `${value.toFixed(0)} ms`;
  const how = slow === 1 ? "" : `, ${slow} times as slow`;
  return [
    {
      name: `pane answers${how}`,
      ratio: answers / ready,
      most: 1,
      what: `after ${ms(answers)}, over the sheet ready after ${ms(ready)}`,
    },
    {
      name: `sheet ready${how}`,
      ratio: ready / bare,
      most: 1.1,
      what: `drawn after ${ms(ready)} with every cell calculated, over its maker's page without ours, empty, ${ms(bare)}`,
    },
    ...(slow === 1
      ? [
          {
            name: "script of the first view",
            ratio: bytes / FIRST_VIEW,
            most: 1,
            what: `${(bytes / 1e6).toFixed(2)} MB compressed, over ${FIRST_VIEW / 1e6} MB`,
          },
        ]
      : []),
  ];
}

/** The frame in which a sheet is first seen, of either page; its maker says that it is there before it is drawn. */
const DRAWN = `
for (const name of ["longpoint", "bare"]) {
  let sheet;
  Object.defineProperty(window, name, {
    configurable: true,
    get: () => sheet,
    set(set) {
      sheet = set;
      sheet.ready.then(() => requestAnimationFrame(() => setTimeout(() => (window.drawnAfter = performance.now()))));
    },
  });
}
`;

/** Milliseconds from a page's start until its sheet is on the screen. */
async function drawn({ page }: Opened): Promise<number> {
  const got = await page.waitForFunction(() => (window as { drawnAfter?: number }).drawnAfter, null, {
    timeout: 120_000,
  });
  return (await got.jsonValue())!;
}

/** Ready is what takes a key: typed now, it stands in the first cell. */
async function takesKey({ page }: Opened, cell: () => unknown): Promise<void> {
  await page.keyboard.type("7");
  await page.keyboard.press("Enter");
  for (let i = 0; i < 100; i++) {
    if (Number(await page.evaluate(cell)) === 7) return;
    await page.waitForTimeout(50);
  }
  throw new Error("A sheet that is said to be ready took no key.");
}

/** A key typed as soon as there is a field, and the time until the plan has followed it. */
const TYPES = `
const look = () => {
  const input = document.getElementById("lp-span");
  const drawn = () => document.querySelector("#pane .lp-drawn svg")?.outerHTML;
  if (!input || !drawn()) return setTimeout(look, 20);
  const before = drawn();
  input.value = "25'";
  input.dispatchEvent(new Event("input", { bubbles: true }));
  const wait = () => (drawn() === before ? setTimeout(wait, 20) : requestAnimationFrame(() => (window.answered = performance.now())));
  wait();
};
if (location.protocol !== "about:") look();
`;

/** A tab for each page, which has shown it once: what a browser makes ready for any page does not count, and takes as long as the page. */
async function openTab(folder: string, first: string): Promise<Tab> {
  const opened = await open(folder, "", {}, {}, first);
  await drawn(opened);
  await opened.clear();
  return { opened, session: await opened.page.context().newCDPSession(opened.page) };
}

interface Tab {
  readonly opened: Opened;
  readonly session: CDPSession;
}

/** The tab's page as it starts with nothing kept from before, on a processor that is so many times as slow, until `look` has seen enough. */
async function slowed({ opened, session }: Tab, times: number, look: () => Promise<void>): Promise<void> {
  await session.send("Network.clearBrowserCache");
  await session.send("Emulation.setCPUThrottlingRate", { rate: times });
  await opened.again("", {});
  await look();
  await session.send("Emulation.setCPUThrottlingRate", { rate: 1 });
  await opened.clear();
}

/** Each as it is measured. */
export async function* steps(): AsyncGenerator<Row> {
  await buildBare();
  const tabs = { bare: await openTab("bare", DRAWN), ours: await openTab("bench", DRAWN + TYPES) };
  for (const slow of [1, 4]) yield* await starts(tabs, slow);
  for (const { opened } of Object.values(tabs)) await opened.close();
  const page = await openBench();
  await page.page.evaluate(() => {
    const tasks: number[] = ((window as { tasks?: number[] }).tasks = []);
    new PerformanceObserver((list) => tasks.push(...list.getEntries().map(({ duration }) => duration))).observe({
      type: "longtask",
    });
  });
  yield task("all tables filled", await longest(page, () => fillAll(page)));
  const file = join(tmpdir(), `longpoint-${process.pid}.xlsx`);
  writeFileSync(file, await largeFile(MOST_CELLS));
  const opened = await longest(page, () => openFile(page, file));
  rmSync(file);
  yield task(`a file of ${MOST_CELLS.toLocaleString("en")} cells opened, the most`, opened);
  await page.close();
}

const task = (name: string, { most, took }: { most: number; took: number }): Row => ({
  name,
  ratio: most / LONGEST_TASK,
  most: 1,
  what: `the longest that the page takes no key, ${most.toFixed(0)} ms of ${took.toFixed(0)} ms, over ${LONGEST_TASK} ms`,
});

/** The longest task while something is done, in milliseconds. */
async function longest({ page }: Opened, does: () => Promise<void>): Promise<{ most: number; took: number }> {
  const tasks = () => page.evaluate(() => (window as unknown as { tasks: number[] }).tasks.splice(0));
  await page.waitForTimeout(500);
  await tasks();
  const start = performance.now();
  await does();
  const took = performance.now() - start;
  await page.waitForTimeout(300);
  return { most: Math.max(0, ...(await tasks())), took };
}

async function fillAll({ page }: Opened): Promise<void> {
  const pane = page.locator("#pane");
  await pane
    .locator("section[aria-labelledby=lp-fill] input[type=checkbox]:not(:checked)")
    .evaluateAll((boxes) => boxes.forEach((box) => (box as HTMLElement).click()));
  await pane.getByRole("button", { name: texts.fill, exact: true }).click();
  await pane.getByRole("button", { name: /^Undo this fill/ }).waitFor({ timeout: 120_000 });
  await page.evaluate(() => window.longpoint.settled());
}

/** Chooses a file by its place, as a user does: bytes that are handed over are decoded in the page, in a task longer than any of its own. */
async function openFile({ page }: Opened, file: string): Promise<void> {
  await page.locator("#files input[type=file]").setInputFiles(file);
  await page.locator("#files .message [role=status]", { hasText: "Large is open" }).waitFor({ timeout: 180_000 });
}

/** A list of goods, a tenth of it formulas. */
function largeFile(cells: number): Promise<Uint8Array> {
  const columns = 10;
  const rows = Array.from({ length: cells / columns }, (_, i): BookCell[] =>
    Array.from({ length: columns }, (__, j) =>
      j === 0
        ? { value: `Item ${i % 500}` }
        : j === columns - 1
          ? { value: null, formula: `=B${i + 1}*C${i + 1}` }
          : { value: i * j + 0.5 },
    ),
  );
  return writeBook({ title: "Large", sheets: [{ name: "Goods", rows }] });
}

function median(times: readonly number[]): number {
  return [...times].sort((a, b) => a - b)[times.length >> 1]!;
}
