import { boardFeetPerFoot } from "../../measure/boardFeetPerFoot.ts";
import { LimitedMap } from "../../measure/limitedMap.ts";
import { readSize } from "../../measure/readSize.ts";
import { Failure } from "../../measure/result.ts";
import { MM_PER_INCH, type Unit } from "../../measure/unit.ts";
import type { Piece } from "../frame/piece.ts";

/** Sizes read, for a roof has hundreds of pieces and a few sizes. */
const sizes = new LimitedMap<string, ReturnType<typeof readSize>>(64);

/** Board feet of all pieces of a kind, each on its shortest board; the length is in the roof's unit. */
export function pieceBoardFeet({ section, shortestBoard, left, right, plain }: Piece, unit: Unit): number {
  const known = sizes.get(section.name);
  const size = known ?? readSize(section.name);
  if (!known) sizes.set(section.name, size);
  const feet = shortestBoard / (unit === "mm" ? MM_PER_INCH : 1) / 12;
  // A section's name was read from a size, so it always has board feet.
  return size instanceof Failure ? 0 : boardFeetPerFoot(size) * feet * (left + right + plain);
}
