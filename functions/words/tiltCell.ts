import type { Cell } from "../../src/registry/columns.ts";
import type { Piece } from "../../src/roof/frame/piece.ts";

/** The tilt of a head: two of them stand in one cell as text, 36.87 / 53.13; one is a number; a square cut is blank. */
export function tiltCell({ head: { tilts } }: Pick<Piece, "head">): Cell {
  if (tilts.length === 2) return tilts.map((tilt) => tilt.toFixed(2)).join(" / ");
  return tilts[0] ?? "";
}
