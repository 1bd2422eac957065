import { alongHip, hipMarkRun } from "../members/hip.ts";
import { endReach } from "../members/plumbEnd.ts";
import type { Bearer, BearerSide, Hip } from "./bearers.ts";
import type { Frame } from "./frame.ts";
import type { Hand, Piece } from "./piece.ts";
import type { Jack } from "./rafterLines.ts";

/** Where another piece meets a face of this one, along the top edge as on its outline. */
export interface OutlineMark {
  readonly mark: string;
  readonly face: "left" | "right";
  /** To its center, and to its two sides, nearer the foot (or the first end) first. */
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

/** Marks along a hip for the jacks of either side, along a ridge for the commons; none on other pieces. */
export function outlineMarks(frame: Frame, { member, stands }: Piece, hand: Hand): OutlineMark[] {
  if (member === "ridge") return ridgeMarks(frame, stands[0] as Bearer);
  if (member !== "hip") return [];
  const hip = stands[0] as Hip;
  const [left, right] = hand === "left" ? [hip.near, hip.far] : [hip.far, hip.near];
  return [...hipMarks(frame, hip, left, "left"), ...hipMarks(frame, hip, right, "right")];
}

function hipMarks(frame: Frame, hip: Hip, side: BearerSide, face: OutlineMark["face"]): OutlineMark[] {
  const half = frame.spec.rafter.thickness / 2;
  const along = (to: number) => alongHip(hip, hipMarkRun(side, to, side.face));
  return frame.rafters
    .filter((rafter): rafter is Jack => rafter.head.bearer === hip && rafter.plane === side.plane)
    .map((jack) => ({
      mark: frame.marks.get(jack)!,
      face,
      at: along(jack.offset),
      from: along(jack.offset - half),
      to: along(jack.offset + half),
    }));
}

function ridgeMarks(frame: Frame, ridge: Bearer): OutlineMark[] {
  const half = frame.spec.rafter.thickness / 2;
  const first = endReach(ridge.tail, 0);
  return ([ridge.far, ridge.near] as const).flatMap((side, i) =>
    frame.rafters
      .filter(({ head, plane }) => head.bearer === ridge && plane === side.plane)
      .map((rafter): OutlineMark => {
        const { x, y } = rafter.spot;
        const at = first + (x - ridge.foot.x) * ridge.heading.x + (y - ridge.foot.y) * ridge.heading.y;
        return { mark: frame.marks.get(rafter)!, face: i === 0 ? "left" : "right", at, from: at - half, to: at + half };
      })
      .sort((a, b) => a.at - b.at),
  );
}
