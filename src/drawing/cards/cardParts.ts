import { drawnHeight } from "../canvas/drawnHeight.ts";
import { firstDrawn } from "../canvas/firstDrawn.ts";
import { wrapped } from "../canvas/wrapped.ts";
import { cardSize, CARD, CAUTION, STEP, type CardPaper } from "./cardStyles.ts";
import type { CutCard } from "./cutCard.ts";

/** What stands on one card of paper: a piece that has more to say than there is room for goes on on a second one. */
export interface CardPart {
  /** The drawing; null on a card that goes on from another. */
  readonly svg: string | null;
  readonly steps: readonly string[];
  /** The number of its first step. */
  readonly start: number;
  readonly notes: readonly string[];
  /** Of steps and notes, in pixels: as large as their room lets it. */
  readonly size: number;
}

/**
 * A card's steps and notes at the size at which they fill the room beside the drawing or under it; they are read from a step away, and never cut off.
 *
 * Counted by the table of widths, which is on the wide side of the usual faces.
 */
export function cardParts(card: CutCard, paper: CardPaper): CardPart[] {
  const { figures, steps, notes, job, cautions } = card;
  const { perPage } = paper;
  const { width, height, drawings } = cardSize(paper);
  const { head, figure, check, gap, beside, text } = CARD[perPage];
  const two = perPage === 2;
  const foot = wrapped(`${job} ${cautions}`, CAUTION, width).length * CAUTION * STEP.line;
  const values = figures.length === 0 ? 0 : two ? figure : figure + (figures.length - 1) * check;
  const whole = height - head - foot - 4 * gap - 4;
  // The widest drawing that is no higher than its place, a brief one where no other is.
  const ways = [...(two ? drawings.map((wide) => ({ wide, brief: false })) : []), { wide: drawings[0]!, brief: true }];
  const { wide, svg } = firstDrawn(
    ways,
    (way) => ({ wide: way.wide, svg: card.drawing(way.wide, way.brief) }),
    (drawn) => drawnHeight(drawn.svg) <= whole - values,
  );
  const room = two
    ? { width: width - wide - beside, height: whole - values }
    : { width, height: whole - values - beside - drawnHeight(svg) };
  const items = [...steps, ...notes];
  const tall = (texts: readonly string[], size: number, across: number) =>
    texts.flatMap((one) => wrapped(one, size, across - STEP.indent * size)).length * size * STEP.line;
  const sizeFor = (texts: readonly string[], across: number, most: number) => {
    let size: number = text.most;
    while (size > text.least && tall(texts, size, across) > most) size = Math.max(text.least, size - 0.25);
    return size;
  };
  const part = (from: number, to: number, size: number, first: boolean): CardPart => ({
    svg: first ? svg : null,
    steps: items.slice(from, Math.min(to, steps.length)),
    start: from + 1,
    notes: items.slice(Math.max(from, steps.length), to),
    size,
  });
  let fit = items.length;
  while (fit > 0 && tall(items.slice(0, fit), text.least, room.width) > room.height) fit--;
  const first = part(0, fit, sizeFor(items.slice(0, fit), room.width, room.height), true);
  if (fit === items.length) return [first];
  return [first, part(fit, items.length, sizeFor(items.slice(fit), width, whole), false)];
}
