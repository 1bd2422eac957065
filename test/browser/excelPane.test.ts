import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { functions } from "../../functions/index.ts";
import type { ExcelFake } from "../hosts/excelFake.ts";
import type { Opened } from "./open.ts";
import { openExcelPane } from "./openExcelPane.ts";

/** What the stand-in leaves on the page for the test. */
type Page = typeof globalThis & { fake: ExcelFake; associated: Map<string, (...given: unknown[]) => unknown> };

let t: Opened;
beforeEach(async () => {
  t = await openExcelPane();
});
afterEach(async () => {
  const { problems } = t;
  await t.close();
  expect(problems).toEqual([]);
});
const pane = () => t.page.locator("#pane");
const everything = () =>
  t.page.evaluate(
    () => (globalThis as Page).fake.everything() as { name: string; cells: [string, { formula: unknown }][] }[],
  );
const called = (name: string, ...given: unknown[]) =>
  t.page.evaluate(
    ([id, cells]) => {
      try {
        return (globalThis as Page).associated.get(id)!(...cells, { address: "Sheet1!A1" });
      } catch (error) {
        return { ...(error as object) };
      }
    },
    [name, given] as const,
  );

describe("the pane of the Excel build, on the stand-in for Excel", () => {
  it("hands Excel every function, and asks for nothing but its own files and Office.js", async () => {
    expect(await t.page.evaluate(() => [...(globalThis as Page).associated.keys()])).toEqual(
      functions.map(({ name }) => name),
    );
    expect(await called("JACKSTEP", "8/12", 16, null, null)).toBeCloseTo(19.2296, 4);
    expect(await called("JACKSTEP", 43258, 16, null, null)).toMatchObject({
      code: "#VALUE!",
      message: expect.stringMatching(/^pitch: .*date/),
    });
    expect(t.requests.filter((url) => !url.startsWith(t.url))).toEqual([
      "https://appsforoffice.microsoft.com/lib/1/hosted/office.js",
    ]);
  });

  it("fills the workbook with live formulas on the block, says so, and takes it back", async () => {
    const before = await everything();
    await pane().getByLabel("Span", { exact: true }).fill("28'");
    await pane().getByRole("button", { name: "Fill the sheet" }).click();
    await expect.poll(() => pane().locator(".lp-says").textContent()).toContain("Roof block, Jack schedule written to");
    const written = await everything();
    expect(written.map(({ name }) => name)).toEqual(["Sheet1", "Roof", "Jacks"]);
    expect(written[1]!.cells.map(([, { formula }]) => formula)).toContain("28'");
    expect(written[2]!.cells.map(([, { formula }]) => formula)).toContainEqual("=RAFTER.JACKTABLE(RoofBlock)");
    await pane()
      .getByRole("button", { name: /^Undo this fill/ })
      .click();
    await expect.poll(() => pane().locator(".lp-says").textContent()).toContain("Undone");
    expect(await everything()).toEqual(before);
  });

  it.each([
    ["the first new sheet", 2],
    ["both, when all cells are on their way", 3],
  ])("shows that it works when Excel is slow, and a stop leaves nothing behind: after %s", async (_, sheets) => {
    const before = await everything();
    // With so many sheets there Excel does not answer until it is let go.
    await t.page.evaluate((count) => {
      const page = globalThis as Page & { letGo: () => void };
      const gate = new Promise<void>((resolve) => Object.assign(page, { letGo: resolve }));
      const { fake } = page;
      const run = fake.run as (job: (context: { sync(): Promise<void> }) => Promise<unknown>) => Promise<unknown>;
      Object.assign(fake, {
        run: (...given: unknown[]) =>
          run(async (context) => {
            const { sync } = context;
            context.sync = async () => {
              if (fake.sheets.length === count) await gate;
              return sync();
            };
            return (given.at(-1) as (context: unknown) => Promise<unknown>)(context);
          }),
      });
    }, sheets);
    await pane().getByRole("button", { name: "Fill the sheet" }).click();
    await pane().getByRole("progressbar").waitFor();
    await pane().getByRole("button", { name: "Stop" }).click();
    await t.page.evaluate(() => (globalThis as unknown as { letGo: () => void }).letGo());
    await expect.poll(() => pane().locator(".lp-says").textContent()).toBe("Stopped. Nothing was written.");
    expect(await everything()).toEqual(before);
    expect(
      await pane()
        .getByRole("button", { name: /^Undo this fill/ })
        .count(),
    ).toBe(0);
  });

  it("asks before it writes over a filled cell, and says why the selected cell is refused", async () => {
    await t.page.evaluate(() => {
      const { fake } = globalThis as Page;
      fake.type("Sheet1", 0, 0, "mine");
      fake.select(0, 0, 1, 1);
    });
    await pane()
      .getByLabel(/at the selected cell/)
      .check();
    await pane().getByRole("button", { name: "Fill the sheet" }).click();
    await t.page.getByRole("dialog").waitFor();
    expect(await t.page.getByRole("dialog").textContent()).toContain("Sheet1!A1");
    await t.page.keyboard.press("Escape");
    await expect.poll(() => pane().locator(".lp-says").textContent()).toBe("Nothing was written.");
    await t.page.evaluate(() => {
      const { fake, associated } = globalThis as Page;
      fake.type("Sheet1", 3, 3, "=RAFTER.PITCHDEG(0)");
      try {
        associated.get("PITCHDEG")!(0, { address: "Sheet1!D4" });
      } catch (error) {
        fake.showAt("Sheet1", 3, 3, (error as { code: string }).code);
      }
      fake.select(3, 3, 1, 1);
    });
    await expect.poll(() => pane().locator(".lp-cell").textContent()).toMatch(/^Sheet1!D4.*pitch/);
  });
});
