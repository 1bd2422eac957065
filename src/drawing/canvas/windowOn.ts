import type { Point } from "../../geometry/point.ts";
import { placedBoards, type PlacedBoard } from "../../roof/frame/placedBoards.ts";
import { labelBoard } from "../cards/labelBoard.ts";
import { boardShape, colorOf, labelOf } from "./labelOf.ts";
import type { RoofCase } from "../views/roofCase.ts";
import { segmentIn, type Box } from "./segment.ts";
import type { Canvas } from "./canvas.ts";
import type { Room } from "./shown.ts";
import { onCanvas, type View } from "./view.ts";

/** A part of a roof as it is drawn: where it stands on the canvas, and the view that put it there. */
export interface Window {
  readonly view: View;
  readonly opening: Box;
  readonly at: (x: number, y: number) => Point;
  /** Writes each board's mark, clear of every line drawn until then. */
  readonly label: () => void;
}

/** Draws the part of a plan between two corners of the roof, as wide as the room. */
export function windowOn(
  canvas: Canvas,
  name: string,
  { frame, pieces }: RoofCase,
  room: Room,
  [least, most]: readonly [Point, Point],
): Window {
  const scale = (room.right - room.left) / (most.x - least.x);
  const view: View = { name, scale, x: room.left - least.x * scale, y: room.top + most.y * scale };
  const opening: Box = { ...room, bottom: room.top + (most.y - least.y) * scale };
  const seen = placedBoards(frame, pieces).filter(
    ({ plan }) =>
      Math.max(...plan.map(({ x }) => x)) > least.x &&
      Math.min(...plan.map(({ x }) => x)) < most.x &&
      Math.max(...plan.map(({ y }) => y)) > least.y &&
      Math.min(...plan.map(({ y }) => y)) < most.y,
  );
  canvas.boards(
    view,
    seen.map((board) => boardShape(board, board.plan, true)),
    opening,
  );
  return {
    view,
    opening,
    at: (x, y) => onCanvas(view, { x, y }),
    label: () =>
      labelBoards(
        canvas,
        view,
        seen.map((board) => visible(board, [least, most])),
        opening,
      ),
  };
}

/** Writes the marks of boards, over an edge only those that stand nowhere else. */
function labelBoards(canvas: Canvas, view: View, boards: readonly PlacedBoard[], opening: Box): void {
  const style = (board: PlacedBoard) => ({ color: colorOf(board), opening }) as const;
  const shown = new Set(
    boards
      .filter((board) => labelBoard(canvas, view, board, style(board)))
      .map((board) => labelOf(board, canvas.words)),
  );
  for (const board of boards) {
    const text = labelOf(board, canvas.words);
    if (!shown.has(text) && labelBoard(canvas, view, board, { ...style(board), onEdges: true })) shown.add(text);
  }
}

/** A board as far as its middle line shows between two corners of the roof. */
function visible(board: PlacedBoard, [least, most]: readonly [Point, Point]): PlacedBoard {
  const part = segmentIn([board.from, board.to], { left: least.x, top: least.y, right: most.x, bottom: most.y });
  return part ? { ...board, from: part[0], to: part[1] } : board;
}
