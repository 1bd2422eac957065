import type { Point } from "../../geometry/point.ts";
import { clipped } from "../../geometry/polygon.ts";
import type { Hand } from "../../roof/frame/piece.ts";
import { dimensionDepth, drawDimensions, type Dimension } from "../canvas/dimensions.ts";
import { hatched } from "../canvas/hatched.ts";
import { escaped } from "../../measure/escaped.ts";
import { Canvas, type DrawingOptions } from "../canvas/canvas.ts";
import { textWidth } from "../canvas/textWidth.ts";
import { onCanvas, type View } from "../canvas/view.ts";

/** A piece in its board, by the cutting plan's convention: start and end along the edge of the board that is the piece's top edge. */
export interface StickPiece {
  readonly name: string;
  readonly hand: Hand;
  readonly start: number;
  readonly end: number;
  /** Turned end for end: its top edge is the board's lower edge, its long point at start. */
  readonly flipped: boolean;
  /** How far its plumb cuts lean over the board's depth. */
  readonly lean: number;
  /** How far the cuts at its low end and at its head go along the board from the near face to the far one, minus towards the tail. */
  readonly slants: readonly [low: number, head: number];
}

/** A board to be cut, or so many alike. */
export interface Stick {
  readonly number: number;
  readonly times: number;
  readonly size: string;
  readonly length: number;
  /** null where it is not known, and no cut slants. */
  readonly depth: number | null;
  readonly leftOver: number;
  readonly pieces: readonly StickPiece[];
}

export interface StickOptions extends DrawingOptions {
  /** The length that fills the width; the longest board when left out. */
  readonly longest?: number;
}

/** Height in pixels of a board whose depth is not known. */
const UNKNOWN = 12;
const AIR = 4;

/** Boards with the pieces that are cut out of them, all to one scale, their cuts slanted as they are on the side face toward the viewer. */
export function drawSticks(sticks: readonly Stick[], options: StickOptions): string {
  const canvas = new Canvas(options);
  const { words, width } = canvas;
  const scale = (width - 2) / (options.longest ?? Math.max(...sticks.map(({ length }) => length)));
  let bottom = 0;
  for (const stick of sticks) bottom = drawStick(canvas, stick, scale, bottom) + 2 * AIR;
  if (!canvas.brief)
    bottom =
      canvas.lines([words.sticks.key, words.handSeen], { left: 0, right: width }, bottom, { color: "faint" }) + AIR;
  return canvas.svg(bottom, words.sticks.title, sticks.map((stick) => headOf(canvas, stick)).join(". "));
}

/** One board from a line of the canvas on. Gives where it ends. */
function drawStick(canvas: Canvas, stick: Stick, scale: number, from: number): number {
  const depth = stick.depth ?? UNKNOWN / scale;
  const reach = { least: 0, most: canvas.width };
  const view = (y: number): View => ({ name: `board ${stick.number}`, scale, x: 1, y });
  const over = dimensionsOf(canvas, stick.pieces, false, scale);
  const under = dimensionsOf(canvas, stick.pieces, true, scale);

  const top =
    canvas.lines([headOf(canvas, stick)], { left: 0, right: canvas.width }, from, { bold: true }) +
    AIR +
    dimensionDepth(over, canvas.size, reach);
  const bottom = top + depth * scale;
  const at = view(bottom);
  const board: Point[] = [
    { x: 0, y: 0 },
    { x: stick.length, y: 0 },
    { x: stick.length, y: depth },
    { x: 0, y: depth },
  ];
  const shapes = stick.pieces.map((piece) => ({
    piece,
    near: faceOf(piece, depth, stick.length, "near"),
    far: faceOf(piece, depth, stick.length, "far"),
  }));
  canvas.boards(at, [
    { polygon: board, mark: "", hand: "plain", fill: "none" },
    ...shapes.map(({ piece, near }) => ({ polygon: near, mark: escaped(piece.name), hand: piece.hand })),
  ]);
  for (const { piece, near, far } of shapes) {
    for (const end of ["low", "head"] as const)
      if (piece.slants[end === "low" ? 0 : 1] !== 0)
        canvas.line(
          endLine(piece, far, end).map((point) => onCanvas(at, point)),
          "ink",
          "3 2",
        );
    canvas.shape(
      topEdge(piece, near, depth, Math.min(2, depth * scale * 0.2) / scale).map((point) => onCanvas(at, point)),
      "ink",
    );
  }
  for (const line of hatched(
    restOf(
      shapes.flatMap(({ near, far }) => [...near, ...far]),
      board,
    ),
    6 / scale,
  ))
    canvas.line(line.map((point) => onCanvas(at, point)));
  drawDimensions(canvas, over, { ...reach, way: "up", at: top, object: top });
  return drawDimensions(canvas, under, { ...reach, way: "down", at: bottom, object: bottom });
}

function headOf({ words: { sticks }, length }: Canvas, { number, times, size, length: long, leftOver }: Stick): string {
  return sticks.boards({ first: number, times, size, length: length(long), left: length(leftOver) });
}

/** Lengths along the top edges of the pieces that are turned round or of those that are not, neighbors that are alike taken together, in pixels. */
function dimensionsOf(
  { words, length, width, size }: Canvas,
  pieces: readonly StickPiece[],
  flipped: boolean,
  scale: number,
): Dimension[] {
  const runs: { first: StickPiece; last: StickPiece; count: number }[] = [];
  for (const [i, piece] of pieces.entries()) {
    if (piece.flipped !== flipped) continue;
    const run = runs.at(-1);
    const { name, hand } = piece;
    if (run && run.last === pieces[i - 1] && run.first.name === name && run.first.hand === hand)
      runs[runs.length - 1] = { ...run, last: piece, count: run.count + 1 };
    else runs.push({ first: piece, last: piece, count: 1 });
  }
  return runs.map(({ first, last, count }) => {
    const mark =
      first.hand === "plain"
        ? first.name
        : `${first.name} ${first.hand === "left" ? words.leftShort : words.rightShort}`;
    const each = length(first.end - first.start);
    const text = (name: string) => (count === 1 ? `${name} ${each}` : words.sticks.alike(String(count), name, each));
    return { from: 1 + first.start * scale, to: 1 + last.end * scale, text: fitting(mark, text, width, size) };
  });
}

/** The text for a mark, of which only as much is written as the canvas is wide. */
function fitting(mark: string, text: (mark: string) => string, width: number, size: number): string {
  let letters = mark.length;
  let shown = text(mark);
  while (letters > 1 && textWidth(shown, size) > width - 2) shown = text(`${mark.slice(0, --letters)}…`);
  return shown;
}

/** What a piece looks like on the near face of the board or on the far one, inside the board. The near one is its right face. */
function faceOf(
  { start, end, flipped, lean, slants: [low, head] }: StickPiece,
  depth: number,
  length: number,
  face: "near" | "far",
): Point[] {
  // How much shorter than the whole piece this face is at either end.
  const short = (slant: number): number => (face === "near" ? Math.max(slant, 0) : Math.max(-slant, 0));
  // Both cuts by where they meet the board's upper edge.
  const [from, to] = flipped
    ? [start + lean + short(head), end + lean - short(-low)]
    : [start + short(-low), end - short(head)];
  const whole = [
    { x: from - lean, y: 0 },
    { x: to - lean, y: 0 },
    { x: to, y: depth },
    { x: from, y: depth },
  ];
  return clipped(clipped(whole, -1, 0, 0), 1, 0, length);
}

/** The cut at an end of a piece's face: the head's is on the left of a piece that is turned round. */
function endLine({ flipped }: StickPiece, face: readonly Point[], end: "low" | "head"): Point[] {
  const [least, most] = [Math.min(...face.map(({ y }) => y)), Math.max(...face.map(({ y }) => y))];
  return [least, most].map((level) => {
    const xs = face.filter(({ y }) => y === level).map(({ x }) => x);
    return { x: flipped === (end === "head") ? Math.min(...xs) : Math.max(...xs), y: level };
  });
}

function topEdge({ flipped }: StickPiece, near: readonly Point[], depth: number, thick: number): Point[] {
  const level = flipped ? 0 : depth;
  const xs = near.filter(({ y }) => y === level).map(({ x }) => x);
  const inner = flipped ? thick : depth - thick;
  const [from, to] = [Math.min(...xs), Math.max(...xs)];
  return [
    { x: from, y: level },
    { x: to, y: level },
    { x: to, y: inner },
    { x: from, y: inner },
  ];
}

/** What is right of all pieces on both faces. */
function restOf(pieces: readonly Point[], board: readonly Point[]): Point[] {
  const end = (y: number) => pieces.filter((point) => point.y === y).reduce((most, { x }) => Math.max(most, x), 0);
  const [, right, upper] = board as [Point, Point, Point];
  return [{ x: end(0), y: 0 }, right, upper, { x: end(upper.y), y: upper.y }];
}
