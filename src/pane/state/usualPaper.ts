import type { CardPaper } from "../../drawing/cards/cardStyles.ts";
import type { Unit } from "../../measure/unit.ts";

/** The paper that goes with a unit, until another is chosen. */
export function usualPaper(unit: Unit): CardPaper["paper"] {
  return unit === "mm" ? "A4" : "letter";
}
