import { planesOf, type RoofPlane } from "../frame/blocks.ts";
import type { Frame } from "../frame/frame.ts";
import type { Note } from "../frame/note.ts";
import { sideName, type Hand, type Side } from "../frame/piece.ts";
import { handOf, type Rafter } from "../frame/rafterLines.ts";

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

/** All marks of a plate for one hook of the tape at a hip's corner. */
export interface PlateList {
  readonly plate: Side;
  /** It lies along a hipped end. */
  readonly end: boolean;
  /** The end of the plate at which the tape is hooked, seen from outside the building. */
  readonly hook: "left" | "right";
  /** How many plates are marked so. */
  readonly plates: number;
  readonly marks: readonly PlateMark[];
}

/** Less than this is no difference at all, in any unit. */
const NONE = 1e-6;

/**
 * The plates of a roof, each list with its marks in running order; plates with the same marks are listed once.
 *
 * Commons stand opposite each other on the ridge (common practice, no source). So where an odd last bay or a gable makes the main plates differ, both
 * are measured from the same end of the building: one from its left corner, the other from its right.
 */
export function plateMarks(frame: Frame): readonly PlateList[] {
  return frame.blocks.flatMap((block) => {
    const [right, left] = block.sides.map((plane) => [listOf(frame, plane, "left"), listOf(frame, plane, "right")]);
    const ends = planesOf(block)
      .filter(({ end }) => end)
      .map((plane) => listOf(frame, plane, "left"));
    const sides = same(right![0]!, left![0]!) ? [right![0]!, left![0]!] : [right![0]!, left![1]!];
    return counted([...sides, ...ends]);
  });
}

/** Lists with the same marks on plates of one name as one. */
function counted(lists: readonly PlateList[]): PlateList[] {
  const known: PlateList[] = [];
  for (const list of lists) {
    const i = known.findIndex((one) => one.end === list.end && one.hook === list.hook && same(one, list));
    if (i < 0) known.push(list);
    else known[i] = { ...known[i]!, plates: known[i]!.plates + 1 };
  }
  return known;
}

function same(one: PlateList, other: PlateList): boolean {
  return (
    one.marks.length === other.marks.length &&
    one.marks.every(({ piece, hand, mark }, i) => {
      const its = other.marks[i]!;
      return piece === its.piece && hand === its.hand && Math.abs(mark - its.mark) < NONE;
    })
  );
}

/** What stands on a plate, from the hook on; a bay that is no whole spacing is named, the one after the commons as the last. */
function listOf(frame: Frame, plane: RoofPlane, hook: "left" | "right"): PlateList {
  const { spec, rafters, marks } = frame;
  const standing = rafters
    .filter((rafter) => rafter.plane === plane)
    .map((rafter) => ({ rafter, center: hook === "left" ? rafter.station : plane.width - rafter.station }))
    .sort((a, b) => a.center - b.center);
  return {
    plate: sideName([plane]),
    end: plane.end,
    hook,
    plates: 1,
    marks: standing.map(({ rafter, center }, i): PlateMark => {
      const before = standing[i - 1];
      const bay = center - (before?.center ?? 0);
      const odd = before !== undefined && Math.abs(bay - spec.spacing) > NONE;
      const named: Note = { kind: before?.rafter.member === "common" ? "last bay" : "odd bay", width: bay };
      return {
        piece: marks.get(rafter)!,
        hand: handOf(rafter),
        mark: center - spec.rafter.thickness / 2,
        bay,
        notes: [...placeNotes(frame, rafter), ...(odd ? [named] : [])],
      };
    }),
  };
}

/** What is said of a place: the bay left at a corner, on what stands nearest to it, and a gable's pair. */
function placeNotes({ rows, commons }: Frame, rafter: Rafter): Note[] {
  const { member, plane, station } = rafter;
  const row = rows.find(
    (one) => one.plane === plane && (member === "jack" ? one.jacks.at(-1) === rafter : one.jacks.length === 0),
  );
  if (member === "common") {
    const { block, stations } = commons;
    const from = plane === block.sides[0] ? station : plane.width - station;
    return block.ends[1] === null && Math.abs(from - stations.at(-1)!) < NONE ? [{ kind: "at gable" }] : [];
  }
  if (!row) return [];
  const width = row.jacks.at(-1)?.offset ?? row.king;
  return [{ kind: row.dropped > 0 ? "corner bay, seat" : "corner bay", width }];
}
