import type { Frame, FrameSide } from "./frame.ts";
import { alongHip, hipMarkRun } from "../members/hip.ts";
import { jackMark } from "../members/jackMark.ts";
import type { Hand, Piece } from "./piece.ts";

/** Where another piece meets a face of this one, along the top edge as on its outline. */
export interface OutlineMark {
  readonly mark: string;
  readonly face: "left" | "right";
  /** To its centre, and to its two sides, nearer the foot (or the first end) first. */
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

/** Marks along a hip for the jacks of either side, along a ridge for the commons; none on other pieces. */
export function outlineMarks(frame: Frame, piece: Piece, hand: Hand): OutlineMark[] {
  if (piece.member === "ridge") return ridgeMarks(frame);
  if (piece.member !== "hip") return [];
  const [left, right] = hand === "left" ? [frame.main, frame.end] : [frame.end, frame.main];
  return [...hipMarks(frame, left, "left"), ...hipMarks(frame, right, "right")];
}

function hipMarks(frame: Frame, side: FrameSide, face: OutlineMark["face"]): OutlineMark[] {
  const { at, face: stands, jacks } = side;
  const half = frame.spec.rafter.thickness / 2;
  return jacks.map(({ offset }, i) => {
    const along = (to: number) => alongHip(at, hipMarkRun(at.near, to, stands));
    return {
      mark: jackMark(frame, side, i),
      face,
      at: along(offset),
      from: along(offset - half),
      to: along(offset + half),
    };
  });
}

function ridgeMarks({ commons, kings, hipEnds, ridgePast, ridgeLine, end, spec }: Frame): OutlineMark[] {
  const half = spec.rafter.thickness / 2;
  const apexes = kings ? [0, ridgeLine].slice(0, hipEnds) : [];
  const stations = [
    ...apexes.map((at) => ["K", at] as const),
    ...commons.map((offset) => ["C", offset - end.run] as const),
  ].sort((a, b) => a[1] - b[1]);
  return (["left", "right"] as const).flatMap((face) =>
    stations.map(([mark, station]) => ({
      mark,
      face,
      at: station + ridgePast,
      from: station + ridgePast - half,
      to: station + ridgePast + half,
    })),
  );
}
