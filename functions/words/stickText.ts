import type { PlacedPiece } from "../../src/cutting/stock.ts";

/** A cell of a sheet takes 32,767 letters. */
const MOST = 30_000;

/** What is written on a piece: its mark, and the letter of its hand. */
export function markOf({ name, hand }: Pick<PlacedPiece, "name" | "hand">): string {
  return hand === "plain" ? name : `${name} ${hand === "left" ? "L" : "R"}`;
}

/**
 * The pieces of a board in the order in which they are cut from its left end.
 *
 * "a | b": one cut ends a and starts b. "a + b": one slanting cut ends a and starts b. "a; b": cuts of different slant, nothing shared.
 * Neighbors that are alike are counted: "3 x C".
 *
 * @example
 * stickText([{ name: "J1", hand: "left", shares: "none" }, { name: "J1", hand: "right", shares: "compound" }, { name: "C", hand: "plain", shares: "plumb" }]) // => "J1 L + J1 R | C"
 * stickText([{ name: "C", hand: "plain", shares: "none" }, { name: "C", hand: "plain", shares: "plumb" }]) // => "2 x C"
 */
export function stickText(pieces: readonly Pick<PlacedPiece, "name" | "hand" | "shares">[]): string {
  const units: { text: string; times: number; apart: boolean }[] = [];
  pieces.forEach((piece, i) => {
    const last = units.at(-1);
    if (piece.shares === "compound" && last) last.text += ` + ${markOf(piece)}`;
    else units.push({ text: markOf(piece), times: 1, apart: piece.shares === "none" && i > 0 });
  });
  const runs: typeof units = [];
  for (const unit of units) {
    const last = runs.at(-1);
    if (last && last.text === unit.text && !unit.apart) last.times++;
    else runs.push({ ...unit });
  }
  const text = runs
    .map(
      ({ text: one, times, apart }, i) =>
        `${i === 0 ? "" : apart ? "; " : " | "}${times === 1 ? one : one.includes(" + ") ? `${times} x (${one})` : `${times} x ${one}`}`,
    )
    .join("");
  return text.length <= MOST ? text : `${text.slice(0, MOST)}…`;
}
