import type { Point } from "../../geometry/clipped.ts";
import { alongSlope } from "../../geometry/alongSlope.ts";
import type { RoofPlane } from "../../roof/frame/roofPlanes.ts";
import type { Course } from "../../roof/tables/sheathingCourses.ts";
import type { TakeOff } from "../../roof/tables/takeOff.ts";
import { inColumns } from "../canvas/inColumns.ts";
import { Canvas, type BoardShape, type DrawingOptions } from "../canvas/canvas.ts";
import type { Room } from "../canvas/shown.ts";
import { onCanvas, type View } from "../canvas/view.ts";

/** Least width of one plane, in pixels. */
const LEAST = 290;

/** A plane with its courses, and which of its kind are laid alike. */
interface Laid {
  readonly plane: RoofPlane;
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
  const gable = planes.some(({ side, count }) => side === "End" && count === 1);
  const bottom = inColumns(canvas, laid, LEAST, (one, room) =>
    drawPlane(canvas, one, boards, gable && one.plane.side === "Main", widest, room),
  );
  const total = courses.reduce((sum, course) => sum + course.sheets, 0);
  return canvas.svg(
    bottom + 4,
    words.courses,
    `${words.sheets(total)}. ${laid.map((one) => `${titleOf(one, canvas)}: ${one.courses.map((course, i) => courseText(course, one.kept[i]!, canvas)).join("; ")}`).join(". ")}.`,
  );
}

/** How far along the eave the sheets of a plane reach, its off-cuts included. */
const reachOf = (courses: readonly Course[]) => Math.max(...courses.map(({ length, offCut }) => length + offCut));

function laidPlanes(planes: readonly RoofPlane[], courses: readonly Course[]): Laid[] {
  const laid: Laid[] = [];
  const kept = courses.map(({ offCut }, i) => offCut > 0 && (courses[i + 1]?.start ?? 0) > 0);
  const same = (a: Laid, b: Laid) =>
    a.plane === b.plane &&
    a.courses.every(
      ({ start, sheets, offCut }, i) =>
        start === b.courses[i]!.start &&
        sheets === b.courses[i]!.sheets &&
        offCut === b.courses[i]!.offCut &&
        a.kept[i] === b.kept[i],
    );
  for (const plane of planes) {
    for (let number = 1; number <= plane.count; number++) {
      const own = courses
        .map((course, i) => ({ course, kept: kept[i]! }))
        .filter(({ course }) => course.side === plane.side && course.plane === number);
      const one: Laid = {
        plane,
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

function drawPlane(
  canvas: Canvas,
  one: Laid,
  boards: TakeOff["sheet"],
  gable: boolean,
  widest: number,
  room: Room,
): number {
  const { plane, courses, kept } = one;
  const along = alongSlope(plane.pitch);
  const whole = plane.levels[0]!.width;
  const high = plane.levels.at(-1)!.up * along;
  const left = (width: number) => (gable ? whole - width : (whole - width) / 2);
  const most = Math.max(widest, ...courses.map(({ length, offCut }) => left(length) + length + offCut));
  const scale = (room.right - room.left - 2) / most;
  const top = canvas.lines([titleOf(one, canvas)], room, room.top, { bold: true }) + 6;
  const view: View = { name: "courses", scale, x: room.left + 1, y: top + high * scale };
  const at = (x: number, y: number) => onCanvas(view, { x, y });

  let number = 0;
  const numbers: SheetNumber[] = [];
  for (const [i, { from, length, start, sheets, offCut }] of courses.entries()) {
    const edge = left(length);
    const upper = Math.min(from + boards.wide, high);
    const piece = (x: number, to: number, text: string, fill: BoardShape["fill"] = "wood"): void => {
      const polygon: Point[] = [
        { x: edge + x, y: from },
        { x: edge + to, y: from },
        { x: edge + to, y: upper },
        { x: edge + x, y: upper },
      ];
      canvas.boards(view, [{ polygon, mark: text, hand: "plain", colour: "faint", fill }]);
      numbers.push({
        text,
        from: at(edge + x, upper),
        to: at(edge + to, from),
        colour: fill === "wood" ? "ink" : "accent",
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
  const levels = plane.levels.map(({ up, width }) => ({ up: up * along, from: left(width), to: left(width) + width }));
  canvas.line(
    [
      ...levels.map(({ up, from }) => at(from, up)),
      ...[...levels].reverse().map(({ up, to }) => at(to, up)),
      at(levels[0]!.from, 0),
    ],
    "ink",
  );
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
  readonly colour: "ink" | "accent";
}

/** Writes a number in the middle of its sheet, or beside the hip's line that runs through there, if the sheet has room for it. */
function writeNumber(canvas: Canvas, { text, from, to, colour }: SheetNumber): void {
  const { left, right } = canvas.boxOf({ x: 0, y: 0 }, text);
  if (right - left >= to.x - from.x - 2) return;
  const y = (from.y + to.y) / 2 + canvas.size * 0.3;
  const room = Math.max(0, (to.x - from.x - (right - left)) / 2 - 2);
  canvas.label(
    [0, -0.5, 0.5, -1, 1].map((part) => ({ x: (from.x + to.x) / 2 + part * room, y })),
    text,
    { colour },
  );
}

function titleOf({ plane, alike, courses }: Laid, { words }: Canvas): string {
  return words.plane(
    plane.side,
    alike,
    courses.reduce((sum, { sheets }) => sum + sheets, 0),
  );
}

function courseText({ course, length, start, sheets, offCut }: Course, kept: boolean, canvas: Canvas): string {
  return canvas.words.course(
    course,
    canvas.length(length),
    start > 0 ? canvas.length(start) : null,
    sheets,
    offCut > 0 ? canvas.length(offCut) : null,
    kept,
  );
}
