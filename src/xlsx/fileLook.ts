import type { BorderSide, CellStyle, Color } from "hucre";
import { EDGES, LINES } from "./book.ts";
import type { Border, Edge, Look } from "./book.ts";

// The usual letters of a workbook. Once a file says anything about letters it must name these too, or each program takes its own.
const USUAL = { name: "Calibri", size: 11 } as const;

/** A look as the file's writer takes it. */
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
}: Look): CellStyle {
  const own = {
    ...(font && { name: font }),
    ...(size && { size }),
    ...(bold && { bold }),
    ...(italic && { italic }),
    ...(underline && { underline }),
    ...(strike && { strikethrough: strike }),
    ...(color && { color: rgb(color) }),
  };
  const place = {
    ...(across && { horizontal: across }),
    ...(upright && { vertical: upright }),
    ...(wrap && { wrapText: wrap }),
  };
  const edges = Object.fromEntries(
    Object.entries(borders ?? {}).map(([edge, border]) => [edge, { style: border.line, color: rgb(border.color) }]),
  );
  return {
    ...(Object.keys(own).length > 0 && { font: { ...USUAL, ...own } }),
    ...(fill && { fill: { type: "pattern" as const, pattern: "solid" as const, fgColor: rgb(fill) } }),
    ...(Object.keys(edges).length > 0 && { border: edges }),
    ...(Object.keys(place).length > 0 && { alignment: place }),
    ...(format && format !== "General" && { numFmt: format }),
  };
}

/** A color as the file holds it. */
export function rgb(color: string): Color {
  return { rgb: color.slice(1).toUpperCase() };
}

/** A file's style as a look; what a look has no place for is named in `left`. `resolve` turns the file's colors into #rrggbb. */
export function lookOf(style: CellStyle, resolve: (color: Color) => string | null, left: Set<string>): Look | null {
  const { font = {}, fill, border = {}, alignment = {}, numFmt } = style;
  const color = font.color && resolve(font.color);
  const filled = fill && fillOf(fill, resolve, left);
  const edges = borders(border, resolve);
  if (border.diagonal) left.add("diagonal lines");
  if (font.vertAlign) left.add("raised and lowered letters");
  if (alignment.textRotation || alignment.indent || alignment.shrinkToFit) left.add("turned, indented or shrunk text");
  const across = (["left", "center", "right", "justify"] as const).find((side) => side === alignment.horizontal);
  const upright = (["top", "center", "bottom"] as const).find((side) => side === alignment.vertical);
  const look: Look = {
    ...(numFmt && numFmt !== "General" && { format: numFmt }),
    ...(font.name && font.name !== USUAL.name && { font: font.name }),
    ...(font.size && font.size !== USUAL.size && { size: font.size }),
    ...(font.bold && { bold: true }),
    ...(font.italic && { italic: true }),
    ...(font.underline && { underline: true }),
    ...(font.strikethrough && { strike: true }),
    ...(color && { color }),
    ...(filled && { fill: filled }),
    ...(edges && { borders: edges }),
    ...(across && { across }),
    ...(upright && { upright }),
    ...(alignment.wrapText && { wrap: true }),
  };
  return Object.keys(look).length > 0 ? look : null;
}

function fillOf(
  fill: NonNullable<CellStyle["fill"]>,
  resolve: (color: Color) => string | null,
  left: Set<string>,
): string | null {
  if (fill.type === "pattern" && fill.pattern === "none") return null;
  if (fill.type === "pattern" && fill.pattern === "solid") return fill.fgColor ? resolve(fill.fgColor) : null;
  left.add("patterned and shaded fills");
  return null;
}

function borders(
  border: Partial<Record<Edge, BorderSide>>,
  resolve: (color: Color) => string | null,
): Partial<Record<Edge, Border>> | null {
  const found: Partial<Record<Edge, Border>> = {};
  for (const edge of EDGES) {
    const side = border[edge];
    const line = LINES.find((known) => known === side?.style);
    if (line) found[edge] = { line, color: (side!.color && resolve(side!.color)) ?? "#000000" };
  }
  return Object.keys(found).length > 0 ? found : null;
}
