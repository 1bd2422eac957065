import type { Point } from "../../geometry/point.ts";
import type { Level } from "../../geometry/polygon.ts";
import { alongSlope } from "../../geometry/alongSlope.ts";
import { partAt, type RoofFace } from "../../roof/frame/surface.ts";
import type { SideName } from "../../roof/frame/piece.ts";
import type { Course } from "../../roof/tables/sheathingCourses.ts";
import type { PlaneGroup } from "../../roof/tables/planeGroups.ts";
import type { TakeOff } from "../../roof/tables/takeOff.ts";
import { inColumns } from "../canvas/inColumns.ts";
import { Canvas, type BoardShape, type DrawingOptions } from "../canvas/canvas.ts";
import type { Room } from "../canvas/shown.ts";
import { onCanvas, type View } from "../canvas/view.ts";

/** Of a course: lengths that differ by less are one. */
const SAME = 1e-9;

/** Least width of one plane, in pixels. */
const LEAST = 290;

/** A plane with its courses, and which of its kind are laid alike. */
interface Laid {
  readonly side: SideName;
  readonly face: RoofFace;
  readonly alike: readonly number[];
  readonly courses: readonly Course[];
  /** By course: what is left of it starts another one. */
  readonly kept: readonly boolean[];
}

/** Every different plane as it lies, square from above its slope, with the sheets of its courses: each sheet numbered, an off-cut by the sheet it is left of. */
export function drawCourses(
  { planes, courses, sheet: boards }: Pick<TakeOff, "planes" | "courses" | "sheet">,
  options: DrawingOptions,
): string {
  const canvas = new Canvas(options);
  const { words } = canvas;
  const laid = laidPlanes(planes, courses);
  const widest = Math.max(...laid.map(({ courses: own }) => reachOf(own)));
  const bottom = inColumns(canvas, laid, LEAST, (one, room) => drawPlane(canvas, one, boards, widest, room));
  const total = courses.reduce((sum, course) => sum + course.sheets, 0);
  return canvas.svg(
    bottom + 4,
    words.courses,
    `${words.sheets(total)}. ${laid.map((one) => `${titleOf(one, canvas)}: ${one.courses.map((course, i) => courseText(course, one.kept[i]!, canvas)).join("; ")}`).join(". ")}.`,
  );
}

/** How far along the eave the sheets of a plane reach, its off-cuts included. */
const reachOf = (courses: readonly Course[]) => Math.max(...courses.map(({ length, offCut }) => length + offCut));

function laidPlanes(groups: readonly PlaneGroup[], courses: readonly Course[]): Laid[] {
  const laid: Laid[] = [];
  const kept = courses.map(({ offCut }, i) => offCut > 0 && (courses[i + 1]?.start ?? 0) > 0);
  const same = (a: Laid, b: Laid) =>
    a.side === b.side &&
    a.courses.length === b.courses.length &&
    a.courses.every(
      ({ length, start, sheets, offCut }, i) =>
        Math.abs(length - b.courses[i]!.length) < SAME * length &&
        Math.abs(start - b.courses[i]!.start) < SAME * length &&
        sheets === b.courses[i]!.sheets &&
        Math.abs(offCut - b.courses[i]!.offCut) < SAME * length &&
        a.kept[i] === b.kept[i],
    );
  for (const { side, faces } of groups) {
    for (const [index, face] of faces.entries()) {
      const number = index + 1;
      const own = courses
        .map((course, i) => ({ course, kept: kept[i]! }))
        .filter(({ course }) => course.side === side && course.plane === number);
      const one: Laid = {
        side,
        face,
        alike: [number],
        courses: own.map(({ course }) => course),
        kept: own.map((each) => each.kept),
      };
      const known = laid.findIndex((other) => same(other, one));
      if (known < 0) laid.push(one);
      else laid[known] = { ...laid[known]!, alike: [...laid[known]!.alike, number] };
    }
  }
  return laid;
}

function drawPlane(canvas: Canvas, one: Laid, boards: TakeOff["sheet"], widest: number, room: Room): number {
  const {
    face: { plane, parts },
    courses,
    kept,
  } = one;
  const along = alongSlope(plane.pitch);
  const high = (plane.overhang + plane.run) * along;
  const start = Math.min(...parts.map((levels) => levels[0]!.from));
  /** Where a course's lower edge begins, from the left end of the eave. */
  const leftAt = (from: number) => Math.min(...parts.map((levels) => partAt(levels, from / along).from)) - start;
  const most = Math.max(widest, ...courses.map(({ from, length, offCut }) => leftAt(from) + length + offCut));
  const scale = (room.right - room.left - 2) / most;
  const top = canvas.lines([titleOf(one, canvas)], room, room.top, { bold: true }) + 6;
  const view: View = { name: "courses", scale, x: room.left + 1, y: top + high * scale };
  const at = (x: number, y: number) => onCanvas(view, { x, y });

  let number = 0;
  const numbers: SheetNumber[] = [];
  for (const [i, { from, length, start, sheets, offCut }] of courses.entries()) {
    const edge = leftAt(from);
    const upper = Math.min(from + boards.wide, high);
    const piece = (x: number, to: number, text: string, fill: BoardShape["fill"] = "wood"): void => {
      const polygon: Point[] = [
        { x: edge + x, y: from },
        { x: edge + to, y: from },
        { x: edge + to, y: upper },
        { x: edge + x, y: upper },
      ];
      canvas.boards(view, [{ polygon, mark: text, hand: "plain", color: "faint", fill }]);
      numbers.push({
        text,
        from: at(edge + x, upper),
        to: at(edge + to, from),
        color: fill === "wood" ? "ink" : "accent",
      });
    };
    if (start > 0) piece(0, start, String(number || ""), "none");
    for (let k = 0; k < sheets; k++)
      piece(start + k * boards.long, Math.min(start + (k + 1) * boards.long, length), String(++number));
    if (offCut > 0) {
      const rest = [
        at(edge + length, from),
        at(edge + length + offCut, from),
        at(edge + length + offCut, upper),
        at(edge + length, upper),
      ];
      canvas.line(rest, kept[i] ? "accent" : "faint", kept[i] ? "5 3" : "2 2");
    }
  }
  for (const levels of parts) {
    const point = (level: Level, end: "from" | "to") => at(level[end] - start, level.at * along);
    canvas.line(
      [
        ...levels.map((level) => point(level, "from")),
        ...[...levels].reverse().map((level) => point(level, "to")),
        point(levels[0]!, "from"),
      ],
      "ink",
    );
  }
  for (const one of numbers) writeNumber(canvas, one);
  return (
    canvas.lines(
      courses.map((course, i) => courseText(course, kept[i]!, canvas)),
      room,
      view.y + 2,
    ) + 4
  );
}

/** The number of a sheet or an off-cut, and its corners on the drawing. */
interface SheetNumber {
  readonly text: string;
  readonly from: Point;
  readonly to: Point;
  readonly color: "ink" | "accent";
}

/** Writes a number in the middle of its sheet, or beside the hip's line that runs through there, if the sheet has room for it. */
function writeNumber(canvas: Canvas, { text, from, to, color }: SheetNumber): void {
  const { left, right } = canvas.boxOf({ x: 0, y: 0 }, text);
  if (right - left >= to.x - from.x - 2) return;
  const y = (from.y + to.y) / 2 + canvas.size * 0.3;
  const room = Math.max(0, (to.x - from.x - (right - left)) / 2 - 2);
  canvas.label(
    [0, -0.5, 0.5, -1, 1].map((part) => ({ x: (from.x + to.x) / 2 + part * room, y })),
    text,
    { color },
  );
}

function titleOf({ side, alike, courses }: Laid, { words }: Canvas): string {
  return words.plane(
    side,
    alike,
    courses.reduce((sum, { sheets }) => sum + sheets, 0),
  );
}

function courseText({ course, length, start, sheets, offCut }: Course, kept: boolean, canvas: Canvas): string {
  return canvas.words.course({
    number: course,
    edge: canvas.length(length),
    start: start > 0 ? canvas.length(start) : null,
    sheets,
    offCut: offCut > 0 ? canvas.length(offCut) : null,
    kept,
  });
}
