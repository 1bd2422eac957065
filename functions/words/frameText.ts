import type { Unit } from "../../src/measure/unit.ts";
import type { FrameProblem } from "../../src/roof/frame/frameProblem.ts";
import { ROW_OF } from "../arguments/roofModel.ts";
import { placeText } from "./placeText.ts";
import { wordingOf } from "./problemText.ts";
import { sayIn } from "./words.ts";

/** Why a roof cannot be framed, without what to do about it. */
export function frameText(problem: FrameProblem, unit: Unit): string {
  const place = { argument: "", row: ROW_OF[problem.at], ...("wing" in problem ? { wing: problem.wing } : {}) };
  return `${placeText(place)}: ${wordingOf(problem, sayIn(unit, "formula"))[0]}`;
}
