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
  "wing ridge too high": ({ by, span, pitch }, say) => [
    `its ridge would stand ${say.length(by)} above the main ridge`,
    `Make this block the main roof, or type a Span of ${say.most(span)} at most (or a Pitch of ${figure(pitch)} at most)`,
  ],
  "wing ridge nearly level": ({ by, span, most }, say) => [
    `its ridge would stand only ${say.length(by)} below the main ridge, too near to frame`,
    `Type Span ${exactText(span, say.unit ?? "in")} for level ridges, or ${say.most(most)} at most`,
  ],
  "wing past the wall": (problem, say) => [
    `it reaches ${say.length(problem.by)} past the wall's other corner`,
    `Type ${placed(problem, say)}`,
  ],
  "wing wider than wall": ({ most }, say) => [
    "it is wider than the wall that it stands on",
    `Type less than ${say.most(most)}`,
  ],
  "wings overlap": ({ other, right, left }, say) => [
    `it overlaps wing ${other}`,
    `Type ${say.least(right)} or more to stand right of it${left > 0 ? `, or ${say.most(left)} or less to stand left of it` : ""}`,
  ],
  "valleys meet": (problem, say) => [
    `its valley meets wing ${problem.other}'s below their ridges`,
    `Type ${apart(problem, say)}`,
  ],
  "wings' eaves meet": (problem, say) => [
    `its eave and wing ${problem.other}'s run into each other`,
    `Type ${apart(problem, say)}`,
  ],
  "long valleys cross": ({ wing, other }) => [
    `the long valleys of wings ${wing} and ${other} cross`,
    "Make both the same hand, left or right",
  ],
  "square tail in the seat": ({ least }, say) => [
    "a square cut so near the plate would cut into the seat",
    `Type plumb, or an overhang of ${say.least(least)} or more`,
  ],
  "plumb part too deep": ({ most }, say) => [
    "the board on the tail is as deep as the rafter's plumb end, so nothing is left to cut level",
    `Type plumb, or a Fascia or Sub-fascia less than ${say.most(most)} deep`,
  ],
  "soffit above the plate": ({ least }, say) => [
    "the level cut would lie above the plate's top",
    `Type plumb, a Fascia or Sub-fascia at least ${say.least(least)} deep, or a larger Overhang`,
  ],
  "no hip left": ({ other }) => [
    `wings ${other} and this one take both hips of that end away`,
    "Make one of the two ridges lower, or move it along its wall",
  ],
  "flush at a gable": () => [
    "that end of the main roof is a gable, and there is no plane to be flush with",
    "Make that end hipped, or type a length from the corner",
  ],
  "flush at another pitch": ({ pitch, end }) => [
    `it shares the plane of that end, which is ${figure(end)} in 12, and the wing is ${figure(pitch)} in 12`,
    `Type End pitch ${figure(pitch)} for the main roof, Pitch ${figure(end)} for the wing, or a length from the corner`,
  ],
  "wing too near a corner": (problem, say) => [
    `on its ${problem.side} its valley would run into the hip of the main roof, or past the gable`,
    `Type ${placed(problem, say)}${problem.flush ? `, or flush ${problem.side}` : ""}`,
  ],
  "wing too short": ({ least, gable }, say) => [
    "no room is left between its outer end and its valleys",
    `Type at least ${say.least(least)}${gable ? ", or Ends gable" : ""}`,
  ],
  "no valley to the ridge": (problem, say) => [
    `neither of its valleys reaches the main ridge clear of its ends: ${say.least(problem.by)} is missing`,
    `Type ${placed(problem, say)}, or Wing framing laid over`,
  ],
  "no room on the ridge": (problem, say) => [
    `its ridge meets the main ridge too near an end of that: ${say.least(problem.by)} is missing`,
    `Type ${placed(problem, say)}`,
  ],
  "long valley off the ridge": ({ by, other }, say) => [
    `that valley misses the main ridge, or what stands at its end, by ${say.least(by)}`,
    `Type ${say.typed(other)}, or clear the cell`,
  ],
  "no long valley": ({ why }) => [
    {
      level: "with level ridges no valley runs on past the crossing",
      flush: "a flush wing has one valley only",
      laid: "a wing that is laid over has no valley rafters",
    }[why],
    "Clear the cell",
  ],
  "wing without seat": ({ heel, most }, say) => [
    `all planes have one height above plate, ${say.length(heel)}, and at this pitch nothing of the rafter is left to notch (its plumb depth is ${say.most(most)})`,
    "Type a pitch nearer the main roof's, or a deeper Rafter",
  ],
  "wing too narrow": ({ least }, say) => ["it is too narrow to frame", `Type ${say.least(least)} or more`],
  "wing spacing": ({ run, spacing, least }, say) => [
    `a Spacing of ${say.length(spacing)} is not less than its run of ${say.length(run)}, so no jack stands beside its king common`,
    `Type more than ${say.least(least)}, Ends gable, or a smaller Spacing`,
  ],
  "wing hip below plate": ({ drop, heel }, say) => [
    `its hips are dropped by ${say.length(drop)}, and the height above plate is only ${say.length(heel)}`,
    "Type a pitch nearer the wing's own, a smaller Seat, or a backed Hip top",
  ],
  "valley does not reach the plate": ({ least }, say) => [
    "it does not reach down to the plate",
    `Type a valley at least ${say.least(least)} deep`,
  ],
  "no ridge for wings": ({ least }, say) => [
    "the main roof has no ridge for a wing's valleys to meet",
    `Type ${say.least(least)} or more`,
  ],
  "flush laid over": () => [
    "a flush wing shares its outer slope with the main roof's end, so there is no sheathing under it to lie on",
    "Type framed in, or From left corner as a length",
  ],
  "sheathing framed in": () => [
    "only a wing that is laid over stands on the main roof's sheathing",
    "Clear the cell, or type Wing framing laid over",
  ],
  "wing too low to lay over": ({ least }, say) => [
    "its ridge would not stand clear of the sheathing and the valley boards",
    `Type ${say.least(least)} or more, or Wing framing framed in`,
  ],
};

function lengths({ pyramid, least }: { pyramid: number | null; least: number }, say: Say): string {
  const more = `${say.least(least)} or more`;
  return pyramid === null ? more : `${exactText(pyramid, say.unit ?? "in")} for a pyramid, or ${more}`;
}

/** The nearest place on its wall at which a wing can stand. */
function placed({ bound, limit, fits }: { bound: "least" | "most"; limit: number; fits: boolean }, say: Say): string {
  return fits ? from(bound, limit, say) : "a smaller Span, or lengthen the main roof";
}

/** The nearest place on its wall at which a wing stands clear of another. */
function apart({ other, bound, limit }: { other: string; bound: "least" | "most"; limit: number }, say: Say): string {
  return bound === "most" && limit <= 0 ? `a smaller Span, or move wing ${other}` : from(bound, limit, say);
}

function from(bound: "least" | "most", limit: number, say: Say): string {
  return bound === "least" ? `${say.least(limit)} or more` : `${say.most(limit)} or less`;
}
