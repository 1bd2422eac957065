import type { Point } from "../../geometry/point.ts";
import type { PlacedBoard } from "../../roof/frame/placedBoards.ts";
import type { BoardShape } from "./canvas.ts";
import type { Words } from "./words.ts";

/** A board's mark with the letter of its hand: "J3 L". */
export function labelOf({ piece, hand }: Pick<PlacedBoard, "piece" | "hand">, words: Words): string {
  return hand === "plain" ? piece.mark : `${piece.mark} ${hand === "left" ? words.leftShort : words.rightShort}`;
}

/** A board as a canvas draws it: jacks in the accent, right hands filled where that can be told from hollow. */
export function boardShape(
  { piece, hand }: Pick<PlacedBoard, "piece" | "hand">,
  polygon: readonly Point[],
  tells: boolean,
): BoardShape {
  const color = piece.member === "jack" ? "accent" : "ink";
  return {
    polygon,
    mark: piece.mark,
    hand,
    color,
    fill: tells && hand === "right" && piece.member === "jack" ? color : "wood",
  };
}
