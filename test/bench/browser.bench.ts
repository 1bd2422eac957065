import prepare from "../browser/build.ts";
import type { Opened } from "../browser/open.ts";
import { closeBrowser, openBench } from "../browser/open.ts";
import { openExcelPane } from "../browser/openExcelPane.ts";
import type { Row } from "./row.ts";

const PAGES = 5;

/** What a user of the built pages waits for, in a real browser: each over the time that is allowed. */
export async function bench(): Promise<Row[]> {
  await prepare();
  try {
    const readies: number[] = [];
    const answers: number[] = [];
    for (let i = 0; i < PAGES; i++) {
      const page = await openBench();
      readies.push(await page.page.evaluate(() => window.longpoint.readyAfter));
      await page.close();
      const pane = await openExcelPane();
      answers.push(await answered(pane));
      await pane.close();
    }
    const page = await openBench();
    await field(page, "Length").fill("60'");
    await field(page, "Spacing").fill("16");
    await keystrokes(page);
    const [keys, stalls] = [await keystrokes(page), await searches(page)];
    await page.close();
    return [
      row("bench page with its job calculated", readies, 10_000, "from the address typed, nothing kept from before"),
      row("pane of the Excel build", answers, 300, "from its script loaded until it is painted"),
      row(
        "keystroke in the pane",
        keys,
        16,
        "script, style, layout and paint of the frame that shows it, a roof of a hundred members; the schedule has the next frame",
      ),
      row(
        "typing while the order is searched",
        stalls,
        50,
        "the longest that a search keeps the page from its turn, a roof of a hundred members",
      ),
    ];
  } finally {
    await closeBrowser();
  }
}

function row(name: string, times: readonly number[], most: number, what: string): Row {
  const sorted = [...times].sort((a, b) => a - b);
  const middle = sorted[sorted.length >> 1]!;
  return {
    name,
    ratio: middle / most,
    most: 1,
    what: `over ${most} ms; ${what}; median of ${sorted.length} ${middle.toFixed(1)} ms, from ${sorted[0]!.toFixed(1)} to ${sorted.at(-1)!.toFixed(1)} ms`,
  };
}

/** The page shows nothing before the pane does. */
async function answered({ page }: Opened): Promise<number> {
  await page.waitForFunction(() => performance.getEntriesByName("first-contentful-paint").length > 0);
  return page.evaluate(
    () =>
      performance.getEntriesByName("first-contentful-paint")[0]!.startTime -
      (
        performance
          .getEntriesByType("resource")
          .find(({ name }) => name.endsWith("/pane.js")) as PerformanceResourceTiming
      ).responseEnd,
  );
}

async function keystrokes({ page }: Opened): Promise<number[]> {
  return page.evaluate(async () => {
    const input = document.getElementById("lp-span") as HTMLInputElement;
    input.focus();
    const { port1, port2 } = new MessageChannel();
    const found: number[] = [];
    for (let i = 0; i < 60; i++) {
      found.push(
        await new Promise<number>((resolve) =>
          requestAnimationFrame(() => {
            const start = performance.now();
            input.value = `${24 + (i % 2)}' ${i % 12}`;
            input.dispatchEvent(new Event("input", { bubbles: true }));
            // What is sent before a frame is painted comes right after it.
            port1.onmessage = () => resolve(performance.now() - start);
            port2.postMessage(null);
          }),
        ),
      );
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
    return found;
  });
}

const field = ({ page }: Opened, name: string) => page.locator("#pane").getByLabel(name, { exact: true });

/** The longest that each of a few searches holds the page up, from a keystroke until the new order is shown. */
async function searches({ page }: Opened): Promise<number[]> {
  const status = page.locator("#pane section [role=status]:not(:empty)", { hasText: "boards to buy" });
  await page.locator("#pane summary", { hasText: "Lumber order and cutting plan" }).click();
  await status.waitFor();
  const found: number[] = [];
  for (const overhang of ["17 1/2", "13", "9 1/4", "22", "11"])
    found.push(
      await page.evaluate(async (typed) => {
        const status = [...document.querySelectorAll("#pane section [role=status]")].find(
          (one) => one.textContent !== "",
        )!;
        const before = status.textContent!;
        const input = document.getElementById("lp-overhang") as HTMLInputElement;
        input.value = typed;
        input.dispatchEvent(new Event("input", { bubbles: true }));
        // The keystroke's own redraw is measured above; from here on the search has the page.
        await new Promise((resolve) => setTimeout(resolve, 100));
        let longest = 0;
        for (
          const end = performance.now() + 20_000;
          (status.textContent === before || status.textContent!.startsWith("Working")) && performance.now() < end;
        ) {
          const last = performance.now();
          await new Promise((resolve) => setTimeout(resolve, 0));
          longest = Math.max(longest, performance.now() - last);
        }
        if (longest === 0) throw new Error("No search was seen.");
        return longest;
      }, overhang),
    );
  return found;
}
