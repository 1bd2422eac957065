import type { Point } from "../../geometry/point.ts";
import type { Frame } from "../../roof/frame/frame.ts";
import type { Piece } from "../../roof/frame/piece.ts";
import { placedBoards, type PlacedBoard } from "../../roof/frame/placedBoards.ts";
import { bays } from "./bays.ts";
import { dimensionDepth, drawDimensions, type Dimension } from "../canvas/dimensions.ts";
import { boardShape, labelOf } from "../canvas/labelOf.ts";
import { Canvas, type DrawingOptions } from "../canvas/canvas.ts";
import { textWidth } from "../canvas/textWidth.ts";
import { onCanvas, type View } from "../canvas/view.ts";

/** Thinner than this in pixels, a filled board does not differ from a hollow one, and only the letters tell the hands. */
const TELLS = 2.5;

/** The whole framing plan: every member to scale with its mark and hand, bays and overall sizes. */
export function drawPlan(frame: Frame, pieces: readonly Piece[], options: DrawingOptions): string {
  const canvas = new Canvas(options);
  const { size, words, width } = canvas;
  const boards = placedBoards(frame, pieces);
  const { length, span } = frame.spec;
  const { west, east, side } = overhangsOf(frame);
  const across = length + west + east;
  const feet = boards.filter(({ piece }) => piece.member !== "ridge" && piece.member !== "hip");
  const longest = Math.max(...feet.map((board) => textWidth(labelOf(board, words), size)));

  const { ends } = frame.spec;
  const [before, right] = [ends !== "gable and hip", ends !== "hip and gable"].map((hip) =>
    hip ? longest + 8 : 8,
  ) as [number, number];
  // The room that dimensions take depends on the scale, and the scale on that room: rounds follow until what is drawn has the room it takes.
  let plan = laidOut(0);
  while (plan.needs > plan.given) plan = laidOut(plan.needs);
  const { view, left, depth, eaves, upright, main, end, beside } = plan;

  function laidOut(given: number) {
    const left = before + given;
    const scale = (width - left - right) / across;
    const { main, end } = chainsOf(canvas, boards, frame, scale);
    const upright = Math.min(...spacings(feet)) * scale < longest + 3;
    const depth = upright ? longest + 6 : canvas.lineHeight + 2;
    const view: View = { name: "plan", scale, x: left + west * scale, y: depth + (span + side) * scale };
    const eaves = view.y + side * scale;
    // No lower than the marks at the feet: under them are the rows of the main plate.
    const beside = { least: 0, most: eaves + depth };
    const up = end.map((one) => ({ ...one, from: view.y - one.from, to: view.y - one.to }));
    return { given, needs: dimensionDepth(up, size, beside), view, left, depth, eaves, upright, main, end: up, beside };
  }

  canvas.boards(
    view,
    boards.map((board) => boardShape(board, board.plan, board.piece.section.thickness * view.scale >= TELLS)),
  );
  outlinePlates(canvas, view, frame);
  writeLabels(canvas, view, feet, upright, size);
  for (const board of boards)
    if (board.piece.member === "hip" || board.piece.member === "ridge") writeInside(canvas, view, board, feet);

  // Extension lines begin beyond the marks, so that none is struck through.
  let bottom = drawDimensions(
    canvas,
    main.map((one) => ({ ...one, from: one.from + view.x, to: one.to + view.x })),
    { way: "down", at: eaves + depth, object: eaves + depth - 4, least: 0, most: width },
  );
  drawDimensions(canvas, end, { way: "left", at: left - before, object: left - before, ...beside });
  const tells = frame.spec.rafter.thickness * view.scale >= TELLS;
  bottom = canvas.lines(
    [`${tells ? words.handKey : words.handLetters} ${words.handSeen}`],
    { left: 0, right: width },
    bottom,
    { color: "faint" },
  );
  return canvas.svg(
    bottom + 6,
    words.plan,
    `${words.plan}: ${options.length(span)} × ${options.length(length)}. ${pieces.map(({ mark, left: l, right: r, plain }) => `${mark} ×${l + r + plain}`).join(", ")}.`,
  );
}

/** Bays along a main and an end plate and their overall lengths, in pixels from the corner. */
function chainsOf(canvas: Canvas, boards: readonly PlacedBoard[], { spec, blocks: [main] }: Frame, scale: number) {
  const chain = (stations: number[], whole: number) => {
    // A gable's last pair stands half a board inside the plate line, which is no bay.
    const ones = bays([0, ...stations, whole])
      .filter(({ each }) => each > spec.rafter.thickness)
      .map(({ from, to, count, each }): Dimension => ({
        from: from * scale,
        to: to * scale,
        text: count > 1 ? `${count} ${canvas.words.each} ${canvas.length(each)}` : canvas.length(each),
      }));
    return [...ones, { from: 0, to: whole * scale, text: canvas.length(whole) }];
  };
  const on = (axis: "x" | "y", plate: number) =>
    boards
      .filter(
        ({ foot, piece }) =>
          foot[axis === "x" ? "y" : "x"] === plate && piece.member !== "hip" && piece.member !== "ridge",
      )
      .map(({ foot }) => foot[axis]);
  // A hipped end, from which the roof is set out.
  return { main: chain(on("x", 0), spec.length), end: chain(on("y", main!.ends[0]!.corner.x), spec.span) };
}

/** Distances between neighbors on one plate line. */
function spacings(feet: readonly PlacedBoard[]): number[] {
  const main = feet
    .filter(({ foot }) => foot.y === 0)
    .map(({ foot }) => foot.x)
    .sort((a, b) => a - b);
  return main.slice(1).map((x, i) => x - main[i]!);
}

/** How far the eaves reach past the plates: at the left and right end where those are hipped, and in front and back. */
function overhangsOf({ spec: { ends }, blocks: [main] }: Frame): { west: number; east: number; side: number } {
  const end = main!.ends[0]!.overhang;
  return {
    west: ends === "gable and hip" ? 0 : end,
    east: ends === "hip and gable" ? 0 : end,
    side: main!.sides[0].overhang,
  };
}

function outlinePlates(canvas: Canvas, view: View, frame: Frame): void {
  const { length, span } = frame.spec;
  const { west, east, side } = overhangsOf(frame);
  const ring = (x0: number, y0: number, x1: number, y1: number) =>
    [
      [x0, y0],
      [x1, y0],
      [x1, y1],
      [x0, y1],
      [x0, y0],
    ].map(([x, y]) => onCanvas(view, { x: x!, y: y! }));
  canvas.line(ring(0, 0, length, span), "faint", "6 3");
  if (side + west + east > 0) canvas.line(ring(-west, -side, length + east, span + side), "faint", "2 2");
}

/** Marks at the feet: first each mark somewhere, then each with either hand, then all that still have room. */
function writeLabels(canvas: Canvas, view: View, feet: readonly PlacedBoard[], upright: boolean, size: number): void {
  const done = new Set<PlacedBoard>();
  const write = (board: PlacedBoard, text: string): Point | undefined => {
    const { x, y } = onCanvas(view, board.from);
    const { heading } = board;
    const color = board.piece.member === "jack" ? "accent" : "ink";
    if (heading.x !== 0)
      return canvas.label([{ x: x - heading.x * 4, y: y + size * 0.28 }], text, {
        anchor: heading.x > 0 ? "end" : "start",
        color,
      });
    if (upright)
      return canvas.label([{ x: x + size * 0.28, y: y + heading.y * 4 }], text, {
        vertical: true,
        anchor: heading.y > 0 ? "end" : "start",
        color,
      });
    return canvas.label([{ x, y: y + (heading.y > 0 ? size + 2 : -4) }], text, { color });
  };
  for (const once of [
    ({ piece }: PlacedBoard) => piece.mark,
    (board: PlacedBoard) => labelOf(board, canvas.words),
    null,
  ]) {
    const shown = new Set(once ? [...done].map(once) : []);
    for (const board of feet) {
      if (done.has(board) || (once && shown.has(once(board)))) continue;
      if (!write(board, labelOf(board, canvas.words))) continue;
      done.add(board);
      if (once) shown.add(once(board));
    }
  }
}

/** A hip's or the ridge's mark beside it, where it touches no other member if there is such a place. */
function writeInside(canvas: Canvas, view: View, board: PlacedBoard, others: readonly PlacedBoard[]): void {
  const a = onCanvas(view, board.from);
  const b = onCanvas(view, board.to);
  const text = labelOf(board, canvas.words);
  const style = { bold: true };
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const off = { x: ((b.y - a.y) / length) * canvas.size * 1.2, y: ((a.x - b.x) / length) * canvas.size * 1.2 };
  const parts = Array.from({ length: 31 }, (_, i) => 0.5 + (i % 2 ? 1 : -1) * Math.ceil(i / 2) * 0.02);
  const places = parts.flatMap((part) =>
    [1, -1].map((side): Point => ({
      x: a.x + part * (b.x - a.x) + side * off.x,
      y: a.y + part * (b.y - a.y) + side * off.y + canvas.size * 0.3,
    })),
  );
  const stand = others.map(({ from, to }) => [onCanvas(view, from), onCanvas(view, to)] as const);
  const clear = places.filter((at) => {
    const { left, right, top, bottom } = canvas.boxOf(at, text, style);
    return !stand.some(
      ([c, d]) =>
        Math.min(c.x, d.x) < right + 1 &&
        Math.max(c.x, d.x) > left - 1 &&
        Math.min(c.y, d.y) < bottom &&
        Math.max(c.y, d.y) > top,
    );
  });
  canvas.label([...clear, ...places], text, style);
}
