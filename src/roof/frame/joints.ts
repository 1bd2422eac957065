import type { CornerSide } from "../members/corner.ts";
import type { PlumbCut } from "../members/plumbEnd.ts";

/** What settles how boards meet where a wing runs into its host. Level distances; f is the valley's plan angle on the host's plane. */
export interface Meeting {
  /** The valley's corner on the host's side; a flush wing's broken hip has the same. */
  readonly near: CornerSide;
  /** From the wall's plate line to the main ridge's near face; half the wing's span less half its ridge; from the plate line to the crossing. */
  readonly toRidge: number;
  readonly toWingRidge: number;
  readonly reach: number;
  /** Thickness of the valleys and of the wing's ridge. */
  readonly valley: number;
  readonly ridge: number;
}

/**
 * How a valley's head is cut, by what it runs to. Runs are level along it from its inner corner; across is positive to the wing's side.
 *
 * On the main ridge's face one cheek, on the wing ridge's another, and on the side of the other valley a third; beside a broken hip the two share a plumb plane square
 * to the wing's ridge through the crossing.
 */
export const valleyHeads = {
  supporting: ({ near, toRidge }) => [onHost(near, toRidge)],
  shortened: ({ near, reach, valley }) => {
    // The other valley crosses at twice f.
    const [sin2, cos2] = [2 * near.sin * near.cos, near.cos * near.cos - near.sin * near.sin];
    return [{ at: reach / near.sin - valley / 2 / sin2, per: cos2 / sin2 }];
  },
  level: ({ near, toRidge, toWingRidge }) => [onHost(near, toRidge), onWing(near, toWingRidge)],
  flush: ({ near, reach, toWingRidge }) => [onWing(near, toWingRidge), onHost(near, reach)],
} satisfies Record<string, (meeting: Meeting) => PlumbCut[]>;

/** To a plumb plane along the wall, so far in from its plate line; and to one along the wing's ridge, so far in from the wing's plate line. */
const onHost = ({ sin, cos }: CornerSide, far: number): PlumbCut => ({ at: far / sin, per: cos / sin });
const onWing = ({ sin, cos }: CornerSide, far: number): PlumbCut => ({ at: far / cos, per: -sin / cos });

/** The foot of a broken hip, runs from the corner that is not there: on the wing ridge's inner face, and against the valley. How far out, so below 0. */
export const brokenFoot = ({ near, reach, toWingRidge, ridge }: Meeting): PlumbCut[] => [
  { at: -(toWingRidge + ridge) / near.cos, per: -near.tan },
  { at: -reach / near.sin, per: near.cos / near.sin },
];

/**
 * The inner end of a wing's ridge, runs from where its line starts to `crossing`.
 *
 * Level it butts the main ridge; lower it is pointed into its two valleys; flush and lower it runs on past the crossing, to where the broken hip's outer
 * face, `hipFace` off its line, comes out of its own.
 */
export const wingRidgeHeads = {
  level: ({ reach, toRidge }, crossing) => [{ at: crossing - (reach - toRidge), per: 0 }],
  lower: ({ near, valley }, crossing) => [
    { at: crossing - valley / 2 / near.cos, per: -near.tan },
    { at: crossing - valley / 2 / near.cos, per: near.tan },
  ],
  flush: ({ near, ridge }, crossing, hipFace) => [
    { at: crossing + (ridge / 2) * near.tan + hipFace / near.cos, per: 0 },
  ],
} satisfies Record<string, (meeting: Meeting, crossing: number, hipFace: number) => PlumbCut[]>;
