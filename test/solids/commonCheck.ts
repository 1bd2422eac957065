import { answered } from "./answers.ts";
import { degrees, inches } from "./agreement.ts";
import type { Agreement } from "./agreement.ts";
import { cornerIn } from "./cases.ts";
import type { CornerCase } from "./cases.ts";
import { beyond, opposite } from "./half.ts";
import { ridgeFace } from "./apex.ts";
import { member } from "./member.ts";
import { arris, extent, lengthsFromPlate, ON } from "./measure.ts";
import { inside, rafterFrame, tail } from "./rafter.ts";
import { add, angle, dot, scale, sub, UP } from "./vector.ts";
import type { Shop } from "./shop.ts";

/** Everything a function says about a common of the first plane, against the wood. */
export async function commonCheck(shop: Shop, one: CornerCase): Promise<Agreement[]> {
  const corner = cornerIn(one);
  const [side] = corner.sides;
  const { run, ridge, heel, overhang, jack: section } = one;
  const foot = tail(corner, [side], [overhang]);
  const ridgeLine = add(corner.at, add(scale(side.inward, run), [0, 0, heel]));
  const face = ridge === 0 ? opposite(beyond(side.inward, ridgeLine)) : ridgeFace(shop, corner, ridgeLine, ridge);
  const common = member(shop, rafterFrame(corner, side, 48), section, { ...foot, ends: [...foot.ends, face] });
  const corners = shop.corners(common.solid);
  const lengths = lengthsFromPlate(shop, common, inside(corner, side));
  const whole = arris(common, corners, "left");
  // The plumb end at the ridge: top and bottom corner of the same face and side.
  const end = corners.filter(
    (c) => Math.abs(dot(side.inward, sub(c, whole.high))) < ON && Math.abs(dot(side.plate, sub(c, whole.high))) < ON,
  );
  const heights = end.map((c) => c[2]);
  // The seat: level with the plate's top, from the plate line to where the bottom edge comes up through it.
  const seat = Math.max(...corners.filter((c) => Math.abs(c[2]) < ON).map((c) => dot(side.inward, sub(c, corner.at))));
  const pitch = one.pitches[0].cell;
  const deg = 90 - angle(sub(whole.high, whole.low), UP);
  return [
    inches("COMMONLEN", lengths.longPoint, await answered("COMMONLEN", pitch, run, ridge)),
    inches("square head", lengths.longPoint - lengths.shortPoint, 0),
    inches("TAILLEN", whole.length - lengths.left, await answered("TAILLEN", pitch, overhang)),
    inches("RIDGEHEIGHT", whole.high[2], await answered("RIDGEHEIGHT", pitch, run, ridge, heel)),
    inches("CUTEND", Math.max(...heights) - Math.min(...heights), await answered("CUTEND", pitch, section.depth)),
    inches("SEATWIDTH", seat, await answered("SEATWIDTH", pitch, section.depth, heel)),
    inches("HEEL", heel, await answered("HEEL", pitch, section.depth, seat)),
    inches(
      "COMMONBOARD",
      extent(common, corners),
      await answered("COMMONBOARD", pitch, run, ridge, section.depth, heel, overhang),
    ),
    inches("SLOPELEN", whole.length, await answered("SLOPELEN", pitch, dot(side.inward, sub(whole.high, whole.low)))),
    degrees("PITCHDEG", deg, await answered("PITCHDEG", pitch)),
  ];
}
