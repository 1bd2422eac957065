import type { Pitch } from "../cases.ts";
import type { HipTop } from "../hip.ts";
import type { Section } from "../member.ts";

export type End = "hip" | "gable";
export type Side = "left" | "right";

/** A wing as the test describes it: the same facts as its column of the roof block, in inches. Left and right as seen from outside, facing the wall. */
export interface WingPlan {
  readonly wall: "front" | "back";
  /** From that wall's left corner to the wing's nearer plate line, or flush with an end. */
  readonly from: number | "flush left" | "flush right";
  readonly out: number;
  readonly span: number;
  readonly end: End;
  /** Left out: the main roof's. */
  readonly pitch?: Pitch;
  /** Left out: a level fascia. */
  readonly overhang?: number;
  /** Left out: the wing's own pitch. */
  readonly endPitch?: Pitch;
  readonly endOverhang?: number;
  /** Left out: the main ridge's size. */
  readonly ridge?: Section;
  readonly longValley?: Side;
  /** Left out: framed in. */
  readonly framing?: "laid over";
  /** Under a wing that is laid over; left out: half an inch. */
  readonly sheathing?: number;
}

/** A roof with wings. */
export interface WingedPlan {
  readonly span: number;
  readonly length: number;
  readonly pitch: Pitch;
  readonly endPitch: Pitch;
  /** Left, then right, facing the front. */
  readonly ends: readonly [End, End];
  readonly spacing: number;
  readonly overhang: number;
  /** Left out: a level fascia. */
  readonly endOverhang?: number;
  readonly rafter: Section;
  readonly hip: Section;
  readonly ridge: Section;
  readonly valley: Section;
  readonly heel: number;
  readonly setOutFrom: "king common" | "corner";
  readonly hipTop: HipTop;
  readonly hipHead: "king commons" | "ridge";
  readonly wings: readonly WingPlan[];
}

/** Wing A, wing B, by place. */
export const letterOf = (index: number): string => String.fromCharCode(65 + index);

const sizeText = ({ thickness, depth }: Section): string => `${thickness} x ${depth}`;

/** The block that a sheet would hold for the roof: labels, the main roof's column, a column for each wing. */
export function blockOf(plan: WingedPlan): (string | number)[][] {
  const main: [string, string | number][] = [
    ["Span", plan.span],
    ["Length", plan.length],
    ["Pitch", plan.pitch.cell],
    ["End pitch", plan.endPitch.cell],
    ["Ends", plan.ends.join(" and ")],
    ["Spacing", plan.spacing],
    ["Overhang", plan.overhang],
    ["Rafter", sizeText(plan.rafter)],
    ["Hip", sizeText(plan.hip)],
    ["Ridge", sizeText(plan.ridge)],
    ["Valley", sizeText(plan.valley)],
    ["Heel", plan.heel],
    ["End overhang", plan.endOverhang ?? ""],
    ["Set out from", plan.setOutFrom],
    ["Hip top", plan.hipTop],
    ["Hip head", plan.hipHead],
    ["Wall", ""],
    ["From left corner", ""],
    ["Out from wall", ""],
    ["Long valley", ""],
    ["Wing framing", ""],
    ["Sheathing", ""],
  ];
  const column = (wing: WingPlan): Record<string, string | number> => ({
    Wall: wing.wall,
    "From left corner": wing.from,
    "Out from wall": wing.out,
    Span: wing.span,
    Ends: wing.end,
    Pitch: wing.pitch?.cell ?? "",
    Overhang: wing.overhang ?? "",
    "End pitch": wing.endPitch?.cell ?? "",
    "End overhang": wing.endOverhang ?? "",
    Ridge: wing.ridge ? sizeText(wing.ridge) : "",
    "Long valley": wing.longValley ?? "",
    "Wing framing": wing.framing ?? "",
    Sheathing: wing.sheathing ?? "",
  });
  const columns = plan.wings.map(column);
  if (columns.length === 0)
    return main.filter(([label, value]) => value !== "" && label !== "Valley").map((row) => [...row]);
  return [
    ["", "Main roof", ...plan.wings.map((_, i) => `Wing ${letterOf(i)}`)],
    ...main.map(([label, value]) => [label, value, ...columns.map((wing) => wing[label] ?? "")]),
  ].filter((row) => row.slice(1).some((cell) => cell !== ""));
}
