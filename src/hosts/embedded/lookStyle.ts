import type { IBorderData, IStyleData, Nullable } from "@univerjs/core";
import { BooleanNumber, BorderStyleTypes, HorizontalAlign, VerticalAlign, WrapStrategy } from "@univerjs/core";
import type { Border, Edge, Look } from "../../xlsx/book.ts";
import { EDGES, LINES } from "../../xlsx/book.ts";

const LINE_TYPES: Record<Border["line"], BorderStyleTypes> = {
  thin: BorderStyleTypes.THIN,
  hair: BorderStyleTypes.HAIR,
  dotted: BorderStyleTypes.DOTTED,
  dashed: BorderStyleTypes.DASHED,
  dashDot: BorderStyleTypes.DASH_DOT,
  dashDotDot: BorderStyleTypes.DASH_DOT_DOT,
  double: BorderStyleTypes.DOUBLE,
  medium: BorderStyleTypes.MEDIUM,
  mediumDashed: BorderStyleTypes.MEDIUM_DASHED,
  mediumDashDot: BorderStyleTypes.MEDIUM_DASH_DOT,
  mediumDashDotDot: BorderStyleTypes.MEDIUM_DASH_DOT_DOT,
  slantDashDot: BorderStyleTypes.SLANT_DASH_DOT,
  thick: BorderStyleTypes.THICK,
};
const ACROSS = {
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
  justify: HorizontalAlign.JUSTIFIED,
} as const;
const UPRIGHT = { top: VerticalAlign.TOP, center: VerticalAlign.MIDDLE, bottom: VerticalAlign.BOTTOM } as const;
const SIDES = { top: "t", right: "r", bottom: "b", left: "l" } as const satisfies Record<Edge, keyof IBorderData>;
const YES = BooleanNumber.TRUE;

/** A look of a book as the sheet's own style. */
export function styleOf({
  format,
  font,
  size,
  bold,
  italic,
  underline,
  strike,
  color,
  fill,
  borders,
  across,
  upright,
  wrap,
}: Look): IStyleData {
  return {
    ...(font && { ff: font }),
    ...(size && { fs: size }),
    ...(bold && { bl: YES }),
    ...(italic && { it: YES }),
    ...(underline && { ul: { s: YES } }),
    ...(strike && { st: { s: YES } }),
    ...(color && { cl: { rgb: color } }),
    ...(fill && { bg: { rgb: fill } }),
    ...(borders && {
      bd: Object.fromEntries(
        Object.entries(borders).map(([edge, { line, color: ink }]) => [
          SIDES[edge as Edge],
          { s: LINE_TYPES[line], cl: { rgb: ink } },
        ]),
      ),
    }),
    ...(across && { ht: ACROSS[across] }),
    ...(upright && { vt: UPRIGHT[upright] }),
    ...(wrap && { tb: WrapStrategy.WRAP }),
    ...(format && format !== "General" && { n: { pattern: format } }),
  };
}

/** The sheet's style as a look of a book; what a look has no place for is named in `left`. */
export function lookOf(style: Nullable<IStyleData>, left: Set<string>): Look | null {
  if (!style) return null;
  if (style.tr?.a || style.tr?.v) left.add("turned text");
  if (style.va && style.va !== 1) left.add("raised and lowered letters");
  const color = hex(style.cl?.rgb);
  const fill = hex(style.bg?.rgb);
  const borders = bordersOf(style.bd);
  const across = keyOf(ACROSS, style.ht);
  const upright = keyOf(UPRIGHT, style.vt);
  const look: Look = {
    ...(style.n?.pattern && style.n.pattern !== "General" && { format: style.n.pattern }),
    ...(style.ff && { font: style.ff }),
    ...(style.fs && { size: style.fs }),
    ...(style.bl === YES && { bold: true }),
    ...(style.it === YES && { italic: true }),
    ...(style.ul?.s === YES && { underline: true }),
    ...(style.st?.s === YES && { strike: true }),
    ...(color && { color }),
    ...(fill && { fill }),
    ...(borders && { borders }),
    ...(across && { across }),
    ...(upright && { upright }),
    ...(style.tb === WrapStrategy.WRAP && { wrap: true }),
  };
  return Object.keys(look).length > 0 ? look : null;
}

function bordersOf(data: Nullable<IBorderData>): Look["borders"] | null {
  const found: Partial<Record<Edge, Border>> = {};
  for (const edge of EDGES) {
    const side = data?.[SIDES[edge]];
    const line = side && LINES.find((name) => LINE_TYPES[name] === side.s);
    if (line) found[edge] = { line, color: hex(side.cl?.rgb) ?? "#000000" };
  }
  return Object.keys(found).length > 0 ? found : null;
}

function keyOf<K extends string>(names: Readonly<Record<K, unknown>>, value: unknown): K | undefined {
  return (Object.keys(names) as K[]).find((name) => names[name] === value);
}

/** The sheet's colors are #rgb, #rrggbb or rgb(r,g,b); a file takes #rrggbb. */
function hex(color: Nullable<string>): string | null {
  if (!color) return null;
  const short = /^#([\da-f])([\da-f])([\da-f])$/i.exec(color);
  if (short)
    return `#${short
      .slice(1)
      .map((digit) => digit + digit)
      .join("")}`.toLowerCase();
  if (/^#[\da-f]{6}$/i.test(color)) return color.toLowerCase();
  const parts = /^rgba?\(\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)/i.exec(color);
  return parts
    ? `#${parts
        .slice(1, 4)
        .map((part) => Math.min(255, Number(part)).toString(16).padStart(2, "0"))
        .join("")}`
    : null;
}
