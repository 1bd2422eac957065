import type { Kinds } from "../../measure/result.ts";

/** `at`: what of RoofSpec to change. Lengths in the roof's unit, pitches as rise in 12; `least` and `most` are the limit of what is at fault. */
interface FrameProblems {
  "planes meet in no hip": { at: "endPitch"; pitch: number; otherPitch: number };
  "nothing left to notch": { at: "heel"; most: number };
  "seat too wide": { at: "seat"; most: number };
  /** `most` is the plumb depth of the flatter side, `heel` what both sides need. */
  "no seat on the flatter side": { at: "seat"; heel: number; most: number; least: number };
  /** `pyramid`: the one shorter length that will do; null with a gable. */
  "length too short": { at: "length"; least: number; pyramid: number | null };
  "ridge too short": { at: "length"; least: number; pyramid: number | null };
  "spacing too narrow": { at: "spacing"; least: number };
  "too many rafters": { at: "span" | "length"; rafters: number; spacing: number; most: number };
  "spacing wider than run": { at: "spacing"; run: number; spacing: number };
  "no ridge for the hips": { at: "hipHead" };
  "roof too narrow": { at: "span"; span: number };
  "no jack fits": { at: "span"; span: number; spacing: number };
  "hip drops below plate": { at: "seat"; drop: number; heel: number; most: number };
  "heel under the drop": { at: "heel"; least: number };
  "hip does not reach the plate": { at: "hip"; least: number };
  "correction below plate": { at: "correction" | "endCorrection"; least: number };
  "correction over a step": { at: "correction" | "endCorrection"; most: number };
}

/** Why a roof cannot be framed. */
export type FrameProblem<K extends keyof FrameProblems = keyof FrameProblems> = Kinds<FrameProblems, K>;
