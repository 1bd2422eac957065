import { planesOf, type RoofPlane } from "../frame/blocks.ts";
import type { Frame } from "../frame/frame.ts";
import type { Note } from "../frame/note.ts";
import { sideName } from "../frame/piece.ts";
import { handOf } from "../frame/rafterLines.ts";
import { NONE, placeNotes, sameMarks, type PlateList, type PlateMark } from "./plateList.ts";
import { wingedLists } from "./wingedLists.ts";

/**
 * The plates of a roof, each list with its marks in running order; plates with the same marks are listed once.
 *
 * Commons stand opposite each other on the ridge (common practice, no source). So where an odd last bay or a gable makes the main plates differ, both
 * are measured from the same end of the building: one from its left corner, the other from its right.
 */
export function plateMarks(frame: Frame): readonly PlateList[] {
  if (frame.spec.wings.length > 0) return wingedLists(frame);
  return frame.blocks.flatMap((block) => {
    const [right, left] = block.sides.map((plane) => [listOf(frame, plane, "left"), listOf(frame, plane, "right")]);
    const ends = planesOf(block)
      .filter(({ end }) => end)
      .map((plane) => listOf(frame, plane, "left"));
    const sides = sameMarks(right![0]!, left![0]!) ? [right![0]!, left![0]!] : [right![0]!, left![1]!];
    return counted([...sides, ...ends]);
  });
}

/** Lists with the same marks on plates of one name as one. */
function counted(lists: readonly PlateList[]): PlateList[] {
  const known: PlateList[] = [];
  for (const list of lists) {
    const i = known.findIndex((one) => one.end === list.end && one.hook === list.hook && sameMarks(one, list));
    if (i < 0) known.push(list);
    else known[i] = { ...known[i]!, plates: known[i]!.plates + 1 };
  }
  return known;
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
    place: null,
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
