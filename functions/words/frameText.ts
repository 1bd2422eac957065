import type { Unit } from "../../src/measure/unit.ts";
import type { FrameProblem } from "../../src/roof/frame/frameProblem.ts";
import { framePlace } from "../arguments/roofModel.ts";
import { placeText } from "./placeText.ts";
import { wordingOf } from "./problemText.ts";
import { sayIn } from "./words.ts";

/** Why a roof cannot be framed, without what to do about it. */
export function frameText(problem: FrameProblem, unit: Unit): string {
  return `${placeText(framePlace("", problem))}: ${wordingOf(problem, sayIn(unit, "formula"))[0]}`;
}
