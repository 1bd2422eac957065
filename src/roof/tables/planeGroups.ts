import { alongSlope } from "../../geometry/alongSlope.ts";
import type { WingPlace } from "../frame/blocks.ts";
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
  return sides.map((side) =>
    groupOf(
      side,
      faces.filter(({ plane }) => sideName([plane]) === side),
    ),
  );
}

function groupOf(side: SideName, faces: readonly RoofFace[]): PlaneGroup {
  const sum = (of: (face: RoofFace) => number) => faces.reduce((total, face) => total + of(face), 0);
  return { side, faces, plan: sum(({ plan }) => plan), sloped: sum(({ sloped }) => sloped) };
}

/** The same planes as they are sheathed: under a laid-over wing the main plane's sheathing runs on from its plate line to the wing's ridge. */
export function sheathedGroups({ blocks }: Frame, groups: readonly PlaneGroup[]): PlaneGroup[] {
  const laid = blocks.flatMap(({ wing }) => (wing?.laid ? [wing] : []));
  return groups.map(({ side, faces }) =>
    groupOf(
      side,
      faces.map((face) => laid.filter(({ wall }) => wall === face.plane).reduce(withHidden, face)),
    ),
  );
}

/** A face with what a laid-over wing hides of it: a triangle on the mouth. */
function withHidden(face: RoofFace, { from, to, reach }: WingPlace): RoofFace {
  const { overhang, pitch } = face.plane;
  const plan = ((to - from) * reach) / 2;
  const middle = (from + to) / 2;
  return {
    ...face,
    parts: [
      ...face.parts,
      [
        { at: overhang, from, to },
        { at: overhang + reach, from: middle, to: middle },
      ],
    ],
    plan: face.plan + plan,
    sloped: face.sloped + plan * alongSlope(pitch),
  };
}
