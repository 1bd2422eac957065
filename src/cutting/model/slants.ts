import type { StockPiece } from "../stock.ts";

/** How far a piece's cuts go along the board from its near face to its far one, minus towards the tail: at its low end and at its head. */
export function slantsOf({ slants, hand = "plain", turn = 0 }: StockPiece): readonly [low: number, head: number] {
  // A right's long point is on the near face.
  return slants ?? [0, hand === "plain" ? 0 : hand === "left" ? turn : -turn];
}

/** Cuts are parallel when they are to nine digits. */
export const slantKey = (slant: number): number => Number(slant.toPrecision(9));
