import { describe, expect, it } from "vitest";
import { checkStep } from "../../../src/hosts/checkStep.ts";
import { cardSheet, cardsPage } from "../../../src/pane/writing/cards.ts";
import { START_INPUTS } from "../../../src/pane/state/fields.ts";
import { report } from "../../../src/pane/state/report.ts";

const model = report(START_INPUTS).model!;

describe("cut cards", () => {
  it.each([2, 4] as const)("are on a page each piece at least once, %i to a page", (perPage) => {
    const html = cardsPage(model, { paper: "letter", perPage }, {});
    const named = [...html.matchAll(/data-piece="([^"]*)"/g)].flatMap(([, marks]) => marks!.split(", "));
    for (const { mark } of model.pieces) expect(named).toContain(mark);
    const cards = html.match(/<article/g)!.length;
    expect(html.match(/<section class="page"/g)!.length).toBe(Math.ceil(cards / perPage));
  });
  it("stand in a sheet under their names, no picture over the next", () => {
    const { block, pictures } = cardSheet(model, "Cut cards", {});
    expect(checkStep({ title: "", blocks: [block] }, [])).toBeNull();
    pictures.forEach(({ row, height, svg }, i) => {
      expect(svg).toMatch(/^<svg/);
      expect(block.cells[row - 1]![0]).toMatchObject({ style: "title" });
      expect(row + height / 20).toBeLessThan(pictures[i + 1]?.row ?? block.cells.length);
    });
  });
});
