import type { CutCard } from "./cutCard.ts";
import { CARD, cardStyles, type CardPaper } from "./cardStyles.ts";
import { cardParts, type CardPart } from "./cardParts.ts";
import { escaped } from "../../measure/escaped.ts";
import { nonBreaking } from "../canvas/nonBreaking.ts";
import { paperPage } from "../canvas/paperPage.ts";
import { WORDS, type Words } from "../canvas/words.ts";

/** A whole printable page of cards, two or four to a sheet, as HTML text that needs nothing else. */
export function cardPages(
  cards: readonly CutCard[],
  paper: CardPaper & { readonly title?: string; readonly words?: Words },
): string {
  const { words = WORDS, title = words.card.sheet } = paper;
  const body = cardSheets(cards, paper)
    .map((page) => `<section class="page">${page}</section>`)
    .join("\n");
  return paperPage(title, cardStyles(paper), body);
}

/** What stands on each page of cards, as HTML. */
export function cardSheets(cards: readonly CutCard[], paper: CardPaper & { readonly words?: Words }): string[] {
  const { perPage, words = WORDS } = paper;
  const parts = cards.flatMap((card) => cardParts(card, paper).map((part) => cardHtml(card, part, perPage, words)));
  return Array.from({ length: Math.ceil(parts.length / perPage) }, (_, i) =>
    parts.slice(i * perPage, (i + 1) * perPage).join(""),
  );
}

/** More boxes than this have no room: how many are done is then written by hand. */
const MOST_BOXES = 20;

function cardHtml(
  { mark, title, counts, figures, job, cautions, keyPlan }: CutCard,
  { svg, steps, start, notes, size }: CardPart,
  perPage: CardPaper["perPage"],
  words: Words,
): string {
  const items = (texts: readonly string[]) => texts.map((text) => `<li>${escaped(nonBreaking(text))}</li>`).join("");
  const shown = svg === null ? [] : figures;
  const values = shown
    .map(({ name, value }) => `<div><dt>${escaped(name)}</dt><dd>${escaped(value)}</dd></div>`)
    .join("");
  const all = counts.reduce((sum, { count }) => sum + count, 0);
  // Ticked on the first card only.
  const boxes = (count: number) => (all <= MOST_BOXES && svg !== null ? ` ${"<i></i>".repeat(count)}` : "");
  const ticks = [
    ...counts.map(({ name, count }) => `<b>${count} ${escaped(name)}</b>${boxes(count)}`),
    ...(all <= MOST_BOXES || svg === null ? [] : [escaped(words.card.done)]),
  ];
  return (
    `<article class="card" data-piece="${escaped(mark)}"><header><h2>${escaped(mark)}</h2><p>${escaped(svg === null ? words.card.goesOn(title) : title)}</p>${keyPlan(CARD[perPage].key)}</header>` +
    `<p class="counts">${ticks.map((tick) => `<span>${tick}</span>`).join("")}</p>${values === "" ? "" : `<dl>${values}</dl>`}` +
    `<div class="work">${svg ?? ""}<div style="font-size:${size}px">${steps.length === 0 ? "" : `<ol start="${start}">${items(steps)}</ol>`}${notes.length === 0 ? "" : `<ul>${items(notes)}</ul>`}</div></div>` +
    `<p class="cautions">${escaped(nonBreaking(`${job} ${cautions}`))}</p></article>`
  );
}
