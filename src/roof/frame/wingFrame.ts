import type { Corner } from "../members/corner.ts";
import type { HipCorner } from "./bearers.ts";
import type { Side, Wing } from "./blocks.ts";
import type { Meeting } from "./joints.ts";

/** A wing in its place, with what settles its boards: the corner of its hips (null at a gable), the corner of its valleys, and how they meet. */
export interface WingFrame {
  readonly block: Wing;
  readonly corner: HipCorner | null;
  readonly at: Corner;
  readonly meeting: Meeting;
  /** The valley that runs on to the main ridge; null where none does. */
  readonly long: Side | null;
}
