import type { FrameProblem } from "../../src/roof/frame/frameProblem.ts";
import { exactText } from "./limitText.ts";
import { figure, type Say, type Words } from "./words.ts";

/** Why a roof block cannot be framed. */
export const frameWords: Words<FrameProblem> = {
  "planes meet in no hip": ({ pitch, otherPitch }) => [
    `planes of ${figure(pitch)} and ${figure(otherPitch)} in 12 meet in no hip`,
    "Type pitches nearer each other",
  ],
  "nothing left to notch": ({ most }, say) => [
    "nothing of the rafter is left to notch",
    `Type less than ${say.most(most)}, the plumb depth of the rafter on its flatter side`,
  ],
  "seat too wide": ({ most }, say) => [
    "it is wider than the rafter can take",
    `Type less than ${say.most(most)}, or a deeper Rafter`,
  ],
  "no seat on the flatter side": ({ heel, most, least }, say) => [
    `both sides need one height above plate, ${say.length(heel)}, and on the flatter side no seat is left at that height (the rafter's plumb depth there is ${say.most(most)})`,
    `Type a Seat of more than ${say.least(least)}, a deeper Rafter, or pitches nearer each other`,
  ],
  "length too short": (problem, say) => [
    `the hipped end${problem.pyramid !== null ? "s take" : " takes"} more than that`,
    `Type ${lengths(problem, say)}`,
  ],
  "ridge too short": (problem, say) => [
    `the ridge would be too short ${problem.pyramid !== null ? "for its king commons to stand side by side" : "between king commons and gable"}`,
    `Type ${lengths(problem, say)}`,
  ],
  "spacing too narrow": ({ least }, say) => [
    "rafters so near each other leave no room to nail",
    `Type ${say.least(least)} or more, center to center${say.unit === "in" ? "; feet need their mark, as 2'" : ""}`,
  ],
  "too many rafters": ({ rafters, spacing, most }, say) => [
    `at a spacing of ${say.length(spacing)} more than ${rafters} rafters would stand along a plate`,
    `Type ${say.most(most)} or less, or a wider Spacing`,
  ],
  "correction below plate": ({ least }, say) => [
    "the shortest jack would end below the plate line",
    `Type more than ${say.least(least)}`,
  ],
  "correction over a step": ({ most }, say) => [
    "it is as much as a step or more",
    `Type less than ${say.most(most)} either way: what the first jack tried was long or short by, not its length`,
  ],
  "spacing wider than run": ({ run, spacing }, say) => [
    `${say.length(spacing)} is not less than the run of ${say.length(run)}, so no jack stands beside the king common`,
    "Type a smaller Spacing or a wider Span",
  ],
  "no ridge for the hips": () => [
    "there is no ridge for the hips to meet",
    "Type king commons, or a roof with a Ridge longer than a pyramid's",
  ],
  "roof too narrow": ({ span }, say) => [`${say.length(span)} is too narrow for the hips' heads`, "Type a wider Span"],
  "no jack fits": ({ span, spacing }, say) => [
    `${say.length(span)} is too narrow for one jack at a spacing of ${say.length(spacing)}`,
    "Type a wider Span or a smaller Spacing",
  ],
  "hip drops below plate": ({ drop, heel, most }, say) => [
    `the hip is dropped by ${say.length(drop)}, and the height above plate is only ${say.length(heel)}`,
    `Type a Seat of less than ${say.most(most)}, or a backed Hip top`,
  ],
  "heel under the drop": ({ least }, say) => [
    "the hip is dropped by as much or more",
    `Type more than ${say.least(least)}, or a backed Hip top`,
  ],
  "hip does not reach the plate": ({ least }, say) => [
    "it does not reach down to the plate",
    `Type a hip at least ${say.least(least)} deep`,
  ],
};

function lengths({ pyramid, least }: { pyramid: number | null; least: number }, say: Say): string {
  const more = `${say.least(least)} or more`;
  return pyramid === null ? more : `${exactText(pyramid, say.unit ?? "in")} for a pyramid, or ${more}`;
}
