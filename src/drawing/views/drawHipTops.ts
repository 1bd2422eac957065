import type { Point } from "../../geometry/point.ts";
import { hipsIn } from "../../roof/frame/frame.ts";
import { inColumns } from "../canvas/inColumns.ts";
import type { RoofCase } from "./roofCase.ts";
import { Canvas, type DrawingOptions } from "../canvas/canvas.ts";
import { angleText, type Room } from "../canvas/shown.ts";
import { onCanvas, type View } from "../canvas/view.ts";

/** Least width of one section, in pixels. */
const LEAST = 260;
/** How much of each plane shows, and of the hip under its top, in thicknesses of the hip. */
const AROUND = { x: 2.6, below: 2 };

/** The top of the hip against the two planes, roof beside roof: the plumb section across it, looking up it, so the end side's plane is on the left. */
export function drawHipTops(cases: readonly RoofCase[], options: DrawingOptions): string {
  const canvas = new Canvas(options);
  const bottom = inColumns(canvas, cases, LEAST, (one, room) => drawOne(canvas, one, room));
  return canvas.svg(
    bottom + 4,
    canvas.words.hipTops,
    `${canvas.words.hipTops}: ${cases.map((one) => `${one.title}, ${factsOf(canvas, one).join(", ")}`).join("; ")}.`,
  );
}

function drawOne(canvas: Canvas, one: RoofCase, room: Room): number {
  const { words } = canvas;
  const { spec } = one.frame;
  const hip = hipsIn(one.frame)[0]!;
  const { near, far, slope } = hip;
  const reach = AROUND.x * spec.hip.thickness;
  // Across the meeting line, each plane falls by the hip's slope over the tangent of its plan angle.
  const fall = { main: slope / near.tan, end: slope / far.tan };
  const low = -Math.max(hip.drop + AROUND.below * spec.hip.thickness, reach * Math.max(fall.main, fall.end));
  const top = canvas.lines([one.title], room, room.top, { bold: true }) + 8;
  const scale = (room.right - room.left) / (2 * reach);
  const view: View = { name: "hip top", scale, x: (room.left + room.right) / 2, y: top };
  const polygon: Point[] = [
    { x: -far.face, y: low },
    { x: near.face, y: low },
    ...(hip.backing
      ? [
          { x: near.face, y: -near.fall },
          { x: 0, y: 0 },
          { x: -far.face, y: -far.fall },
        ]
      : [
          { x: near.face, y: -hip.drop },
          { x: -far.face, y: -hip.drop },
        ]),
  ];
  canvas.boards(view, [{ polygon, mark: "H", hand: "plain" }]);
  const at = (x: number, y: number) => onCanvas(view, { x, y });
  canvas.line([at(-reach, -reach * fall.end), at(0, 0), at(reach, -reach * fall.main)], "accent");
  canvas.line([at(0, 0), at(0, low)], "faint", "8 3 2 3");
  const beside = (side: -1 | 1) => ({ x: at(side * 0.62 * reach, 0).x, y: at(0, low).y - 4 });
  canvas.text(beside(-1), words.endSide, { color: "faint" });
  canvas.text(beside(1), words.mainSide, { color: "faint" });
  return canvas.lines(factsOf(canvas, one), room, at(0, low).y + 2) + 2;
}

function factsOf({ words, length }: Canvas, { frame }: RoofCase): string[] {
  const hip = hipsIn(frame)[0]!;
  const { near, far } = hip;
  if (hip.backing) return [words.backed(angleText(hip.backing[0]), angleText(hip.backing[1]))];
  const proud = Math.max(near.proud, far.proud);
  return [
    words.dropped(length(hip.drop)),
    ...(frame.spec.hipTop === "shifted" ? [words.shifted(length(near.face), length(far.face))] : []),
    // What no tape shows is none.
    ...(/[1-9]/.test(length(proud))
      ? [words.proud(length(proud), near.proud > far.proud ? words.mainSide : words.endSide)]
      : []),
  ];
}
