import { alongSlope } from "../../geometry/alongSlope.ts";
import type { Point } from "../../geometry/point.ts";
import type { Level } from "../../geometry/polygon.ts";
import type { RoofFace } from "../../roof/frame/surface.ts";
import type { SideName } from "../../roof/frame/piece.ts";
import { eachPiece, type Course, type CoursePiece } from "../../roof/tables/sheathingCourses.ts";
import type { TakeOff } from "../../roof/tables/takeOff.ts";
import { Canvas, type DrawingOptions } from "../canvas/canvas.ts";
import { inColumns } from "../canvas/inColumns.ts";
import type { Room } from "../canvas/shown.ts";
import { onCanvas, type View } from "../canvas/view.ts";

/** Least width of one plane, in pixels. */
const LEAST = 290;

/** A plane with its courses. */
interface Laid {
  readonly side: SideName;
  readonly plane: number;
  readonly face: RoofFace;
  readonly courses: readonly Course[];
}

/** Every plane as it lies, square from above its slope, with the pieces of its courses, each with the number of the sheet it is cut from. */
export function drawCourses(
  { sheathed, courses, sheet }: Pick<TakeOff, "sheathed" | "courses" | "sheet">,
  options: DrawingOptions,
): string {
  const canvas = new Canvas(options);
  const { words } = canvas;
  const laid = sheathed.flatMap(({ side, faces }) =>
    faces.map((face, i): Laid => {
      const own = courses.filter((course) => course.side === side && course.plane === i + 1);
      return { side, plane: i + 1, face, courses: own };
    }),
  );
  const widest = Math.max(...courses.map(({ length }) => length));
  const bottom = inColumns(canvas, laid, LEAST, (one, room) => drawPlane(canvas, one, sheet.wide, widest, room));
  const total = courses.reduce((sum, course) => sum + course.sheets, 0);
  const said = laid.map(
    (one) => `${titleOf(one, canvas)}: ${one.courses.map((course) => courseText(course, canvas)).join("; ")}`,
  );
  return canvas.svg(bottom + 4, words.courses, `${words.sheets(total)}. ${said.join(". ")}.`);
}

function drawPlane(canvas: Canvas, one: Laid, wide: number, widest: number, room: Room): number {
  const { face, courses } = one;
  const { plane, parts } = face;
  const along = alongSlope(plane.pitch);
  const high = Math.max(...parts.map((levels) => levels.at(-1)!.at)) * along;
  const start = Math.min(...parts.flatMap((levels) => levels.map(({ from }) => from)));
  const scale = (room.right - room.left - 2) / widest;
  const top = canvas.lines([titleOf(one, canvas)], room, room.top, { bold: true }) + 6;
  const view: View = { name: "courses", scale, x: room.left + 1, y: top + high * scale };
  const at = (x: number, y: number) => onCanvas(view, { x, y });
  for (const course of courses) {
    const upper = Math.min(course.from + wide, high);
    for (const piece of eachPiece(course)) {
      const polygon = outlineOf(piece, course.along - start, course.from, upper, wide);
      const text = String(piece.sheet);
      canvas.boards(view, [
        { polygon, mark: text, hand: "plain", color: "faint", fill: piece.offCut ? "none" : "wood" },
      ]);
      writeNumber(
        canvas,
        text,
        polygon.map((point) => at(point.x, point.y)),
        piece.offCut ? "accent" : "ink",
      );
    }
  }
  for (const levels of parts) {
    const point = (level: Level, end: "from" | "to") => at(level[end] - start, level.at * along);
    const round = [
      ...levels.map((level) => point(level, "from")),
      ...levels.map((level) => point(level, "to")).reverse(),
    ];
    canvas.line([...round, round[0]!], "ink");
  }
  const texts = courses.map((course) => courseText(course, canvas));
  return canvas.lines(texts, room, view.y + 2) + 4;
}

/** A piece between the lower and the upper line of its course. */
function outlineOf(
  { from, to, left, right }: CoursePiece,
  start: number,
  lower: number,
  upper: number,
  wide: number,
): Point[] {
  const part = (upper - lower) / wide;
  const [upperFrom, upperTo] = [start + from + left * part, start + to - right * part];
  return [
    { x: start + from, y: lower },
    { x: start + to, y: lower },
    { x: Math.max(upperTo, upperFrom), y: upper },
    { x: upperFrom, y: upper },
  ];
}

/** Writes a number in the middle of its piece, if that has room for it. */
function writeNumber(canvas: Canvas, text: string, corners: readonly Point[], color: "ink" | "accent"): void {
  const { left, right } = canvas.boxOf({ x: 0, y: 0 }, text);
  const [a, b, c, d] = corners as [Point, Point, Point, Point];
  if ((b.x - a.x + c.x - d.x) / 2 < right - left + 2) return;
  const middle = { x: (a.x + b.x + c.x + d.x) / 4, y: (a.y + c.y) / 2 + canvas.size * 0.3 };
  canvas.label(
    [0, -4, 4, -8, 8].map((off) => ({ ...middle, x: middle.x + off })),
    text,
    { color },
  );
}

function titleOf({ side, plane, courses }: Laid, { words }: Canvas): string {
  return words.plane(
    side,
    plane,
    courses.reduce((sum, { sheets }) => sum + sheets, 0),
  );
}

function courseText({ course, length, sheets, runs }: Course, { words, length: text }: Canvas): string {
  const first = runs[0]!;
  return words.course({
    number: course,
    edge: text(length),
    first: text(first.to - first.from),
    offCutOf: first.offCut ? first.sheet : null,
    sheets,
  });
}
