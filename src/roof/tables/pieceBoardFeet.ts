import { boardFeetPerFoot } from "../../measure/boardFeetPerFoot.ts";
import { readSize } from "../../measure/readSize.ts";
import { remembered } from "../../measure/remembered.ts";
import { Failure } from "../../measure/result.ts";
import { MM_PER_INCH, type Unit } from "../../measure/unit.ts";
import type { Piece } from "../frame/piece.ts";

/** A roof has hundreds of pieces and a few sizes. */
const sizeOf = remembered(readSize);

/** Board feet of all pieces of a kind, each on its shortest board; the length is in the roof's unit. */
export function pieceBoardFeet({ section, shortestBoard, left, right, plain }: Piece, unit: Unit): number {
  const size = sizeOf(section.name);
  const feet = shortestBoard / (unit === "mm" ? MM_PER_INCH : 1) / 12;
  // A section's name was read from a size, so it always has board feet.
  return size instanceof Failure ? 0 : boardFeetPerFoot(size) * feet * (left + right + plain);
}
