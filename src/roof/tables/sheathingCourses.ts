import { slopeAngle } from "../../geometry/angle.ts";
import { alongSlope } from "../../geometry/alongSlope.ts";
import type { Degrees } from "../../measure/degrees.ts";
import { faceStretches, type RoofFace } from "../frame/surface.ts";
import type { PlaneGroup } from "./planeGroups.ts";

/** A sheet of sheathing: its long side lies along the eave. */
export interface Sheet {
  readonly long: number;
  readonly wide: number;
}

/** One piece of a course, or whole sheets side by side. */
export interface CoursePiece {
  /** Along the lower edge of its course, from the course's left end. */
  readonly from: number;
  readonly to: number;
  /** How far each end leans in over a sheet's width up the slope; below 0 out, as at a valley. */
  readonly left: number;
  readonly right: number;
  /** The sheet that it is cut from, all sheets of the roof numbered on from 1. */
  readonly sheet: number;
  /** The sheet was cut for another piece before. */
  readonly offCut: boolean;
  /** How many sheets lie side by side, whose numbers run on. */
  readonly times: number;
}

/** One course of sheets across one part of a plane. */
export interface Course {
  readonly side: PlaneGroup["side"];
  /** Of the planes of a kind which one, and of its courses which one, both from 1 at the eave. */
  readonly plane: number;
  readonly course: number;
  /** Along the slope from the eave to its lower edge. */
  readonly from: number;
  /** Where it starts, along the plate line from the left end. */
  readonly along: number;
  /** Its lower edge, or all that it reaches where a valley or another plane makes it longer farther up. */
  readonly length: number;
  /** From the left, one at least; whole sheets are taken together, for there are as many as a wide roof has area. */
  readonly runs: readonly CoursePiece[];
  /** New sheets that it takes. */
  readonly sheets: number;
}

/** Every piece of a course from the left. */
export const eachPiece = ({ runs }: Pick<Course, "runs">): CoursePiece[] =>
  runs.flatMap((run) => {
    const { from, times, sheet } = run;
    const long = (run.to - from) / times;
    return Array.from({ length: times }, (_, n): CoursePiece => ({
      ...run,
      from: from + n * long,
      to: n === times - 1 ? run.to : from + (n + 1) * long,
      sheet: sheet + n,
      times: 1,
    }));
  });

/** How a course's end leans, from square across the sheet. */
export const leanOf = (lean: number, { wide }: Sheet): Degrees => slopeAngle(Math.abs(lean) / wide);

/** An off-cut that is kept: its length half way up the sheet. */
interface OffCut {
  readonly middle: number;
  readonly sheet: number;
}

/** Of a course or a sheet: far below a saw's kerf, far above the last bit of a double. */
const NONE = 1e-9;

/**
 * Sheets course by course up the slope from the eave, one plane after another.
 *
 * A sheet that is cut on the slant gives two left ends, or two right ones: turned by 180 degrees the off-cut has the same slant. Half way up the sheet the
 * lengths of the two add up to the sheet's. So all lengths here are those half way up. An off-cut that spans two bays or more is kept for a later end of the
 * same slant, on whichever plane; a shorter one is waste. A course that is ripped at the ridge to half a sheet or less leaves strips for others so wide.
 * Turning off-cuts is common practice, no source.
 */
export function sheathingCourses(groups: readonly PlaneGroup[], sheet: Sheet, bay: number): readonly Course[] {
  const kept = new Map<string, OffCut[]>();
  // A roof has few slants, and writing a number out takes longer than finding it.
  const written = new Map<number, string>();
  const fixed = (lean: number): string => {
    const text = written.get(lean) ?? lean.toFixed(6);
    written.set(lean, text);
    return text;
  };
  let sheets = 0;
  /** What the course that is laid is ripped to; null for the whole width. Off-cuts and strips of one width serve each other. */
  let rip: string | null = null;
  const strips = new Map<string, number[]>();
  /** The sheet of a piece that no off-cut gives: a strip that another ripped course has left, or a new one. */
  function newSheet(rips: number): Pick<CoursePiece, "sheet" | "offCut"> {
    const left = rip === null ? [] : (strips.get(rip) ?? []);
    const strip = left.shift();
    if (strip !== undefined) return { sheet: strip, offCut: true };
    sheets++;
    if (rip !== null) strips.set(rip, [...left, ...Array.from({ length: rips - 1 }, () => sheets)]);
    return { sheet: sheets, offCut: false };
  }
  const poolOf = (end: "left" | "right", lean: number): OffCut[] => {
    // Square off-cuts serve at either end.
    const key = `${rip} ${Math.abs(lean) < NONE ? "square" : `${end} ${fixed(lean)}`}`;
    let pool = kept.get(key);
    if (!pool) kept.set(key, (pool = []));
    return pool;
  };
  /** Keeps what a new sheet leaves beside a piece. */
  const keep = (end: "left" | "right", lean: number, middle: number, from: number) => {
    if (middle + Math.abs(lean) / 2 >= 2 * bay * (1 - NONE)) poolOf(end, lean).push({ middle, sheet: from });
  };
  const drop = (end: "left" | "right", lean: number, used: OffCut | null) => {
    const pool = poolOf(end, lean);
    if (used) pool.splice(pool.indexOf(used), 1);
  };
  /** Takes the shortest kept off-cut that holds a piece. */
  const take = (end: "left" | "right", lean: number, middle: number): OffCut | null => {
    let fit: OffCut | null = null;
    for (const one of poolOf(end, lean))
      if (one.middle >= middle * (1 - NONE) && (fit === null || one.middle < fit.middle)) fit = one;
    drop(end, lean, fit);
    return fit;
  };

  // No end piece is shorter than two bays, and none longer than a sheet gives.
  const shortest = Math.min(2 * bay, sheet.long / 2);
  const least = (lean: number) => Math.max(Math.abs(lean) / 2, shortest - Math.abs(lean) / 2);
  const most = (lean: number) => sheet.long - Math.abs(lean) / 2;
  /** Two end pieces that leave a whole number of sheets between them, of new sheets or no longer than two off-cuts; null where there are none. */
  function splitOf(middle: number, left: number, right: number, one: OffCut | null, other: OffCut | null) {
    const [mostLeft, mostRight] = [one?.middle ?? most(left), other?.middle ?? most(right)];
    // A new sheet is best cut through its middle: its other half is another end.
    const wish = one?.middle ?? (left === 0 ? sheet.long : sheet.long / 2);
    for (let whole = 0; whole <= middle / sheet.long + NONE; whole++) {
      const both = middle - whole * sheet.long;
      const from = Math.max(least(left), both - mostRight);
      const to = Math.min(mostLeft, both - least(right));
      if (from > to + NONE * sheet.long) continue;
      const first = Math.max(from, Math.min(to, wish));
      const last = both - first;
      const taken = whole + (one ? 0 : 1) + (other ? 0 : 1);
      const lost = (one ? one.middle - first : 0) + (other ? other.middle - last : 0);
      return { first, last, one, other, taken, lost };
    }
    return null;
  }

  /** The pieces of a stretch whose ends lean in by so much; `length` is its lower edge. */
  function laid(length: number, left: number, right: number, rips: number): CoursePiece[] {
    const piece = (
      from: number,
      to: number,
      { left = 0, right = 0 }: { left?: number; right?: number },
      used: OffCut | null,
      times = 1,
    ): CoursePiece => {
      const { sheet, offCut } = used ? { sheet: used.sheet, offCut: true } : newSheet(rips);
      return { from, to, left, right, times, sheet, offCut };
    };
    if (Math.max(length, length - left - right) <= sheet.long * (1 + NONE)) {
      const used = take("right", right, length - right / 2) ?? take("left", left, length - left / 2);
      const whole = piece(0, length, { left, right }, used);
      if (!used) keep("right", right, sheet.long - length + right / 2, whole.sheet);
      return [whole];
    }
    const middle = length - (left + right) / 2;
    // The fewest new sheets, and of those ways the one that trims the least off off-cuts.
    let best: ReturnType<typeof splitOf> = null;
    const others = [null, ...poolOf("right", right)];
    for (const one of [null, ...poolOf("left", left)])
      for (const other of others) {
        if (one !== null && one === other) continue;
        const split = splitOf(middle, left, right, one, other);
        if (split && (best === null || (split.taken - best.taken || split.lost - best.lost) < 0)) best = split;
      }
    // Ends that lean too much for any two of a sheet are cut off square sheets.
    if (!best) return laid(Math.max(length, length - left - right), 0, 0, rips);
    const { first, last, one, other } = best;
    drop("left", left, one);
    drop("right", right, other);
    const pieces = [piece(0, first + left / 2, { left }, one)];
    if (!one) keep("left", left, sheet.long - first, pieces[0]!.sheet);
    const end = middle - last + left / 2;
    const from = pieces[0]!.to;
    const whole = Math.max(0, Math.ceil((end - from) / sheet.long - NONE * Math.max(1, length / sheet.long)));
    if (rip === null && whole > 0) {
      pieces.push(piece(from, end, {}, null, whole));
      sheets += whole - 1;
    } else
      for (let n = 0; n < whole; n++)
        pieces.push(piece(from + n * sheet.long, Math.min(from + (n + 1) * sheet.long, end), {}, null));
    pieces.push(piece(pieces.at(-1)!.to, length, { right }, other));
    if (!other) keep("right", right, sheet.long - last, pieces.at(-1)!.sheet);
    return pieces;
  }

  return groups.flatMap(({ side, faces }) =>
    faces.flatMap((face, plane) =>
      stretches(face, sheet.wide).map(({ course, from, to, start, length, left, right }): Course => {
        const before = sheets;
        const rips = Math.floor(sheet.wide / (to - from) + NONE);
        rip = rips > 1 ? (to - from).toFixed(6) : null;
        // A strip leans as far as it is wide.
        const part = rips > 1 ? (to - from) / sheet.wide : 1;
        const runs = laid(length, left * part, right * part, rips).map((piece) => ({
          ...piece,
          left: piece.left / part,
          right: piece.right / part,
        }));
        return { side, plane: plane + 1, course, from, along: start, length, runs, sheets: sheets - before };
      }),
    ),
  );
}

interface Stretch {
  readonly course: number;
  readonly from: number;
  readonly to: number;
  readonly start: number;
  readonly length: number;
  readonly left: number;
  readonly right: number;
}

/** Where the courses of a face lie: the lower edge of each, and how far its ends lean in over a sheet's width. A wing parts the courses that it stands in. */
function stretches(face: RoofFace, wide: number): Stretch[] {
  const along = alongSlope(face.plane.pitch);
  const top = face.top * along;
  const found: Stretch[] = [];
  for (let course = 1; (course - 1) * wide < top * (1 - NONE); course++) {
    const [from, to] = [(course - 1) * wide, Math.min(course * wide, top)];
    const thin = (to - from) * THIN;
    const within = (low: number, high: number) => faceStretches(face, low / along, high / along);
    const [lowest, highest] = [within(from, from + thin), within(to - thin, to)];
    for (const { from: start, to: end } of within(from, to)) {
      const own = (list: typeof lowest) => list.filter((one) => one.to > start && one.from < end);
      const [low, ...lowMore] = own(lowest);
      const [high, ...highMore] = own(highest);
      const straight =
        low &&
        high &&
        lowMore.length + highMore.length === 0 &&
        near(Math.min(low.from, high.from), start, wide) &&
        near(Math.max(low.to, high.to), end, wide);
      const per = wide / ((to - from) * (1 - THIN));
      found.push(
        straight
          ? {
              course,
              from,
              to,
              start: low.from,
              length: low.to - low.from,
              left: clean((high.from - low.from) * per, wide),
              right: clean((low.to - high.to) * per, wide),
            }
          : { course, from, to, start, length: end - start, left: 0, right: 0 },
      );
    }
  }
  return found;
}

/** A part of a course's height that is as good as none. */
const THIN = 1e-7;

const near = (a: number, b: number, wide: number): boolean => Math.abs(a - b) <= 10 * THIN * wide;

/** No lean is the last bit of a double. */
const clean = (lean: number, wide: number): number => (Math.abs(lean) <= 10 * THIN * wide ? 0 : lean);
