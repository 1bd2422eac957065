import { PAPERS, PIXELS } from "./cardStyles.ts";
import { drawSticks, type Stick } from "./drawSticks.ts";
import type { Packet } from "./cardOptions.ts";
import { escaped } from "../../measure/escaped.ts";
import type { DrawingOptions } from "../canvas/canvas.ts";
import { nonBreaking } from "../canvas/nonBreaking.ts";
import { paperPage } from "../canvas/paperPage.ts";
import { WORDS } from "../canvas/words.ts";

export interface StickPaper extends Pick<DrawingOptions, "length" | "words"> {
  readonly paper: keyof typeof PAPERS;
  readonly title?: string;
  readonly packet?: Packet;
  /** Under the boards: what to buy, what is left. */
  readonly lists?: readonly PaperList[];
  /** What is to be known besides, such as where a ridge is joined. */
  readonly notes?: readonly string[];
}

/** A list on paper; its numbers stand to the right. */
export interface PaperList {
  readonly title: string;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** In place of rows where there are none. */
  readonly none: string;
}

/** Round the page, in inches. */
const EDGE = 0.4;

/** A whole printable document of boards and what is cut out of them, as HTML text that needs nothing else; no board is parted by the end of a page. */
export function stickPages(
  sticks: readonly Stick[],
  { paper, length, words = WORDS, title = words.sticks.title, notes = [], lists = [], packet }: StickPaper,
): string {
  const page = PAPERS[paper];
  const width = Math.floor((page.width - 2 * EDGE) * PIXELS);
  const longest = Math.max(...sticks.map((stick) => stick.length));
  const boards = sticks.map(
    (stick) =>
      `<figure>${drawSticks([stick], { width, length, words, theme: "print", brief: true, longest })}</figure>`,
  );
  const texts = [...(packet ? [words.card.packet(packet)] : []), words.sticks.key, words.handSeen, ...notes]
    .map((text) => `<p>${escaped(nonBreaking(text))}</p>`)
    .join("");
  return paperPage(
    title,
    `@page{size:${page.width}in ${page.height}in;margin:${EDGE}in}
body{margin:0;background:#fff;color:#000;font:10pt/1.25 system-ui,sans-serif}
h1{font-size:18pt;margin:0 0 4pt}
p{margin:0 0 4pt}
figure{margin:0 0 6pt;break-inside:avoid}
figure svg{display:block}
h2{font-size:14pt;margin:10pt 0 4pt;break-after:avoid}
table{border-collapse:collapse}
th,td{border-bottom:1px solid #000;padding:1pt 12pt 1pt 0;text-align:left;vertical-align:top}
tr{break-inside:avoid}
td.box{width:10pt;height:10pt;border:1px solid #000;padding:0}
.cautions{border-top:1px solid #000;padding-top:2pt;font-size:8pt}
`,
    `<h1>${escaped(title)}</h1>${texts}\n${boards.join("\n")}\n${lists.map(listText).join("\n")}\n<p class="cautions">${escaped(words.card.cautions)}</p>`,
  );
}

/** A list with a box to tick before each row. */
function listText({ title, headings, rows, none }: PaperList): string {
  const cells = (row: readonly string[], tag: "th" | "td") =>
    row.map((text) => `<${tag}>${escaped(text)}</${tag}>`).join("");
  const body = rows.map((row) => `<tr><td class="box"></td><td></td>${cells(row, "td")}</tr>`).join("");
  const list =
    rows.length === 0
      ? `<p>${escaped(none)}</p>`
      : `<table><thead><tr><th colspan="2"></th>${cells(headings, "th")}</tr></thead><tbody>${body}</tbody></table>`;
  return `<h2>${escaped(title)}</h2>${list}`;
}
