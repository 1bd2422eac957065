/** Paper as it is sold, in inches: US letter, and ISO 216 A4. */
export const PAPERS = { letter: { width: 8.5, height: 11 }, A4: { width: 210 / 25.4, height: 297 / 25.4 } } as const;

export interface CardPaper {
  readonly paper: keyof typeof PAPERS;
  readonly perPage: 2 | 4;
  /** The room that the cards of a page share, in pixels, where other things stand on it too; the whole page when left out. */
  readonly room?: { readonly width: number; readonly height: number };
}

/** CSS pixels to an inch, and to a point. */
export const PIXELS = 96;
export const POINT = PIXELS / 72;

/** Points: what can still be read at the saw. */
const SMALLEST = 8;

/** In pixels: heights of what stands on a card whatever the piece (a check figure is smaller where there is little room), the key plan's width, what parts the drawing from the steps beside or under it; sizes of its texts. */
export const CARD = {
  2: { head: 76, key: 94, figure: 62, check: 0, gap: 6, beside: 14, text: { most: 15, least: SMALLEST * POINT } },
  4: { head: 64, key: 74, figure: 36, check: 24, gap: 2, beside: 4, text: { most: 13, least: SMALLEST * POINT } },
} as const;

/** Height of the line that counts the pieces, which is part of the head. */
const COUNTS = 15;

/** The size of a card's cautions, in pixels. */
export const CAUTION = SMALLEST * POINT;

/** Of a list, in ems: what its numbers take, and a line. */
export const STEP = { indent: 1.6, line: 1.2 } as const;

/** Round the page, and inside a card's border, in inches: a printer leaves a quarter inch blank. */
const EDGE = 0.3;
const INSIDE = 0.12;

function wholePage(paper: CardPaper["paper"]): NonNullable<CardPaper["room"]> {
  const { width, height } = PAPERS[paper];
  return { width: (width - 2 * EDGE) * PIXELS, height: (height - 2 * EDGE) * PIXELS };
}

/** The inner size of one card in pixels, and the widths that its drawing may have, the widest first: two to a page, it stands beside the steps. */
export function cardSize({ paper, perPage, room = wholePage(paper) }: CardPaper): {
  width: number;
  height: number;
  drawings: readonly number[];
} {
  const width = room.width / (perPage / 2) - 2 * INSIDE * PIXELS - 2;
  const height = room.height / 2 - 2 * INSIDE * PIXELS - 2;
  const parts = perPage === 2 ? [0.52, 0.47, 0.42, 0.37, 0.32] : [1];
  return { width, height, drawings: parts.map((part) => Math.floor(width * part)) };
}

/** The style sheet of a page of cards: black and white, key figures at 24 points and more, nothing that a printer leaves out. */
export function cardStyles(given: CardPaper): string {
  const page = PAPERS[given.paper];
  const four = given.perPage === 4;
  return `@page{size:${page.width}in ${page.height}in;margin:0}
*{box-sizing:border-box}
body{margin:0;background:#fff;color:#000;font:${four ? "8pt" : "9.6pt"}/${STEP.line} system-ui,sans-serif}
.page{width:${page.width}in;height:${page.height - 0.01}in;padding:${EDGE}in;display:grid;grid-template:1fr 1fr/repeat(${four ? 2 : 1},minmax(0,1fr));break-after:page}
.page:last-child{break-after:auto}
${cardRules(given)}`;
}

/** The rules of the cards alone, for a page that holds other things too. */
export function cardRules({ perPage }: CardPaper): string {
  const four = perPage === 4;
  const { gap, beside, head } = CARD[perPage];
  return `.card{border:1px dashed #777;padding:${INSIDE}in;display:flex;flex-direction:column;min-height:0;min-width:0;overflow:hidden;gap:${gap}px}
.card header{display:flex;align-items:flex-start;gap:8px;height:${head - COUNTS}px}
.card header svg{flex:none}
.card h2{margin:0;font-size:${four ? 24 : 30}pt;line-height:1;white-space:nowrap}
.card header p{margin:0;flex:1;min-width:0}
.card .counts{margin:0;height:${COUNTS}px;overflow:hidden;white-space:nowrap}
.card .counts span{white-space:nowrap;margin-right:6px}
.card .counts i{display:inline-block;width:8px;height:8px;border:1px solid #000;margin-right:2px}
.card dl{margin:0${four ? "" : ";display:flex;justify-content:space-between;gap:24px"}}
.card dl div{${four ? "display:flex;align-items:baseline;justify-content:space-between;gap:8px" : ""}}
.card dd{margin:0;font-size:${four ? 24 : 30}pt;line-height:1.05;font-weight:600;white-space:nowrap}
${four ? ".card dl div+div dd{font-size:15pt}\n" : ""}.card .work{display:flex;align-items:flex-start;flex-direction:${four ? "column" : "row"};gap:${beside}px;min-height:0;flex:1}
.card .work svg{flex:none}
.card ol,.card ul{margin:0;padding-left:${STEP.indent}em}
.card .cautions{margin:auto 0 0;overflow-wrap:anywhere;font-size:${SMALLEST}pt;line-height:1.15;border-top:1px solid #000;padding-top:2px}
`;
}
