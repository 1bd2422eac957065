import prepare from "../browser/build.ts";
import { closeBrowser, openBench } from "../browser/open.ts";
import { heldBytes } from "./heldBytes.ts";
import type { Row } from "./row.ts";

/** Most bytes that 2,000 edits may leave behind. None should; what the sheet keeps of its last frames makes two looks differ by as much. */
const MOST_LEFT = 150_000;
/** What is looked at so often before, some edits apart, and at most so often after, that a leap for the moment does not count. */
const LOOKS = 3;

/** What 2,000 edits leave in what scripts hold. */
export async function bench(): Promise<Row[]> {
  await prepare();
  try {
    return [await edits()];
  } finally {
    await closeBrowser();
  }
}

async function edits(): Promise<Row> {
  const page = await openBench();
  const session = await page.page.context().newCDPSession(page.page);
  // A hand that types fast: twenty, then one calculation.
  const type = (count: number) =>
    page.page.evaluate(async (many) => {
      const { host, settled } = window.longpoint;
      // Written without a name of its own, which the loader of sources would hang on it.
      for (let i = 0; i < many; i += 20) {
        await Promise.all(
          Array.from({ length: 20 }, (_, k) =>
            host.write({
              title: "edit",
              blocks: [{ sheet: "Bid", row: 4, column: 1, cells: [[{ content: `${20 + ((i + k) % 12)}'` }]] }],
            }),
          ),
        );
        await settled();
      }
    }, count);
  const look = async () => {
    await type(100);
    return heldBytes(session);
  };
  // These fill the undo list, and what else is only so long.
  await type(200);
  let before = Infinity;
  for (let n = 0; n < LOOKS; n++) before = Math.min(before, await look());
  await type(1_900);
  let left = (await look()) - before;
  // A look takes as long as some hundred edits, and can but find less: one that finds little enough is the last.
  for (let n = 1; n < LOOKS && left > MOST_LEFT; n++) left = Math.min(left, (await look()) - before);
  await page.close();
  return {
    name: "memory after 2,000 edits",
    ratio: left / MOST_LEFT,
    most: 1,
    what: `scripts hold ${(left / 1e3).toFixed(0)} kB more than before (${(before / 1e6).toFixed(1)} MB), over ${MOST_LEFT / 1e3} kB`,
  };
}
