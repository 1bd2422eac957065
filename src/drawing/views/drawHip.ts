import type { Frame } from "../../roof/frame/frame.ts";
import { outline } from "../../roof/frame/outline.ts";
import { outlineFace } from "../../roof/frame/outlineFace.ts";
import type { Hand, Piece } from "../../roof/frame/piece.ts";
import { dimensionDepth, drawDimensions, drawReadings, type Dimension } from "../canvas/dimensions.ts";
import { drawFoot } from "./drawFoot.ts";
import { drawHead } from "./drawHead.ts";
import { lyingView, reach } from "./drawSide.ts";
import { labelOf } from "../canvas/labelOf.ts";
import { Canvas, type DrawingOptions } from "../canvas/canvas.ts";
import type { Room, Shown } from "../canvas/shown.ts";
import { textWidth } from "../canvas/textWidth.ts";
import { onCanvas, type View } from "../canvas/view.ts";

/** Which parts of a hip are drawn: its faces with the jacks' marks, its cuts, or both. */
export type HipPart = "all" | "marks" | "cuts";

/** A hip, or a valley in place of it: both its side faces lying, with where each jack meets them, its foot over the corner and its head from above. */
export function drawHip(
  frame: Frame,
  pieces: readonly Piece[],
  options: DrawingOptions & { readonly part?: HipPart; readonly hand?: Hand; readonly piece?: Piece },
): string {
  const canvas = new Canvas(options);
  const { width, words, length } = canvas;
  const piece = options.piece ?? pieces.find(({ member }) => member === "hip")!;
  const { part = "all", hand = piece.plain > 0 ? "plain" : "right" } = options;
  const shown: Shown = { piece, hand, outline: outline(frame, piece, hand) };
  const room = { left: 0, right: width };
  let bottom = 0;
  if (part !== "cuts") {
    bottom = canvas.lines([words.markFrom], room, 0, { color: "faint" });
    for (const name of ["left", "right"] as const)
      bottom = drawFace(canvas, shown, name, { ...room, top: bottom + 6 }, part === "all");
  }
  if (part !== "marks") {
    if (part === "cuts" && !canvas.brief)
      bottom = drawFace(
        canvas,
        { ...shown, outline: { ...shown.outline, marks: [] } },
        hand === "left" ? "left" : "right",
        { ...room, top: 0 },
        true,
      );
    const below = (column: "start" | "end") => ({
      left: column === "start" ? 0 : width / 2 + 6,
      right: column === "start" ? width / 2 - 6 : width,
      top: bottom + 8,
    });
    // The head stands at the side to which it points.
    bottom = Math.max(
      drawFoot(canvas, shown, below(hand === "left" ? "end" : "start")),
      drawHead(canvas, shown, below(hand === "left" ? "start" : "end")),
    );
  }
  return canvas.svg(
    bottom + 2,
    `${piece.member === "hip" ? words.hip : words.card.members[piece.member]} ${labelOf(shown, words)}`,
    `${words.toHead} ${length(piece.longPoint)}. ${shown.outline.marks.map(({ mark, face, at }) => `${mark}, ${words.faces[face]}: ${length(at)}`).join("; ")}.`,
  );
}

/** One side face, its lengths under it, with the jacks that meet it: a reading to each one's center, and the plumb lines of its two sides. */
function drawFace(
  canvas: Canvas,
  { piece, hand, outline: { shape, marks, edge, ...faces } }: Shown,
  name: "left" | "right",
  room: Room,
  lengths: boolean,
): number {
  const { words, length, size } = canvas;
  const face = faces[name];
  // The head's farthest line may stand behind the face, and the foot's point before it.
  const farthest = outlineFace(shape, edge.reduce((a, b) => (b.x > a.x ? b : a)).y);
  const whole = [...farthest.polygon, ...face.polygon, ...faces.middle.polygon];
  const flip = name === "left";
  const here = marks.filter((mark) => mark.face === name);
  const texts = here.map(({ mark, at }) => `${mark}  ${length(at)}`);
  const readings = Math.max(0, ...texts.map((text) => textWidth(text, size))) + (here.length > 0 ? 12 : 4);
  const level = lyingView(name, whole, room, flip);
  const view: View = { ...level, y: room.top + canvas.lineHeight + readings };
  const x = (along: number) => onCanvas(view, { x: along, y: 0 }).x;
  canvas.lines([words.faces[name]], room, room.top - 3, { bold: true });
  canvas.boards(
    view,
    [farthest, face].map(({ polygon }) => ({ polygon, mark: piece.mark, hand })),
  );
  const top = face.points.head!.y;
  for (const { from, to } of here) {
    for (const at of [from, to])
      canvas.line(
        [
          { x: at, y: top },
          { x: at - shape.slope * (piece.section.depth + top), y: -piece.section.depth },
        ].map((point) => onCanvas(view, point)),
        "accent",
      );
  }
  drawReadings(
    canvas,
    here.map(({ at }, i) => ({ at: x(at), text: texts[i]! })),
    { way: "up", object: view.y, at: view.y - 8, least: room.left, most: room.right },
  );
  const low = onCanvas(view, { x: 0, y: -piece.section.depth }).y;
  const dimension = (from: number, to: number, name: string, value: number): Dimension => ({
    from: x(from),
    to: x(to),
    name,
    text: length(value),
  });
  if (!lengths) return low + 2;
  const under = [
    dimension(0, piece.longPoint, words.toHead, piece.longPoint),
    ...(piece.tail > 0 ? [dimension(-piece.tail, 0, words.tail, piece.tail)] : []),
    ...(name === "right"
      ? [
          dimension(
            Math.min(...whole.map((point) => point.x)),
            Math.max(...whole.map((point) => point.x)),
            words.shortestBoard,
            piece.shortestBoard,
          ),
        ]
      : []),
  ];
  drawDimensions(canvas, under, { way: "down", at: low + 1, object: low, ...reach(room) });
  return low + 1 + dimensionDepth(under, size, reach(room));
}
