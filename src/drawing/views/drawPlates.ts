import { drawReadings } from "../canvas/dimensions.ts";
import { Canvas, type DrawingOptions } from "../canvas/canvas.ts";
import { textWidth } from "../canvas/textWidth.ts";

/** A plate or a ridge as it is marked: what stands on it, from the hook of the tape on. Lengths in the roof's unit. */
export interface PlateStrip {
  readonly name: string;
  /** Where the tape is hooked. */
  readonly hook: string;
  readonly marks: readonly { readonly name: string; readonly from: number; readonly to: number }[];
}

/** Thickness of a plate as it is drawn, in pixels. */
const PLATE = 10;

/** Plates and ridges one under another, at one scale, each with the running marks of what stands on it. */
export function drawPlates(strips: readonly PlateStrip[], options: DrawingOptions): string {
  const canvas = new Canvas(options);
  const { width, words, size, length } = canvas;
  const room = { left: 0, right: width };
  const farthest = Math.max(...strips.flatMap(({ marks }) => marks.map(({ to }) => to)));
  const scale = (width - 2 - size) / farthest;
  const x = (at: number) => 1 + at * scale;
  let y = 0;
  for (const { name, hook, marks } of strips) {
    const title = canvas.lines([`${name}: ${hook}`], room, y, { bold: true }) + 4;
    // What stands opposite on a ridge has one mark.
    const places = [...new Set(marks.map(({ from }) => Math.round(from * 1e6) / 1e6))].map((from) => ({
      at: x(from),
      text: `${marks
        .filter((mark) => Math.abs(mark.from - from) < 1e-5)
        .map((mark) => mark.name)
        .join(", ")}  ${length(from)}`,
    }));
    const high = Math.max(0, ...places.map(({ text }) => textWidth(text, size))) + 12;
    const top = title + high;
    drawReadings(canvas, places, { way: "up", object: top, at: top - 8, least: 0, most: width });
    const end = x(Math.max(...marks.map(({ to }) => to)));
    for (const [a, b] of [
      [
        { x: 1, y: top },
        { x: end, y: top },
      ],
      [
        { x: 1, y: top + PLATE },
        { x: end, y: top + PLATE },
      ],
    ] as const)
      canvas.line([a, b], "ink");
    for (const { from, to } of marks)
      for (const at of [from, to])
        canvas.line(
          [
            { x: x(at), y: top },
            { x: x(at), y: top + PLATE },
          ],
          "accent",
        );
    y = top + PLATE + 10;
  }
  return canvas.svg(
    y,
    words.plates,
    `${strips.map(({ name, hook, marks }) => `${name}, ${hook}: ${marks.map((mark) => `${mark.name} ${length(mark.from)}`).join("; ")}`).join(". ")}.`,
  );
}
