import type { Point } from "../geometry/clipped.ts";
import { placedBoards } from "../roof/placedBoards.ts";
import { boardShape, labelOf } from "./labelOf.ts";
import type { RoofCase } from "./roofCase.ts";
import type { Box, Sheet } from "./sheet.ts";
import type { Room } from "./shown.ts";
import { onSheet, type View } from "./view.ts";

/** A part of a roof as it is drawn: where it stands on the sheet, and the view that put it there. */
export interface Window {
  readonly view: View;
  readonly opening: Box;
  readonly at: (x: number, y: number) => Point;
}

/** Draws the part of a plan between two corners of the roof, as wide as the room, with each board's mark on it. */
export function windowOn(sheet: Sheet, name: string, { frame, pieces }: RoofCase, room: Room, [least, most]: readonly [Point, Point]): Window {
  const scale = (room.right - room.left) / (most.x - least.x);
  const view: View = { name, scale, x: room.left - least.x * scale, y: room.top + most.y * scale };
  const opening: Box = { ...room, bottom: room.top + (most.y - least.y) * scale };
  const inside = ({ x, y }: Point) => x > least.x && x < most.x && y > least.y && y < most.y;
  const seen = placedBoards(frame, pieces).filter(({ plan }) => Math.max(...plan.map(({ x }) => x)) > least.x && Math.min(...plan.map(({ x }) => x)) < most.x && Math.max(...plan.map(({ y }) => y)) > least.y && Math.min(...plan.map(({ y }) => y)) < most.y);
  sheet.boards(view, seen.map((board) => boardShape(board, board.plan, true)), opening);
  for (const board of seen) {
    const along = Array.from({ length: 61 }, (_, i) => ({ x: board.from.x + (i / 60) * (board.to.x - board.from.x), y: board.from.y + (i / 60) * (board.to.y - board.from.y) })).filter(inside);
    const places = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2].map((part) => along[Math.floor(part * along.length)]).filter((place) => place !== undefined).map((place) => onSheet(view, place));
    const text = labelOf(board, sheet.words);
    const within = places.map(({ x, y }) => ({ x, y: y + sheet.size * 0.3 })).filter((place) => {
      const box = sheet.boxOf(place, text);
      return box.left > opening.left && box.right < opening.right && box.top > opening.top && box.bottom < opening.bottom;
    });
    sheet.label(within, text, { colour: board.piece.member === "jack" ? "accent" : "ink" });
  }
  return { view, opening, at: (x, y) => onSheet(view, { x, y }) };
}
