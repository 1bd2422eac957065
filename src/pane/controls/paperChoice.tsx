import type { Signal } from "@preact/signals";
import type { CardPaper } from "../../drawing/cards/cardStyles.ts";
import type { Unit } from "../../measure/unit.ts";
import { texts } from "../words/texts.ts";
import { Choice } from "./choice.tsx";

type Paper = CardPaper["paper"];

/** The paper that was chosen, else the one that goes with the unit. */
export function paperOf(chosen: Signal<Paper | null>, unit: Unit): Paper {
  return chosen.value ?? (unit === "mm" ? "A4" : "letter");
}

/** Asks for the paper. */
export function PaperChoice({ chosen, unit }: { chosen: Signal<Paper | null>; unit: Unit }) {
  return (
    <Choice
      label={texts.paper}
      value={paperOf(chosen, unit)}
      of={["letter", "A4"]}
      change={(value) => (chosen.value = value as Paper)}
    />
  );
}
