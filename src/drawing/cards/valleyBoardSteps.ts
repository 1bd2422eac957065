import type { Unit } from "../../measure/unit.ts";
import type { ValleyBoard } from "../../roof/frame/bearers.ts";
import type { Frame } from "../../roof/frame/frame.ts";
import { outlineMarks } from "../../roof/frame/outlineMarks.ts";
import type { Piece } from "../../roof/frame/piece.ts";
import { angleText } from "../canvas/shown.ts";
import { WORDS } from "../canvas/words.ts";
import type { CardOptions } from "./cardOptions.ts";

/** What to do for a valley board, which lies flat: its two ends, and where it goes. */
export function valleyBoardSteps(
  frame: Frame,
  _: Unit,
  piece: Piece,
  { length, words = WORDS }: CardOptions,
): string[] {
  const { wings: said } = words.card;
  const { lowerCut, upperCut, setBack, bevel } = piece.stands[0] as ValleyBoard;
  return [
    said.boardLower(angleText(lowerCut)),
    said.boardUpper(length(piece.longPoint), angleText(upperCut)),
    said.boardSet(length(setBack), angleText(bevel)),
    ...(["left", "right"] as const)
      .filter((hand) => piece[hand] > 0)
      .map((hand) => ({ hand, marks: outlineMarks(frame, piece, hand) }))
      .filter(({ marks }) => marks.length > 0)
      .map(({ hand, marks }) =>
        said.boardToes(words[hand], marks.map(({ mark, at }) => `${mark} ${length(at)}`).join("; ")),
      ),
  ];
}
