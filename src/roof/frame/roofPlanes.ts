import { alongSlope } from "../../geometry/alongSlope.ts";
import type { Frame, FrameSide } from "./frame.ts";

/** The width of a plane at a level distance up from its eave. */
export interface PlaneLevel {
  readonly up: number;
  readonly width: number;
}

/** A roof plane with its overhangs, and how many are alike. Between two levels the width changes evenly. */
export interface RoofPlane {
  readonly side: "Main" | "End";
  readonly count: 1 | 2;
  readonly pitch: number;
  /** From eave to ridge or apex; the width never grows upward. */
  readonly levels: readonly PlaneLevel[];
  /** Square units in plan, of one plane. */
  readonly plan: number;
  /** Square units along the slope: the plan over the cosine of the pitch. */
  readonly sloped: number;
  /** Sloping edge at each hip where the fascias do not meet level, along the slope; 0 where they do. */
  readonly cornerRake: number;
}

/** How far the roof reaches past the gable's plate line: the end overhang given, or that of the main sides. */
export function gableOverhang({ hipEnds, spec }: Frame): number {
  return hipEnds === 1 ? (spec.endOverhang ?? spec.overhang) : 0;
}

/**
 * The planes of a roof, main ones first.
 *
 * In plan the roof is a rectangle, parted by the hips' plan lines; planes take their pieces of it.
 */
export function roofPlanes(frame: Frame): readonly RoofPlane[] {
  const { main, end, hipEnds, spec } = frame;
  const past = gableOverhang(frame);
  const mainWidth = (inset: number) => spec.length + past - hipEnds * inset;
  return [
    roofPlane(main, end.overhang, 2, mainWidth),
    roofPlane(end, main.overhang, hipEnds, (inset) => spec.span - 2 * inset),
  ];
}

function roofPlane(
  { name, at: { near }, run, overhang }: FrameSide,
  around: number,
  count: 1 | 2,
  widthAt: (inset: number) => number,
): RoofPlane {
  // The hip leaves the corner at tan f; below it, a fascia around the corner may cut the plane off sooner.
  const insetAt = (level: number) => Math.max(level / near.tan, -around);
  const kink = Math.min(Math.max(-around * near.tan, -overhang), 0);
  const cornerRake = (kink + overhang) * alongSlope(near.pitch);
  // A plane that is cut off nowhere has its kink at the eave, give or take the last bit of a double.
  const bent = cornerRake > 1e-9 * run;
  const levels = (bent ? [-overhang, kink, run] : [-overhang, run]).map((level): PlaneLevel => ({
    up: level + overhang,
    width: Math.max(0, widthAt(insetAt(level))),
  }));
  const plan = planArea(levels);
  return {
    side: name,
    count,
    pitch: near.pitch,
    levels,
    plan,
    sloped: plan * alongSlope(near.pitch),
    cornerRake: bent ? cornerRake : 0,
  };
}

function planArea(levels: readonly PlaneLevel[]): number {
  return levels
    .slice(1)
    .reduce((area, { up, width }, i) => area + ((up - levels[i]!.up) * (width + levels[i]!.width)) / 2, 0);
}

/**
 * The width of a plane at a level distance up from its eave; 0 past its top.
 *
 * @example
 * planeWidth({ levels: [{ up: 0, width: 100 }, { up: 60, width: 40 }] }, 30) // => 70
 */
export function planeWidth({ levels }: Pick<RoofPlane, "levels">, up: number): number {
  const i = levels.findIndex((level) => level.up >= up);
  if (i < 0) return 0;
  const [low, high] = [levels[Math.max(0, i - 1)]!, levels[i]!];
  return high.up === low.up ? high.width : low.width + ((high.width - low.width) * (up - low.up)) / (high.up - low.up);
}
