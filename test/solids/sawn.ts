import { beyond, opposite } from "./half.ts";
import type { Half } from "./half.ts";
import { heading, placed } from "./frame.ts";
import type { Frame } from "./frame.ts";
import type { Hand } from "./measure.ts";
import { member } from "./member.ts";
import type { Cuts, Member, Section } from "./member.ts";
import { add, scale } from "./vector.ts";
import type { Shop } from "./shop.ts";

/** What a framer is told about a head cut. */
export interface HeadCut {
  /** Along the top edge from the plumb line over the plate line, on the face of the long point. */
  readonly longPoint: number;
  /** Degrees from square, about the plumb line. */
  readonly tilt: number;
  /** The face that carries the long point, for someone who looks up the slope. */
  readonly long: Hand;
}

/** The plane of a head cut: plumb, through the long point, turned by the tilt away from square. */
export function headPlane(frame: Frame, thickness: number, { longPoint, tilt, long }: HeadCut): Half {
  const way = long === "left" ? 1 : -1;
  const turn = (tilt * Math.PI) / 180;
  const square = heading(frame);
  return opposite(
    beyond(
      add(scale(square, Math.cos(turn)), scale(frame.left, -way * Math.sin(turn))),
      placed(frame, [longPoint, (way * thickness) / 2, 0]),
    ),
  );
}

/** A rafter cut to numbers, as on the saw horses: it knows nothing of what its head will bear on. */
export function sawn(shop: Shop, frame: Frame, section: Section, foot: Cuts, cut: HeadCut): Member {
  return member(shop, frame, section, { ...foot, ends: [...foot.ends, headPlane(frame, section.thickness, cut)] });
}
