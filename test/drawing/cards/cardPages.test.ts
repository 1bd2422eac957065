import { describe, expect, it } from "vitest";
import { cardPages } from "../../../src/drawing/cards/cardPages.ts";
import { CARD, cardSize, cardStyles } from "../../../src/drawing/cards/cardStyles.ts";
import { cutCards, type CutCard } from "../../../src/drawing/cards/cutCard.ts";
import { WORDS } from "../../../src/drawing/canvas/words.ts";
import type { RoofSpec } from "../../../src/roof/frame/roofSpec.ts";
import { framed, HALL } from "../../roof/outlineSpecs.ts";
import { inches, ROOFS } from "../allDrawings.ts";

function cardsOf(spec = HALL): readonly CutCard[] {
  const { frame, pieces } = framed(spec);
  return cutCards(frame, pieces, { length: inches, notes: ({ notes }) => notes.map(({ kind }) => kind) });
}

describe("cardPages", () => {
  it.each([
    ["letter", 4, 3],
    ["letter", 2, 5],
    ["A4", 4, 3],
    ["A4", 2, 5],
  ] as const)("fills %s pages with %i cards each: %i pages", (paper, perPage, pages) => {
    const html = cardPages(cardsOf(), { paper, perPage });
    expect(html.match(/<section class="page">/g)).toHaveLength(pages);
    expect(html.match(/<article class="card"/g)).toHaveLength(perPage === 4 && paper === "letter" ? 10 : 9);
    expect(html).toContain(paper === "A4" ? "@page{size:8.26" : "@page{size:8.5in 11in");
  });

  it("carries the cautions on every card, the notes, and key figures of at least 24 points", () => {
    const html = cardPages(cardsOf(), { paper: "A4", perPage: 4 });
    expect(html.split(WORDS.card.cautions)).toHaveLength(10);
    expect(html).toContain("<ul><li>corner bay</li></ul>");
    for (const perPage of [2, 4] as const)
      expect(
        Number(/\.card dd\{[^}]*font-size:(\d+)pt/.exec(cardStyles({ paper: "letter", perPage }))![1]),
      ).toBeGreaterThanOrEqual(24);
  });

  it("keeps a length on one line: 3 1/2 in broken behind the 3 is read as 3 in", () => {
    const html = cardPages(cardsOf(), { paper: "letter", perPage: 2 });
    const lines = [...html.matchAll(/<li>(.*?)<\/li>/g)].map(([, text]) => text!);
    expect(lines.length).toBeGreaterThan(40);
    for (const line of lines) expect(line).not.toMatch(/\d['"]? \d/);
    expect(html).toContain("uphill, 3\u00a01/2");
  });

  it("writes steps as large as their room lets it, and smaller where there are many notes", () => {
    const sizes = (spec: RoofSpec, perPage: 2 | 4) =>
      [
        ...cardPages(cardsOf(spec), { paper: "letter", perPage }).matchAll(
          /data-piece="([^"]+)".*?<div style="font-size:([\d.]+)px">/g,
        ),
      ].map(([, mark, size]) => [mark, Number(size)] as const);
    for (const perPage of [2, 4] as const) {
      const { most, least } = CARD[perPage].text;
      expect(Math.max(...sizes(HALL, perPage).map(([, size]) => size))).toBe(most);
      for (const spec of Object.values(ROOFS))
        for (const [mark, size] of sizes(spec, perPage)) expect([mark, size >= least]).toEqual([mark, true]);
    }
  });

  it("takes the widest drawing that is no higher than its place", () => {
    for (const perPage of [2, 4] as const) {
      const { drawings, width } = cardSize({ paper: "letter", perPage });
      expect(drawings[0]).toBeLessThanOrEqual(width);
      expect(cardPages(cardsOf(), { paper: "letter", perPage })).toContain(`width="${drawings[0]}"`);
    }
  });

  it("goes on on a second card rather than in smaller letters", () => {
    const html = cardPages(cardsOf(ROOFS["two tilts and every note"]), { paper: "letter", perPage: 4 });
    expect(html).toContain("continued");
    expect(html).toMatch(/<ol start="[2-9]">/);
    const sizes = [...html.matchAll(/font-size[=:]"?([\d.]+)(p[xt])?/g)].map(([, size, unit]) =>
      unit === "pt" ? Number(size) : (Number(size) * 72) / 96,
    );
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(8);
  });

  it("has a box to tick for each piece, or room to write where they are many", () => {
    const html = cardPages(cardsOf(), { paper: "letter", perPage: 4 });
    expect(html.match(/<i><\/i>/g)).toHaveLength(1 + 16 + 4 + 4 + 5 * 8);
    expect(cardPages(cardsOf(ROOFS["large and dense"]), { paper: "letter", perPage: 4 })).toContain("done: ____");
  });

  it("asks for nothing from elsewhere and lets no text become markup", () => {
    const { frame, pieces } = framed(HALL);
    const html = cardPages(cutCards(frame, pieces, { length: inches, notes: () => ["<script>"] }), {
      paper: "A4",
      perPage: 2,
    });
    expect(html).not.toContain("<script");
    expect(html.replaceAll("http://www.w3.org/2000/svg", "")).not.toMatch(/https?:|url\(|@import/);
  });
});
