import type { Point } from "../../geometry/point.ts";
import type { Frame } from "../../roof/frame/frame.ts";
import type { Piece } from "../../roof/frame/piece.ts";
import { placedBoards, type PlacedBoard } from "../../roof/frame/placedBoards.ts";
import { dimensionDepth, drawDimensions } from "../canvas/dimensions.ts";
import { boardShape, colorOf, isBearer, labelOf } from "../canvas/labelOf.ts";
import { boxAround, type Box } from "../canvas/segment.ts";
import { labelBoard } from "../cards/labelBoard.ts";
import { drawLit, seenInPlan, type InHand } from "./litInPlan.ts";
import { planChains } from "./planChains.ts";
import { roofRing } from "./roofRing.ts";
import { Canvas, type DrawingOptions } from "../canvas/canvas.ts";
import { textWidth } from "../canvas/textWidth.ts";
import { onCanvas, type View } from "../canvas/view.ts";

/** Thinner than this in pixels, a filled board does not differ from a hollow one, and only the letters tell the hands. */
const TELLS = 2.5;

/** In small room no longer mark than this is written: it would take the roof's own room. */
const SHORT = 3;

export interface PlanOptions extends DrawingOptions {
  /** Pieces that need care, by their mark, and at which end: each has a sign there, once for either hand. */
  readonly cautions?: ReadonlyMap<string, "head" | "foot">;
  /** The row of the roof block that is typed into: its length or its members are lit. */
  readonly inHand?: InHand | null;
}

/** The whole framing plan, front at the bottom: every member to scale with its mark and hand, bays, wings and overall sizes. */
export function drawPlan(frame: Frame, pieces: readonly Piece[], options: PlanOptions): string {
  const canvas = new Canvas(options);
  const { size, words, width } = canvas;
  const boards = placedBoards(frame, pieces);
  const { length, span, ends } = frame.spec;
  const eavesRing = roofRing(frame, "eaves");
  const { left: least, right: most, top: low, bottom: high } = boxAround(eavesRing);
  const rafters = boards.filter(({ piece }) => !isBearer(piece.member));
  // In small room a mark stands without the letter of its hand, outside of the roof only, and of all sizes there are the overall ones.
  const named = (board: PlacedBoard) => (canvas.brief ? board.piece.mark : labelOf(board, words));
  const outside = rafters.filter((board) => isOutside(board) && !(canvas.brief && named(board).length > SHORT));
  const longest = Math.max(...outside.map((board) => textWidth(named(board), size)));
  const { inHand } = options;
  const seen = inHand ? seenInPlan(frame, boards, inHand) : null;

  const [before, right] = [ends !== "gable and hip", ends !== "hip and gable"].map((hip) =>
    hip ? longest + 8 : 8,
  ) as [number, number];
  // The room that dimensions take depends on the scale, and the scale on that room: rounds follow until what is drawn has the room it takes.
  let plan = laidOut(0);
  while (plan.needs > plan.given) plan = laidOut(plan.needs);
  const { view, left, top, marked, upright, under, over, end, beside } = plan;

  function laidOut(given: number) {
    const left = before + given;
    const scale = (width - left - right) / (most - least);
    const chains = planChains(canvas, canvas.brief ? [] : boards, frame, scale, seen?.overall);
    const upright = Math.min(...spacings(rafters, span)) * scale < longest + 3;
    const depth = upright ? longest + 6 : canvas.lineHeight + 2;
    const x = left - least * scale;
    const over = chains.over.map((one) => ({ ...one, from: one.from + x, to: one.to + x }));
    const top = over.length === 0 ? 0 : dimensionDepth(over, size, { least: 0, most: width });
    const view: View = { name: "plan", scale, x, y: top + depth + high * scale };
    const eaves = view.y - low * scale;
    // No lower than the marks at the feet: under them are the rows of the main plate.
    const beside = { least: 0, most: eaves + depth };
    // In small room the row stands as near as the marks let it: none is under a wing.
    const feet = outside.filter(({ heading }) => heading.y > 0).map(({ from }) => onCanvas(view, from).y + depth);
    const marked = canvas.brief ? Math.max(eaves + 4, ...feet) : eaves + depth;
    const end = chains.beside.map((one) => ({ ...one, from: view.y - one.from, to: view.y - one.to }));
    const under = chains.under.map((one) => ({ ...one, from: one.from + x, to: one.to + x }));
    return {
      given,
      needs: dimensionDepth(end, size, beside),
      view,
      left,
      top,
      depth,
      marked,
      upright,
      under,
      over,
      end,
      beside,
    };
  }

  canvas.boards(
    view,
    boards.map((board) => {
      const shape = boardShape(board, board.plan, board.piece.section.thickness * view.scale >= TELLS);
      if (!seen?.member?.(board.piece.member)) return shape;
      return { ...shape, color: "lit", fill: shape.fill === "wood" ? "wood" : "lit" };
    }),
  );
  const ring = (points: readonly Point[]) => points.map((point) => onCanvas(view, point));
  canvas.line(ring(roofRing(frame, "plates")), "faint", "6 3");
  if (most > length || least < 0 || high > span || low < 0) canvas.line(ring(eavesRing), "faint", "2 2");
  signCautions(canvas, view, boards, options.cautions ?? new Map());
  const missing = writeLabels(canvas, view, canvas.brief ? outside : rafters, upright, named);
  if (frame.blocks.length > 1 && !canvas.brief) writeRest(canvas, view, missing);
  const stand = rafters.map(({ from, to }) => boxAround([onCanvas(view, from), onCanvas(view, to)]));
  for (const board of boards) if (isBearer(board.piece.member)) writeInside(canvas, view, board, stand);

  if (seen && inHand) drawLit(canvas, view, seen, inHand.text);
  // Extension lines begin beyond the marks, so that none is struck through.
  const wide = { least: 0, most: width };
  let bottom = drawDimensions(canvas, under, { way: "down", at: marked, object: marked - 4, ...wide });
  drawDimensions(canvas, over, { way: "up", at: top, object: top + 4, ...wide });
  drawDimensions(canvas, end, { way: "left", at: left - before, object: left - before, ...beside });
  const tells = frame.spec.rafter.thickness * view.scale >= TELLS;
  if (!canvas.brief)
    bottom = canvas.lines(
      [`${tells ? words.handKey : words.handLetters} ${words.handSeen}`],
      { left: 0, right: width },
      bottom,
      { color: "faint" },
    );
  const wings = frame.spec.wings.map(
    (wing) => ` ${words.wing(wing.letter)}: ${options.length(wing.span)} × ${options.length(wing.out)}.`,
  );
  return canvas.svg(
    bottom + 6,
    words.plan,
    `${words.plan}: ${options.length(span)} × ${options.length(length)}.${wings.join("")} ${pieces.map(({ mark, left: l, right: r, plain }) => `${mark} ×${l + r + plain}`).join(", ")}.`,
  );
}

/** Its foot is at an eave, where its mark has room outside of the roof. */
const isOutside = ({ piece }: PlacedBoard): boolean => piece.foot.bearer === null || piece.over;

/** Half the width of a caution's sign, and how far from the end of its board it stands, in pixels. */
const SIGN = 6;

/** A triangle with a stroke, on the board. */
function signCautions(
  canvas: Canvas,
  view: View,
  boards: readonly PlacedBoard[],
  cautions: NonNullable<PlanOptions["cautions"]>,
): void {
  const signed = new Set<string>();
  const signs: Point[] = [];
  const half = canvas.brief ? SIGN * 0.7 : SIGN;
  for (const { piece, hand, from, to } of boards) {
    const end = cautions.get(piece.mark);
    if (end === undefined || signed.has(`${piece.mark} ${hand}`)) continue;
    signed.add(`${piece.mark} ${hand}`);
    const [a, b] = [onCanvas(view, end === "head" ? to : from), onCanvas(view, end === "head" ? from : to)];
    const length = Math.max(1, Math.hypot(b.x - a.x, b.y - a.y));
    const inward = Math.min(length / 2, 2 * half);
    const at = { x: a.x + ((b.x - a.x) / length) * inward, y: a.y + ((b.y - a.y) / length) * inward };
    // Signs that would stand on one another are one.
    if (signs.some(({ x, y }) => Math.hypot(x - at.x, y - at.y) < 2.4 * half)) continue;
    signs.push(at);
    canvas.shape(
      [
        { x: at.x, y: at.y - half },
        { x: at.x + half, y: at.y + half * 0.8 },
        { x: at.x - half, y: at.y + half * 0.8 },
      ],
      "caution",
    );
    canvas.line(
      [
        { x: at.x, y: at.y - half * 0.4 },
        { x: at.x, y: at.y + half * 0.5 },
      ],
      "paper",
    );
  }
}

/** Distances between neighbors on the two long plate lines. */
function spacings(rafters: readonly PlacedBoard[], span: number): number[] {
  return [0, span].flatMap((plate) => {
    const on = rafters
      .filter(({ foot }) => foot.y === plate)
      .map(({ foot }) => foot.x)
      .sort((a, b) => a - b);
    return on.slice(1).map((x, i) => x - on[i]!);
  });
}

/** Marks at the feet of those that stand at an eave, along those that stand on a valley. Gives those whose mark is nowhere. First each mark somewhere, then each with either hand, then all that still have room. */
function writeLabels(
  canvas: Canvas,
  view: View,
  rafters: readonly PlacedBoard[],
  upright: boolean,
  named: (board: PlacedBoard) => string,
): PlacedBoard[] {
  const { size } = canvas;
  const done = new Set<PlacedBoard>();
  const write = (board: PlacedBoard, text: string): Point | boolean | undefined => {
    const { x, y } = onCanvas(view, board.from);
    const { heading } = board;
    const color = colorOf(board);
    if (!isOutside(board)) return labelBoard(canvas, view, board, { color });
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
  for (const once of [({ piece }: PlacedBoard) => piece.mark, named, null]) {
    const shown = new Set(once ? [...done].map(once) : []);
    for (const board of rafters) {
      if (done.has(board) || (once && shown.has(once(board)))) continue;
      if (!write(board, named(board))) continue;
      done.add(board);
      if (once) shown.add(once(board));
    }
  }
  const shown = new Set([...done].map(({ piece }) => piece.mark));
  return rafters.filter(({ piece }) => !shown.has(piece.mark));
}

/** Marks that have no room at any of their feet: along a board, or beside it. */
function writeRest(canvas: Canvas, view: View, missing: readonly PlacedBoard[]): void {
  const shown = new Set<string>();
  for (const board of missing) {
    const { mark } = board.piece;
    if (shown.has(mark)) continue;
    if (labelBoard(canvas, view, board, { color: colorOf(board), onEdges: true }) || writeAside(canvas, view, board))
      shown.add(mark);
  }
}

/** Directions and distances in pixels at which the mark of a short board is tried, at the end of a leader. */
const ASIDE = [16, 24, 32, 44, 56].flatMap((away) =>
  Array.from({ length: 16 }, (_, i) => ({
    x: away * Math.cos((i * Math.PI) / 8),
    y: away * Math.sin((i * Math.PI) / 8),
  })),
);

/** A mark beside its board, with a leader to the board's middle: whether it had room. */
function writeAside(canvas: Canvas, view: View, board: PlacedBoard): boolean {
  const [a, b] = [onCanvas(view, board.from), onCanvas(view, board.to)];
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  const places = ASIDE.map(({ x, y }) => ({ x: middle.x + x, y: middle.y + y + canvas.size * 0.3 }));
  const style = { color: colorOf(board) };
  const text = labelOf(board, canvas.words);
  const at = canvas.label(places, text, style);
  if (!at) return false;
  const { left, right, top, bottom } = canvas.boxOf(at, text, style);
  const near = (value: number, low: number, high: number) => Math.max(low, Math.min(high, value));
  canvas.line([middle, { x: near(middle.x, left, right), y: near(middle.y, top, bottom) }], "accent");
  return true;
}

/** A hip's or the ridge's mark beside it, where it touches no other member if there is such a place. */
function writeInside(canvas: Canvas, view: View, board: PlacedBoard, others: readonly Box[]): void {
  const a = onCanvas(view, board.from);
  const b = onCanvas(view, board.to);
  const text = canvas.brief ? board.piece.mark : labelOf(board, canvas.words);
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
  const { left, right, top, bottom } = canvas.boxOf({ x: 0, y: 0 }, text, style);
  const isClear = ({ x, y }: Point) =>
    !others.some(
      (one) => one.left < x + right + 1 && one.right > x + left - 1 && one.top < y + bottom && one.bottom > y + top,
    );
  // Most stand at the first place that is tried.
  function* tried(): Generator<Point> {
    for (const at of places) if (isClear(at)) yield at;
    // In small room what would stand on others is named where it is pointed at.
    if (!canvas.brief) yield* places;
  }
  canvas.label(tried(), text, style);
}
