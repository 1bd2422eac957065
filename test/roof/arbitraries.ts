import fc from "fast-check";
import { cosine } from "../../src/geometry/angle.ts";
import { degrees } from "../../src/measure/degrees.ts";
import { Failure } from "../../src/measure/result.ts";
import { corner, type Corner } from "../../src/roof/members/corner.ts";

export const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** Rise in 12. */
export const rise = between(2, 20);

/** Two pitches and a corner angle that make a hip with room to spare. */
export const corners = fc
  .tuple(rise, rise, between(60, 150))
  .filter(([one, two, angle]) => {
    const turn = cosine(degrees(angle));
    return one + two * turn > 0.2 && two + one * turn > 0.2;
  })
  .map(([one, two, angle]) => ({ one, two, angle }));

export const cornerOf = ({ one, two, angle }: { one: number; two: number; angle: number }): Corner => {
  const at = corner(one / 12, two / 12, degrees(angle));
  if (at instanceof Failure) throw new Error(at.problem.kind);
  return at;
};
