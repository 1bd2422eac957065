import type { Frame } from "../frame/frame.ts";
import { sideName, type Side } from "../frame/piece.ts";
import type { RoofFace } from "../frame/surface.ts";

/** The planes of one side of a roof, as a take-off names them. */
export interface PlaneGroup {
  readonly side: Side;
  readonly faces: readonly RoofFace[];
  /** Square units of all its faces, in plan and along the slope. */
  readonly plan: number;
  readonly sloped: number;
}

/** The planes of a roof by the name of their side, main ones first. */
export function planeGroups({ surface: { faces } }: Frame): PlaneGroup[] {
  return [false, true].map((end) => {
    const own = faces.filter(({ plane }) => plane.end === end);
    const sum = (of: (face: RoofFace) => number) => own.reduce((total, face) => total + of(face), 0);
    return {
      side: sideName(own.map(({ plane }) => plane)),
      faces: own,
      plan: sum(({ plan }) => plan),
      sloped: sum(({ sloped }) => sloped),
    };
  });
}
