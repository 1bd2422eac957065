import { dot, scale } from "./vector.ts";
import type { Vec } from "./vector.ts";

/** The half of space in front of a plane: points p with normal . p >= offset. */
export interface Half {
  readonly normal: Vec;
  readonly offset: number;
}

/** The half of space that lies in a direction from a point. */
export const beyond = (normal: Vec, point: Vec): Half => ({ normal, offset: dot(normal, point) });

/** The other half. */
export const opposite = ({ normal, offset }: Half): Half => ({ normal: scale(normal, -1), offset: -offset });

/** How far a point stands in front of the plane, in lengths of its normal. */
export const depthIn = ({ normal, offset }: Half, point: Vec): number => dot(normal, point) - offset;
