import type { Point } from "../../geometry/point.ts";
import { dimensionDepth, drawDimensions, type Dimension } from "../canvas/dimensions.ts";
import type { Canvas } from "../canvas/canvas.ts";
import { isFlipped, type Room, type Shown } from "../canvas/shown.ts";
import { onCanvas, type View } from "../canvas/view.ts";

/**
 * The long-point face of a rafter lying as on the saw horses: its plumb cuts, its lengths along the top edge, the tape line.
 *
 * The short point lies on the far face, so its plumb line is dashed. Gives where the view ends.
 */
export function drawSide(canvas: Canvas, shown: Shown, room: Room): number {
  const { piece, hand, outline } = shown;
  const { words, length, size } = canvas;
  const face = outline[outline.longFace];
  const far = outline[outline.longFace === "left" ? "right" : "left"];
  const flip = isFlipped(shown);
  const level = lyingView("side", face.polygon, room, flip);
  const along = (from: number, to: number, name: string, value: number): Dimension => ({
    from: onCanvas(level, { x: from, y: 0 }).x,
    to: onCanvas(level, { x: to, y: 0 }).x,
    name,
    text: length(value),
  });
  const rest = [
    ...(piece.shortPoint < piece.longPoint ? [along(0, piece.shortPoint, words.shortPoint, piece.shortPoint)] : []),
    ...(piece.tail > 0 ? [along(-piece.tail, 0, words.tail, piece.tail)] : []),
  ];
  const over = [
    along(0, piece.longPoint, piece.head.tilts.length > 0 ? words.longPoint : words.toHead, piece.longPoint),
    ...(canvas.brief ? [] : rest),
  ];
  const view: View = { ...level, y: room.top + dimensionDepth(over, size, reach(room)) + 3 };
  const at = (point: Point) => onCanvas(view, point);
  drawDimensions(canvas, over, { way: "up", at: view.y - 3, object: view.y, ...reach(room) });
  canvas.boards(view, [{ polygon: face.polygon, mark: piece.mark, hand }]);
  const { head, "seat corner": corner, "over plate": plate } = face.points;
  canvas.line([at(plate!), at(corner!)], "faint", "6 3");
  if (piece.shortPoint < piece.longPoint) canvas.line([at(far.points.head!), at(far.points.toe!)], "faint", "3 2");
  canvas.line([at(corner!), at(head!)], "accent");
  const low = at({ x: 0, y: -piece.section.depth }).y;
  const whole = along(Math.min(...face.polygon.map(({ x }) => x)), head!.x, words.shortestBoard, piece.shortestBoard);
  const under = [along(corner!.x, head!.x, words.tape, piece.tape!), ...(canvas.brief ? [] : [whole])];
  return drawDimensions(canvas, under, { way: "down", at: low + 1, object: low, ...reach(room) });
}

/** How far texts may reach in a column. */
export function reach({ left, right }: Room): { least: number; most: number } {
  return { least: left, most: right };
}

/** The view of a lying board that fills a column from its lowest to its farthest point; its top edge is at the column's top. */
export function lyingView(name: string, points: readonly Point[], { left, right, top }: Room, flip: boolean): View {
  const from = Math.min(...points.map(({ x }) => x));
  const to = Math.max(...points.map(({ x }) => x));
  const scale = (right - left - 2) / (to - from);
  return { name, scale, flip, x: flip ? right - 1 + from * scale : left + 1 - from * scale, y: top };
}
