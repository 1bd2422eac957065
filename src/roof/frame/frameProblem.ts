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
  /** Of a wing. By how much its ridge would stand above the main one; the span or the pitch, as rise in 12, that makes them level. */
  "wing ridge too high": { at: "wingSpan"; wing: string; by: number; span: number; pitch: number };
  /** By how much below; the span that makes them level, and the most that leaves room. */
  "wing ridge nearly level": { at: "wingSpan"; wing: string; by: number; span: number; most: number };
  "wing past the wall": WingPlaced & { by: number };
  "wing wider than wall": { at: "wingSpan"; wing: string; most: number };
  /** Level, from the wall's left corner: to the right of the other wing, or to its left. */
  "wings overlap": { at: "wingFrom"; wing: string; other: string; right: number; left: number };
  "valleys meet": { at: "wingFrom"; wing: string; other: string; bound: "least" | "most"; limit: number };
  "wings' eaves meet": { at: "wingFrom"; wing: string; other: string; bound: "least" | "most"; limit: number };
  "long valleys cross": { at: "longValley"; wing: string; other: string };
  /** Over the plate of some plane: the overhang, the plumb depth and the depth that a cut needs. */
  "square tail in the seat": { at: "tailCut"; least: number };
  "plumb part too deep": { at: "tailCut"; most: number };
  "soffit above the plate": { at: "tailCut"; least: number };
  "no hip left": { at: "wingFrom"; wing: string; other: string };
  "flush at a gable": { at: "wingFrom"; wing: string };
  /** Rise in 12 of the wing and of the end. */
  "flush at another pitch": { at: "wingFrom"; wing: string; pitch: number; end: number };
  /** `flush`: its side could be in the plane of that end. */
  "wing too near a corner": WingPlaced & { side: "left" | "right"; flush: boolean };
  /** `gable`: with a gable it is long enough. */
  "wing too short": { at: "wingOut"; wing: string; least: number; gable: boolean };
  "no valley to the ridge": WingPlaced & { by: number };
  "no room on the ridge": WingPlaced & { by: number };
  "long valley off the ridge": { at: "longValley"; wing: string; by: number; other: "left" | "right" };
  "no long valley": { at: "longValley"; wing: string; why: "level" | "flush" | "laid" };
  "wing without seat": { at: "wingPitch" | "wingEndPitch"; wing: string; heel: number; most: number };
  "wing too narrow": { at: "wingSpan"; wing: string; least: number };
  "wing spacing": { at: "wingSpan"; wing: string; run: number; spacing: number; least: number };
  "wing hip below plate": { at: "wingEndPitch"; wing: string; drop: number; heel: number };
  "valley does not reach the plate": { at: "valley"; least: number };
  "no ridge for wings": { at: "length"; least: number };
  "flush laid over": { at: "wingFraming"; wing: string };
  "sheathing framed in": { at: "wingSheathing"; wing: string };
  /** `least`: the span whose ridge stands high enough over valley boards and sheathing. */
  "wing too low to lay over": { at: "wingSpan"; wing: string; least: number };
}

/** A wing's place on its wall, and the nearest that works, where there is one. */
interface WingPlaced {
  at: "wingFrom";
  wing: string;
  bound: "least" | "most";
  limit: number;
  fits: boolean;
}

/** Why a roof cannot be framed. */
export type FrameProblem<K extends keyof FrameProblems = keyof FrameProblems> = Kinds<FrameProblems, K>;
