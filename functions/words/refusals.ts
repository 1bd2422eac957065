import type { Refuses } from "../../src/registry/worksheetFunction.ts";
import { limitText } from "./limitText.ts";

/** A figure with at most four decimals; a limit is rounded to the side that works. */
function rounded(name: string, value: number | string | undefined): string {
  if (typeof value !== "number") return String(value ?? "");
  return name === "least" || name === "most" ? limitText(value, null, name) : String(Number(value.toFixed(4)));
}

/** One refusal of the core, worded: the tag, when it comes up, and what to type instead. */
function refuses(tag: string, when: string, say: (figure: (name: string) => string) => string): Refuses {
  return { tag, when, say: (figures) => say((name) => rounded(name, figures[name])) };
}

export const noHip = refuses(
  "no hip",
  "the two planes meet in no hip or valley at this corner",
  (f) =>
    `otherPitch, corner: planes of ${f("pitch")} and ${f("otherPitch")} in 12 meet in no hip or valley at a corner of ${f("corner")}°. The flatter pitch must be more than ${f("least")} in 12 there; type pitches nearer each other, or a smaller corner.`,
);
export const ridgeFillsRun = refuses(
  "ridge fills the run",
  "half the ridge is as thick as the run",
  (f) =>
    `run: nothing is left before the ridge's face. Type a run of more than ${f("least")}, half the ridge's thickness.`,
);
export const headPastCorner = refuses(
  "head past the corner",
  "the run is too small for a hip's head between king commons",
  (f) => `run: the king commons leave no room for the hip. Type a run of more than ${f("least")}.`,
);
export const seatTakesHeel = refuses(
  "seat takes the heel",
  "the seat is so wide that no height above plate is left",
  (f) => `seat: it is wider than the rafter can take at this pitch. Type less than ${f("most")}.`,
);
export const heelAboveDepth = refuses(
  "heel above depth",
  "the height above plate is the plumb depth of the rafter or more",
  (f) => `heel: nothing is left to notch. Type less than ${f("most")}, the plumb depth of the rafter at this pitch.`,
);
export const jackTooWide = refuses(
  "jack wider than offset",
  "the jack is thicker than its offset",
  (f) =>
    `offset: ${f("offset")} is less than the jack's own thickness of ${f("thickness")}. Type more than ${f("least")}.`,
);
export const shortBelowPlate = refuses(
  "short point below plate",
  "the jack's short point would lie below the plate line",
  (f) =>
    `offset: at ${f("offset")} the short point lies below the plate line. Type more than ${f("least")}; for the length without thickness use JACKLINE.`,
);
export const squareTailCutsSeat = refuses(
  "square tail cuts the seat",
  "the overhang is so small that a square tail cut would run into the seat",
  (f) =>
    `overhang: a square tail cut so near the plate would cut into the seat. Type ${f("least")} or more, or a plumb tailCut.`,
);
export const fasciaMissing = refuses(
  "fascia missing",
  "a level tail cut has no fascia",
  () =>
    `fascia: nothing was given, and a level tailCut starts at the foot of a plumb cut. Type that cut's depth, such as 5.5.`,
);
export const fasciaNotUsed = refuses(
  "fascia not used",
  "a plumb or square tail cut has a fascia",
  () => `fascia: it counts for a level tailCut only. Leave it out, or type "level" for tailCut.`,
);
export const fasciaTooDeep = refuses(
  "fascia too deep",
  "the fascia's plumb cut is as deep as the rafter's plumb end",
  (f) =>
    `fascia: a plumb cut that deep leaves nothing to cut level. Type less than ${f("most")}, the plumb depth of the rafter at this pitch.`,
);
export const fasciaAbovePlate = refuses(
  "fascia above the plate",
  "the level cut would lie above the plate's top",
  (f) => `fascia: the level cut would lie above the plate's top. Type ${f("least")} or more, or a larger overhang.`,
);
export const tapeBelowHeel = refuses(
  "tape not above heel",
  "the tape is no longer than the height above plate",
  (f) => `tape: it must be longer than the heel. Type more than ${f("least")}.`,
);
export const valleyJackVanishes = refuses(
  "valley jack vanishes",
  "nothing is left of the valley jack at this offset",
  (f) => `offset: at ${f("offset")} nothing is left between valley and ridge. Type less than ${f("most")}.`,
);
export const noValleyJack = refuses(
  "no valley jack fits",
  "the run is too short for a valley jack at any offset",
  (f) => `run: ridge, valley and the jack's own thickness leave nothing of it. Type a run of more than ${f("least")}.`,
);
export const crippleVanishes = refuses(
  "cripple vanishes",
  "hip and valley stand too near each other",
  (f) => `distance: hip and valley leave no cripple. Type more than ${f("least")}.`,
);
export const dropTakesHeel = refuses(
  "drop takes the heel",
  "the hip must be dropped below the plate",
  (f) => `heel: the hip is dropped by as much or more. Type a heel of more than ${f("least")}.`,
);
export const hipAbovePlate = refuses(
  "hip too shallow for the plate",
  "the hip is not deep enough to reach down to the plate",
  (f) => `depth: the hip does not reach down to the plate. Type a depth of more than ${f("least")}.`,
);
export const noTriangle = refuses(
  "no triangle",
  "the three measures do not make a triangle",
  (f) =>
    `diagonal: with these sides it lies between ${f("least")} and ${f("most")}. Measure the diagonal between the ends of the two sides again.`,
);
export const noBoard = refuses(
  "no board long enough",
  "no board on hand is long enough",
  (f) =>
    `length: ${f("length")} is longer than the longest board, ${f("longest")}. Type a longer length under boards, or splice the piece as the local code allows.`,
);
export const sidesDiffer = refuses(
  "sides differ",
  "side is Both, and the roof's main and end jacks differ",
  () => `side: the main and end jacks of this roof differ. Type Main or End, whichever the jack was cut for.`,
);
