import type { Point } from "../../geometry/point.ts";
import type { Hip } from "../../roof/frame/bearers.ts";
import { hipsIn, type Frame } from "../../roof/frame/frame.ts";
import type { JackRow } from "../../roof/frame/rafterLines.ts";
import { jacksAlike, type Piece } from "../../roof/frame/piece.ts";
import { inSpace, placedBoards, type PlacedBoard } from "../../roof/frame/placedBoards.ts";
import { drawReadings } from "../canvas/dimensions.ts";
import { labelBoard } from "../cards/labelBoard.ts";
import { boardShape, labelOf } from "../canvas/labelOf.ts";
import type { Box } from "../canvas/segment.ts";
import { Canvas, type DrawingOptions } from "../canvas/canvas.ts";
import { textWidth } from "../canvas/textWidth.ts";
import { onCanvas, type View } from "../canvas/view.ts";

/**
 * One corner enlarged: on the plates the marks of a tape hooked at the corner, to each jack's near edge, and on the hip those from
 * the corner's plumb line, squared across. The corner is one with the main plate on the right for someone outside, where a whole hip stands.
 */
export function drawCorner(frame: Frame, pieces: readonly Piece[], options: DrawingOptions): string {
  const canvas = new Canvas(options);
  const { size, words, width, lineHeight, length } = canvas;
  const { hip: own, main, end } = cornerOf(frame);
  const [mainOverhang, endOverhang] = [main.plane.overhang, end.plane.overhang];
  const alike = jacksAlike(pieces);
  const boards = placedBoards(frame, pieces)
    .filter(({ piece }) => piece.member !== "ridge")
    .map((board) => turned(board, own));
  const hip = boards.find(({ piece, foot }) => piece.member === "hip" && near(foot.x, 0) && near(foot.y, 0))!;
  const jacks = boards.filter(({ piece }) => piece.member === "jack");
  const onMain = jacks.filter(({ foot }) => near(foot.y, 0) && foot.x > 0 && foot.x < main.king);
  const onEnd = jacks.filter(({ foot }) => near(foot.x, 0) && foot.y > 0 && foot.y < end.king);
  const hipMarks = (face: "left" | "right") =>
    hip.outline.marks
      .filter((mark) => mark.face === face)
      .map(({ at }) => ({
        text: length(at),
        ...onCanvas(view, inSpace(hip, { x: at, y: 0 }, hip.outline[face].across)),
      }));

  const room = (texts: readonly string[]) => Math.max(0, ...texts.map((text) => textWidth(text, size))) + 13;
  const left = room(onEnd.map(({ piece }) => length(piece.foot.mark!)));
  const upFace = (face: "left" | "right") =>
    hip.outline.marks.filter((mark) => mark.face === face).map(({ at }) => length(at));
  const right = room(upFace("right"));
  const above = alike ? 0 : room(upFace("left"));
  const below = room(onMain.map(({ piece }) => length(piece.foot.mark!)));
  const air = 2 * frame.spec.rafter.thickness;
  const reach = { x: main.king + air, y: end.king + air };
  const scale = (width - left - right) / (reach.x + endOverhang + air);
  const top = (alike ? 1 : 2) * lineHeight + above + 4;
  const view: View = { name: "corner", scale, x: left + (endOverhang + air) * scale, y: top + reach.y * scale };
  const opening: Box = { left, top, right: width - right, bottom: view.y + (mainOverhang + air) * scale };
  const at = (x: number, y: number) => onCanvas(view, { x, y });

  canvas.boards(
    view,
    boards
      .filter(({ plan }) => plan.some(({ x, y }) => x < reach.x && y < reach.y))
      .map((board) => boardShape(board, board.plan, true)),
    opening,
  );
  canvas.line([at(0, reach.y), at(0, 0), at(reach.x, 0)], "faint", "6 3");
  canvas.line([at(-endOverhang, reach.y), at(-endOverhang, -mainOverhang), at(reach.x, -mainOverhang)], "faint", "2 2");

  drawReadings(
    canvas,
    onMain.map(({ piece }) => ({ at: at(piece.foot.mark!, 0).x, text: length(piece.foot.mark!) })),
    { way: "down", object: at(0, 0).y, at: opening.bottom + 6, least: left, most: opening.right },
  );
  drawReadings(
    canvas,
    onEnd.map(({ piece }) => ({ at: at(0, piece.foot.mark!).y, text: length(piece.foot.mark!) })),
    { way: "left", object: at(0, 0).x, at: left - 4, least: top, most: opening.bottom },
  );
  const upHip = hipMarks("right");
  for (const mark of upHip) canvas.line([mark, { x: opening.right, y: mark.y }], "ink", "1 3");
  drawReadings(
    canvas,
    upHip.map(({ y, text }) => ({ at: y, text })),
    { way: "right", object: opening.right, at: opening.right + 9, least: top, most: opening.bottom },
  );
  if (!alike) {
    const upEnd = hipMarks("left");
    for (const mark of upEnd) canvas.line([mark, { x: mark.x, y: top }], "ink", "1 3");
    drawReadings(
      canvas,
      upEnd.map(({ x, text }) => ({ at: x, text })),
      { way: "up", object: top, at: top - 9, least: left, most: opening.right },
    );
    canvas.text({ x: left, y: 2 * lineHeight - 3 }, words.hipMarksEnd, { anchor: "start", color: "faint" });
  }
  for (const board of [...onMain, ...onEnd]) labelBoard(canvas, view, board, { color: "accent", opening });

  const bottom = opening.bottom + below + lineHeight;
  canvas.text({ x: 0, y: lineHeight - 3 }, words.plateEnd, { anchor: "start", color: "faint" });
  canvas.text({ x: width, y: lineHeight - 3 }, words.hipMarks, { anchor: "end", color: "faint" });
  canvas.text({ x: left, y: bottom }, words.plateMain, { anchor: "start", color: "faint" });
  return canvas.svg(
    bottom + 6,
    words.corner,
    `${words.corner}. ${[...onMain, ...onEnd].map((board) => `${labelOf(board, words)}: ${words.plate} ${length(board.piece.foot.mark!)}, ${words.hipMarks} ${length(board.piece.head.mark!)}`).join("; ")}.`,
  );
}

/** Of a length: what the last bits of a double are. */
const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;

/** A hip that stands whole over a corner, with the main plate on its right if there is one, and the jacks on its two sides. */
function cornerOf(frame: Frame): { readonly hip: Hip; readonly main: JackRow; readonly end: JackRow } {
  const hips = hipsIn(frame).filter(({ start }) => start === 0);
  const hip = hips.find(({ hand }) => hand === "right") ?? hips[0] ?? hipsIn(frame)[0]!;
  const rows = frame.rows.filter((row) => row.hip === hip);
  return {
    hip,
    main: rows.find(({ plane }) => plane === hip.near.plane)!,
    end: rows.find(({ plane }) => plane === hip.far.plane)!,
  };
}

/** A board in the plan of a corner: x runs from it along the main plate, y along the end plate. */
function turned(board: PlacedBoard, { foot, near, far, hand }: Hip): PlacedBoard {
  const way = hand === "right" ? 1 : -1;
  const [along, up] = [near.plane.right, far.plane.right];
  const direction = ({ x, y }: Point): Point => ({
    x: way * (x * along.x + y * along.y),
    y: -way * (x * up.x + y * up.y),
  });
  const at = ({ x, y }: Point): Point => direction({ x: x - foot.x, y: y - foot.y });
  return {
    ...board,
    foot: at(board.foot),
    heading: direction(board.heading),
    from: at(board.from),
    to: at(board.to),
    plan: board.plan.map(at),
  };
}
