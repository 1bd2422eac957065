import type { Kinds } from "../../measure/result.ts";

/** Lengths are in the unit of what went in; `least` and `most` are the limit that the figure at fault must keep within. */
interface MemberProblems {
  /** Pitches as rise in 12, `least` for the flatter one; the corner in degrees. */
  "no hip": { pitch: number; otherPitch: number; corner: number; least: number };
  "ridge fills the run": { least: number };
  "head past the corner": { least: number };
  "seat takes the heel": { most: number };
  "heel above depth": { most: number };
  "jack wider than offset": { thickness: number; offset: number; least: number };
  "short point below plate": { offset: number; least: number };
  "tape not above heel": { least: number };
  "square tail cuts the seat": { least: number };
  "fascia missing": object;
  "fascia not used": object;
  "fascia too deep": { most: number };
  "fascia above the plate": { least: number };
  "valley jack vanishes": { offset: number; most: number };
  "no valley jack fits": { least: number };
  "cripple vanishes": { least: number };
  "valley vanishes": { least: number };
  "valley cripple vanishes": { least: number };
  "drop takes the heel": { least: number };
  "hip too shallow for the plate": { least: number };
}

/** Why one member cannot be cut. */
export type MemberProblem<K extends keyof MemberProblems = keyof MemberProblems> = Kinds<MemberProblems, K>;
