import type { Frame } from "../../roof/frame/frame.ts";
import type { Piece } from "../../roof/frame/piece.ts";
import type { CardOptions } from "../cards/cardOptions.ts";
import { WORDS } from "./words.ts";

/** The first step of a card: the shortest board on hand that holds the piece. */
export function boardStep(
  { spec }: Frame,
  { section, shortestBoard }: Piece,
  { length, words = WORDS }: CardOptions,
): string {
  const board = spec.boards.find((one) => one >= shortestBoard - 1e-9 * one);
  return board === undefined
    ? words.card.noBoard(section.name, length(shortestBoard))
    : words.card.board(section.name, length(board), length(shortestBoard));
}
