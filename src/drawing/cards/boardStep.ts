import type { Piece } from "../../roof/frame/piece.ts";
import { wholePiece } from "../../roof/members/pieceParts.ts";
import { WORDS } from "../canvas/words.ts";
import type { CardOptions } from "./cardOptions.ts";
import type { Stick } from "./drawSticks.ts";

/** More boards than this are left to the plan itself. */
const MOST = 6;

/** The first step of a card: the boards that the cutting plan cuts these pieces from, or without a plan only what one of them needs. */
export function boardStep(pieces: readonly Piece[], { length, sticks, onHand, words = WORDS }: CardOptions): string {
  const [{ section, shortestBoard, member }] = pieces as readonly [Piece, ...Piece[]];
  const { need: upright, needFlat, trimmed, untrimmed } = words.card;
  // Never a sixteenth short; an order trims every board but one that is just as long as its piece.
  const least = onHand ? Math.ceil(shortestBoard / onHand.step - 1e-6) * onHand.step : shortestBoard;
  const whole =
    !onHand || onHand.trim === 0 || onHand.boards.some((one) => Math.abs(one - shortestBoard) <= 1e-9 * one);
  const text = (whole ? untrimmed : trimmed)(length(least));
  const need = (member === "valley board" ? needFlat : upright)(section.name, text);
  const places = sticks ? placesOf(sticks, new Set(pieces.map(({ mark }) => mark))) : [];
  if (places.length === 0) return member === "ridge" ? `${need} ${words.card.ridgeLong}` : need;
  const listed = places
    .slice(0, MOST)
    .map(({ first, last, board, at }) => words.card.place({ first, last, length: length(board), at }));
  const more = places.slice(MOST).reduce((sum, { first, last }) => sum + last - first + 1, 0);
  return `${words.card.fromPlan([...listed, ...(more > 0 ? [words.card.moreBoards(more)] : [])])} ${need}`;
}

/** Boards numbered on from each other, of one length, that hold the pieces at the same places, counted from the left end. */
interface Place {
  readonly first: number;
  readonly last: number;
  readonly board: number;
  readonly at: readonly number[];
}

function placesOf(sticks: readonly Stick[], marks: ReadonlySet<string>): Place[] {
  const places: Place[] = [];
  for (const { number, times, length: board, pieces } of sticks) {
    const at = pieces.flatMap(({ name }, i) => (marks.has(wholePiece(name)) ? [i + 1] : []));
    if (at.length === 0) continue;
    const one = { first: number, last: number + times - 1, board, at };
    const before = places.at(-1);
    if (before && before.last === number - 1 && before.board === board && String(before.at) === String(at))
      places[places.length - 1] = { ...before, last: one.last };
    else places.push(one);
  }
  return places;
}
