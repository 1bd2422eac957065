import type { Point } from "../../geometry/point.ts";
import { endReach } from "../members/plumbEnd.ts";
import { faceOn, tailReach, type Bearer } from "./bearers.ts";
import { fromPlane, type RoofPlane } from "./blocks.ts";

/** A face of a bearer as a rafter of a plane meets it: level up from the plate line at 0 along it, and how much farther for each unit along. */
export interface Facing {
  readonly bearer: Bearer;
  readonly face: "left" | "right";
  /** The board lies ahead of a rafter that comes up to it: a head; else behind: a foot. */
  readonly ahead: boolean;
  readonly at: number;
  readonly per: number;
  /** How far the face stands off the bearer's own line. */
  readonly off: number;
  /** The bearer's foot and heading on the plane, and how far along it this face reaches. */
  readonly foot: Point;
  readonly heading: Point;
  readonly from: number;
  readonly to: number;
}

/** A crossing of a rafter's line with a face. */
export interface Crossing {
  readonly facing: Facing;
  readonly up: number;
}

/** Inches or millimeters: faces that near touch. */
export const ON = 1e-6;

/** The faces of the bearers of a plane. */
export function facingsOf(plane: RoofPlane, bearers: readonly Bearer[]): Facing[] {
  return (
    bearers
      // A valley board lies on the main plane's sheathing: nothing of that plane ends on it.
      .filter(({ kind, near, far }) => far.plane === plane || (near.plane === plane && kind !== "valley board"))
      .flatMap((bearer): Facing[] => {
        const foot = fromPlane(plane, bearer.foot);
        // None runs straight up a plane that it bounds: the planes on both sides rise.
        const ahead = { x: dot(bearer.heading, plane.right), y: dot(bearer.heading, plane.inward) };
        const per = ahead.y / ahead.x;
        const lineAt = foot.y - foot.x * per;
        const sides = bearer.kind === "valley board" ? [bearer.far] : [bearer.near, bearer.far];
        return sides.map((side): Facing => {
          const across = side === bearer.near ? -side.face : side.face;
          const face = faceOn(bearer, side);
          const out = face === "left" ? side.face : -side.face;
          return {
            bearer,
            face,
            ahead: face === "left" ? ahead.x < 0 : ahead.x > 0,
            at: lineAt + out / ahead.x,
            per,
            off: side.face,
            foot,
            heading: ahead,
            from: -tailReach(bearer, across),
            to: endReach(bearer.head, across),
          };
        });
      })
  );
}

export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;

/** The crossings of a rafter's line with the faces that reach there, from below. */
export function crossings(facings: readonly Facing[], at: number): Crossing[] {
  const found: Crossing[] = [];
  for (const facing of facings) {
    const up = facing.at + facing.per * at;
    const along = (at - facing.foot.x) * facing.heading.x + (up - facing.foot.y) * facing.heading.y;
    if (along < facing.from - ON || along > facing.to + ON) continue;
    // There are a few: put in where they belong, they need no sorting.
    let i = found.length;
    for (; i > 0 && found[i - 1]!.up > up; i--) found[i] = found[i - 1]!;
    found[i] = { facing, up };
  }
  return found;
}

/** How far along a plane's plate line a place lies from the foot of a hip or valley, in the direction in which that rises over the plane. */
export function offsetFrom({ foot, heading }: Bearer, plane: RoofPlane, at: number): number {
  return (dot(heading, plane.right) < 0 ? -1 : 1) * (at - fromPlane(plane, foot).x);
}
