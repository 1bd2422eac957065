import { describe, expect, it } from "vitest";
import { benchForEach } from "./bench.ts";

const t = benchForEach();

const pane = () => t.page.locator("#pane");
const field = (name: string) => pane().getByLabel(name, { exact: true });
const button = (name: string | RegExp) => pane().getByRole("button", { name });
const unfold = (name: string) => pane().locator("summary", { hasText: name }).click();
const says = () => pane().locator(".lp-says");
const sheets = () => t.page.evaluate(() => window.longpoint.host.sheets());
const everything = () =>
  t.page.evaluate(async () =>
    Promise.all(
      (await window.longpoint.host.sheets()).map((sheet) =>
        window.longpoint.host.read({ sheet, row: 0, column: 0, rows: 40, columns: 30 }),
      ),
    ),
  );

async function values(
  sheet: string,
  row: number,
  column: number,
  rows: number,
  columns = 1,
): Promise<(number | string | boolean)[][]> {
  await t.page.evaluate(() => window.longpoint.settled());
  const got = await t.page.evaluate((area) => window.longpoint.host.read(area), { sheet, row, column, rows, columns });
  return got.map((line) => line.map(({ value }) => value));
}

async function show(sheet: string, row: number, column: number): Promise<void> {
  await t.page.evaluate(
    ([name, r, c]) =>
      window.longpoint.host.show({ sheet: name as string, row: r as number, column: c as number, rows: 1, columns: 1 }),
    [sheet, row, column] as const,
  );
}

/** Types over a cell as a user does. */
async function enter(sheet: string, row: number, column: number, text: string): Promise<void> {
  await show(sheet, row, column);
  const { x, y, width, height } = await t.page.evaluate(([r, c]) => window.longpoint.rect(r!, c!), [row, column]);
  await t.page.mouse.click(x + width / 2, y + height / 2);
  await t.page.keyboard.type(text);
  await t.page.keyboard.press("Enter");
  await t.page.evaluate(() => window.longpoint.settled());
}

describe("the pane at work", () => {
  it("follows every keystroke, says how each field was read, and explains what is wrong at the field", async () => {
    const first = () => pane().locator("section[aria-labelledby=lp-schedule] tbody tr").first().textContent();
    const before = await first();
    await field("Span").fill("26' 6");
    await expect.poll(() => pane().locator("#lp-span-read").textContent()).toBe(`26' 6"`);
    await expect.poll(first).not.toBe(before);
    for (const bad of ["", "0", "-24'", "1e999", "NaN", "🪚", "x".repeat(500), "=1+1", "24", "6/12/2024"]) {
      await field("Span").fill(bad);
      await expect.poll(() => pane().locator("#lp-span-wrong").isVisible()).toBe(true);
      expect(await field("Span").getAttribute("aria-invalid")).toBe("true");
    }
    // Said once, at the field: what is worked out from it waits.
    for (const section of ["Check a cut", "Compare", "Lumber order", "Cut cards", "This roof's figures"])
      await unfold(section);
    await expect.poll(() => pane().getByText("Shows here once every field above can be read.").count()).toBe(7);
    expect(await pane().locator(".lp-wrong:visible").count()).toBe(1);
    await button("Fill the sheet").click();
    await expect.poll(() => says().textContent()).toContain("Nothing was written: Span");
    expect(await t.page.evaluate(() => document.activeElement?.id)).toBe("lp-span");
    expect(await sheets()).toEqual(["Bid", "Jacks"]);
    await field("Span").fill("24'");
    await expect.poll(() => pane().locator("section[aria-labelledby=lp-schedule] tbody tr").count()).toBeGreaterThan(3);
    expect(await pane().locator(".lp-wrong:visible").count()).toBe(0);
  });

  it("offers the paper that goes with the unit until another is chosen", async () => {
    await unfold("More");
    await unfold("Cut cards");
    const paper = pane().getByLabel("Paper");
    expect(await paper.inputValue()).toBe("letter");
    await field("Unit").selectOption("mm");
    await expect.poll(() => paper.inputValue()).toBe("A4");
    await field("Unit").selectOption("in");
    await expect.poll(() => paper.inputValue()).toBe("letter");
    await paper.selectOption("A4");
    await field("Unit").selectOption("mm");
    await paper.selectOption("letter");
    await field("Unit").selectOption("in");
    await field("Unit").selectOption("mm");
    await expect.poll(() => field("Unit").inputValue()).toBe("mm");
    expect(await paper.inputValue()).toBe("letter");
  });

  it("keeps tape text right as a table grows and shrinks, follows its block, and takes it back when nothing was edited", async () => {
    const before = await everything();
    await button("Fill the sheet").click();
    await expect.poll(() => says().textContent()).toContain("Written: Roof block, Jack schedule, at Roof!A1");
    const schedule = async () => (await values("Jacks 2", 1, 0, 40, 19)).filter(([piece]) => piece !== "");
    const tapes = async () =>
      (await values("Jacks 2", 1, 16, 40, 3)).filter((line) => line.some((value) => value !== "")).length;
    const then = await schedule();
    // NAVEDTRA 14044, ch. 2: neighbours differ by the common difference, 26.83 in at rise 6 and 24 in on centre.
    const lengths = then.map((row) => row[5] as number);
    lengths.slice(1).forEach((length, i) => expect(lengths[i]! - length).toBeCloseTo(26.83, 2));
    const feet = Math.floor(lengths[0]! / 12);
    expect(then[0]![16]).toMatch(new RegExp(`^${feet}' ${Math.floor(lengths[0]! - 12 * feet)}\\b`));
    let edits = 0;
    const retype = async (changes: Record<string, string>) => {
      const labels = (await values("Roof", 0, 0, 30)).map(([label]) => label);
      for (const [label, text] of Object.entries(changes)) {
        await enter("Roof", labels.indexOf(label), 1, text);
        edits++;
      }
    };
    for (const [span, compare] of [
      ["40'", 1],
      ["20'", -1],
    ] as const) {
      await retype({ Span: span, Length: "60'" });
      const now = await schedule();
      expect(Math.sign(now.length - then.length)).toBe(compare);
      expect(await tapes()).toBe(now.length);
      await expect.poll(() => field("Span").inputValue()).toBe(span);
    }
    // Turned to millimetres, the tape column must not make feet of them.
    await retype({
      Span: "9000",
      Length: "14000",
      Spacing: "600",
      Overhang: "450",
      Seat: "89",
      Boards: "4.8 m",
      Unit: "mm",
    });
    const metric = await schedule();
    expect(metric.length).toBeGreaterThan(3);
    for (const row of metric) expect(row[16]).toBe(`${Math.round(row[5] as number)} mm`);
    await button(/^Take back/).click();
    await expect.poll(() => says().textContent()).toContain("Nothing was taken back: Roof!B2");
    for (let i = 0; i < edits; i++) await t.page.evaluate(() => window.longpoint.undo());
    await button(/^Take back/).click();
    await expect.poll(sheets).toEqual(["Bid", "Jacks"]);
    expect(await everything()).toEqual(before);
    expect(await button(/^Take back/).count()).toBe(0);
  });

  it("writes beside what is there, on new sheets, or over it when told twice", async () => {
    await show("Bid", 4, 3);
    await pane()
      .getByLabel(/at the selected cell/)
      .check();
    await expect.poll(() => pane().getByLabel("at the selected cell, Bid!D5").count()).toBe(1);
    const before = await everything();
    const press = async () => {
      await button("Fill the sheet").focus();
      await t.page.keyboard.press("Enter");
      await t.page.getByRole("dialog").waitFor();
    };
    const takeBack = async () => {
      await expect.poll(() => says().textContent()).toContain("Written");
      await button(/^Take back/).click();
      await expect.poll(() => says().textContent()).toContain("Taken back");
      expect(await everything()).toEqual(before);
      await show("Bid", 4, 3);
    };
    await press();
    expect(await t.page.getByRole("dialog").textContent()).toMatch(/cells are filled.*Bid!D5/);
    await t.page.keyboard.press("Escape");
    await expect.poll(() => t.page.getByRole("dialog").count()).toBe(0);
    expect(await t.page.evaluate(() => document.activeElement?.textContent)).toBe("Fill the sheet");
    expect(await says().textContent()).toBe("Nothing was written.");
    expect(await everything()).toEqual(before);

    await press();
    await button("Further right, where it is free").click();
    await expect.poll(() => says().textContent()).toContain("Written");
    expect(await values("Bid", 4, 3, 16, 3)).toEqual(
      before[0]!.slice(4, 20).map((line) => line.slice(3, 6).map(({ value }) => value)),
    );
    await takeBack();

    await press();
    await button("On new sheets").click();
    await takeBack();

    await press();
    await button("Write over them").click();
    expect(await everything()).toEqual(before);
    await button(/^Yes, replace \d+ cells/).click();
    await takeBack();
  });

  it("uses the block under the selection, follows it, and writes back only what was changed and agreed to", async () => {
    await button("Use this block").click();
    expect([await field("Length").inputValue(), await field("End pitch").inputValue()]).toEqual(["40'", "8"]);
    await enter("Bid", 8, 1, "16");
    await expect.poll(() => field("Spacing").inputValue()).toBe("16");
    await field("Span").fill("25'");
    await button("Write into the block").click();
    expect(await t.page.getByRole("dialog").textContent()).toContain("Bid!B5: 24' becomes 25'");
    await button("Change them").click();
    await expect.poll(async () => (await values("Bid", 4, 1, 1))[0]).toEqual(["25'"]);
    expect(await pane().getByText("Not yet in the sheet").count()).toBe(0);
    // What the fields follow hangs on the block that is there: no second one is written.
    await button("Fill the sheet").click();
    await expect.poll(sheets).toEqual(["Bid", "Jacks", "Jacks 2"]);
    const [line] = await t.page.evaluate(() =>
      window.longpoint.host.read({ sheet: "Jacks 2", row: 0, column: 0, rows: 1, columns: 1 }),
    );
    expect(line![0]!.formula).toBe("=RAFTER.JACKTABLE(Bid!$A$5:$B$15)");
  });

  it("writes every table together, and every cell of them has its value", async () => {
    await pane()
      .locator("section[aria-labelledby=lp-fill] input[type=checkbox]:not(:checked)")
      .evaluateAll((all) => all.forEach((box) => (box as HTMLElement).click()));
    await button("Fill the sheet").click();
    await expect.poll(() => says().textContent()).toContain("Written");
    const made = (await sheets()).slice(2);
    expect(made).toEqual([
      "Roof",
      "Jacks 2",
      "Members",
      "Plate marks",
      "Take-off",
      "Cautions",
      "Lumber order",
      "Cutting plan",
    ]);
    for (const sheet of made) {
      const all = (await values(sheet, 0, 0, 60, 26)).flat();
      expect(
        all.filter((value) => typeof value === "string" && /^#/.test(value)),
        sheet,
      ).toEqual([]);
      expect(all.filter((value) => value !== "").length, sheet).toBeGreaterThan(20);
    }
  });

  it("works a correction out from measured tapes, and writes the check as a live table", async () => {
    await unfold("Check a cut");
    const computed = async () =>
      (await pane().locator("section:has(details[open]) tbody tr").first().locator("td").nth(2).textContent())!;
    await field("Tape measured, J1").fill("nonsense");
    await expect.poll(() => pane().locator("#lp-tape-J1-wrong").textContent()).toContain("no length");
    await field("Tape measured, J1").fill(await computed());
    await expect.poll(() => pane().locator(".lp-found").textContent()).toContain("1 measured");
    await field("Tape measured, J2").fill("10'");
    await field("Tape measured, J3").fill("8'");
    await expect.poll(() => pane().locator(".lp-found").textContent()).toContain("3 measured");
    await button("Write the check into the sheet").click();
    await expect.poll(sheets).toEqual(["Bid", "Jacks", "Roof", "Check"]);
    const rows = await values("Check", 1, 0, 3, 5);
    expect(rows.map(([mark, tape]) => [mark, tape])).toEqual([
      ["J1", expect.any(Number)],
      ["J2", 120],
      ["J3", 96],
    ]);
    for (const [, , long, means, off] of rows)
      expect((means as number) - (long as number)).toBeCloseTo(off as number, 9);
    expect(Math.abs(rows[0]![4] as number)).toBeLessThan(1 / 16);

    await field("Tape measured, J2").fill("");
    await field("Tape measured, J3").fill("");
    await field("Tape measured, J1").fill("12' 6");
    const offBy = (await pane().locator(".lp-found").textContent())!;
    await button(/^Set Correction/).click();
    await expect.poll(() => pane().locator(".lp-found").textContent()).not.toBe(offBy);
    expect(await field("Correction").inputValue()).not.toBe("0");
    await expect.poll(() => pane().locator(".lp-found").textContent()).toMatch(/off by -?(0|1\/16)"/);
  });

  it("says what a wrong cut can become, and compares pitches and spacings, each written as a live table", async () => {
    await unfold("Check a cut");
    await field("Long point as cut").fill(`6' 8"`);
    await expect
      .poll(() =>
        pane()
          .getByRole("region", { name: /^A jack that was cut wrong/ })
          .count(),
      )
      .toBe(1);
    await button("Write this into the sheet").click();
    await expect.poll(sheets).toContain("Salvage");
    expect((await values("Salvage", 0, 0, 2, 1)).map(([value]) => value)).toEqual([
      "Piece",
      expect.stringMatching(/^J/),
    ]);
    await unfold("Compare");
    await field("Pitches").fill("6, 9, 12");
    await button("Write the comparison into the sheet").click();
    await expect.poll(sheets).toContain("Compare");
    const grid = await values("Compare", 4, 0, 4, 3);
    expect(grid[0]).toEqual(["longest jack, in", 16, 24]);
    await enter("Compare", 2, 1, "step");
    // The framing-square table: difference in jacks at 16 and 24 in on centres, rise 6, 9 and 12.
    const steps = await values("Compare", 5, 1, 3, 2);
    [
      [17.89, 26.83],
      [20, 30],
      [22.63, 33.94],
    ].forEach((line, i) => line.forEach((step, j) => expect(steps[i]![j]).toBeCloseTo(step, 2)));
  });

  it("prints a card for each distinct piece, with the cautions on every one", async () => {
    await t.page.evaluate(() => Object.assign(window, { printed: [] as string[] }));
    await unfold("Cut cards");
    await pane().getByLabel("Cards to a page").selectOption("4");
    // The page inside is printed from at once; the test reads what it would print.
    await t.page.evaluate(() => {
      new MutationObserver(() => {
        const frame = document.querySelector<HTMLIFrameElement>("#pane iframe");
        if (frame?.contentWindow)
          frame.contentWindow.print = () =>
            void (window as unknown as { printed: string[] }).printed.push(
              frame.contentDocument!.documentElement.outerHTML,
            );
        frame?.addEventListener(
          "load",
          () =>
            (frame.contentWindow!.print = () =>
              void (window as unknown as { printed: string[] }).printed.push(
                frame.contentDocument!.documentElement.outerHTML,
              )),
          { capture: true },
        );
      }).observe(document.getElementById("pane")!, { childList: true, subtree: true });
    });
    await button("Print the cut cards").click();
    await expect
      .poll(() => t.page.evaluate(() => (window as unknown as { printed: string[] }).printed.length))
      .toBeGreaterThan(0);
    const html = (await t.page.evaluate(() => (window as unknown as { printed: string[] }).printed[0]))!;
    for (const mark of ["R", "C", "K", "KE", "H", "J1", "J5"]) expect(html).toContain(`data-piece="${mark}"`);
    expect(html.match(/class="cautions"/g)!.length).toBe(html.match(/<article/g)!.length);
  });

  it("remembers its inputs in the workbook", async () => {
    await field("Span").fill("27' 3");
    await expect.poll(() => t.page.evaluate(() => window.longpoint.host.recall("pane"))).toContain("27' 3");
  });

  it("says why the selected cell is refused", async () => {
    await show("Bid", 24, 4);
    await expect.poll(() => pane().locator(".lp-cell").textContent()).toMatch(/^Bid!E25.*"6\/12"/);
    await show("Bid", 25, 4);
    await expect.poll(() => pane().locator(".lp-cell").count()).toBe(0);
  });

  it("has plan and table drawn anew when a keystroke's turn ends", async () => {
    const [before, after] = await t.page.evaluate(async () => {
      const shown = () =>
        [
          document.querySelector("#pane section[aria-labelledby=lp-drawing] svg")!.outerHTML,
          document.querySelector("#pane section[aria-labelledby=lp-schedule] tbody")!.outerHTML,
        ] as const;
      const input = document.getElementById("lp-span") as HTMLInputElement;
      const first = shown();
      input.value = "26' 6";
      input.dispatchEvent(new Event("input", { bubbles: true }));
      await new Promise((resolve) => queueMicrotask(() => setTimeout(resolve)));
      return [first, shown()] as const;
    });
    expect(after[0]).not.toBe(before[0]);
    expect(after[1]).not.toBe(before[1]);
    await field("Span").fill("24'");
    await field("Span").fill("26' 6");
    expect(
      await pane()
        .locator("section[aria-labelledby=lp-schedule] tbody")
        .evaluate((body) => body.outerHTML),
    ).toBe(after[1]);
  });
});
