import { heading } from "../frame.ts";
import { beyond, depthIn, opposite } from "../half.ts";
import type { Half } from "../half.ts";
import { member } from "../member.ts";
import type { Shop } from "../shop.ts";
import { add, dot, scale, sub, UP } from "../vector.ts";
import type { Vec } from "../vector.ts";
import { finished, lineAt, meetingLine } from "./bearer.ts";
import type { Bearer, Placed, Role } from "./bearer.ts";
import type { Wing } from "./layout.ts";
import type { Side, WingedPlan } from "./plan.ts";

/** Where a valley stands before it is cut: square-topped, its center in the line where the planes meet. */
export const valleyBoard = ({ heel, valley }: WingedPlan, wing: Wing, side: Side): Placed => ({
  frame: meetingLine(wing.wall, wing[side], add(wing.inner[side]!, [0, 0, heel])),
  thickness: valley.thickness,
});

/** A valley over its inner corner, cut to its heads, notched over both plates and, at its tail, along both fascias. */
export function valley(
  shop: Shop,
  plan: WingedPlan,
  wing: Wing,
  side: Side,
  cut: { readonly role: Role; readonly heads: readonly Half[]; readonly to: Vec },
): Bearer {
  const { frame } = valleyBoard(plan, wing, side);
  const corner = wing.inner[side]!;
  const planes = [wing.wall, wing[side]];
  const ahead = heading(frame);
  const outside = planes.map(({ inward, overhang }) =>
    beyond(scale(inward, -1), add(corner, scale(inward, -overhang))),
  );
  const down = (half: Half): number => dot(ahead, sub(corner, lineAt(frame, half)));
  const slant = Math.min(...planes.map(({ inward }) => Math.abs(dot(ahead, inward))));
  // A long blank: its square end lies farther down than either fascia crosses its faces.
  const end = add(corner, scale(ahead, -Math.max(...outside.map(down)) - plan.valley.thickness / slant - 1));
  const blank = member(shop, frame, plan.valley, { ends: [beyond(ahead, end), ...cut.heads] });
  const meets = Math.abs(depthIn(outside[0]!, lineAt(frame, outside[1]!))) < 1e-6;
  // Fascias that miss the valley's line: the nearer one ends it.
  const nearer = outside.reduce((a, b) => (down(b) < down(a) ? b : a));
  let solid = meets ? shop.notch(blank.solid, ...outside) : shop.trim(blank.solid, opposite(nearer));
  const below = beyond(scale(UP, -1), corner);
  if (planes.every(({ overhang }) => overhang === 0)) solid = shop.trim(solid, opposite(below));
  else for (const { inward } of planes) solid = shop.notch(solid, below, beyond(inward, corner));
  return finished(
    shop,
    { ...blank, solid },
    {
      ...cut,
      kind: "valley",
      name: `valley ${side} of wing ${wing.letter}`,
      wing: wing.letter,
      planes,
      from: frame.at,
      feet: meets ? outside : [nearer],
    },
  );
}
