import type { Cell } from "../../src/registry/columns.ts";
import type { Piece } from "../../src/roof/frame/piece.ts";

/** The tilt of a head: two of them stand in one cell as text, 36.87 / 53.13; one is a number; a square cut is blank. */
export function tiltCell({ head, foot, member }: Pick<Piece, "head" | "foot" | "member">): Cell {
  // A broken hip's own foot, and the foot of what stands on a valley, are beveled too.
  const tilts = member === "broken hip" ? head.tilts : [...foot.tilts, ...head.tilts];
  if (tilts.length === 2) return tilts.map((tilt) => tilt.toFixed(2)).join(" / ");
  return tilts[0] ?? "";
}
