import type { Frame, FrameSide } from "../frame/frame.ts";
import { jackMark } from "../members/jackMark.ts";
import type { Note } from "../frame/note.ts";
import type { Hand } from "../frame/piece.ts";

/** A member's place on a plate. */
export interface PlateMark {
  /** Mark of the piece that stands there, and its hand. */
  readonly piece: string;
  readonly hand: Hand;
  /** From the hook of the tape to the member's edge nearer the hook. */
  readonly mark: number;
  /** Centre to centre from the member before; from the corner to the centre for the first. */
  readonly bay: number;
  readonly notes: readonly Note[];
}

/** All marks of a plate for one hook of the tape at a hip's corner. */
export interface PlateList {
  readonly plate: "Main" | "End";
  /** The end of the plate at which the tape is hooked, seen from outside the building. */
  readonly hook: "left" | "right";
  /** How many plates are marked so. */
  readonly plates: 1 | 2;
  readonly marks: readonly PlateMark[];
}

type Standing = Pick<PlateMark, "piece" | "hand"> & { readonly centre: number; readonly notes: readonly Note[] };

/** Less than this is no difference at all, in any unit. */
const NONE = 1e-6;

/**
 * The plates of a roof, each list with its marks in running order.
 *
 * Commons stand opposite each other on the ridge (common practice, no source). So where an odd last bay or a gable makes the main plates differ, both
 * are measured from the same end of the building: one from its left corner, the other from its right.
 */
export function plateMarks(frame: Frame): readonly PlateList[] {
  const { hipEnds, commons, spec } = frame;
  const even =
    hipEnds === 2 &&
    commons.every((centre, i) => Math.abs(centre + commons[commons.length - 1 - i]! - spec.length) < NONE);
  const main = (hook: "left" | "right", plates: 1 | 2): PlateList => ({
    plate: "Main",
    hook,
    plates,
    marks: inOrder(frame, mainPlate(frame, hook)),
  });
  const end: PlateList = { plate: "End", hook: "left", plates: hipEnds, marks: inOrder(frame, endPlate(frame)) };
  return even ? [main("left", 2), end] : [main("left", 1), main("right", 1), end];
}

function mainPlate(frame: Frame, hook: "left" | "right"): Standing[] {
  const { main, commons, kings, hipEnds, pyramid, spec } = frame;
  const king = (centre: number): Standing => ({
    piece: "K",
    hand: "plain",
    centre,
    notes: main.jacks.length === 0 ? cornerBay(main) : [],
  });
  return [
    ...jacks(frame, main, hook),
    ...(kings ? [king(main.king)] : []),
    ...commons.map((centre, i): Standing => {
      const gable = hipEnds === 1 && i === commons.length - 1;
      return { piece: "C", hand: "plain", centre, notes: gable ? [{ kind: "at gable" }] : [] };
    }),
    ...(kings && hipEnds === 2 && !pyramid ? [king(spec.length - main.king)] : []),
    ...(hipEnds === 2 ? fromFarEnd(jacks(frame, main, hook === "left" ? "right" : "left"), spec.length) : []),
  ];
}

function endPlate(frame: Frame): Standing[] {
  const { end, kings, spec } = frame;
  return [
    ...jacks(frame, end, "left"),
    ...(kings
      ? [{ piece: "KE", hand: "plain", centre: end.king, notes: end.jacks.length === 0 ? cornerBay(end) : [] } as const]
      : []),
    ...fromFarEnd(jacks(frame, end, "right"), spec.span),
  ];
}

/** The jacks beside the corner at one end of a plate, nearest first. Looking up the hip there, a plate that starts at the left end lies to the right. */
function jacks(frame: Frame, side: FrameSide, end: "left" | "right"): Standing[] {
  const hand = end === "left" ? "right" : "left";
  const last = side.jacks.length - 1;
  return side.jacks
    .map(({ offset }, i): Standing => ({
      piece: jackMark(frame, side, i),
      hand,
      centre: offset,
      notes: i === last ? cornerBay(side) : [],
    }))
    .reverse();
}

/** The bay left at a corner, to the centre of what stands nearest to it. */
function cornerBay({ jacks, king, dropped }: FrameSide): readonly Note[] {
  return [{ kind: dropped > 0 ? "corner bay, seat" : "corner bay", width: jacks.at(-1)?.offset ?? king }];
}

const fromFarEnd = (standing: readonly Standing[], length: number) =>
  standing.map((one) => ({ ...one, centre: length - one.centre })).reverse();

/** Marks in running order; a bay that is no whole spacing is named, the one after the commons as the last. */
function inOrder({ spec }: Frame, standing: readonly Standing[]): PlateMark[] {
  return standing.map(({ centre, notes, ...one }, i) => {
    const before = standing[i - 1];
    const bay = centre - (before?.centre ?? 0);
    const odd = before !== undefined && Math.abs(bay - spec.spacing) > NONE;
    const named: Note = { kind: before?.piece === "C" ? "last bay" : "odd bay", width: bay };
    return { ...one, mark: centre - spec.rafter.thickness / 2, bay, notes: odd ? [...notes, named] : notes };
  });
}
