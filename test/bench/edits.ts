import { openBench } from "../browser/open.ts";
import { heldBytes } from "./heldBytes.ts";
import type { Row } from "./row.ts";

/** Most bytes that 2,000 edits may leave behind. None should; what the sheet keeps of its last frames makes two looks differ by as much. */
const MOST_LEFT = 150_000;
/** What is looked at so often, some edits apart, that a leap for the moment does not count. */
const LOOKS = 3;

/** What 2,000 edits leave in what scripts hold. */
export async function edits(): Promise<Row> {
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
  const held = async () => {
    const looks: number[] = [];
    for (let i = 0; i < LOOKS; i++) {
      await type(100);
      looks.push(await heldBytes(session));
    }
    return Math.min(...looks);
  };
  // These fill the undo list, and what else is only so long.
  await type(200);
  const before = await held();
  await type(2_000 - 100 * LOOKS);
  const left = (await held()) - before;
  await page.close();
  return {
    name: "memory after 2,000 edits",
    ratio: left / MOST_LEFT,
    most: 1,
    what: `scripts hold ${(left / 1e3).toFixed(0)} kB more than before (${(before / 1e6).toFixed(1)} MB), over ${MOST_LEFT / 1e3} kB`,
  };
}
