import { boardFeetPerFoot } from "../../measure/boardFeetPerFoot.ts";
import { MM_PER_INCH, type Unit } from "../../measure/unit.ts";
import type { Piece } from "../frame/piece.ts";

/** Board feet of all pieces of a kind, each on its shortest board; the length is in the roof's unit. */
export function pieceBoardFeet({ section, shortestBoard, left, right, plain }: Piece, unit: Unit): number {
  const perFoot = boardFeetPerFoot(section.name);
  const feet = shortestBoard / (unit === "mm" ? MM_PER_INCH : 1) / 12;
  // A section's name was read from a size, so it always has board feet.
  return typeof perFoot === "number" ? perFoot * feet * (left + right + plain) : 0;
}
