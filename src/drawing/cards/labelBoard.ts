import type { Point } from "../../geometry/point.ts";
import type { PlacedBoard } from "../../roof/frame/placedBoards.ts";
import { labelOf } from "../canvas/labelOf.ts";
import type { Box } from "../canvas/segment.ts";
import type { Canvas, TextStyle } from "../canvas/canvas.ts";
import { onCanvas, type View } from "../canvas/view.ts";

/** Parts of a board's length at which its mark is tried, the middle first. */
const PARTS = [0.5, ...Array.from({ length: 20 }, (_, i) => [0.5 - (i + 1) * 0.02, 0.5 + (i + 1) * 0.02]).flat()];

/** Between a mark and its board's edge, in pixels. */
const AIR = 2;

/** How a board's mark is written. */
interface BoardLabel extends TextStyle {
  /** What shows of the drawing. */
  readonly opening?: Box;
  /** Also over the edge of a board, which is broken off behind it, where there is no other place. */
  readonly onEdges?: boolean;
}

/** A board's mark: on it where it is thick enough, else beside it, in the first of these places that is clear, upright along an upright board. */
export function labelBoard(
  canvas: Canvas,
  view: View,
  board: Pick<PlacedBoard, "piece" | "hand" | "from" | "to">,
  { opening, onEdges = false, ...style }: BoardLabel = {},
): boolean {
  const text = labelOf(board, canvas.words);
  const [a, b] = [onCanvas(view, board.from), onCanvas(view, board.to)];
  const along = { x: b.x - a.x, y: b.y - a.y };
  const length = Math.hypot(along.x, along.y);
  const normal = { x: -along.y / length, y: along.x / length };
  const set: TextStyle = { ...style, vertical: Math.abs(along.x) < 1e-6 };
  const { left, right, top, bottom } = canvas.boxOf({ x: 0, y: 0 }, text, set);
  // How far the text reaches square to the board, from its own middle.
  const reach = (Math.abs(normal.x) * (right - left) + Math.abs(normal.y) * (bottom - top)) / 2;
  const half = (board.piece.section.thickness / 2) * view.scale;
  const beside = half + reach + AIR;
  const sides = half >= reach + AIR / 2 ? [0, -beside, beside] : [-beside, beside];
  const at = (part: number, off: number): Point => ({
    x: a.x + part * along.x + off * normal.x - (left + right) / 2,
    y: a.y + part * along.y + off * normal.y - (top + bottom) / 2,
  });
  const shows = (place: Point): boolean => {
    if (!opening) return true;
    const box = canvas.boxOf(place, text, set);
    return box.left > opening.left && box.right < opening.right && box.top > opening.top && box.bottom < opening.bottom;
  };
  return (
    undefined !==
    canvas.label(sides.flatMap((off) => PARTS.map((part) => at(part, off))).filter(shows), text, set, onEdges)
  );
}
