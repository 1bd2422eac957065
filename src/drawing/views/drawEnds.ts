import { alongSlope } from "../../geometry/alongSlope.ts";
import type { Point } from "../../geometry/point.ts";
import type { Frame } from "../../roof/frame/frame.ts";
import { outline } from "../../roof/frame/outline.ts";
import type { Hand, Piece } from "../../roof/frame/piece.ts";
import { dimensionDepth, drawDimensions, type Dimension } from "../canvas/dimensions.ts";
import { Canvas, type DrawingOptions } from "../canvas/canvas.ts";
import { boardShape, isBearer, labelOf } from "../canvas/labelOf.ts";
import { angleText } from "../canvas/shown.ts";
import type { View } from "../canvas/view.ts";

/** Between the two ends, in pixels. */
const GAP = 14;

/** The two ends of a board, from square above its top edge and cut short between: how each is cut, and how long either face is from end to end. */
export function drawEnds(frame: Frame, piece: Piece, options: DrawingOptions): string {
  const canvas = new Canvas(options);
  const { width, words, length, size } = canvas;
  const { wings: said } = words.card;
  const { section, slope } = piece;
  const hand: Hand = piece.right > 0 ? "right" : piece.left > 0 ? "left" : "plain";
  const level = outline(frame, piece, hand).shape.plan;
  // A valley board is drawn as it lies, flat.
  const flat = piece.member === "valley board";
  const along = flat ? 1 : alongSlope(slope);
  const plan = level.map(({ x, y }): Point => ({ x: x * along, y }));
  const [left, right] = [Math.max(...plan.map(({ y }) => y)), Math.min(...plan.map(({ y }) => y))];
  const face = (y: number) => plan.filter((point) => point.y === y).map(({ x }) => x);
  const ends = plan.map(({ x }) => x);
  const [least, most] = [Math.min(...ends), Math.max(...ends)];
  const middle = (least + most) / 2;
  const [lowest, highest] = [Math.max(...ends.filter((x) => x < middle)), Math.min(...ends.filter((x) => x > middle))];
  const cut = Math.max(lowest - least, most - highest) + 1.4 * section.thickness;
  const half = (width - GAP) / 2;
  const scale = Math.min((half - 2) / cut, (canvas.brief ? 4 : 7) * (size / section.thickness));
  const shown = cut * scale;

  const dimension = (y: number, name: string): Dimension => {
    const [from, to] = [Math.min(...face(y)), Math.max(...face(y))];
    return {
      from: shown - (least + cut - from) * scale + 1,
      to: width - 1 - (most - to) * scale,
      name,
      text: length(to - from),
    };
  };
  const over = [dimension(left, flat ? said.leftEdge : said.leftFace)];
  const under = [dimension(right, flat ? said.rightEdge : said.rightFace)];
  const reach = { least: 0, most: width };
  const title = canvas.brief
    ? 0
    : canvas.lines([said.fromAbove(words[hand])], { left: 0, right: width }, 0, { color: "faint" }) + 4;
  const top = title + dimensionDepth(over, size, reach) + 4;
  const bottom = top + (left - right) * scale;
  const shape = boardShape({ piece, hand }, plan, false);
  const endView = (name: string, x: number, from: number, to: number): View => {
    const view: View = { name, scale, x, y: top + left * scale };
    canvas.boards(view, [shape], { left: from, right: to, top: top - 1, bottom: bottom + 1 });
    return view;
  };
  const foot = endView("foot end", 1 - least * scale, 0, shown);
  endView("head end", width - 1 - most * scale, width - shown, width);
  for (const x of [shown, width - shown])
    canvas.line(
      [
        { x, y: top - 4 },
        { x, y: bottom + 4 },
      ],
      "faint",
      "1 3",
    );
  // The building line, or the line over a corner.
  if (least < 0 && -least < cut && slope > 0)
    canvas.line(
      [
        { x: foot.x, y: top - 3 },
        { x: foot.x, y: bottom + 3 },
      ],
      "faint",
      "6 3",
    );
  drawDimensions(canvas, over, { way: "up", at: top - 3, object: top, ...reach });
  const rows = drawDimensions(canvas, under, { way: "down", at: bottom + 3, object: bottom, ...reach });

  // A level seat leans by the main pitch, which is not to be seen from above.
  const [low, high] = [
    piece.foot.bearer === "valley board" ? piece.foot.tilts : tilts(level, false),
    tilts(level, true),
  ].map((found) =>
    found.length === 0
      ? words.squareAcross
      : `${flat ? said.acrossFlat : words.sawTilt} ${found.map(angleText).join(" / ")}`,
  );
  const names = piece.member === "ridge" ? [said.outerEnd, said.innerEnd] : [said.footEnd, said.headEnd];
  const last = Math.max(
    canvas.lines([`${names[0]}: ${low}`], { left: 0, right: half }, rows),
    canvas.lines([`${names[1]}: ${high}`], { left: half + GAP, right: width }, rows),
  );
  const name = labelOf({ piece, hand: isBearer(piece.member) ? "plain" : hand }, words);
  return canvas.svg(
    last + 6,
    name,
    `${[...over, ...under].map((one) => `${one.name} ${one.text}`).join(", ")}. ${names[0]}: ${low}. ${names[1]}: ${high}.`,
  );
}

/** Saw tilts of the cuts that make one end of a board, each once; none where it is square. */
function tilts(plan: readonly Point[], head: boolean): number[] {
  const middle = (Math.min(...plan.map(({ x }) => x)) + Math.max(...plan.map(({ x }) => x))) / 2;
  const found = plan.flatMap((b, i) => {
    const a = plan.at(i - 1)!;
    if (a.y === b.y || a.x > middle !== head || b.x > middle !== head) return [];
    const tilt = (Math.atan(Math.abs((b.x - a.x) / (b.y - a.y))) * 180) / Math.PI;
    return tilt < 1e-6 ? [] : [tilt];
  });
  return found.filter((tilt, i) => !found.slice(0, i).some((other) => Math.abs(other - tilt) < 1e-6));
}
