import { answered } from "./answers.ts";
import { degrees, inches } from "./agreement.ts";
import type { Agreement } from "./agreement.ts";
import { apexOf, ridgeFace } from "./apex.ts";
import { cornerIn } from "./cases.ts";
import type { CornerCase } from "./cases.ts";
import { cornerOf } from "./corner.ts";
import type { RoofCorner } from "./corner.ts";
import { beyond, opposite } from "./half.ts";
import type { Half } from "./half.ts";
import { heading } from "./frame.ts";
import { valley } from "./hip.ts";
import { arris, centerLine, markOnHip, sawCut } from "./measure.ts";
import { member } from "./member.ts";
import type { Member } from "./member.ts";
import { faceTowards, rafterFrame } from "./rafter.ts";
import type { Shop } from "./shop.ts";
import { add, dot, leftOf, scale, sub, unit } from "./vector.ts";
import { aValley } from "./valleyCheck.ts";

/** The wing's other inner corner: the mirror image of the first one, so far along the main plate line. */
function otherCorner({ sides: [main, side], heel }: RoofCorner, { pitches }: CornerCase, mouth: number): RoofCorner {
  const { plate } = main;
  const mirrored = sub(side.plate, scale(plate, 2 * dot(side.plate, plate)));
  return cornerOf(scale(plate, mouth), mirrored, scale(plate, -1), [pitches[1].slope, pitches[0].slope], heel);
}

/**
 * The valleys of a wing that is lower than the main roof, and a cripple between them, against their functions; null when the wing's mouth leaves no cripple.
 *
 * The first plate line is the main roof's. The left valley runs on to the main ridge, and the right one butts its side.
 */
export async function valleyRafterCheck(shop: Shop, one: CornerCase): Promise<Agreement[] | null> {
  const left = cornerIn(one);
  const [main] = left.sides;
  const { run, ridge, offset, jack: section } = one;
  const long = one.hip;
  const reach = run * 0.6;
  const crossing = apexOf(shop, left, reach);
  const mouth = 2 * dot(sub(crossing, left.at), main.plate);
  const right = otherCorner(left, one, mouth);
  const cut = (corner: RoofCorner, head: Half): Member =>
    valley(shop, corner, long, { ends: [beyond(heading(corner.meeting), corner.at), head] });

  const apex = apexOf(shop, left, run);
  const whole = cut(left, opposite(beyond(heading(left.meeting), apex)));
  const supporting = cut(left, ridgeFace(shop, left, apex, ridge || 1));
  const towards = unit(leftOf(heading(left.meeting)));
  const side = faceTowards(scale(towards, -1), shop.corners(aValley(shop, left, long.thickness, 0, 12).solid));
  const shortened = cut(right, side);

  // A station on the right half of the mouth, where the main plane lies between the two valleys.
  const station = mouth / 2 + Math.min(offset, mouth / 2 - 1);
  const distance = 2 * station - mouth;
  const up = unit(leftOf(heading(right.meeting)));
  const face = faceTowards(scale(up, -1), shop.corners(aValley(shop, right, long.thickness, 0, 12).solid));
  const frame = rafterFrame(left, main, station);
  const reached = (half: Half, across: number): number =>
    (half.offset - dot(half.normal, add(frame.at, scale(frame.left, across)))) / dot(half.normal, frame.along);
  const half = section.thickness / 2;
  if ([-half, half].some((across) => reached(face, across) > reached(side, across) - 1)) return null;
  const cripple = member(shop, frame, section, { ends: [face, side] });
  const corners = shop.corners(cripple.solid);
  const sides = [arris(cripple, corners, "left").length, arris(cripple, corners, "right").length];
  const foot = centerLine(shop, cripple).low;

  const ask = (name: string, ...cells: readonly unknown[]): Promise<number> =>
    answered(name, one.pitches[0].cell, ...cells, one.pitches[1].cell, one.angle);
  const said = await ask("VALLEYCRIPPLE", distance, long.thickness, section.thickness);
  const tilt = await ask("JACKTILT");
  return [
    inches("VALLEYLEN", centerLine(shop, whole).length, await ask("VALLEYLEN", run)),
    inches("VALLEYTORIDGE", centerLine(shop, supporting).length, await ask("VALLEYTORIDGE", run, ridge || 1)),
    {
      what: "the supporting valley's long point on the wing's side",
      measured: Math.sign(
        arris(supporting, shop.corners(supporting.solid), "right").length -
          arris(supporting, shop.corners(supporting.solid), "left").length,
      ),
      answered: 1,
      within: 0,
    },
    inches("VALLEYTOVALLEY", centerLine(shop, shortened).length, await ask("VALLEYTOVALLEY", reach, long.thickness)),
    inches("VALLEYCRIPPLE", Math.max(...sides), said),
    inches("VALLEYCRIPPLE, short side", Math.min(...sides), said - (await ask("JACKSTEP", 2 * section.thickness))),
    inches(
      "VALLEYMARK",
      markOnHip(shop, shortened, right.at, foot),
      await ask("VALLEYMARK", mouth - station, long.thickness),
    ),
    degrees("JACKTILT at the supporting valley", sawCut(cripple, corners, side).tilt, tilt),
    degrees("JACKTILT at the shortened valley", sawCut(cripple, corners, face).tilt, tilt),
  ];
}
