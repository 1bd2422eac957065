import type { Point } from "../../src/geometry/point.ts";
import { textWidth } from "../../src/drawing/canvas/textWidth.ts";
import type { View } from "../../src/drawing/canvas/view.ts";

export interface DrawnText {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface DrawnBoard {
  readonly piece: string;
  readonly hand: string;
  readonly points: readonly Point[];
  readonly view: View;
}

const attribute = (tag: string, name: string) => new RegExp(` ${name}="([^"]*)"`).exec(tag)?.[1];
const plain = (text: string) => text.replace(/&#(\d+);/g, (_, code: string) => String.fromCharCode(Number(code)));

/** The size that a drawing says of itself, and of its text. */
export function drawnSize(svg: string): { width: number; height: number; text: number } {
  const root = /^<svg [^>]*>/.exec(svg)![0];
  return {
    width: Number(attribute(root, "width")),
    height: Number(attribute(root, "height")),
    text: Number(attribute(root, "font-size")),
  };
}

/** The box of every text of a drawing, read from what is drawn and the table of widths: an element each, or one for all that look alike. */
export function drawnTexts(svg: string, size = drawnSize(svg).text): DrawnText[] {
  return [...svg.matchAll(/<text([^>]*)>(.*?)<\/text>/g)].flatMap(([, looks, inner]) => {
    const em = attribute(looks!, "font-weight") ? size * 1.08 : size;
    const anchor = attribute(looks!, "text-anchor");
    const upright = attribute(looks!, "transform");
    if (upright !== undefined && upright !== "rotate(-90)") throw new Error(`A text is turned otherwise: ${upright}`);
    const parts = [...inner!.matchAll(/<tspan([^>]*)>([^<]*)<\/tspan>/g)].map(([, place, letters]) => [place, letters]);
    return (parts.length > 0 ? parts : [[looks, inner]]).map(([place, letters]) => {
      const text = plain(letters!);
      const [along, across] = [Number(attribute(place!, "x")), Number(attribute(place!, "y"))];
      const width = textWidth(text, em);
      const start = along + (anchor === "end" ? -width : anchor === "middle" ? -width / 2 : 0);
      const [over, under] = [across - 0.8 * size, across + 0.24 * size];
      return upright
        ? { text, left: over, right: under, top: -start - width, bottom: -start }
        : { text, left: start, right: start + width, top: over, bottom: under };
    });
  });
}

/** A piece of a line, from point to point. */
export type Segment = readonly [Point, Point];

const pointsOf = (tag: string): Point[] =>
  attribute(tag, "points")!
    .split(" ")
    .map((pair) => {
      const [x, y] = pair.split(",").map(Number);
      return { x: x!, y: y! };
    });

/** Every line that is drawn: of boards their edges, as far as they show in their opening, of filled shapes their outline, and all else that is a line. */
export function drawnSegments(svg: string): Segment[] {
  const found: Segment[] = [];
  let opening: Box | null = null;
  for (const [tag] of svg.matchAll(/<svg x=[^>]*>|<\/svg>|<polygon [^>]*>|<polyline [^>]*>/g)) {
    if (tag.startsWith("<svg")) {
      const [left, top, width, height] = ["x", "y", "width", "height"].map((name) => Number(attribute(tag, name)));
      opening = { left: left!, top: top!, right: left! + width!, bottom: top! + height! };
    } else if (tag === "</svg>") opening = null;
    else {
      const points = pointsOf(tag);
      const around = tag.startsWith("<polygon") ? [...points, points[0]!] : points;
      for (const [i, to] of around.slice(1).entries()) {
        const part = opening ? within(around[i]!, to, opening) : ([around[i]!, to] as const);
        if (part) found.push(part);
      }
    }
  }
  return found;
}

/** The rooms behind texts in which all lines are broken off. */
export function drawnBackings(svg: string): Box[] {
  return [...svg.matchAll(/<rect [^>]*data-backing[^>]*>/g)].map(([tag]) => {
    const [left, top, width, height] = ["x", "y", "width", "height"].map((name) => Number(attribute(tag, name)));
    return { left: left!, top: top!, right: left! + width!, bottom: top! + height! };
  });
}

type Box = Omit<DrawnText, "text">;

/** The part of a segment in a box (Liang and Barsky's clipping); null where there is none. */
export function within(a: Point, b: Point, { left, top, right, bottom }: Box): Segment | null {
  let [from, to] = [0, 1];
  for (const [step, room] of [
    [a.x - b.x, a.x - left],
    [b.x - a.x, right - a.x],
    [a.y - b.y, a.y - top],
    [b.y - a.y, bottom - a.y],
  ] as const) {
    if (step === 0 && room < 0) return null;
    if (step < 0) from = Math.max(from, room / step);
    if (step > 0) to = Math.min(to, room / step);
  }
  if (from > to) return null;
  const at = (part: number) => ({ x: a.x + part * (b.x - a.x), y: a.y + part * (b.y - a.y) });
  return [at(from), at(to)];
}

/** Every board of a drawing, with the view that says its scale. */
export function drawnBoards(svg: string): DrawnBoard[] {
  return [...svg.matchAll(/<g (data-view[^>]*)>(.*?)<\/g>/g)].flatMap(([, tag, inner]) => {
    const number = (name: string) => Number(attribute(` ${tag}`, name));
    const view: View = {
      name: attribute(` ${tag}`, "data-view")!,
      scale: number("data-scale"),
      x: number("data-x"),
      y: number("data-y"),
      flip: attribute(` ${tag}`, "data-flip") === "true",
      slope: number("data-slope"),
    };
    return [...inner!.matchAll(/<polygon [^>]*>/g)].map(([polygon]) => ({
      piece: attribute(polygon, "data-piece")!,
      hand: attribute(polygon, "data-hand")!,
      view,
      points: pointsOf(polygon),
    }));
  });
}

/** A drawn point back in the roof's unit, by the view's own scale: level and height for a board that stands. */
export function measured({ view: { scale, x, y, flip, slope = 0 } }: DrawnBoard, point: Point): Point {
  const level = ((flip ? -1 : 1) * (point.x - x)) / scale;
  const height = (y - point.y) / scale;
  const along = Math.sqrt(1 + slope * slope);
  return { x: (level + slope * height) / along, y: (height - slope * level) / along };
}
