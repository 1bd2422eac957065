import type { Unit } from "../../src/measure/unit.ts";
import type { FrameProblem } from "../../src/roof/frame/frameProblem.ts";
import { ROW_OF } from "../arguments/roofModel.ts";
import { wordingOf } from "./problemText.ts";
import { sayIn } from "./words.ts";

/** Why a roof cannot be framed, without what to do about it. */
export function frameText(problem: FrameProblem, unit: Unit): string {
  return `${ROW_OF[problem.at]}: ${wordingOf(problem, sayIn(unit, "formula"))[0]}`;
}
