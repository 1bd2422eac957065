import type { Point } from "../../geometry/point.ts";
import type { Member } from "../../roof/frame/piece.ts";
import type { PlacedBoard } from "../../roof/frame/placedBoards.ts";
import type { BoardShape } from "./canvas.ts";
import type { Words } from "./words.ts";

/** A board's mark with the letter of its hand: "J3 L". */
export function labelOf({ piece, hand }: Pick<PlacedBoard, "piece" | "hand">, words: Words): string {
  return hand === "plain" ? piece.mark : `${piece.mark} ${hand === "left" ? words.leftShort : words.rightShort}`;
}

/** A board that rafters stand on or meet: its hands are no mirror images to be told apart by color. */
export const isBearer = (member: Member): boolean =>
  ["ridge", "hip", "broken hip", "valley", "valley board"].includes(member);

/** Rafters that have a hand are drawn in the accent: jacks, cripples, and commons whose tail a valley cuts. */
export const colorOf = ({ piece, hand }: Pick<PlacedBoard, "piece" | "hand">): "accent" | "ink" =>
  hand === "plain" || isBearer(piece.member) ? "ink" : "accent";

/** A board as a canvas draws it: right hands filled where that can be told from hollow. */
export function boardShape(
  board: Pick<PlacedBoard, "piece" | "hand">,
  polygon: readonly Point[],
  tells: boolean,
): BoardShape {
  const { piece, hand } = board;
  const color = colorOf(board);
  return {
    polygon,
    mark: piece.mark,
    hand,
    color,
    fill: tells && hand === "right" && color === "accent" ? color : "wood",
  };
}
