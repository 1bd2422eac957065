import { escaped } from "../../measure/escaped.ts";
import { paperPage } from "../canvas/paperPage.ts";
import { BOLD, startWithin, textWidth } from "../canvas/textWidth.ts";
import { cardRules, PAPERS, type CardPaper } from "../cards/cardStyles.ts";
import type { Packet } from "../cards/cardOptions.ts";
import { blockStyles, TEXT } from "./packetBlocks.ts";
import { labelStyles } from "./labelSheets.ts";
import { EDGE, FOOT, roomOf } from "./pageFlow.ts";
import { packetWords as words } from "./packetWords.ts";

/** A part of a packet: its name, and the body of each of its pages (HTML). */
export interface PacketPart {
  readonly name: string;
  readonly pages: readonly string[];
  /** How its pages are filled: with blocks from above, with cards, or with stickers, which leave only a line for the foot. */
  readonly kind: "flow" | "cards" | "stickers";
}

/** A whole packet as one printable document (HTML text) that needs nothing else; every page says whose it is and which of how many. */
export function packetPages(parts: readonly PacketPart[], { paper, perPage }: CardPaper, packet: Packet): string {
  const pages = parts.flatMap(({ name, kind, pages: bodies }) => bodies.map((body) => ({ name, kind, body })));
  const page = PAPERS[paper];
  const { width, height } = roomOf(paper);
  const sheets = pages.map(
    ({ name, kind, body }, i) =>
      `<section class="sheet ${kind}" data-sheet="${escaped(name)}"><div class="body">${body}</div>${foot(name, packet, i + 1, pages.length, { width, beside: kind === "stickers" })}</section>`,
  );
  const title = packet.job === "" ? words.title : `${packet.job}, ${words.title}`;
  return paperPage(
    title,
    `@page{size:${page.width}in ${page.height}in;margin:0}
*{box-sizing:border-box}
body{margin:0;background:#fff;color:#000;font:${TEXT.body}px/1.2 system-ui,sans-serif}
.sheet{width:${page.width}in;height:${page.height - 0.01}in;padding:${EDGE}in;break-after:page;overflow:hidden;position:relative}
.sheet:last-child{break-after:auto}
.sheet .body{height:${height}px}
.sheet .foot{display:flex;height:${FOOT - 10}px;margin-top:10px;border:1px solid #000;font-size:${TEXT.small}px;line-height:13px}
.sheet .foot div{padding:1px 8px;border-left:1px solid #000;white-space:nowrap}
.sheet .foot div:first-child{border-left:0;flex:1;min-width:0}
.sheet .foot b{display:block}
${blockStyles}${labelStyles(paper)}.flow .strips{display:block}
.stickers .body{position:absolute;inset:0;height:auto}
.stickers .foot{position:absolute;left:${EDGE}in;right:${EDGE}in;bottom:0.27in;height:14px;margin:0;border:0}
.stickers .foot div{border:0}
.stickers .foot b{display:inline;margin-left:4px}
.cards .body{display:grid;grid-template:1fr 1fr/repeat(${perPage === 4 ? 2 : 1},minmax(0,1fr));font-size:${perPage === 4 ? "8pt" : "9.6pt"}}
${cardRules({ paper, perPage })}`,
    sheets.join("\n"),
  );
}

/** What stands at the foot of every page, each word over its text or `beside` it. A name as long as the page is cut, and shows it. */
function foot(
  name: string,
  { job, date, stamp }: Packet,
  page: number,
  of: number,
  { width, beside }: { readonly width: number; readonly beside: boolean },
): string {
  const rest = [
    [words.foot.sheet, name],
    [words.foot.stamp, stamp],
    [words.foot.date, date],
    [words.foot.page, words.pageOf(page, of)],
  ] as const;
  const room = (pair: readonly string[]) => {
    const widths = pair.map((text) => textWidth(text, TEXT.small) * BOLD);
    return beside ? widths.reduce((sum, one) => sum + one, 4) : Math.max(...widths);
  };
  const own = beside ? room([words.foot.job]) : 0;
  const taken = rest.reduce((sum, pair) => sum + room(pair) + 17, own);
  const box = ([label, text]: readonly [string, string]) => `<div>${escaped(label)}<b>${escaped(text)}</b></div>`;
  return `<footer class="foot">${[[words.foot.job, fitted(job, (width - taken - 20) / BOLD)] as const, ...rest].map(box).join("")}</footer>`;
}

function fitted(text: string, width: number): string {
  const start = startWithin(text, TEXT.small, width - 8);
  return start === text ? text : `${start}…`;
}
