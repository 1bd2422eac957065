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
    expect(block.cells.flat()).toEqual(
      block.cells.flat().map(() => expect.objectContaining({ content: expect.any(String) as string }) as object),
    );
    pictures.forEach(({ row, height, svg }, i) => {
      expect(svg).toMatch(/^<svg/);
      expect(block.cells[row - 1]![0]).toMatchObject({ style: "title" });
      // Under it a line or two are free, and then comes the next card's name.
      const next = (pictures[i + 1]?.row ?? block.cells.length + 1) - 1;
      expect(next - (row + height / 20)).toBeGreaterThanOrEqual(2);
      expect(next - (row + height / 20)).toBeLessThan(3);
    });
  });
});
