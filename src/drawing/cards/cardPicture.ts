import type { CutCard } from "./cutCard.ts";
import { escaped } from "../../measure/escaped.ts";
import { BOLD, textWidth } from "../canvas/textWidth.ts";
import { THEMES } from "../canvas/theme.ts";
import { wrapped } from "../canvas/wrapped.ts";

/** Pixels: the card's edge, and the sizes of its texts. A text that is read from a step away is 24 points. */
const EDGE = 12;
const SIZES = { mark: 34, figure: 32, text: 13, small: 10 } as const;
const INDENT = 22;
const BULLET = "\u2022";

/** A text that stands on the card. */
interface Text {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly size: number;
  readonly bold?: boolean;
  readonly right?: boolean;
}

/**
 * A whole cut card as one picture (SVG text), for a sheet that takes pictures: name, counts, figures, drawing, what to do in order, note and cautions.
 *
 * Black on white whatever the sheet's colors are, because it is drawn for print. Gives its height in pixels too.
 */
export function cardPicture(
  { mark, title, counts, figures, steps, notes, job, cautions, drawing }: CutCard,
  width: number,
): { readonly svg: string; readonly height: number } {
  const texts: Text[] = [];
  const right = width - EDGE;
  const inner = right - EDGE;
  let y = EDGE + SIZES.mark;
  const lines = (text: string, size: number, left: number) => {
    for (const line of wrapped(text, size, right - left))
      texts.push({ x: left, y: (y += Math.ceil(size * 1.3)), text: line, size });
  };
  const counted = countsText(counts);
  texts.push({ x: EDGE, y, text: mark, size: SIZES.mark, bold: true });
  const beside = EDGE + textWidth(mark, SIZES.mark * BOLD) + 10;
  const room = right - beside - textWidth(counted, SIZES.text * BOLD) - 10;
  texts.push({ x: right, y, text: counted, size: SIZES.text, bold: true, right: true });
  // A long title takes the line over the counts as well, never more than the name is high.
  const heading = wrapped(title, SIZES.text, room);
  heading.forEach((line, i) =>
    texts.push({
      x: beside,
      y: y - (heading.length - 1 - i) * Math.ceil(SIZES.text * 1.2),
      text: line,
      size: SIZES.text,
    }),
  );

  for (const { name, value } of figures) {
    y += Math.ceil(SIZES.figure * 1.25);
    texts.push(
      { x: EDGE, y, text: name, size: SIZES.text },
      { x: right, y, text: value, size: SIZES.figure, bold: true, right: true },
    );
  }
  const drawn = opened(drawing(inner, false));
  const top = y + EDGE;
  y = top + drawn.height;
  steps.forEach((step, i) => {
    texts.push({ x: EDGE, y: y + Math.ceil(SIZES.text * 1.3), text: `${i + 1}`, size: SIZES.text, bold: true });
    lines(step, SIZES.text, EDGE + INDENT);
    y += 3;
  });
  for (const note of notes) {
    texts.push({ x: EDGE, y: y + Math.ceil(SIZES.text * 1.3), text: BULLET, size: SIZES.text });
    lines(note, SIZES.text, EDGE + INDENT);
  }
  const rule = (y += 8);
  lines(`${job} ${cautions}`, SIZES.small, EDGE);
  const height = Math.ceil(y + EDGE);
  const { ink, paper } = THEMES.print;
  const name = escaped(`${mark} ${title}: ${counted}`);
  const description = escaped(
    [...figures.map((figure) => `${figure.name} ${figure.value}.`), ...steps, ...notes].join(" "),
  );
  return {
    height,
    svg:
      `<svg xmlns="http://www.w3.org/2000/svg" role="img" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" font-family="system-ui,sans-serif" font-size="${SIZES.text}"><title>${name}</title><desc>${description}</desc>` +
      `<rect x="0.5" y="0.5" width="${width - 1}" height="${height - 1}" style="fill:${paper};stroke:${ink}"/><g transform="translate(${EDGE} ${top})" font-size="${drawn.size}">${drawn.inside}</g>` +
      `<line x1="${EDGE}" y1="${rule}" x2="${right}" y2="${rule}" style="stroke:${ink}"/><g style="fill:${ink}">${texts.map(textSvg).join("")}</g></svg>`,
  };
}

/** How many to cut: "4 left, 4 right". */
export const countsText = (counts: CutCard["counts"]): string =>
  counts.map(({ name, count }) => `${count} ${name}`).join(", ");

function textSvg({ x, y, text, size, bold, right }: Text): string {
  return `<text x="${Math.round(x * 100) / 100}" y="${y}" font-size="${size}"${right ? ' text-anchor="end"' : ""}${bold ? ' font-weight="600"' : ""}>${escaped(text)}</text>`;
}

/** What stands in a drawing, its height, and the size of its text: a picture within a picture is not understood everywhere. */
function opened(svg: string): { inside: string; height: number; size: string } {
  const [, root, inside] = /^(<svg[^>]*>)(?:<title>[^<]*<\/title><desc>[^<]*<\/desc>)?(.*)<\/svg>$/s.exec(svg)!;
  const attribute = (name: string) => new RegExp(` ${name}="([^"]*)"`).exec(root!)![1]!;
  return { inside: inside!, height: Number(attribute("height")), size: attribute("font-size") };
}
