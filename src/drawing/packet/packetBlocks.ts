import { escaped } from "../../measure/escaped.ts";
import { drawnHeight } from "../canvas/drawnHeight.ts";
import { nonBreaking } from "../canvas/nonBreaking.ts";
import { BOLD, textWidth } from "../canvas/textWidth.ts";
import { wrapped } from "../canvas/wrapped.ts";
import { POINT } from "../cards/cardStyles.ts";
import type { Block, Rows } from "./pageFlow.ts";

/** Sizes of text in pixels: 8 points is the least on paper. */
export const TEXT = { small: 8 * POINT, body: 9 * POINT, heading: 13 * POINT, title: 20 * POINT } as const;

const LINE = 1.2;
const PARAGRAPH = 6;
const NOTE = 24;
const CELL = { across: 5, down: 2.5 } as const;

const tall = (text: string, size: number, width: number) => wrapped(text, size, width).length * size * LINE;

/** A heading, which stays with what follows it. */
export function heading(text: string, width: number, size: "heading" | "title" = "heading"): Block {
  const tag = size === "title" ? "h1" : "h2";
  const height = tall(text, TEXT[size] * BOLD, width) + 2 * PARAGRAPH;
  return { html: `<${tag}>${escaped(nonBreaking(text))}</${tag}>`, height, keep: true };
}

/** A paragraph; one that warns has a frame of its own. */
export function paragraph(text: string, width: number, kind: "plain" | "caution" = "plain"): Block {
  const inner = width - (kind === "caution" ? 24 : 0);
  return {
    html: `<p${kind === "caution" ? ' class="caution"' : ""}>${escaped(nonBreaking(text))}</p>`,
    height: tall(text, TEXT.body * (kind === "caution" ? BOLD : 1), inner) + PARAGRAPH + (kind === "caution" ? 16 : 0),
  };
}

/** A finished drawing (SVG), with HTML under it that is so many pixels high. */
export function drawn(svg: string, under = "", underHeight = 0): Block {
  return { html: `<figure>${svg}${under}</figure>`, height: drawnHeight(svg) + underHeight + PARAGRAPH };
}

/** Boxes to tick, as many as there are pieces; more than fit in a line are counted by hand. */
export function tickBoxes(count: number, width: number, done: string): { html: string; height: number } {
  const fits = count * 18 <= width;
  return { html: `<p class="ticks">${fits ? "<i></i>".repeat(count) : escaped(done)}</p>`, height: 22 };
}

/** A table as texts, by rows. */
export interface TextTable {
  readonly headings: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** Which columns are figures: set to the right, never broken. */
  readonly numbers: readonly boolean[];
  /** A box to tick before every row. */
  readonly ticks?: boolean;
  /** What is said of a row, under it and as wide as the table; "" for nothing. */
  readonly notes?: readonly string[];
}

/** A table whose columns share a width: figures take what they need, texts the rest. */
export function tableRows({ headings, rows, numbers, ticks = false, notes = [] }: TextTable, width: number): Rows {
  const box = ticks ? 24 : 0;
  const widths = columnWidths({ headings, rows, numbers }, width - box);
  const all = widths.reduce((sum, one) => sum + one, box);
  const inner = (i: number) => widths[i]! - 2 * CELL.across;
  const high = (cells: readonly string[], size: number) =>
    Math.max(...cells.map((cell, i) => tall(cell, size, inner(i)))) + 2 * CELL.down + 1;
  const cells = (texts: readonly string[], tag: "td" | "th") =>
    texts.map((text, i) => `<${tag}${numbers[i] ? ' class="n"' : ""}>${escaped(nonBreaking(text))}</${tag}>`).join("");
  const cols = [...(ticks ? [box] : []), ...widths]
    .map((one) => `<col style="width:${Math.round(one * 100) / 100}px">`)
    .join("");
  const empty = (inside: string) => (ticks ? `<td class="box">${inside}</td>` : "");
  return {
    head: `<table><colgroup>${cols}</colgroup><thead><tr>${empty("")}${cells(headings, "th")}</tr></thead><tbody>`,
    foot: "</tbody></table>",
    headHeight: high(headings, TEXT.small * BOLD) + PARAGRAPH,
    rows: rows.map((row, i) => {
      const own = Math.max(high(row, TEXT.body), ticks ? 20 : 0);
      const note = notes[i] ?? "";
      if (note === "") return { html: `<tr>${empty("<i></i>")}${cells(row, "td")}</tr>`, height: own };
      return {
        html: `<tr class="noted">${empty("<i></i>")}${cells(row, "td")}</tr><tr><td class="note" colspan="${headings.length + (ticks ? 1 : 0)}">${escaped(nonBreaking(note))}</td></tr>`,
        height: own + tall(note, TEXT.body, all - NOTE - CELL.across) + CELL.down + 1,
      };
    }),
  };
}

/** Every column as wide as its widest text, but for long texts, which share what is left. */
function columnWidths({ headings, rows, numbers }: TextTable, width: number): number[] {
  const word = (text: string, size: number) =>
    Math.max(
      0,
      ...nonBreaking(text)
        .split(" ")
        .map((one) => textWidth(one, size)),
    );
  const least = headings.map((text, i) =>
    Math.max(
      word(text, TEXT.small * BOLD),
      ...rows.map((row) => (numbers[i] ? textWidth(row[i]!, TEXT.body) : word(row[i]!, TEXT.body))),
    ),
  );
  const whole = headings.map((_, i) => Math.max(least[i]!, ...rows.map((row) => textWidth(row[i]!, TEXT.body))));
  const air = 2 * CELL.across + 1;
  const sum = (of: readonly number[]) => of.reduce((all, one) => all + one + air, 0);
  // What is wanted least is given first, so that a long note breaks and not the short text beside it.
  let rest = Math.max(0, width - sum(least));
  const given = least.map(() => 0);
  whole
    .map((one, i) => ({ i, want: one - least[i]! }))
    .sort((a, b) => a.want - b.want)
    .forEach(({ i, want }, at, all) => {
      given[i] = Math.min(want, rest / (all.length - at));
      rest -= given[i]!;
    });
  return least.map((one, i) => one + air + given[i]!);
}

/** The style of these blocks, which their heights are counted by. */
export const blockStyles = `.flow :is(h1,h2,p,figure,table){margin:0;overflow-wrap:anywhere}
.flow h1{font-size:${TEXT.title}px;line-height:${LINE};padding:0 0 ${2 * PARAGRAPH}px}
.flow h2{font-size:${TEXT.heading}px;line-height:${LINE};padding:${PARAGRAPH}px 0}
.flow p{padding-bottom:${PARAGRAPH}px}
.flow p.caution{border:2px solid #000;padding:6px 10px;margin-bottom:${PARAGRAPH}px;font-weight:600}
.flow figure{padding-bottom:${PARAGRAPH}px}
.flow figure svg{display:block}
.flow table{border-collapse:collapse;table-layout:fixed;margin-bottom:${PARAGRAPH}px}
.flow th{font-size:${TEXT.small}px;text-align:left;vertical-align:bottom;border-bottom:1px solid #000}
.flow td{vertical-align:top;border-bottom:1px solid #bbb}
.flow thead td{border-bottom-color:#000}
.flow :is(th,td){padding:${CELL.down}px ${CELL.across}px;overflow-wrap:anywhere}
.flow .noted td{border-bottom:0;padding-bottom:0}
.flow td.note{padding:0 ${CELL.across}px ${CELL.down}px ${NOTE}px}
.flow .n{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}
.flow th.n{white-space:normal}
.flow .ticks{height:16px;padding-bottom:${PARAGRAPH}px}
.flow :is(.ticks i,.box i){display:inline-block;width:11px;height:11px;border:1px solid #000;margin-right:5px}
`;
