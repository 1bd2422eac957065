import { escaped } from "../../measure/escaped.ts";
import { MM_PER_INCH, type Unit } from "../../measure/unit.ts";
import { PIXELS, type CardPaper } from "../cards/cardStyles.ts";
import { textWidth } from "../canvas/textWidth.ts";
import type { PlateStrip } from "../views/drawPlates.ts";
import { TEXT } from "./packetBlocks.ts";
import { roomOf } from "./pageFlow.ts";
import { packetWords as words } from "./packetWords.ts";

/** Width of a strip, and of the air between two, in pixels. */
const WIDE = 104;
const AIR = 12;
/** From one line of writing to the next. */
const LINE = 13;
/** Over the strips of a page: what plate they are of. Under them: the line that checks the printer. */
const HEAD = 34;
const CHECK = 38;

/** What a strip is counted in: how long one may be is a whole number of steps; every so many steps are numbered. */
const SCALE = {
  in: { pixels: PIXELS, step: 1, named: 1, check: 6 },
  mm: { pixels: PIXELS / MM_PER_INCH, step: 10, named: 5, check: 150 },
} as const;

/** Plate and ridge marks at their true size, in strips that are cut out and taped together end to end, as the bodies of as many pages as they take. */
export function layoutStrips(
  lists: readonly PlateStrip[],
  {
    paper,
    unit,
    length,
  }: { readonly paper: CardPaper["paper"]; readonly unit: Unit; readonly length: (value: number) => string },
): string[] {
  const room = roomOf(paper);
  const { pixels, step, check } = SCALE[unit];
  const columns = Math.floor((room.width + AIR) / (WIDE + AIR));
  const long = Math.floor((room.height - HEAD - CHECK) / pixels / step) * step;
  return lists.flatMap((list) => {
    const count = Math.ceil((Math.max(0, ...list.marks.map(({ to }) => to)) + step) / long);
    const strips = Array.from({ length: count }, (_, i) => strip(list, i, count, { long, unit, length }));
    return Array.from({ length: Math.ceil(count / columns) }, (_, page) => {
      const own = strips
        .slice(page * columns, (page + 1) * columns)
        .map((inside, i) => `<g transform="translate(${i * (WIDE + AIR)} ${HEAD})">${inside}</g>`)
        .join("");
      const low = room.height - 8;
      const line = `<path d="M1 ${low - 6}v12M1 ${low}h${check * pixels}m0 -6v12" stroke-width="1"/>`;
      const texts = [
        write(0, 13, `${list.name}: ${list.hook}`, 'font-weight="600"'),
        write(0, 29, words.stripLead),
        write(0, low - 10, words.checkLine(unit === "mm" ? `${check} mm` : `${check} in`)),
      ].join("");
      return `<svg class="strips" width="${room.width}" height="${room.height}" viewBox="0 0 ${room.width} ${room.height}" font-size="${TEXT.small}" fill="none" stroke="#000" stroke-width="0.75">${line}${own}<g fill="#000" stroke="none">${texts}</g></svg>`;
    });
  });
}

/** One strip, upright: the tape runs down it. */
function strip(
  { marks }: PlateStrip,
  at: number,
  of: number,
  { long, unit, length }: { long: number; unit: Unit; length: (value: number) => string },
): string {
  const { pixels, step, named } = SCALE[unit];
  const [from, to] = [at * long, (at + 1) * long];
  const high = long * pixels;
  const y = (value: number) => Math.round((value - from) * pixels * 1000) / 1000;
  const within = (value: number) => value >= from - 1e-9 && value <= to + 1e-9;
  const steps = Array.from({ length: Math.round(long / step) + 1 }, (_, i) => i);
  const first = Math.round(from / step);
  const ruler = steps.map((i) => `M${WIDE} ${y(from + i * step)}h-${(first + i) % named === 0 ? 12 : 6}`).join("");
  const numbers = steps
    .filter((i) => (first + i) % named === 0 && i > 0 && i < steps.length - 1)
    .map((i) => write(WIDE - 14, y(from + i * step) + 4, String((first + i) * step), 'text-anchor="end"'))
    .join("");
  const lines: string[] = [];
  const texts: string[] = [];
  for (const mark of together(marks)) {
    if (mark.to < from || mark.from > to) continue;
    const [top, bottom] = [Math.max(mark.from, from), Math.min(mark.to, to)];
    for (const edge of new Set([mark.from, mark.to]))
      if (within(edge))
        lines.push(`<path d="M0 ${y(edge)}H${WIDE - 34}" stroke-width="${edge === mark.from ? 1.6 : 0.75}"/>`);
    if (mark.to > mark.from) {
      const x = (value: number) => ((value - mark.from) / (mark.to - mark.from)) * 34;
      // The X of the trade: a strip's end cuts it where it cuts the board.
      lines.push(
        `<path d="M${x(top)} ${y(top)}L${x(bottom)} ${y(bottom)}M${34 - x(top)} ${y(top)}L${34 - x(bottom)} ${y(bottom)}"/>`,
      );
    }
    if (within(mark.from) && y(mark.from) <= high - 16)
      texts.push(
        ...mark.names.map((name, n) => write(38, y(mark.from) + 12 + n * LINE, name, 'font-weight="600"')),
        ...(y(mark.from) >= 12 ? [write(2, y(mark.from) - 3, length(mark.from))] : []),
      );
    else if (within(mark.to))
      texts.push(
        ...mark.names.map((name, n) =>
          write(38, y(mark.to) - 3 - (mark.names.length - 1 - n) * LINE, name, 'font-weight="600"'),
        ),
      );
  }
  const label = words.strip(at + 1, of);
  const turned = `<text transform="translate(${WIDE - 44} ${high / 2}) rotate(-90)" text-anchor="middle">${escaped(label)}</text>`;
  const clear = marks.some(
    ({ from: a, to: b }) =>
      b > from + long / 2 - textWidth(label, TEXT.small) / pixels &&
      a < from + long / 2 + textWidth(label, TEXT.small) / pixels,
  );
  return `<rect width="${WIDE}" height="${high}" stroke-dasharray="4 3" stroke-width="0.5"/><path d="M0 0H${WIDE}M0 ${high}H${WIDE}"/><path d="${ruler}" stroke-width="0.5"/>${lines.join("")}<g fill="#000" stroke="none">${numbers}${texts.join("")}${clear ? write(WIDE - 40, high - 6, String(at + 1)) : turned}</g>`;
}

/** Pieces that stand at the same place, such as those on both faces of a ridge, as one mark with their names under one another. */
function together(
  marks: PlateStrip["marks"],
): { readonly names: readonly string[]; readonly from: number; readonly to: number }[] {
  const places: { names: string[]; from: number; to: number }[] = [];
  for (const { name, from, to } of marks) {
    const same = places.find((one) => Math.abs(one.from - from) < 1e-6 && Math.abs(one.to - to) < 1e-6);
    if (same) same.names.push(name);
    else places.push({ names: [name], from, to });
  }
  return places;
}

const write = (x: number, y: number, text: string, more = "") =>
  `<text x="${x}" y="${Math.round(y * 100) / 100}"${more === "" ? "" : ` ${more}`}>${escaped(text)}</text>`;
