import { describe, expect, it } from "vitest";
import { checkStep } from "../../../src/hosts/checkStep.ts";
import { cardSheet, cardsOf, cardsPage } from "../../../src/pane/writing/cards.ts";
import { START_INPUTS } from "../../../src/pane/state/fields.ts";
import { report } from "../../../src/pane/state/report.ts";
import { texts } from "../../../src/pane/words/texts.ts";

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
  it("are made for the paper, and say in the page's title what they are", () => {
    const html = cardsPage(model, { paper: "letter", perPage: 2 }, {});
    expect(html).toContain(`<title>${texts.sections.cards}</title>`);
    expect(html).toMatch(/@page\s*\{\s*size:\s*8\.5in 11in/);
  });
  it("name the packet and the boards that they are given", () => {
    const packet = { job: "Barn", date: "May 9, 2031", stamp: "AB234" };
    const [card] = cardsOf(model, { packet }, "print");
    for (const text of Object.values(packet)) expect(card!.job).toContain(text);
  });
  it("have every length and note in words, but for what the steps say with the cut", () => {
    const inputs = { ...START_INPUTS, Pitch: "5", "End pitch": "12", "End overhang": "18" };
    const { pieces, frame } = report(inputs).model!;
    expect(pieces.find(({ mark }) => mark === "JM2")!.notes.map(({ kind }) => kind)).toContain("tilt over 60");
    const own = cardsOf({ ...model, pieces, frame }, {}, "print").find(({ mark }) => mark === "JM2")!;
    expect(own.notes).toEqual([`Stands 37/64" proud of the hip.`, `1' 0" left at the corner: block it.`]);
    expect(own.figures.map(({ value }) => value)).toEqual([`2' 7 1/16"`, `2' 10 3/16"`]);
  });
  it("stand in a sheet of one wide column, under what says that they stay as they are, each with its counts", () => {
    const { block, pictures } = cardSheet(model, "Cut cards 2", {});
    const { cells, ...where } = block;
    expect(where).toEqual({ sheet: "Cut cards 2", newSheet: true, row: 0, column: 0, widths: [560] });
    expect(cells.slice(0, 3)).toEqual([
      [{ content: texts.cardsDrawn, style: "note" }],
      [{ content: texts.cautionInSheet, style: "note" }],
      [{ content: "" }],
    ]);
    const titles = cells.flat().filter((cell) => cell?.style === "title");
    expect(titles.map((cell) => cell!.content)).toEqual(
      expect.arrayContaining(["J1  Jack, main and end sides: 4 left, 4 right", "H  Hip: 4 to cut"]),
    );
    expect(titles).toHaveLength(pictures.length);
    for (const { svg, width, height } of pictures)
      expect(svg).toMatch(new RegExp(`^<svg[^>]* width="${width}" height="${height}"`));
  });
});
