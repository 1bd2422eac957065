import type { Frame } from "../frame/frame.ts";
import { sideName, type SideName } from "../frame/piece.ts";
import type { RoofFace } from "../frame/surface.ts";

/** The planes of one side of a roof, as a take-off names them. */
export interface PlaneGroup {
  readonly side: SideName;
  readonly faces: readonly RoofFace[];
  /** Square units of all its faces, in plan and along the slope. */
  readonly plan: number;
  readonly sloped: number;
}

/** The planes of a roof by the name of their side: main ones, ends, then wing by wing. */
export function planeGroups({ surface: { faces } }: Frame): PlaneGroup[] {
  const sides = [...new Set(faces.map(({ plane }) => sideName([plane])))];
  return sides.map((side) => {
    const own = faces.filter(({ plane }) => sideName([plane]) === side);
    const sum = (of: (face: RoofFace) => number) => own.reduce((total, face) => total + of(face), 0);
    return { side, faces: own, plan: sum(({ plan }) => plan), sloped: sum(({ sloped }) => sloped) };
  });
}
