import { expect } from "vitest";
import { texts } from "../../src/pane/words/texts.ts";
import type { Bench } from "./bench.ts";

/** What a user does with the pane and the sheet beside it on the bench page of a test. */
export function panePage(t: Bench) {
  /** Lets go of the block that the pane took up at the start, and gives the fields what they have where there is none. */
  const letGo = async () => {
    await t.page.locator("#pane").getByRole("button", { name: texts.unlink }).click();
    await t.page
      .locator("#pane details button", { hasText: texts.startAgain })
      .evaluate((button) => (button as HTMLElement).click());
  };
  const pane = () => t.page.locator("#pane");
  /** In a narrow window sheet and pane take turns. */
  const showPane = () => t.page.evaluate(() => document.body.setAttribute("data-shows", "pane"));
  const show = (sheet: string, row: number, column: number): Promise<void> =>
    t.page.evaluate((area) => window.longpoint.host.show(area), { sheet, row, column, rows: 1, columns: 1 });
  const sheets = () => t.page.evaluate(() => window.longpoint.host.sheets());
  return {
    letGo,
    pane,
    show,
    sheets,
    field: (name: string) => pane().getByLabel(name, { exact: true }),
    button: (name: string | RegExp) => pane().getByRole("button", { name }),
    unfold: (name: string) => pane().locator("summary", { hasText: name }).click(),
    says: () => pane().locator(".lp-says"),
    showPane,

    /** Lays the page out in a window of that size, the pane in view. */
    async inWindow(width: number, height: number): Promise<void> {
      await t.page.setViewportSize({ width, height });
      await showPane();
      await t.page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve))));
    },

    /** Keeps what is printed from the pane from now on, in the place of the browser's own window. */
    keepPrints: () =>
      t.page.evaluate(() => {
        const pages: string[] = [];
        Object.assign(window, { printed: pages });
        new MutationObserver(() => {
          const frame = document.querySelector<HTMLIFrameElement>("#pane iframe");
          if (!frame) return;
          const keep = () =>
            (frame.contentWindow!.print = () => void pages.push(frame.contentDocument!.documentElement.outerHTML));
          // A page that is there at once is printed at once; another gets a window of its own when it is read.
          keep();
          frame.addEventListener("load", keep, { capture: true });
        }).observe(document.getElementById("pane")!, { childList: true, subtree: true });
      }),

    /** The page that was printed as the number `count` of those kept, once it is there. */
    async printed(count: number): Promise<string> {
      const pages = () => t.page.evaluate(() => (window as unknown as { printed: string[] }).printed);
      await expect.poll(async () => (await pages()).length).toBe(count);
      return (await pages())[count - 1]!;
    },

    everything: () =>
      t.page.evaluate(async () =>
        Promise.all(
          (await window.longpoint.host.sheets()).map((sheet) =>
            window.longpoint.host.read({ sheet, row: 0, column: 0, rows: 40, columns: 30 }),
          ),
        ),
      ),

    /** Once all is calculated. */
    async values(
      sheet: string,
      row: number,
      column: number,
      rows: number,
      columns = 1,
    ): Promise<(number | string | boolean)[][]> {
      await t.page.evaluate(() => window.longpoint.settled());
      const got = await t.page.evaluate((area) => window.longpoint.host.read(area), {
        sheet,
        row,
        column,
        rows,
        columns,
      });
      return got.map((line) => line.map(({ value }) => value));
    },

    /** Types over a cell as a user does. */
    async enter(sheet: string, row: number, column: number, text: string): Promise<void> {
      await show(sheet, row, column);
      const { x, y, width, height } = await t.page.evaluate(([r, c]) => window.longpoint.rect(r!, c!), [row, column]);
      await t.page.mouse.click(x + width / 2, y + height / 2);
      await t.page.keyboard.type(text);
      await t.page.keyboard.press("Enter");
      await t.page.evaluate(() => window.longpoint.settled());
    },
  };
}
