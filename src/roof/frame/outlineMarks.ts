import { alongHip, hipMarkRun } from "../members/hip.ts";
import { alongBoard, faceOn, sideOn, type Bearer, type BearerSide } from "./bearers.ts";
import type { Frame } from "./frame.ts";
import type { Hand, Piece } from "./piece.ts";
import { offsetFrom } from "./facings.ts";

/** Where another piece meets a face of this one, along the top edge as on its outline. */
export interface OutlineMark {
  readonly mark: string;
  readonly face: "left" | "right";
  /** To its center, and to its two sides, nearer the foot (or the first end) first. */
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

/** Marks along a hip or valley for what meets or stands on either side, along a ridge for the commons; none on other pieces. */
export function outlineMarks(
  frame: Frame,
  { planes, stands }: Pick<Piece, "planes" | "stands">,
  hand: Hand,
): OutlineMark[] {
  if (planes.length > 0) return [];
  // A left valley and a right one have other stations beside them, though they are cut alike.
  const own = (stands as readonly Bearer[]).find(
    (one) => (one.kind === "valley" || one.kind === "valley board") && one.hand === hand,
  );
  const bearer = own ?? (stands[0] as Bearer);
  if (bearer.kind === "ridge") return ridgeMarks(frame, bearer);
  const [left, right] = hand === "left" ? [bearer.near, bearer.far] : [bearer.far, bearer.near];
  // A valley board's outer edge looks away from the wing, whose jacks start on it.
  if (bearer.kind === "valley board") return faceMarks(frame, bearer, bearer.far, hand === "left" ? "left" : "right");
  return [...faceMarks(frame, bearer, left, "left"), ...faceMarks(frame, bearer, right, "right")];
}

/** What meets one face of a hip or valley, from either end of it. */
function faceMarks(frame: Frame, bearer: Bearer, side: BearerSide, face: OutlineMark["face"]): OutlineMark[] {
  const half = frame.spec.rafter.thickness / 2;
  // As the board stands, not as its twin of the other hand is drawn.
  const own = faceOn(bearer, side);
  return frame.rafters.flatMap((rafter): OutlineMark[] =>
    [rafter.head, rafter.foot]
      .filter((end) => end.bearer === bearer && end.face === own)
      .map((end) => {
        // A supporting valley has main plane on both of its sides past the crossing.
        const { tan, sin, cos } = sideOn(bearer, rafter.plane)!;
        const at =
          rafter.foot.bearer === bearer || rafter.foot.bearer === null
            ? rafter.offset!
            : offsetFrom(bearer, rafter.plane, rafter.station);
        // Toes of jacks lie on a valley board's outer edge itself.
        const off = bearer.kind === "valley board" ? 0 : end === rafter.head ? side.face : -side.face;
        const along = (to: number) => alongHip(bearer, hipMarkRun({ pitch: side.pitch, tan, sin, cos }, to, off));
        return { mark: frame.marks.get(rafter)!, face, at: along(at), from: along(at - half), to: along(at + half) };
      }),
  );
}

function ridgeMarks(frame: Frame, ridge: Bearer): OutlineMark[] {
  const half = frame.spec.rafter.thickness / 2;
  return ([ridge.far, ridge.near] as const).flatMap((side, i) =>
    frame.rafters
      .filter(({ head, plane }) => head.bearer === ridge && plane === side.plane)
      .map((rafter): OutlineMark => {
        const at = alongBoard(ridge, rafter.spot);
        return { mark: frame.marks.get(rafter)!, face: i === 0 ? "left" : "right", at, from: at - half, to: at + half };
      })
      .sort((a, b) => a.at - b.at),
  );
}
