import type { RefusedKind } from "../arguments/refused.ts";

const WHEN: Readonly<Record<RefusedKind, string>> = {
  "no hip": "the two planes meet in no hip or valley at this corner",
  "ridge fills the run": "half the ridge is as thick as the run",
  "head past the corner": "the run is too small for a hip's head between king commons",
  "seat takes the heel": "the seat is so wide that no height above plate is left",
  "heel above depth": "the height above plate is the plumb depth of the rafter or more",
  "jack wider than offset": "the jack is thicker than its offset",
  "short point below plate": "the jack's short point would lie below the plate line",
  "square tail cuts the seat": "the overhang is so small that a square tail cut would run into the seat",
  "fascia missing": "a level tail cut has no fascia",
  "fascia not used": "a plumb or square tail cut has a fascia",
  "fascia too deep": "the fascia's plumb cut is as deep as the rafter's plumb end",
  "fascia above the plate": "the level cut would lie above the plate's top",
  "tape not above heel": "the tape is no longer than the height above plate",
  "valley jack vanishes": "nothing is left of the valley jack at this offset",
  "no valley jack fits": "the run is too short for a valley jack at any offset",
  "cripple vanishes": "hip and valley stand too near each other",
  "valley vanishes": "the run is too small for anything to be left beside the supporting valley",
  "valley cripple vanishes": "the two valleys stand too near each other for a short side",
  "drop takes the heel": "the hip must be dropped below the plate",
  "hip too shallow for the plate": "the hip is not deep enough to reach down to the plate",
  "no triangle": "the three measures do not make a triangle",
  "no board long enough": "no board on hand is long enough",
  "blocks of two units": "one block is in inches and the other in millimeters",
  "no such piece": "piece is no jack or cripple of the roof",
  "sides differ": "side is Both, and the roof's main and end jacks differ",
};

/** When a function refuses with this kind of problem, after "when". */
export function whenRefused(kind: string): string {
  return WHEN[kind as RefusedKind];
}
