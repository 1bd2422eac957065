import type { Unit } from "../../measure/unit.ts";
import type { ValleyBoard } from "../../roof/frame/bearers.ts";
import type { Piece } from "../../roof/frame/piece.ts";
import { angleText } from "../canvas/shown.ts";
import { WORDS } from "../canvas/words.ts";
import type { CardOptions } from "./cardOptions.ts";

/** What to do for a valley board, which lies flat: its two ends, and where it goes. */
export function valleyBoardSteps(_: Unit, piece: Piece, { length, words = WORDS }: CardOptions): string[] {
  const { wings: said } = words.card;
  const { lowerCut, upperCut, setBack, bevel } = piece.stands[0] as ValleyBoard;
  return [
    said.boardLower(angleText(lowerCut)),
    said.boardUpper(length(piece.longPoint), angleText(upperCut)),
    ...(piece.shortPoint > 0 ? [said.boardInner(length(piece.shortPoint))] : []),
    said.boardSet(length(setBack)),
    said.boardBevel(angleText(bevel)),
  ];
}
