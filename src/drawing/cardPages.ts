import type { CutCard } from "./cutCard.ts";
import { cardSize, cardStyles, type CardPaper } from "./cardStyles.ts";
import { escaped } from "./sheet.ts";
import { WORDS, type Words } from "./words.ts";

/** A whole printable page of cards, two or four to a sheet, as HTML text that needs nothing else. */
export function cardPages(cards: readonly CutCard[], paper: CardPaper & { readonly title?: string; readonly words?: Words }): string {
  const { perPage, words = WORDS, title = words.card.sheet } = paper;
  const { drawing } = cardSize(paper);
  const brief = perPage === 4;
  const pages = Array.from({ length: Math.ceil(cards.length / perPage) }, (_, i) => cards.slice(i * perPage, (i + 1) * perPage));
  const body = pages.map((page) => `<section class="page">${page.map((card) => cardHtml(card, drawing, brief)).join("")}</section>`).join("\n");
  return `<!doctype html>\n<html lang="en"><head><meta charset="utf-8"><title>${escaped(title)}</title><style>${cardStyles(paper)}</style></head><body>\n${body}\n</body></html>\n`;
}

function cardHtml({ mark, title, counts, figures, steps, note, cautions, drawing }: CutCard, width: number, brief: boolean): string {
  const values = figures.length === 0 ? "" : `<dl>${figures.map(({ name, value }) => `<div><dt>${escaped(name)}</dt><dd>${escaped(value)}</dd></div>`).join("")}</dl>`;
  return `<article class="card" data-piece="${escaped(mark)}"><header><h2>${escaped(mark)}</h2><p>${escaped(title)}</p><p class="counts">${escaped(counts)}</p></header>${values}` +
    `<div class="work">${drawing(width, brief)}<div><ol>${steps.map((step) => `<li>${escaped(step)}</li>`).join("")}</ol>${note === "" ? "" : `<p class="note">${escaped(note)}</p>`}</div></div><p class="cautions">${escaped(cautions)}</p></article>`;
}
