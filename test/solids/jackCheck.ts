import { answered } from "./answers.ts";
import { degrees, inches } from "./agreement.ts";
import type { Agreement } from "./agreement.ts";
import { cornerIn, turned } from "./cases.ts";
import type { CornerCase } from "./cases.ts";
import type { RoofCorner } from "./corner.ts";
import { beyond, depthIn, opposite } from "./half.ts";
import type { Half } from "./half.ts";
import { heading } from "./frame.ts";
import { hip } from "./hip.ts";
import { member } from "./member.ts";
import type { Member } from "./member.ts";
import { centerLine, edgeAngle, extent, lengthsFromPlate, markOnHip, sawCut } from "./measure.ts";
import { faceTowards, inside, rafterFrame, tail } from "./rafter.ts";
import { add, dot, scale } from "./vector.ts";
import type { Shop } from "./shop.ts";
import type { Vec } from "./vector.ts";

type Which = 0 | 1;

/** The way from the hip to a side: the first side lies on the hip's right, because the second plate line turns left. */
export const towards = ({ meeting }: RoofCorner, which: Which): Vec =>
  which === 0 ? scale(meeting.left, -1) : meeting.left;

/** An offset at which the jack's short point is well inside the plate line: the case's own, or as many times that as it takes. */
function clearOffset(corner: RoofCorner, which: Which, face: Half, { offset, jack }: CornerCase): number {
  const side = corner.sides[which];
  for (let d = offset; ; d *= 2) {
    const frame = rafterFrame(corner, side, d);
    const reach = [-1, 1].map(
      (s) => depthIn(face, add(frame.at, scale(frame.left, (s * jack.thickness) / 2))) / -dot(face.normal, frame.along),
    );
    if (Math.min(...reach) > 6) return d;
  }
}

/** The dropped hip cut plumb and square across over the corner and at a point farther up. */
function pieceOfHip(shop: Shop, corner: RoofCorner, { hip: section }: CornerCase, upTo: Vec): Member {
  const ahead = heading(corner.meeting);
  return hip(shop, corner, section, "dropped", { ends: [beyond(ahead, corner.at), opposite(beyond(ahead, upTo))] });
}

/** The jack of one side at a dropped hip, as framed. */
export function framedJack(
  shop: Shop,
  one: CornerCase,
  which: Which,
): { corner: RoofCorner; hip: Member; jack: Member; face: Half; offset: number } {
  const corner = cornerIn(one);
  const side = corner.sides[which];
  const other = corner.sides[1 - which]!;
  // A level fascia at two pitches: both tails end at the height where this side's does.
  const overhangs = [one.overhang, (one.overhang * side.pitch) / other.pitch];
  const feet = tail(corner, [side, other], overhangs);
  const trial = pieceOfHip(shop, corner, one, add(corner.at, heading(corner.meeting)));
  const face = faceTowards(towards(corner, which), shop.corners(trial.solid));
  const offset = clearOffset(corner, which, face, one);
  const past = add(
    corner.at,
    scale(heading(corner.meeting), (1.2 * offset) / dot(heading(corner.meeting), side.plate) + 24),
  );
  const placedHip = hip(shop, corner, one.hip, "dropped", {
    ...feet,
    ends: [...feet.ends, opposite(beyond(heading(corner.meeting), past))],
  });
  const foot = tail(corner, [side], [one.overhang]);
  const jack = member(shop, rafterFrame(corner, side, offset), one.jack, { ...foot, ends: [...foot.ends, face] });
  return { corner, hip: placedHip, jack, face, offset };
}

/** Everything a function says about the jack of one side, against the wood. */
export async function jackCheck(shop: Shop, one: CornerCase, which: Which): Promise<Agreement[]> {
  const { corner, hip, jack, face, offset } = framedJack(shop, one, which);
  const side = corner.sides[which];
  const lengths = lengthsFromPlate(shop, jack, inside(corner, side));
  const corners = shop.corners(jack.solid);
  const cut = sawCut(jack, corners, face);

  // The line length: the same board cut on the hip's center plane, measured on its own center line.
  const centered = member(shop, jack.frame, one.jack, { ends: [inside(corner, side), beyond(face.normal, corner.at)] });
  const line = centerLine(shop, centered).length;

  // The mark: where the jack's center meets the near face, squared across the hip's top from there to over the corner.
  const meets = centerLine(shop, jack).high;
  const mark = markOnHip(shop, hip, corner.at, meets);

  const {
    pitches,
    angle,
    heel,
    overhang,
    jack: { thickness, depth },
    hip: { thickness: T },
  } = which === 0 ? one : turned(one);
  const [pitch, other] = [pitches[0].cell, pitches[1].cell];
  const ask = (name: string, ...cells: readonly unknown[]): Promise<number> =>
    answered(name, pitch, ...cells, other, angle);
  return [
    inches("JACKLEN", lengths.longPoint, await ask("JACKLEN", offset, T, thickness)),
    inches("JACKSHORT", lengths.shortPoint, await ask("JACKSHORT", offset, T, thickness)),
    inches("JACKLINE", line, await ask("JACKLINE", offset)),
    inches("JACKSTEP", line, await ask("JACKSTEP", offset)),
    inches("JACKTAPE", lengths.tape, await ask("JACKTAPE", offset, T, thickness, heel)),
    inches("JACKFROMTAPE", lengths.longPoint, await answered("JACKFROMTAPE", pitch, lengths.tape, heel)),
    inches("JACKBOARD", extent(jack, corners), await ask("JACKBOARD", offset, T, thickness, depth, heel, overhang)),
    inches("HIPMARK", mark, await ask("HIPMARK", offset, T)),
    degrees("JACKTILT", cut.tilt, await ask("JACKTILT")),
    degrees("JACKEDGE", edgeAngle(jack, corners), await ask("JACKEDGE")),
    degrees("lean of the head from plumb", cut.lean, 0),
    { what: "wood shared by jack and hip", measured: shop.overlap(jack.solid, hip.solid), answered: 0, within: 1e-6 },
    {
      what: "long point on the side away from the corner",
      measured: lengths.long === (which === 0 ? "right" : "left") ? 1 : 0,
      answered: 1,
      within: 0,
    },
  ];
}
