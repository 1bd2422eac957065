import type { Unit } from "../../src/measure/unit.ts";
import { Refusal } from "../../src/registry/refusal.ts";
import type { FrameProblem } from "../../src/roof/frame/frameProblem.ts";
import type { Row } from "../arguments/roofBlock.ts";
import { frameWords } from "./frameWords.ts";
import { sayIn, type Wording } from "./words.ts";

const ROW_OF: Readonly<Record<FrameProblem["at"], Row>> = {
  span: "Span",
  length: "Length",
  endPitch: "End pitch",
  spacing: "Spacing",
  hip: "Hip",
  hipHead: "Hip head",
  seat: "Seat",
  heel: "Heel",
  correction: "Correction",
  endCorrection: "End correction",
};

/** Why a roof block cannot be framed, worded by the row at fault. */
export function blockRefusal(problem: FrameProblem, unit: Unit): Refusal {
  return new Refusal("#VALUE!", `${blockWording(problem, unit).join(". ")}.`);
}

export function blockWording(problem: FrameProblem, unit: Unit): Wording {
  const [wrong, ...instead] = frameWords[problem.kind](problem as never, sayIn(unit, true));
  return [`${ROW_OF[problem.at]}: ${wrong}`, ...instead];
}
