import { beforeEach, describe, expect, it } from "vitest";
import { benchForEach } from "./bench.ts";
import { panePage } from "./panePage.ts";

const t = benchForEach();
const { letGo, pane, field, button, unfold, values, enter, sheets, says } = panePage(t);
beforeEach(letGo);
/** Its formulas read the block by a name, which stands once that is said. */
const written = (sheet: string) =>
  expect.poll(() => says().textContent()).toMatch(new RegExp(`written to .*${sheet}!A1`));

describe("checks and comparisons in the pane", () => {
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
    await written("Check");
    expect(await sheets()).toEqual(["Bid", "Jacks", "Roof", "Check"]);
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
    await written("Salvage");
    expect((await values("Salvage", 0, 0, 2, 1)).map(([value]) => value)).toEqual([
      "Piece",
      expect.stringMatching(/^J/),
    ]);
    await unfold("Compare");
    await field("Pitches").fill("6, 9, 12");
    await button("Write the comparison into the sheet").click();
    await written("Compare");
    const grid = await values("Compare", 4, 0, 4, 3);
    expect(grid[0]).toEqual(["longest jack, in", 16, 24]);
    await enter("Compare", 2, 1, "step");
    // The framing-square table: difference in jacks at 16 and 24 in on centers, rise 6, 9 and 12.
    const steps = await values("Compare", 5, 1, 3, 2);
    [
      [17.89, 26.83],
      [20, 30],
      [22.63, 33.94],
    ].forEach((line, i) => line.forEach((step, j) => expect(steps[i]![j]).toBeCloseTo(step, 2)));
  });
});
