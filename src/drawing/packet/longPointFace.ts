import { rafterOutline } from "../../roof/frame/outline.ts";
import type { Hand, Piece } from "../../roof/frame/piece.ts";
import { isBearer } from "../canvas/labelOf.ts";

/** On which face, facing uphill, a piece of a hand has its long point at the head; null where the head is square across or has two cheeks. */
export function longPointFace(piece: Piece, hand: Hand): "left" | "right" | null {
  return isBearer(piece.member) || piece.head.tilts.length !== 1 ? null : rafterOutline(piece, hand).longFace;
}
