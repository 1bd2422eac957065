import type { Sheet } from "./sheet.ts";
import { spread } from "./spread.ts";
import { textWidth } from "./textWidth.ts";

/** A length along one direction of the sheet, from pixel to pixel. */
export interface Dimension {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** Where rows of dimensions stand: "down" and "up" are rows along x under and over what they measure, "left" rows along y. */
export interface Rows {
  readonly way: "down" | "up" | "left";
  /** Where the first row begins. */
  readonly at: number;
  /** Where the extension lines begin: what is measured. */
  readonly object: number;
  /** How far the texts may reach along the rows. */
  readonly least: number;
  readonly most: number;
}

type Reach = Pick<Rows, "least" | "most">;

const AIR = 6;

/** The height of one row of dimensions. */
export function rowHeight(size: number): number {
  return Math.ceil(size * 1.04) + AIR;
}

/** Where a dimension's text stands along its row: in its middle, but on the sheet. */
function middle({ from, to, text }: Dimension, size: number, { least, most }: Reach): number {
  const half = textWidth(text, size) / 2;
  return Math.max(least + half, Math.min(most - half, (from + to) / 2));
}

/**
 * Puts dimensions into rows so that no two of a row touch: the shortest nearest to what they measure.
 *
 * @example
 * dimensionRows([{ from: 0, to: 90, text: "8'" }, { from: 0, to: 40, text: "4'" }, { from: 40, to: 90, text: "4'" }], 10, { least: 0, most: 100 }) // => [1, 0, 0]
 */
export function dimensionRows(dimensions: readonly Dimension[], size: number, reach: Reach): number[] {
  const rows: { from: number; to: number }[][] = [];
  const found = dimensions.map(() => 0);
  const order = dimensions.map((_, i) => i).sort((a, b) => Math.abs(dimensions[a]!.to - dimensions[a]!.from) - Math.abs(dimensions[b]!.to - dimensions[b]!.from));
  for (const i of order) {
    const one = dimensions[i]!;
    const half = textWidth(one.text, size) / 2 + 2;
    const at = middle(one, size, reach);
    const taken = { from: Math.min(one.from, one.to, at - half), to: Math.max(one.from, one.to, at + half) };
    let row = 0;
    while (rows[row]?.some(({ from, to }) => from < taken.to - 0.01 && taken.from < to - 0.01)) row++;
    (rows[row] ??= []).push(taken);
    found[i] = row;
  }
  return found;
}

/** The room that dimensions take across their rows. */
export function dimensionDepth(dimensions: readonly Dimension[], size: number, reach: Reach): number {
  return dimensions.length === 0 ? 0 : (Math.max(...dimensionRows(dimensions, size, reach)) + 1) * rowHeight(size);
}

/** Draws dimensions in rows, each with its extension lines and ticks. Gives where the rows end. */
export function drawDimensions(sheet: Sheet, dimensions: readonly Dimension[], rowsAt: Rows): number {
  const { way, at, object } = rowsAt;
  const rows = dimensionRows(dimensions, sheet.size, rowsAt);
  const high = rowHeight(sheet.size);
  const away = way === "down" ? 1 : -1;
  const point = (along: number, across: number) => (way === "left" ? { x: across, y: along } : { x: along, y: across });
  for (const [i, one] of dimensions.entries()) {
    // A text stands over its line: to the left of it where rows run along y.
    const line = way === "down" ? at + (rows[i]! + 1) * high - 3 : at - rows[i]! * high - 3;
    for (const end of [one.from, one.to]) {
      sheet.line([point(end, object + 2 * away), point(end, line + 3 * away)]);
      sheet.line([point(end - 2.5, line + 2.5), point(end + 2.5, line - 2.5)], "ink");
    }
    sheet.line([point(one.from, line), point(one.to, line)]);
    sheet.text(point(middle(one, sheet.size, rowsAt), line - 3), one.text, { vertical: way === "left" });
  }
  return at + away * dimensionDepth(dimensions, sheet.size, rowsAt);
}

/** A mark of a tape that stays hooked: a place and what is read there. */
export interface Reading {
  readonly at: number;
  readonly text: string;
}

/**
 * Writes readings side by side, each at the end of a leader from its place, square to the line they stand on.
 *
 * Where they have no room, every second is left out, then every third and so on: the rest can be counted from its neighbours.
 * Under and over a line the texts stand on end; beside one they lie.
 */
export function drawReadings(sheet: Sheet, readings: readonly Reading[], { way, object, at, least, most }: { way: "down" | "up" | "left" | "right"; object: number; at: number; least: number; most: number }): void {
  const sorted = [...readings].sort((a, b) => a.at - b.at);
  const gap = Math.ceil(sheet.size * 1.06) + 1;
  for (let every = 1; every <= sorted.length; every++) {
    const kept = sorted.filter((_, i) => i % every === 0);
    const places = spread(kept.map((one) => one.at), gap, least + gap / 2, most - gap / 2);
    if (!places) continue;
    const upright = way === "down" || way === "up";
    const away = way === "down" || way === "right" ? 1 : -1;
    const point = (along: number, across: number) => (upright ? { x: along, y: across } : { x: across, y: along });
    for (const [i, { at: from, text }] of kept.entries()) {
      const place = places[i]!;
      sheet.line([point(from, object), point(from, object + 3 * away), point(place, at - 4 * away), point(place, at - away)]);
      sheet.text(point(place + sheet.size * 0.28, at + away), text, { vertical: upright, anchor: way === "up" || way === "right" ? "start" : "end" });
    }
    return;
  }
}
