import { endBeside, fromPlane, inBlock, planeOver, type RoofPlane, type Side, type Wing } from "../frame/blocks.ts";
import { valleyMark } from "../frame/bearerPieces.ts";
import { ridgeIn, valleysIn, type Frame } from "../frame/frame.ts";
import type { Note } from "../frame/note.ts";
import { sideName } from "../frame/piece.ts";
import { alongBoard, boardRun } from "../frame/bearers.ts";
import { handOf, isOnPlate, type Rafter } from "../frame/rafterLines.ts";
import { sidePlane } from "../frame/valleys.ts";
import { NONE, placeNotes, sameMarks, type PlateList, type PlateMark, type PlatePlace } from "./plateList.ts";

/** A stretch of plate or ridge: where the tape is hooked on a plane, which way it runs, and what stands along it. */
interface Stretch {
  readonly place: PlatePlace;
  readonly plane: RoofPlane;
  /** Along the plane's plate line from its left end. */
  readonly hook: number;
  readonly way: 1 | -1;
  readonly standing: readonly Rafter[];
  /** A valley at its far end, over the inner corner; null where there is none. */
  readonly corner: { readonly at: number; readonly wing: string; readonly side: Side } | null;
}

/** The plates of a roof with wings, each interrupted one with its own list and hook, and after them its ridges. */
export function wingedLists(frame: Frame): PlateList[] {
  const wings = frame.blocks.filter((block): block is Wing => block.wing !== null);
  const main = frame.blocks[0]!;
  const plated = frame.rafters.filter(isOnPlate);
  const [front, back] = [planeOver(main, "front"), planeOver(main, "back")];
  const ends = (["left", "right"] as const).flatMap((side): Stretch[] => {
    const plane = endBeside(main, front, side);
    if (!plane) return [];
    const standing = plated.filter((one) => one.plane === plane && one.of === 0);
    return [{ place: { kind: "end", side }, plane, hook: 0, way: 1, standing, corner: null }];
  });
  const stretches = [
    ...wallStretches(frame, front, "front", wings, plated),
    ...wallStretches(frame, back, "back", wings, plated),
    ...ends,
    ...wings.flatMap((wing) => wingStretches(wing, plated)),
  ];
  return [...endsAlike(stretches.map((one) => listOf(frame, one))), ...ridgeLists(frame, wings)];
}

/** Two ends with the same marks as one list. */
function endsAlike(lists: readonly PlateList[]): PlateList[] {
  const [one, other] = lists.filter(({ place }) => place?.kind === "end");
  if (!one || !other || !sameMarks(one, other)) return [...lists];
  return lists.flatMap((list) =>
    list === other ? [] : list === one ? [{ ...one, place: { kind: "end", side: null }, plates: 2 }] : [list],
  );
}

/** A wall's plates between its corners and the mouths of its wings. */
function wallStretches(
  { spec }: Frame,
  plane: RoofPlane,
  wall: "front" | "back",
  wings: readonly Wing[],
  plated: readonly Rafter[],
): Stretch[] {
  // A plate runs through under a laid-over wing.
  const own = wings.filter(({ wing }) => wing.wall === plane && !wing.laid).sort((a, b) => a.wing.from - b.wing.from);
  const on = plated.filter((one) => one.plane === plane);
  const [left, right] = spec.ends.split(" and ") as ["hip" | "gable", "hip" | "gable"];
  // Seen from outside, the back's left end is the front's right one.
  const leftGable = (wall === "front" ? left : right) === "gable";
  return [null, ...own].flatMap((before, i): Stretch[] => {
    const after = own[i] ?? null;
    const [from, to] = [before?.wing.to ?? 0, after?.wing.from ?? plane.width];
    if (to - from < NONE) return [];
    // A whole plate is hooked at its left corner, or at the right one where the left is a gable's.
    const fromRight = after === null && (before !== null || leftGable);
    const [hook, far] = fromRight ? [to, before] : [from, after];
    return [
      {
        place: { kind: "wall", wall, after: before?.wing.letter ?? null, before: after?.wing.letter ?? null },
        plane,
        hook,
        way: fromRight ? -1 : 1,
        standing: on.filter((one) =>
          one.over ? overBeside(one, before, after) : one.station > from && one.station < to,
        ),
        corner: far && { at: to - from, wing: far.wing.letter, side: fromRight ? "right" : "left" },
      },
    ];
  });
}

/** Whether a rafter over an inner corner stands at this stretch's end: on the right valley of the wing before it, or the left one of the wing after it. */
function overBeside({ foot }: Rafter, before: Wing | null, after: Wing | null): boolean {
  const { wing, hand } = foot.bearer!;
  return (hand === "right" && wing === before?.wing.letter) || (hand === "left" && wing === after?.wing.letter);
}

/** A wing's two side plates, from its outer corners in, and its end plate. */
function wingStretches(wing: Wing, plated: readonly Rafter[]): Stretch[] {
  const { letter, spec, flush, laid } = wing.wing;
  const sides = (["left", "right"] as const).map((side): Stretch => {
    const plane = sidePlane(wing, side);
    return {
      place: { kind: "wing", wing: letter, part: side },
      plane,
      hook: fromPlane(plane, inBlock(wing, 0, side === "right" ? 0 : wing.span)).x,
      way: side === "right" ? 1 : -1,
      standing: plated.filter((one) => one.plane === plane && one.of === wing.index),
      corner: flush === side || laid ? null : { at: spec.out, wing: letter, side },
    };
  });
  const [end] = wing.ends;
  if (!end) return sides;
  return [
    ...sides,
    {
      place: { kind: "wing", wing: letter, part: "end" },
      plane: end,
      hook: 0,
      way: 1,
      standing: plated.filter((one) => one.plane === end),
      corner: null,
    },
  ];
}

interface Standing {
  readonly center: number;
  readonly rafter: Rafter | null;
}

function listOf(frame: Frame, { place, plane, hook, way, standing, corner }: Stretch): PlateList {
  const half = frame.spec.rafter.thickness / 2;
  const all: Standing[] = [
    ...standing.map((rafter) => ({ center: way * (rafter.station - hook), rafter })),
    ...(corner ? [{ center: corner.at, rafter: null }] : []),
  ].sort((a, b) => a.center - b.center || Number(a.rafter === null) - Number(b.rafter === null));
  const valley = corner && valleysIn(frame).find(({ wing, side }) => wing === corner.wing && side === corner.side)!;
  return {
    plate: sideName([plane]),
    place,
    end: plane.end,
    hook: way > 0 ? "left" : "right",
    plates: 1,
    marks: all.map(({ center, rafter }, i): PlateMark => {
      const before = all[i - 1];
      const bay = center - (before?.center ?? 0);
      if (rafter === null)
        return {
          piece: valleyMark(valley!),
          hand: "plain",
          mark: center,
          bay,
          notes: [{ kind: "inner corner", wing: corner!.wing }],
        };
      const odd = before !== undefined && before.rafter !== null && Math.abs(bay - frame.spec.spacing) > NONE;
      return {
        piece: frame.marks.get(rafter)!,
        hand: handOf(rafter),
        mark: center - half,
        bay,
        notes: [...placeNotes(frame, rafter), ...(odd ? [{ kind: "odd bay", width: bay } as Note] : [])],
      };
    }),
  };
}

/** What meets the two faces of every ridge, from the main one's left end and a wing's outer end; what stands opposite has one mark. */
function ridgeLists(frame: Frame, wings: readonly Wing[]): PlateList[] {
  const half = frame.spec.rafter.thickness / 2;
  const main = ridgeIn(frame);
  const ridges = [
    ...(main ? [main] : []),
    ...wings.map(({ index }) => frame.bearers.find(({ kind, block }) => kind === "ridge" && block === index)!),
  ];
  return ridges.map((ridge): PlateList => {
    // The main ridge is read from its left end, whichever end it is set out from.
    const back = ridge.block === 0 && ridge.heading.x < 0;
    const all = frame.rafters
      .filter(
        ({ head, plane, member, of }) =>
          head.bearer === ridge && !(member === "king common" && plane.end && plane.block === of),
      )
      .map((rafter) => {
        const along = alongBoard(ridge, rafter.spot);
        return { rafter, center: back ? boardRun(ridge) - along : along };
      })
      .sort((a, b) =>
        Math.abs(a.center - b.center) < NONE ? a.rafter.plane.index - b.rafter.plane.index : a.center - b.center,
      );
    const bays: number[] = [];
    all.forEach(({ center }, i) => {
      const bay = center - (all[i - 1]?.center ?? 0);
      bays.push(i > 0 && bay < NONE ? bays[i - 1]! : bay);
    });
    return {
      plate: "Main",
      place: { kind: "ridge", wing: ridge.wing },
      end: false,
      hook: "left",
      plates: 1,
      marks: all.map(({ rafter, center }, i) => ({
        piece: frame.marks.get(rafter)!,
        hand: handOf(rafter),
        mark: center - half,
        bay: bays[i]!,
        notes: [],
      })),
    };
  });
}
