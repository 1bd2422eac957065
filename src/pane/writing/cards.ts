import { noteText } from "../../../functions/words/notes.ts";
import type { RoofModel } from "../../../functions/arguments/roofModel.ts";
import { cardPages } from "../../drawing/cards/cardPages.ts";
import type { CardOptions } from "../../drawing/cards/cardOptions.ts";
import { cardPicture, countsText } from "../../drawing/cards/cardPicture.ts";
import type { CardPaper } from "../../drawing/cards/cardStyles.ts";
import { cutCards } from "../../drawing/cards/cutCard.ts";
import type { BlockLayout, CellLayout } from "../../hosts/host.ts";
import type { Note } from "../../roof/frame/note.ts";
import { lengthText } from "../../measure/lengthText.ts";
import { texts } from "../words/texts.ts";

/** What a packet of cards is made with, beside the roof. */
type Given = Pick<CardOptions, "packet" | "sticks">;

/** The cut cards of a roof with the notes of its pieces in words, for paper in black and white or for the screen. */
export const cardsOf = ({ frame, pieces }: RoofModel, given: Given, theme: CardOptions["theme"] = "print") => {
  const { unit } = frame.spec;
  return cutCards(frame, pieces, {
    ...given,
    theme,
    length: (value) => lengthText(value, unit),
    // What the saw does not reach stands in the steps, with the cut.
    notes: ({ notes }) =>
      notes.filter(({ kind }) => !IN_STEPS.has(kind)).map((note) => texts.sentence(noteText(note, unit))),
  });
};

const IN_STEPS: ReadonlySet<Note["kind"]> = new Set([
  "tilt over 45",
  "tilt over 60",
  "tail tilt over 45",
  "tail tilt over 60",
  "level hip tail",
]);

/** The cut cards of a roof as a printable page that needs nothing else. */
export function cardsPage(model: RoofModel, paper: CardPaper, given: Given): string {
  return cardPages(cardsOf(model, given), { ...paper, title: texts.sections.cards });
}

/** A picture that goes beside a cell: SVG text with its size in pixels. */
export interface CardPicture {
  readonly row: number;
  readonly svg: string;
  readonly width: number;
  readonly height: number;
}

/** Pixels of a picture's width, and of a row of the sheet. */
const WIDTH = 560;
const ROW = 20;

/** A sheet of cards: each card's name stands over its picture. What is in a picture stays as it was drawn, and a line says so. */
export function cardSheet(
  model: RoofModel,
  sheet: string,
  given: Given,
): { block: BlockLayout; pictures: CardPicture[] } {
  const lines: CellLayout[] = [
    { content: texts.cardsDrawn, style: "note" },
    { content: texts.cautionInSheet, style: "note" },
    { content: "" },
  ];
  const pictures = cardsOf(model, given).map((card) => {
    const { svg, height } = cardPicture(card, WIDTH);
    lines.push({ content: `${card.mark}  ${card.title}: ${countsText(card.counts)}`, style: "title" });
    const row = lines.length;
    lines.push(...Array.from({ length: Math.ceil(height / ROW) + 2 }, (): CellLayout => ({ content: "" })));
    return { row, svg, width: WIDTH, height };
  });
  return {
    block: { sheet, newSheet: true, row: 0, column: 0, cells: lines.map((cell) => [cell]), widths: [WIDTH] },
    pictures,
  };
}
