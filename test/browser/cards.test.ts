import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { cardPages } from "../../src/drawing/cards/cardPages.ts";
import { PAPERS, type CardPaper } from "../../src/drawing/cards/cardStyles.ts";
import { cutCards } from "../../src/drawing/cards/cutCard.ts";
import { textWidth } from "../../src/drawing/canvas/textWidth.ts";
import { lengthText } from "../../src/measure/lengthText.ts";
import { noteText } from "../../functions/words/notes.ts";
import type { RoofSpec } from "../../src/roof/frame/roofSpec.ts";
import { ROOFS } from "../drawing/allDrawings.ts";
import { framed } from "../roof/outlineSpecs.ts";
import { browser } from "./open.ts";

let page: Page;

beforeAll(async () => {
  page = await (await browser()).newPage({ viewport: { width: 900, height: 1200 } });
  await page.emulateMedia({ media: "print" });
});

afterAll(() => page.close());

function htmlOf(spec: RoofSpec, paper: CardPaper): { html: string; cards: number } {
  const { frame, pieces } = framed(spec);
  const cards = cutCards(frame, pieces, {
    length: (value) => lengthText(value, spec.unit),
    notes: ({ notes }) => notes.map((note) => noteText(note, spec.unit)),
  });
  return { html: cardPages(cards, paper), cards: cards.length };
}

/** What of a card leaves it, or runs into what stands under it, in the browser's own measure. */
function clipped(): string[] {
  return [...document.querySelectorAll<HTMLElement>(".card")].flatMap((card) => {
    const name = card.dataset["piece"]!;
    const inside = card.getBoundingClientRect();
    const cautions = card.querySelector(".cautions")!.getBoundingClientRect();
    const parts = [...card.querySelectorAll("h2,header p,dt,dd,.work > svg,li")].filter((part) => {
      const { left, right, top, bottom, width } = part.getBoundingClientRect();
      const below = part.closest(".work") ? cautions.top : inside.bottom;
      return (
        left < inside.left ||
        right > inside.right ||
        top < inside.top ||
        bottom > below + 1 ||
        part.scrollWidth > Math.ceil(width) + 1
      );
    });
    const texts = [...card.querySelectorAll("svg text")].filter((text) => {
      const own = text.getBoundingClientRect();
      const sheet = text.closest("svg")!.getBoundingClientRect();
      return (
        own.left < sheet.left - 1 ||
        own.right > sheet.right + 1 ||
        own.top < sheet.top - 1.5 ||
        own.bottom > sheet.bottom + 1.5
      );
    });
    const overCautions = cautions.bottom > inside.bottom ? ["cautions"] : [];
    return [...parts, ...texts]
      .map((part) => `${name}: ${part.textContent?.slice(0, 60)}`)
      .concat(overCautions.map((one) => `${name}: ${one}`));
  });
}

const PAPER: readonly CardPaper[] = [
  { paper: "letter", perPage: 4 },
  { paper: "letter", perPage: 2 },
  { paper: "A4", perPage: 4 },
  { paper: "A4", perPage: 2 },
];

describe("printed cut cards", () => {
  it.each(Object.entries(ROOFS))("no text is clipped or runs into another part, %s", async (_, spec) => {
    for (const paper of PAPER) {
      await page.setContent(htmlOf(spec, paper).html);
      expect([paper, await page.evaluate(clipped)]).toEqual([paper, []]);
    }
  });

  it.each(PAPER)("the PDF has its pages and no more, $paper, $perPage to a page", async (paper) => {
    const { html, cards } = htmlOf(ROOFS["regular"]!, paper);
    await page.setContent(html);
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
    expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(Math.ceil(cards / paper.perPage));
    const [, width, height] = /\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)/.exec(pdf)!;
    expect(Math.abs(Number(width) - PAPERS[paper.paper].width * 72)).toBeLessThan(1);
    expect(Math.abs(Number(height) - PAPERS[paper.paper].height * 72)).toBeLessThan(1);
  });

  it("as a picture: black, white and grays of text edges only, every card inked, the printer's margin white", async () => {
    await page.setContent(htmlOf(ROOFS["regular"]!, { paper: "letter", perPage: 4 }).html);
    const shot = await page.locator(".page").first().screenshot();
    const seen = await page.evaluate(
      async (data) => {
        const image = new Image();
        image.src = data;
        await image.decode();
        const canvas = Object.assign(document.createElement("canvas"), { width: image.width, height: image.height });
        const context = canvas.getContext("2d")!;
        context.drawImage(image, 0, 0);
        const { data: pixels } = context.getImageData(0, 0, image.width, image.height);
        const count = { colored: 0, margin: 0, quarters: [0, 0, 0, 0] };
        for (let i = 0; i < pixels.length; i += 4) {
          const [r, g, b] = [pixels[i]!, pixels[i + 1]!, pixels[i + 2]!];
          const [x, y] = [(i / 4) % image.width, Math.floor(i / 4 / image.width)];
          if (Math.max(r, g, b) - Math.min(r, g, b) > 8) count.colored++;
          if (r > 128) continue;
          if (Math.min(x, y, image.width - x, image.height - y) < 24) count.margin++;
          count.quarters[(x > image.width / 2 ? 1 : 0) + (y > image.height / 2 ? 2 : 0)]!++;
        }
        return count;
      },
      `data:image/png;base64,${shot.toString("base64")}`,
    );
    expect(seen.colored).toBe(0);
    expect(seen.margin).toBe(0);
    for (const ink of seen.quarters) expect(ink).toBeGreaterThan(2000);
  });

  it("the table of widths gives every text of a drawing at least the room it takes", async () => {
    const texts = [];
    for (const spec of Object.values(ROOFS)) {
      await page.setContent(htmlOf(spec, { paper: "letter", perPage: 2 }).html);
      const shown = await page.evaluate(() =>
        [...document.querySelectorAll<SVGTextElement>(".work text")].map((text) => ({
          text: text.textContent!,
          width: text.getComputedTextLength(),
          size: parseFloat(getComputedStyle(text).fontSize),
          bold: text.hasAttribute("font-weight"),
        })),
      );
      expect(shown.length).toBeGreaterThan(20);
      texts.push(...shown);
    }
    expect(texts.length).toBeGreaterThan(200);
    for (const { text, width, size, bold } of texts)
      expect([text, width <= textWidth(text, bold ? size * 1.08 : size) + 0.5]).toEqual([text, true]);
  });
});
