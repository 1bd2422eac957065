import { hipsIn, type Frame } from "../../roof/frame/frame.ts";
import { outline } from "../../roof/frame/outline.ts";
import type { OutlineMark } from "../../roof/frame/outlineMarks.ts";
import type { Piece } from "../../roof/frame/piece.ts";
import { drawDimensions, drawReadings } from "../canvas/dimensions.ts";
import { lyingView, reach } from "./drawSide.ts";
import { Canvas, type DrawingOptions } from "../canvas/canvas.ts";
import { textWidth } from "../canvas/textWidth.ts";
import { onCanvas, type View } from "../canvas/view.ts";

/** The ridge lying, with the near side of every common marked from one end; both faces are alike. */
export function drawRidge(frame: Frame, piece: Piece, options: DrawingOptions): string {
  const canvas = new Canvas(options);
  const { width, words, size, length } = canvas;
  const { left: face } = outline(frame, piece, "plain");
  const here = ridgeMarks(frame, piece);
  const texts = here.map(({ mark, from }) => `${mark}  ${length(from)}`);
  const room = {
    left: 0,
    right: width,
    top: canvas.lines([words.ridgeMarks], { left: 0, right: width }, 0, { color: "faint" }) + 6,
  };
  const view: View = {
    ...lyingView("ridge", face.polygon, room, false),
    y: room.top + Math.max(0, ...texts.map((text) => textWidth(text, size))) + 12,
  };
  const at = (x: number, y: number) => onCanvas(view, { x, y });
  canvas.boards(view, [{ polygon: face.polygon, mark: piece.mark, hand: "plain" }]);
  for (const { from, to } of here)
    for (const x of [from, to]) canvas.line([at(x, 0), at(x, -piece.section.depth)], "accent");
  drawReadings(
    canvas,
    here.map(({ from }, i) => ({ at: at(from, 0).x, text: texts[i]! })),
    { way: "up", object: view.y, at: view.y - 8, least: 0, most: width },
  );
  const low = at(0, -piece.section.depth).y;
  const bottom = drawDimensions(
    canvas,
    [{ from: at(0, 0).x, to: at(piece.longPoint, 0).x, text: length(piece.longPoint) }],
    { way: "down", at: low + 1, object: low, ...reach(room) },
  );
  return canvas.svg(bottom + 4, `${words.ridge} ${piece.mark}`, `${length(piece.longPoint)}. ${texts.join("; ")}.`);
}

/** Where commons and hips meet the ridge, each with both edges, from an end of the board on; both faces are alike. */
export function ridgeMarks(frame: Frame, piece: Piece): Pick<OutlineMark, "mark" | "from" | "to">[] {
  const { marks } = outline(frame, piece, "plain");
  return [...marks.filter((mark) => mark.face === "left"), ...hipCheeks(frame, piece)];
}

/**
 * Where a hip's cheek lies on a face of the ridge, with hips on it: from an end of the board on, as the ridge reaches just as far as they do.
 *
 * The cheek crosses the hip's whole thickness at the plan angle f between hip and ridge.
 */
function hipCheeks(frame: Frame, { longPoint }: Piece): Pick<OutlineMark, "mark" | "from" | "to">[] {
  if (frame.spec.hipHead === "king commons") return [];
  const { near, far } = hipsIn(frame)[0]!;
  const cover = (near.face + far.face) / near.sin;
  const last = { mark: "H", from: longPoint - cover, to: longPoint };
  return [{ mark: "H", from: 0, to: cover }, ...(frame.blocks[0]!.ends[1] === null ? [] : [last])];
}
