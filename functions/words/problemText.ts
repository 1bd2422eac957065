import type { Failure } from "../../src/measure/result.ts";
import { Refusal } from "../../src/registry/refusal.ts";
import type { Problem } from "../problem.ts";
import { blockWords } from "./blockWords.ts";
import { cellWords } from "./cellWords.ts";
import { frameWords } from "./frameWords.ts";
import { memberWords } from "./memberWords.ts";
import { ownWords } from "./ownWords.ts";
import { placeText } from "./placeText.ts";
import { stockWords } from "./stockWords.ts";
import { sayIn, type Say, type Wording, type Words } from "./words.ts";

export const WORDS: Words<Problem> = {
  ...cellWords,
  ...blockWords,
  ...frameWords,
  ...memberWords,
  ...ownWords,
  ...stockWords,
};

/** A problem in words: what is wrong, and what to do about it. */
export function wordingOf<K extends Problem["kind"]>(problem: Extract<Problem, { kind: K }>, say: Say): Wording {
  return WORDS[problem.kind as K](problem, say);
}

/** Why a cell shows an error: where, what is wrong, and what to type instead. */
export function messageOf(failure: Failure): string {
  return text(failure, "formula", true);
}

/** The same in the pane, whose fields take text without quotes; not named, it stands at the field of its argument or row. */
export function fieldText(failure: Failure, named = false): string {
  return text(failure, "field", named);
}

function text(failure: Failure, where: "formula" | "field", named: boolean): string {
  const [place, unit] = failure instanceof Refusal ? [failure.place, failure.unit] : [null, null];
  // Every definition is checked to come to no other problem.
  const words = `${wordingOf(failure.problem as Problem, sayIn(unit, where)).join(". ")}.`;
  const inList = place !== null && (typeof place.row === "number" || place.value !== undefined);
  return place !== null && (named || inList)
    ? `${placeText(place)}: ${words}`
    : words.charAt(0).toUpperCase() + words.slice(1);
}
