import type { JackRow } from "../../roof/frame/rafterLines.ts";
import { bays } from "./bays.ts";
import { drawDimensions, type Dimension } from "../canvas/dimensions.ts";
import { inColumns } from "../canvas/inColumns.ts";
import type { RoofCase } from "./roofCase.ts";
import { Canvas, type DrawingOptions } from "../canvas/canvas.ts";
import type { Room } from "../canvas/shown.ts";
import { windowOn } from "../canvas/windowOn.ts";

/** Least width of one corner, in pixels. */
const LEAST = 260;

/** How the members of a corner are set out along the main plate, roof beside roof: bays center to center, from the corner to the king common. */
export function drawSetOut(cases: readonly RoofCase[], options: DrawingOptions): string {
  const canvas = new Canvas(options);
  const { words } = canvas;
  const bottom = inColumns(canvas, cases, LEAST, (one, room) => drawOne(canvas, one, room));
  return canvas.svg(
    bottom + 4,
    words.setOut,
    `${words.setOut}: ${cases.map(({ title, frame }) => `${title}, ${frame.rows[0]!.jacks.map(({ offset }) => options.length(offset)).join(", ")}`).join("; ")}.`,
  );
}

function drawOne(canvas: Canvas, one: RoofCase, room: Room): number {
  const { words, length } = canvas;
  const { spec } = one.frame;
  const [main, end] = one.frame.rows as readonly [JackRow, JackRow];
  const top = canvas.lines([one.title], room, room.top, { bold: true }) + 6;
  const air = 3 * spec.rafter.thickness;
  const { opening, at, label } = windowOn(canvas, "corner", one, { ...room, top }, [
    { x: -end.plane.overhang - air, y: -main.plane.overhang - air },
    { x: main.king + 2 * air, y: end.king + 2 * air },
  ]);
  canvas.line([at(0, end.king + 2 * air), at(0, 0), at(main.king + 2 * air, 0)], "faint", "6 3");
  label();
  const stations = [0, ...main.jacks.map(({ offset }) => offset), main.king];
  const dimension = (from: number, to: number, text: string): Dimension => ({
    from: at(from, 0).x,
    to: at(to, 0).x,
    text,
  });
  const each = bays(stations).map(({ from, to, count, each: bay }) =>
    dimension(from, to, count > 1 ? `${count} ${words.each} ${length(bay)}` : length(bay)),
  );
  return drawDimensions(canvas, [...each, dimension(0, main.king, length(main.king))], {
    way: "down",
    at: opening.bottom,
    object: opening.bottom,
    least: opening.left,
    most: opening.right,
  });
}
