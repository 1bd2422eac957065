import type { Point } from "../../geometry/point.ts";
import { dimensionDepth, drawDimensions, type Dimension } from "../canvas/dimensions.ts";
import { reach } from "./drawSide.ts";
import type { BoardShape, Canvas } from "../canvas/canvas.ts";
import { angleText, isFlipped, type Room, type Shown } from "../canvas/shown.ts";
import { onCanvas, type View } from "../canvas/view.ts";

/**
 * The head from square above its top edge: the line that the cut leaves across it, long and short point, angles.
 *
 * The side face that {@link drawSide} shows lies towards the reader. Gives where the view ends.
 */
export function drawHead(canvas: Canvas, shown: Shown, room: Room): number {
  const { piece, hand, outline } = shown;
  const { words, length, size, lineHeight } = canvas;
  const flip = isFlipped(shown);
  const { left: leftFace, right: rightFace, edge } = outline;
  const farthest = Math.max(...edge.map(({ x }) => x));
  const nearest = Math.min(leftFace.points.head!.x, rightFace.points.head!.x);
  const from = nearest - piece.section.thickness * 1.5;
  // Past the head there is room for the flag and its letters.
  const flagRoom = 9 + 2.2 * size;
  const scale = Math.min(
    (room.right - room.left - flagRoom) / (farthest - from),
    (canvas.brief ? 3 * size : Math.max(6 * size, 0.2 * (room.right - room.left))) / piece.section.thickness,
  );
  const middle = flip ? room.left + flagRoom + farthest * scale : room.right - flagRoom - farthest * scale;
  const along = (a: number, b: number): Dimension => ({
    from: middle + (flip ? -a : a) * scale,
    to: middle + (flip ? -b : b) * scale,
    text: length(b - a),
  });
  const short = [leftFace, rightFace].map(({ points }) => farthest - points.head!.x).filter((step) => step * scale > 1);
  // Faces that are alike differ by what a double loses.
  const steps = short.filter((step, i) => i === 0 || Math.abs(step - short[0]!) * scale > 0.01);
  // A small drawing has no room for a dimension over the head of a jack.
  const inWords = canvas.brief && piece.head.tilts.length === 1;
  const dimensions = inWords ? [] : steps.map((step) => along(farthest - step, farthest));
  const top = room.top + (canvas.brief ? 0 : lineHeight) + dimensionDepth(dimensions, size, reach(room)) + 4;
  // Turned about its line for the hand that is seen from the other side: the face shown stays towards the reader.
  const turned = (point: Point): Point => ({ x: point.x, y: flip ? -point.y : point.y });
  const upper = Math.max(...edge.map((point) => turned(point).y));
  const lower = Math.min(...edge.map((point) => turned(point).y));
  const view: View = { name: "head", scale, flip, x: middle, y: top + upper * scale };
  const at = (point: Point) => onCanvas(view, turned(point));
  const bottom = view.y - lower * scale;
  const ends = along(from, farthest);
  const shape: BoardShape = { polygon: edge.map(turned), mark: piece.mark, hand };

  if (!canvas.brief) canvas.text({ x: room.left, y: room.top + size }, words.head, { anchor: "start", color: "faint" });
  canvas.boards(view, [shape], {
    left: Math.min(ends.from, ends.to),
    right: Math.max(ends.from, ends.to) + 1,
    top: top - 1,
    bottom: bottom + 1,
  });
  drawDimensions(canvas, dimensions, { way: "up", at: top - 2, object: top, ...reach(room) });
  const points = edge.filter(({ x }) => x >= nearest - 1e-9 * Math.abs(nearest)).map(at);
  canvas.line(points, "accent");
  let line = bottom + 2;
  if (piece.head.tilts.length === 1 && piece.head.edge !== null) {
    const [long, other] = [outline.longFace, outline.longFace === "left" ? "right" : "left"].map(
      (name) => outline[name as "left" | "right"],
    );
    const longPoint = at({ x: long!.points.head!.x, y: long!.across });
    const shortPoint = at({ x: other!.points.head!.x, y: other!.across });
    const out = flip ? -1 : 1;
    const anchor = flip ? "end" : "start";
    canvas.shape(
      [longPoint, { x: longPoint.x + out * 7, y: longPoint.y - 4 }, { x: longPoint.x + out * 7, y: longPoint.y + 4 }],
      "accent",
    );
    canvas.text({ x: longPoint.x + out * 9, y: longPoint.y + size * 0.35 }, words.longPointShort, {
      anchor,
      bold: true,
      color: "accent",
    });
    // Inside the corner, on the wood.
    canvas.text({ x: shortPoint.x - out * 4, y: shortPoint.y + size + 1 }, words.shortPointShort, {
      anchor: flip ? "start" : "end",
    });
    if (!canvas.brief) line = canvas.lines([words.longPointFace[hand]], room, line, { bold: true });
  }
  if (inWords)
    line = canvas.lines(
      steps.map((step) => words.shortBack(length(step))),
      room,
      line,
    );
  // A card says the angles in its steps.
  if (canvas.brief && piece.head.tilts.length > 0) return line + 4;
  const tilts =
    piece.head.tilts.length === 2 && piece.head.tilts[0] !== piece.head.tilts[1]
      ? `${angleText(piece.head.tilts[0]!)} ${words.mainSide}, ${angleText(piece.head.tilts[1]!)} ${words.endSide}`
      : piece.head.tilts.map(angleText).join(" / ");
  const facts =
    piece.head.tilts.length === 0
      ? [words.squareAcross]
      : [
          `${words.sawTilt} ${tilts}`,
          ...(piece.head.edge === null ? [] : [`${words.edgeAngle} ${angleText(piece.head.edge)}`]),
        ];
  return canvas.lines(facts, room, line) + 4;
}
