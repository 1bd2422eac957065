import type { Side } from "../frame/blocks.ts";
import type { Frame } from "../frame/frame.ts";
import { cornerNote, isCornerBay } from "../frame/notes.ts";
import type { Note } from "../frame/note.ts";
import type { Hand, SideName } from "../frame/piece.ts";
import type { Rafter } from "../frame/rafterLines.ts";

/** A member's place on a plate. */
export interface PlateMark {
  /** Mark of the piece that stands there, and its hand. */
  readonly piece: string;
  readonly hand: Hand;
  /** From the hook of the tape to the member's edge nearer the hook. */
  readonly mark: number;
  /** Center to center from the member before; from the corner to the center for the first. */
  readonly bay: number;
  readonly notes: readonly Note[];
}

/** Which plate or ridge of a roof with wings a list is for, and the wings beside it; letters, or null where a corner of the main roof is. */
export type PlatePlace =
  | {
      readonly kind: "wall";
      readonly wall: "front" | "back";
      readonly after: string | null;
      readonly before: string | null;
    }
  | { readonly kind: "end"; readonly side: Side | null }
  | { readonly kind: "wing"; readonly wing: string; readonly part: Side | "end" }
  | { readonly kind: "ridge"; readonly wing: string };

/** All marks of a plate for one hook of the tape at a hip's corner. */
export interface PlateList {
  readonly plate: SideName;
  /** null on a roof without wings. */
  readonly place: PlatePlace | null;
  /** It lies along a hipped end. */
  readonly end: boolean;
  /** The end of the plate at which the tape is hooked, seen from outside the building. */
  readonly hook: "left" | "right";
  /** How many plates are marked so. */
  readonly plates: number;
  readonly marks: readonly PlateMark[];
}

/** Less than this is no difference at all, in any unit. */
export const NONE = 1e-6;

/** Whether two lists have the same pieces at the same marks. */
export function sameMarks(one: PlateList, other: PlateList): boolean {
  return (
    one.marks.length === other.marks.length &&
    one.marks.every(({ piece, hand, mark }, i) => {
      const its = other.marks[i]!;
      return piece === its.piece && hand === its.hand && Math.abs(mark - its.mark) < NONE;
    })
  );
}

/** What is said of a place: the bay left at a corner, on what stands nearest to it, and a gable's pair. */
export function placeNotes(frame: Frame, rafter: Rafter): Note[] {
  const { rows, commons, spec } = frame;
  const { member, plane, station } = rafter;
  const row = rows.find(
    (one) =>
      one.plane === plane &&
      (member === "jack" ? one.jacks.at(-1) === rafter : spec.wings.length === 0 && one.jacks.length === 0),
  );
  if (member === "common") {
    const { block, stations } = commons;
    const from = plane === block.sides[0] ? station : plane.width - station;
    return block.ends[1] === null && Math.abs(from - stations.at(-1)!) < NONE ? [{ kind: "at gable" }] : [];
  }
  if (!row || (row.jacks.length > 0 && !isCornerBay(frame, row.hip, row.jacks.at(-1)!))) return [];
  const width = row.jacks.at(-1)?.offset ?? row.king;
  return [cornerNote(frame, row.hip, plane, width, row.dropped)];
}
