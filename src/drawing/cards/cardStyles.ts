/** Paper as it is sold, in inches: US letter, and ISO 216 A4. */
export const PAPERS = { letter: { width: 8.5, height: 11 }, A4: { width: 210 / 25.4, height: 297 / 25.4 } } as const;

export interface CardPaper {
  readonly paper: keyof typeof PAPERS;
  readonly perPage: 2 | 4;
}

/** Heights in pixels of what stands on a card whatever the piece, and what parts the drawing from the steps beside or under it; sizes of its texts. */
export const CARD = {
  2: { name: 40, figure: 62, gap: 6, beside: 14, caution: 8, text: { most: 15, least: 9 } },
  4: { name: 32, figure: 36, gap: 2, beside: 4, caution: 6.5, text: { most: 13, least: 8 } },
} as const;

/** Of a list, in ems: what its numbers take, and a line. */
export const STEP = { indent: 1.6, line: 1.2 } as const;

/** Round the page, and inside a card's border, in inches: a printer leaves a quarter inch blank. */
const EDGE = 0.3;
const INSIDE = 0.12;

/** CSS pixels to an inch. */
const PIXELS = 96;

/** CSS pixels to a point. */
export const POINT = PIXELS / 72;

/** The inner size of one card in pixels, and the width its drawing has. */
export function cardSize({ paper, perPage }: CardPaper): { width: number; height: number; drawing: number } {
  const page = PAPERS[paper];
  const width = ((page.width - 2 * EDGE) / (perPage / 2) - 2 * INSIDE) * PIXELS - 2;
  const height = ((page.height - 2 * EDGE) / 2 - 2 * INSIDE) * PIXELS - 2;
  // Two to a page, the drawing stands beside the steps.
  return { width, height, drawing: Math.floor(perPage === 2 ? width * 0.52 : width) };
}

/** The style sheet of a page of cards: black and white, key figures at 24 points and more, nothing that a printer leaves out. */
export function cardStyles(given: CardPaper): string {
  const page = PAPERS[given.paper];
  const { drawing } = cardSize(given);
  const four = given.perPage === 4;
  const { gap, beside, caution } = CARD[given.perPage];
  return `@page{size:${page.width}in ${page.height}in;margin:0}
*{box-sizing:border-box}
body{margin:0;background:#fff;color:#000;font:${four ? "7.6pt" : "9.6pt"}/${STEP.line} system-ui,sans-serif}
.page{width:${page.width}in;height:${page.height - 0.01}in;padding:${EDGE}in;display:grid;grid-template:1fr 1fr/repeat(${four ? 2 : 1},minmax(0,1fr));break-after:page}
.page:last-child{break-after:auto}
.card{border:1px dashed #777;padding:${INSIDE}in;display:flex;flex-direction:column;min-height:0;min-width:0;overflow:hidden;gap:${gap}px}
.card header{display:flex;align-items:baseline;gap:8px}
.card h2{margin:0;font-size:${four ? 24 : 30}pt;line-height:1}
.card header p{margin:0}
.card .counts{margin-left:auto;font-weight:600;font-size:11pt;white-space:nowrap}
.card dl{margin:0${four ? "" : ";display:flex;justify-content:space-between;gap:24px"}}
.card dl div{${four ? "display:flex;align-items:baseline;justify-content:space-between;gap:8px" : ""}}
.card dd{margin:0;font-size:${four ? 24 : 30}pt;line-height:1.05;font-weight:600;white-space:nowrap}
.card .work{display:flex;align-items:flex-start;flex-direction:${four ? "column" : "row"};gap:${beside}px;min-height:0;flex:1}
.card .work svg{flex:none;width:${drawing}px}
.card ol,.card ul{margin:0;padding-left:${STEP.indent}em}
.card .cautions{margin:auto 0 0;font-size:${caution}pt;line-height:1.15;border-top:1px solid #000;padding-top:2px}
`;
}
