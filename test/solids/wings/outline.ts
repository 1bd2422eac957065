import type { Layout } from "./layout.ts";

/** The area inside the fascias, seen from above: the main roof's rectangle and what every wing adds outside it. For level fascias. */
export function outlineArea({ plan, front, back, ends, wings }: Layout): number {
  const gable = plan.endOverhang ?? plan.overhang;
  const length = plan.length + (ends.left?.overhang ?? gable) + (ends.right?.overhang ?? gable);
  const depth = plan.span + front.overhang + back.overhang;
  const added = wings.map(({ plan: own, left, right, end, wall }) => {
    const past = end ? end.overhang : (own.endOverhang ?? own.overhang ?? left.overhang);
    return (own.span + left.overhang + right.overhang) * (own.out + past - wall.overhang);
  });
  return added.reduce((sum, one) => sum + one, length * depth);
}
