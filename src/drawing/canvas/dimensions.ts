import type { Canvas } from "./canvas.ts";
import { spread } from "./spread.ts";
import { textWidth } from "./textWidth.ts";

/** A length along one direction of the canvas, from pixel to pixel. */
export interface Dimension {
  readonly from: number;
  readonly to: number;
  /** What it is called; on a line of its own where name and length have no room side by side. */
  readonly name?: string;
  readonly text: string;
  /** It is in hand. */
  readonly lit?: boolean;
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

/** The height of one row of dimensions, so many lines of text high. */
export function rowHeight(size: number, lines = 1): number {
  return lines * Math.ceil(size * 1.04) + AIR;
}

/** Where a dimension stands: its row, 0 the nearest to what it measures, the lines of its text and their middle along that row. */
export interface DimensionPlace {
  readonly row: number;
  readonly at: number;
  readonly lines: readonly string[];
}

/** Between a text and an extension line, in pixels. */
const CLEAR = 4;

/** Where a dimension's text stands along its row: as near to the middle as the extension lines that run through the row let it. */
function textPlace(
  { from, to, name, text }: Dimension,
  size: number,
  { least, most }: Reach,
  crossing: readonly number[],
): Omit<DimensionPlace, "row"> {
  const edges = [-Infinity, ...[...crossing].sort((a, b) => a - b), Infinity];
  const forms = name === undefined ? [[text]] : [[`${name} ${text}`], [name, text]];
  for (const lines of forms) {
    const half = halfOf(lines, size);
    const middle = Math.max(least + half, Math.min(most - half, (from + to) / 2));
    const places = edges.slice(1).flatMap((end, i) => {
      const [start, stop] = [Math.max(least, edges[i]! + CLEAR) + half, Math.min(most, end - CLEAR) - half];
      return start <= stop + 1e-9 ? [Math.max(start, Math.min(stop, middle))] : [];
    });
    if (places.length > 0)
      return { lines, at: places.reduce((a, b) => (Math.abs(b - middle) < Math.abs(a - middle) ? b : a)) };
  }
  // Where no gap has room the lines are broken off behind the text.
  const lines = forms.at(-1)!;
  return { lines, at: Math.max(least + halfOf(lines, size), Math.min(most - halfOf(lines, size), (from + to) / 2)) };
}

function halfOf(lines: readonly string[], size: number): number {
  return Math.max(...lines.map((line) => textWidth(line, size))) / 2;
}

/**
 * Puts dimensions into rows so that no two of a row touch and no extension line runs through a text: the shortest nearest to what
 * they measure. A text that has no room between its own extension lines stands beside them.
 *
 * @example
 * placedDimensions([{ from: 0, to: 90, text: "8'" }, { from: 0, to: 40, text: "4'" }, { from: 40, to: 90, text: "4'" }], 10, { least: 0, most: 100 }) // => [{ row: 1, at: 45, lines: ["8'"] }, { row: 0, at: 20, lines: ["4'"] }, { row: 0, at: 65, lines: ["4'"] }]
 */
export function placedDimensions(dimensions: readonly Dimension[], size: number, reach: Reach): DimensionPlace[] {
  const rows: { from: number; to: number; ends: readonly number[] }[][] = [];
  const found: DimensionPlace[] = dimensions.map(() => ({ row: 0, at: 0, lines: [] }));
  const order = dimensions
    .map((_, i) => i)
    .sort(
      (a, b) => Math.abs(dimensions[a]!.to - dimensions[a]!.from) - Math.abs(dimensions[b]!.to - dimensions[b]!.from),
    );
  for (const [k, i] of order.entries()) {
    const one = dimensions[i]!;
    const ends = [one.from, one.to];
    const later = order.slice(k + 1).flatMap((j) => [dimensions[j]!.from, dimensions[j]!.to]);
    for (let row = 0; ; row++) {
      const beyond = rows.slice(row + 1).flatMap((others) => others.flatMap((other) => other.ends));
      const place = textPlace(one, size, reach, [...ends, ...later, ...beyond]);
      const half = halfOf(place.lines, size) + 2;
      const taken = { from: Math.min(...ends, place.at - half), to: Math.max(...ends, place.at + half), ends };
      if (rows[row]?.some(({ from, to }) => from < taken.to - 0.01 && taken.from < to - 0.01)) continue;
      (rows[row] ??= []).push(taken);
      found[i] = { row, ...place };
      break;
    }
  }
  return found;
}

/** How far across its rows each begins and the last one ends. */
function rowStarts(places: readonly DimensionPlace[], size: number): number[] {
  const starts = [0];
  for (let row = 0; places.some((place) => place.row === row); row++)
    starts.push(
      starts[row]! +
        rowHeight(size, Math.max(...places.filter((place) => place.row === row).map(({ lines }) => lines.length))),
    );
  return starts;
}

/** The room that dimensions take across their rows. */
export function dimensionDepth(dimensions: readonly Dimension[], size: number, reach: Reach): number {
  return rowStarts(placedDimensions(dimensions, size, reach), size).at(-1)!;
}

/** Draws dimensions in rows, each with its extension lines and ticks. Gives where the rows end. */
export function drawDimensions(canvas: Canvas, dimensions: readonly Dimension[], rowsAt: Rows): number {
  const { way, at, object } = rowsAt;
  const { size } = canvas;
  const places = placedDimensions(dimensions, size, rowsAt);
  const starts = rowStarts(places, size);
  const away = way === "down" ? 1 : -1;
  const point = (along: number, across: number) => (way === "left" ? { x: across, y: along } : { x: along, y: across });
  for (const [i, one] of dimensions.entries()) {
    const { row, at: middle, lines } = places[i]!;
    // A text stands over its line: to the left of it where rows run along y.
    const line = way === "down" ? at + starts[row + 1]! - 3 : at - starts[row]! - 3;
    for (const end of [one.from, one.to]) {
      canvas.line([point(end, object + 2 * away), point(end, line + 3 * away)]);
      canvas.line([point(end - 2.5, line + 2.5), point(end + 2.5, line - 2.5)], one.lit ? "lit" : "ink");
    }
    // The line runs on under a text that stands beside it.
    const half = halfOf(lines, size);
    const [least, most] = [Math.min(one.from, one.to), Math.max(one.from, one.to)];
    canvas.line(
      [point(middle < least ? middle - half : least, line), point(middle > most ? middle + half : most, line)],
      one.lit ? "lit" : "faint",
    );
    for (const [k, text] of [...lines].reverse().entries())
      canvas.text(point(middle, line - 3 - k * Math.ceil(size * 1.04)), text, {
        vertical: way === "left",
        ...(one.lit ? { color: "lit", bold: true } : {}),
      });
  }
  return at + away * starts.at(-1)!;
}

/** A mark of a tape that stays hooked: a place and what is read there. */
export interface Reading {
  readonly at: number;
  readonly text: string;
}

/**
 * Writes readings side by side, each at the end of a leader from its place, square to the line they stand on.
 *
 * Where they have no room, every second is left out, then every third and so on: the rest can be counted from its neighbors.
 * Under and over a line the texts stand on end; beside one they lie.
 */
export function drawReadings(
  canvas: Canvas,
  readings: readonly Reading[],
  {
    way,
    object,
    at,
    least,
    most,
  }: { way: "down" | "up" | "left" | "right"; object: number; at: number; least: number; most: number },
): void {
  const sorted = [...readings].sort((a, b) => a.at - b.at);
  const gap = Math.ceil(canvas.size * 1.06) + 1;
  for (let every = 1; every <= sorted.length; every++) {
    const kept = sorted.filter((_, i) => i % every === 0);
    const places = spread(
      kept.map((one) => one.at),
      gap,
      least + gap / 2,
      most - gap / 2,
    );
    if (!places) continue;
    const upright = way === "down" || way === "up";
    const away = way === "down" || way === "right" ? 1 : -1;
    const point = (along: number, across: number) => (upright ? { x: along, y: across } : { x: across, y: along });
    for (const [i, { at: from, text }] of kept.entries()) {
      const place = places[i]!;
      // A leader ends a little before its text, or it would read as a minus.
      canvas.line([
        point(from, object),
        point(from, object + 2 * away),
        point(place, at - 5 * away),
        point(place, at - 3 * away),
      ]);
      canvas.text(point(place + canvas.size * 0.28, at + away), text, {
        vertical: upright,
        anchor: way === "up" || way === "right" ? "start" : "end",
      });
    }
    return;
  }
}
