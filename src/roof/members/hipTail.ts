import { directionAngle } from "../../geometry/angle.ts";
import type { Degrees } from "../../measure/degrees.ts";
import type { Frame } from "../frame/frame.ts";

/**
 * Saw tilts of a hip's tail, for the cut along each fascia; null where the tail meets the other fascia only.
 *
 * Each cut is parallel to its fascia, and so to its plate line, from which the hip stands off by the plan angle f. Square across the hip is 90 degrees off it:
 * the saw tilts by 90 - f. In plan the fascias meet on the hip where both are level with one another; where that point lies beside it, one is met alone.
 */
export function hipTailTilts({ main, end, hip }: Frame): {
  readonly main: Degrees | null;
  readonly end: Degrees | null;
} {
  const { near, far } = main.at;
  const meet = end.overhang * near.sin - main.overhang * near.cos;
  return {
    main: meet <= -hip.mainFace ? null : directionAngle(near.sin, near.cos),
    end: meet >= hip.endFace ? null : directionAngle(far.sin, far.cos),
  };
}
