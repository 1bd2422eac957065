import type { Bearer } from "./bearers.ts";
import type { RoofPlane } from "./blocks.ts";
import type { Frame } from "./frame.ts";
import type { Note } from "./note.ts";
import type { Rafter } from "./rafterLines.ts";

/** Less than this is no difference. */
const NONE = 1e-6;

/** What is left at a crossing past the last piece on a valley: nearer to it one would be too short to stand, and is blocking. null of any other. */
export function crossingBay(frame: Frame, rafter: Rafter): Note<"crossing bay"> | null {
  const past = pastCrossing(frame, rafter);
  if (past === null || past.width <= frame.spec.rafter.thickness) return null;
  const nearest = nearestCrossings(frame).get(rafter.foot.bearer!)!.get(rafter.plane)![past.on]!;
  return past.width <= nearest + NONE ? { kind: "crossing bay", wing: past.wing, width: past.width } : null;
}

/** How far a piece on a valley is from its crossing: a valley cripple on the main plane, or a valley jack on the wing's; null of any other. */
function pastCrossing(
  { blocks }: Frame,
  { foot, member, plane, offset: at }: Rafter,
): { readonly on: "main" | "wing"; readonly wing: string; readonly width: number } | null {
  const wing = foot.bearer && blocks[foot.bearer.block]!.wing;
  if (!wing) return null;
  // On the wing's planes the crossing is the reach in from the inner corner, on the main one over the middle of the mouth.
  if (member === "valley cripple")
    return { on: "main", wing: wing.letter, width: Math.abs((wing.to - wing.from) / 2 - at!) };
  return member === "valley jack" && plane.wing === wing.letter
    ? { on: "wing", wing: wing.letter, width: wing.reach - at! }
    : null;
}

type Nearest = Record<"main" | "wing", number>;
const nearestOf = new WeakMap<Frame, ReadonlyMap<Bearer, ReadonlyMap<RoofPlane, Nearest>>>();

/** How near any piece on each valley and plane comes to the crossing: looked for once, for a large roof has many. */
function nearestCrossings(frame: Frame): ReadonlyMap<Bearer, ReadonlyMap<RoofPlane, Nearest>> {
  const known = nearestOf.get(frame);
  if (known) return known;
  const all = new Map<Bearer, Map<RoofPlane, Nearest>>();
  for (const rafter of frame.rafters) {
    const past = pastCrossing(frame, rafter);
    if (past === null) continue;
    const planes = all.get(rafter.foot.bearer!) ?? new Map<RoofPlane, Nearest>();
    const nearest = planes.get(rafter.plane) ?? { main: Infinity, wing: Infinity };
    nearest[past.on] = Math.min(nearest[past.on], past.width);
    all.set(rafter.foot.bearer!, planes.set(rafter.plane, nearest));
  }
  nearestOf.set(frame, all);
  return all;
}
