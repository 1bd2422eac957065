import type { Unit } from "../../measure/unit.ts";
import { sawReaches } from "../../roof/members/sawReach.ts";
import { angleText } from "../canvas/shown.ts";
import { WORDS, type Words } from "../canvas/words.ts";

/** What stands behind a cut that the saw does not reach through in one pass; nothing where it reaches. */
export function sawDanger(
  tilts: readonly (number | null)[],
  thickness: number,
  unit: Unit,
  words: Words = WORDS,
): string {
  const past = tilts.filter((tilt) => tilt !== null).filter((tilt) => !sawReaches(tilt, thickness, unit));
  return past.length === 0 ? "" : words.card.pastSaw([...new Set(past.map(angleText))]);
}

/** The same behind a sentence, with the space that parts them. */
export function dangerAfter(...of: Parameters<typeof sawDanger>): string {
  const danger = sawDanger(...of);
  return danger === "" ? "" : ` ${danger}`;
}
