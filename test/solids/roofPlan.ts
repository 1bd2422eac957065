import type { Pitch } from "./cases.ts";
import type { HipTop } from "./hip.ts";
import type { Section } from "./member.ts";

/** A roof as the test describes it: the same facts as a roof block, in inches. */
export interface RoofPlan {
  readonly span: number;
  readonly length: number;
  readonly pitch: Pitch;
  readonly endPitch: Pitch;
  readonly ends: "hip and hip" | "hip and gable";
  readonly spacing: number;
  readonly overhang: number;
  /** Left out for a level fascia. */
  readonly endOverhang?: number;
  readonly rafter: Section;
  readonly hip: Section;
  readonly ridge: Section | null;
  readonly heel: number;
  /** Left out, the block gives the heel; else the seat, and the heel is what the test has found for it. */
  readonly seat?: number;
  readonly setOutFrom: "king common" | "corner";
  /** A sheet cannot ask for "level": it is here to be found wrong. */
  readonly hipTop: HipTop;
  readonly hipHead: "king commons" | "ridge";
}

const sizeText = (section: Section | null): string => (section ? `${section.thickness} x ${section.depth}` : "none");

/** The block of label and value that a sheet would hold for the roof. */
export const blockOf = (plan: RoofPlan): (string | number)[][] => [
  ["Span", plan.span],
  ["Length", plan.length],
  ["Pitch", plan.pitch.cell],
  ["End pitch", plan.endPitch.cell],
  ["Ends", plan.ends],
  ["Spacing", plan.spacing],
  ["Overhang", plan.overhang],
  ["Rafter", sizeText(plan.rafter)],
  ["Hip", sizeText(plan.hip)],
  ["Ridge", sizeText(plan.ridge)],
  plan.seat === undefined ? ["Heel", plan.heel] : ["Seat", plan.seat],
  ...(plan.endOverhang === undefined ? [] : [["End overhang", plan.endOverhang]]),
  ["Set out from", plan.setOutFrom],
  ["Hip top", plan.hipTop],
  ["Hip head", plan.hipHead],
];
