import type { MemberProblem } from "../../src/roof/members/memberProblem.ts";
import { figure, type Words } from "./words.ts";

/** Why one member cannot be cut. */
export const memberWords: Words<MemberProblem> = {
  "no hip": ({ pitch, otherPitch, corner, least }, say) => [
    `planes of ${figure(pitch, 4)} and ${figure(otherPitch, 4)} in 12 meet in no hip or valley at a corner of ${figure(corner, 4)}°`,
    `The flatter pitch must be more than ${say.least(least)} in 12 there; type pitches nearer each other, or a smaller corner`,
  ],
  "ridge fills the run": ({ least }, say) => [
    "nothing is left before the ridge's face",
    `Type a run of more than ${say.least(least)}, half the ridge's thickness`,
  ],
  "head past the corner": ({ least }, say) => [
    "the king commons leave no room for the hip",
    `Type a run of more than ${say.least(least)}`,
  ],
  "seat takes the heel": ({ most }, say) => [
    "it is wider than the rafter can take at this pitch",
    `Type less than ${say.most(most)}`,
  ],
  "heel above depth": ({ most }, say) => [
    "nothing is left to notch",
    `Type less than ${say.most(most)}, the plumb depth of the rafter at this pitch`,
  ],
  "jack wider than offset": ({ offset, thickness, least }, say) => [
    `${say.length(offset)} is less than the jack's own thickness of ${say.length(thickness)}`,
    `Type more than ${say.least(least)}`,
  ],
  "short point below plate": ({ offset, least }, say) => [
    `at ${say.length(offset)} the short point lies below the plate line`,
    `Type more than ${say.least(least)}; for the length without thickness use JACKLINE`,
  ],
  "square tail cuts the seat": ({ least }, say) => [
    "a square tail cut so near the plate would cut into the seat",
    `Type ${say.least(least)} or more, or a plumb tailCut`,
  ],
  "fascia missing": () => [
    "nothing was given, and a level tailCut starts at the foot of a plumb cut",
    "Type that cut's depth, such as 5.5",
  ],
  "fascia not used": (_, say) => [
    "it counts for a level tailCut only",
    `Leave it out, or type ${say.typed("level")} for tailCut`,
  ],
  "fascia too deep": ({ most }, say) => [
    "a plumb cut that deep leaves nothing to cut level",
    `Type less than ${say.most(most)}, the plumb depth of the rafter at this pitch`,
  ],
  "fascia above the plate": ({ least }, say) => [
    "the level cut would lie above the plate's top",
    `Type ${say.least(least)} or more, or a larger overhang`,
  ],
  "tape not above heel": ({ least }, say) => ["it must be longer than the heel", `Type more than ${say.least(least)}`],
  "valley jack vanishes": ({ offset, most }, say) => [
    `at ${say.length(offset)} nothing is left between valley and ridge`,
    `Type less than ${say.most(most)}`,
  ],
  "no valley jack fits": ({ least }, say) => [
    "ridge, valley and the jack's own thickness leave nothing of it",
    `Type a run of more than ${say.least(least)}`,
  ],
  "cripple vanishes": ({ least }, say) => ["hip and valley leave no cripple", `Type more than ${say.least(least)}`],
  "valley vanishes": ({ least }, say) => [
    "the supporting valley leaves nothing of it",
    `Type a run of more than ${say.least(least)}`,
  ],
  "valley cripple vanishes": ({ least }, say) => [
    "the two valleys leave nothing of the cripple's short side",
    `Type more than ${say.least(least)}`,
  ],
  "drop takes the heel": ({ least }, say) => [
    "the hip is dropped by as much or more",
    `Type a heel of more than ${say.least(least)}`,
  ],
  "hip too shallow for the plate": ({ least }, say) => [
    "the hip does not reach down to the plate",
    `Type a depth of more than ${say.least(least)}`,
  ],
};
