import type { Point } from "../../geometry/point.ts";
import { onPlane, type Wing } from "../../roof/frame/blocks.ts";
import type { Valley } from "../../roof/frame/bearers.ts";
import { valleysIn, type Frame } from "../../roof/frame/frame.ts";
import type { Piece } from "../../roof/frame/piece.ts";
import { Canvas, type DrawingOptions } from "../canvas/canvas.ts";
import { inColumns } from "../canvas/inColumns.ts";
import type { Room } from "../canvas/shown.ts";
import { windowOn } from "../canvas/windowOn.ts";
import { roofRing } from "./roofRing.ts";

/** Least width of one part, in pixels. */
const LEAST = 260;
/** How much of the roof shows around a head, in thicknesses of a rafter; around a foot its tail and as much again. */
const AROUND = { x: 9, y: 6.5 };

interface Part {
  readonly title: string;
  readonly center: Point;
  readonly reach: Point;
}

/** A wing's valleys from above, enlarged: foot over the inner corner, the crossing, and the head on the main ridge. Without a letter, those of every wing that has any. */
export function drawValley(
  frame: Frame,
  pieces: readonly Piece[],
  letter: string | null,
  options: DrawingOptions,
): string {
  const canvas = new Canvas(options);
  const { words } = canvas;
  const letters = letter === null ? [...new Set(valleysIn(frame).map(({ wing }) => wing))] : [letter];
  const name = words.valleys.of(letters.join(", "));
  const parts = letters.flatMap((one) =>
    partsOf(canvas, frame, one).map((part) =>
      letters.length > 1 ? { ...part, title: `${words.wing(one)}. ${part.title}` } : part,
    ),
  );
  const bottom = inColumns(canvas, parts, LEAST, (part, room) => drawPart(canvas, frame, pieces, part, room));
  return canvas.svg(bottom + 4, name, `${name}: ${parts.map(({ title }) => title).join("; ")}.`);
}

function partsOf({ words: { valleys: said } }: Canvas, frame: Frame, letter: string): Part[] {
  const { thickness } = frame.spec.rafter;
  const { wing } = frame.blocks.find((block): block is Wing => block.wing?.letter === letter)!;
  const valleys = valleysIn(frame).filter((valley) => valley.wing === letter);
  const main = valleys.find(({ role }) => role === "supporting") ?? valleys[0]!;
  const head = { x: AROUND.x * thickness, y: AROUND.y * thickness };
  const tail = Math.max(main.near.plane.overhang, main.far.plane.overhang) + 5 * thickness;
  const crossing = onPlane(wing.wall, (wing.from + wing.to) / 2, wing.reach);
  return [
    { title: said.foot, center: main.foot, reach: { x: tail, y: tail } },
    { title: wing.level ? said.ridges : wing.flush ? said.broken : said.crossing, center: crossing, reach: head },
    ...(main.role === "supporting" ? [{ title: said.long, center: headOf(main), reach: head }] : []),
  ];
}

const headOf = ({ foot, heading, headRun }: Valley): Point => ({
  x: foot.x + headRun * heading.x,
  y: foot.y + headRun * heading.y,
});

function drawPart(
  canvas: Canvas,
  frame: Frame,
  pieces: readonly Piece[],
  { title, center, reach }: Part,
  room: Room,
): number {
  const top = canvas.lines([title], room, room.top, { bold: true }) + 6;
  const [least, most] = [
    { x: center.x - reach.x, y: center.y - reach.y },
    { x: center.x + reach.x, y: center.y + reach.y },
  ];
  const { opening, at, label } = windowOn(canvas, "valley", { title, frame, pieces }, { ...room, top }, [least, most]);
  const inside = ({ x, y }: Point): Point =>
    at(Math.max(least.x, Math.min(most.x, x)), Math.max(least.y, Math.min(most.y, y)));
  for (const [of, dash] of [
    ["plates", "6 3"],
    ["eaves", "2 2"],
  ] as const) {
    const ring = roofRing(frame, of);
    for (const [i, to] of ring.entries()) {
      const from = ring.at(i - 1)!;
      // Its sides run along x or y: one that is clipped to the opening stays on its line, or vanishes outside.
      const crosses =
        Math.max(from.x, to.x) > least.x &&
        Math.min(from.x, to.x) < most.x &&
        Math.max(from.y, to.y) > least.y &&
        Math.min(from.y, to.y) < most.y;
      if (i > 0 && crosses) canvas.line([inside(from), inside(to)], "faint", dash);
    }
  }
  label();
  return opening.bottom + canvas.lineHeight;
}
