import { cardSize, CARD, POINT, STEP, type CardPaper } from "../cards/cardStyles.ts";
import type { CutCard } from "../cards/cutCard.ts";
import { wrapped } from "./wrapped.ts";

/**
 * The size in pixels at which a card's steps and notes fill the room they have, for they are read from a step away and never cut off.
 *
 * Beside the drawing or under it; counted by the table of widths, which is on the wide side of the usual faces.
 */
export function stepSize({ figures, steps, notes, cautions }: CutCard, svg: string, paper: CardPaper): number {
  const { perPage } = paper;
  const { width, height, drawing } = cardSize(paper);
  const { name, figure, gap, beside, caution, text } = CARD[perPage];
  const lines = (texts: readonly string[], size: number, room: number) =>
    texts.flatMap((one) => wrapped(one, size, room)).length;
  const small = caution * POINT;
  const fixed =
    name +
    figure * (perPage === 2 ? Math.min(1, figures.length) : figures.length) +
    4 * gap +
    (perPage === 2 ? 0 : beside) +
    lines([cautions], small, width) * small * STEP.line +
    4;
  const room = {
    width: perPage === 2 ? width - drawing - beside : width,
    height: height - fixed - (perPage === 2 ? 0 : Number(/ height="([\d.]+)"/.exec(svg)![1])),
  };
  let size: number = text.most;
  while (
    size > text.least &&
    lines([...steps, ...notes], size, room.width - STEP.indent * size) * size * STEP.line > room.height
  )
    size -= 0.25;
  return size;
}
