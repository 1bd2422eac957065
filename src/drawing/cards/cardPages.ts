import type { CutCard } from "./cutCard.ts";
import { cardSize, cardStyles, type CardPaper } from "./cardStyles.ts";
import { stepSize } from "../canvas/stepSize.ts";
import { escaped } from "../../measure/escaped.ts";
import { nonBreaking } from "../canvas/nonBreaking.ts";
import { WORDS, type Words } from "../canvas/words.ts";

/** A whole printable page of cards, two or four to a sheet, as HTML text that needs nothing else. */
export function cardPages(
  cards: readonly CutCard[],
  paper: CardPaper & { readonly title?: string; readonly words?: Words },
): string {
  const { perPage, words = WORDS, title = words.card.sheet } = paper;
  const pages = Array.from({ length: Math.ceil(cards.length / perPage) }, (_, i) =>
    cards.slice(i * perPage, (i + 1) * perPage),
  );
  const body = pages
    .map((page) => `<section class="page">${page.map((card) => cardHtml(card, paper)).join("")}</section>`)
    .join("\n");
  return `<!doctype html>\n<html lang="en"><head><meta charset="utf-8"><title>${escaped(title)}</title><style>${cardStyles(paper)}</style></head><body>\n${body}\n</body></html>\n`;
}

function cardHtml(card: CutCard, paper: CardPaper): string {
  const { mark, title, counts, figures, steps, notes, cautions, drawing } = card;
  const svg = drawing(cardSize(paper).drawing, paper.perPage === 4);
  const items = (texts: readonly string[]) => texts.map((text) => `<li>${escaped(nonBreaking(text))}</li>`).join("");
  const values =
    figures.length === 0
      ? ""
      : `<dl>${figures.map(({ name, value }) => `<div><dt>${escaped(name)}</dt><dd>${escaped(value)}</dd></div>`).join("")}</dl>`;
  return (
    `<article class="card" data-piece="${escaped(mark)}"><header><h2>${escaped(mark)}</h2><p>${escaped(title)}</p><p class="counts">${escaped(counts)}</p></header>${values}` +
    `<div class="work">${svg}<div style="font-size:${stepSize(card, svg, paper)}px"><ol>${items(steps)}</ol>${notes.length === 0 ? "" : `<ul>${items(notes)}</ul>`}</div></div><p class="cautions">${escaped(nonBreaking(cautions))}</p></article>`
  );
}
