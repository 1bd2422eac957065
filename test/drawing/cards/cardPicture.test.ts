import { describe, expect, it } from "vitest";
import { cardPicture, countsText } from "../../../src/drawing/cards/cardPicture.ts";
import { cutCards } from "../../../src/drawing/cards/cutCard.ts";
import { noteText } from "../../../functions/words/notes.ts";
import { lengthText } from "../../../src/measure/lengthText.ts";
import { framed } from "../../roof/outlineSpecs.ts";
import { ROOFS } from "../allDrawings.ts";
import { drawnTexts, type DrawnText } from "../readDrawing.ts";

/** Every text of the picture where it stands, those of the drawing in it moved to their place. */
function boxes(svg: string): DrawnText[] {
  const [, dx, dy, size] = /<g transform="translate\((\S+) (\S+)\)" font-size="([\d.]+)">/.exec(svg)!.map(Number) as [
    number,
    number,
    number,
    number,
  ];
  return [...svg.matchAll(/<text [^>]*>[^<]*<\/text>/g)].flatMap(([tag]) => {
    const own = /^<text [^>]*font-size="([^"]*)"/.exec(tag)?.[1];
    const [x, y] = own ? [0, 0] : [dx, dy];
    return drawnTexts(tag, own ? Number(own) : size).map(({ text, left, top, right, bottom }) => ({
      text,
      left: left + x,
      top: top + y,
      right: right + x,
      bottom: bottom + y,
    }));
  });
}

const touch = (a: DrawnText, b: DrawnText) =>
  a.left < b.right - 0.01 && b.left < a.right - 0.01 && a.top < b.bottom - 0.01 && b.top < a.bottom - 0.01;

function cardsOf(name: string) {
  const { frame, pieces } = framed(ROOFS[name]!);
  const { unit } = frame.spec;
  return cutCards(frame, pieces, {
    length: (value) => lengthText(value, unit),
    notes: ({ notes }) => notes.map((note) => noteText(note, unit)),
  });
}

describe("cardPicture", () => {
  it.each(Object.keys(ROOFS).flatMap((name) => [480, 560, 800].map((width) => [name, width] as const)))(
    "%s at %i px: no text on another, none off the card",
    (name, width) => {
      for (const card of cardsOf(name)) {
        const { svg, height } = cardPicture(card, width);
        const all = boxes(svg);
        const faults = all.flatMap((one, i) => [
          ...all
            .slice(i + 1)
            .filter((other) => touch(one, other))
            .map((other) => `"${one.text}" on "${other.text}"`),
          ...(one.left < 0 || one.right > width || one.top < 0 || one.bottom > height
            ? [`"${one.text}" leaves the card`]
            : []),
        ]);
        expect([card.mark, faults]).toEqual([card.mark, []]);
      }
    },
  );

  it("says all that the printed card says: name, counts, figures, every step, note and cautions", () => {
    for (const card of cardsOf("regular")) {
      const said = boxes(cardPicture(card, 560).svg)
        .map(({ text }) => text)
        .join(" ");
      for (const words of [
        card.mark,
        card.title,
        countsText(card.counts),
        ...card.figures.flatMap(({ name, value }) => [name, value]),
        ...card.steps,
        ...card.notes,
        card.cautions,
      ])
        expect(said).toContain(words);
    }
  });

  it("is one picture in black and white, with no picture in it and no markup from a note", () => {
    const { frame, pieces } = framed(ROOFS["regular"]!);
    for (const card of cutCards(frame, pieces, { length: String, notes: () => ["<b>&"] })) {
      const { svg } = cardPicture(card, 560);
      expect(svg).toMatch(/^<svg [^>]*role="img"[^>]*><title>[^<]+<\/title><desc>[^<]+<\/desc>/);
      expect(svg).not.toMatch(/NaN|undefined|Infinity|null|<b>|var\(| id=/);
      expect(svg.match(/<title>/g)).toHaveLength(1);
    }
  });

  it("finds two texts on one another, so it would find them on a card", () => {
    const [a, b] = boxes(
      '<g transform="translate(0 0)" font-size="10"><text x="0" y="20">Long point</text><text x="30" y="22">Tape</text></g>',
    );
    expect(touch(a!, b!)).toBe(true);
  });
});
