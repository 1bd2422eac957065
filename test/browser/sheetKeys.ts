import type { Bench } from "./bench.ts";

/** What a user's hands do on the bench's sheet, and what then stands in a cell. */
export function sheetKeys(t: Bench) {
  const settled = () => t.page.evaluate(() => window.longpoint.settled());
  const click = async (row: number, column: number) => {
    const { x, y, width, height } = await t.page.evaluate(([r, c]) => window.longpoint.rect(r!, c!), [row, column]);
    await t.page.mouse.click(x + width / 2, y + height / 2);
  };
  const cell = async (sheet: string, row: number, column: number) => {
    await settled();
    const read = await t.page.evaluate((area) => window.longpoint.host.read(area), {
      sheet,
      row,
      column,
      rows: 1,
      columns: 1,
    });
    return read[0]![0]!;
  };
  return {
    settled,
    /** Clicks a cell of the active sheet. */
    click,
    cell,
    /** Types into a cell key by key: `parts` one after the other, each with its milliseconds between keys and a pause behind it. */
    async type(
      row: number,
      column: number,
      parts: readonly (readonly [text: string, delay: number, pause?: number])[],
      end = "Enter",
    ) {
      await click(row, column);
      for (const [text, delay, pause = 0] of parts) {
        await t.page.keyboard.type(text, { delay });
        if (pause) await t.page.waitForTimeout(pause);
      }
      if (end) await t.page.keyboard.press(end);
      await settled();
    },
    /** Makes the page's processor so many times as slow, until that ends. */
    async slow(times: number) {
      const session = await t.page.context().newCDPSession(t.page);
      await session.send("Emulation.setCPUThrottlingRate", { rate: times });
      return { end: () => session.send("Emulation.setCPUThrottlingRate", { rate: 1 }).then(() => session.detach()) };
    },
  };
}
