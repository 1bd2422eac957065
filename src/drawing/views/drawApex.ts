import type { Block } from "../../roof/frame/blocks.ts";
import { ridgeIn } from "../../roof/frame/frame.ts";
import { endReach } from "../../roof/members/plumbEnd.ts";
import { drawDimensions } from "../canvas/dimensions.ts";
import { inColumns } from "../canvas/inColumns.ts";
import type { RoofCase } from "./roofCase.ts";
import { Canvas, type DrawingOptions } from "../canvas/canvas.ts";
import type { Room } from "../canvas/shown.ts";
import { windowOn } from "../canvas/windowOn.ts";

/** Least width of one apex, in pixels. */
const LEAST = 260;
/** How much of the roof shows around the apex, in thicknesses of a rafter. */
const AROUND = { x: 9, y: 5.5 };

/** What meets at the top, each roof enlarged and from above: the apex of a hipped end, or of a gable the top of its last pair. */
export function drawApex(
  cases: readonly (RoofCase & { readonly end: "hip" | "gable" })[],
  options: DrawingOptions,
): string {
  const canvas = new Canvas(options);
  const { words } = canvas;
  const bottom = inColumns(canvas, cases, LEAST, (one, room) => drawOne(canvas, one, room));
  return canvas.svg(bottom + 4, words.apex, `${words.apex}: ${cases.map(({ title }) => title).join("; ")}.`);
}

function drawOne(canvas: Canvas, one: RoofCase & { readonly end: "hip" | "gable" }, room: Room): number {
  const { words, length, size, lineHeight } = canvas;
  const { spec, blocks } = one.frame;
  const [{ sides, ends, corner, along, length: whole }] = blocks as readonly [Block];
  const ridge = ridgeIn(one.frame);
  const past = ridge ? endReach(ridge.tail, 0) : spec.rafter.thickness / 2;
  const face = ridge?.near.face ?? 0;
  const apex = { x: corner.x + (one.end === "gable" ? whole : ends[0]!.run) * along.x, y: sides[0].run };
  const { thickness } = spec.rafter;
  const top = canvas.lines([one.title], room, room.top, { bold: true }) + 6;
  const side = size * 1.6;
  const { opening, at, label } = windowOn(canvas, "apex", one, { ...room, left: room.left + side, top }, [
    { x: apex.x - AROUND.x * thickness, y: apex.y - AROUND.y * thickness },
    { x: apex.x + AROUND.x * thickness, y: apex.y + AROUND.y * thickness },
  ]);
  const middle = at(apex.x, apex.y);
  canvas.line(
    [
      { x: opening.left, y: middle.y },
      { x: opening.right, y: middle.y },
    ],
    "faint",
    "8 3 2 3",
  );
  canvas.line(
    [
      { x: middle.x, y: opening.top },
      { x: middle.x, y: opening.bottom },
    ],
    "faint",
    "8 3 2 3",
  );
  label();
  if (face > 0) {
    const low = at(apex.x, apex.y - face).y;
    drawDimensions(canvas, [{ from: low, to: middle.y, text: length(face) }], {
      way: "left",
      at: opening.left,
      object: opening.left,
      least: opening.top,
      most: opening.bottom,
    });
  }
  if (one.end === "gable" || past === 0 || (ridge && face === 0)) return opening.bottom + lineHeight;
  return drawDimensions(
    canvas,
    [
      {
        from: at(apex.x - past, 0).x,
        to: middle.x,
        name: ridge ? words.ridgePast : words.endKingShort,
        text: length(past),
      },
    ],
    { way: "down", at: opening.bottom, object: opening.bottom, least: opening.left, most: opening.right },
  );
}
