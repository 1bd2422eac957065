import type { Point } from "../../geometry/point.ts";
import { onPlane, planeOver, type Wing } from "../../roof/frame/blocks.ts";
import type { Frame } from "../../roof/frame/frame.ts";
import type { Member } from "../../roof/frame/piece.ts";
import type { PlacedBoard } from "../../roof/frame/placedBoards.ts";
import type { Canvas, TextStyle } from "../canvas/canvas.ts";
import { isBearer } from "../canvas/labelOf.ts";
import { BOLD, textWidth } from "../canvas/textWidth.ts";
import { onCanvas, type View } from "../canvas/view.ts";

/** What of a roof is in hand: a row of its block, a wing's if it has a letter, and its value in words. */
export interface InHand {
  readonly row: string;
  readonly wing?: string;
  readonly text: string;
}

/** Where a row of the block is seen in a plan. */
interface Seen {
  /** A length from place to place. */
  readonly from?: Point;
  readonly to?: Point;
  /** It is one of the plan's own overall lengths. */
  readonly overall?: "span" | "length";
  readonly member?: (member: Member) => boolean;
}

const MEMBERS: Readonly<Record<string, (member: Member) => boolean>> = {
  Rafter: (member) => !isBearer(member),
  Hip: (member) => member === "hip" || member === "broken hip",
  "Hip top": (member) => member === "hip" || member === "broken hip",
  "Hip head": (member) => member === "hip" || member === "broken hip",
  Ridge: (member) => member === "ridge",
  Valley: (member) => member === "valley" || member === "valley board",
};

/** Where the row in hand is seen; null where a plan does not show it. */
export function seenInPlan(frame: Frame, boards: readonly PlacedBoard[], { row, wing }: InHand): Seen | null {
  if (wing !== undefined) return inWing(frame, row, wing);
  if (row === "Span") return { overall: "span" };
  if (row === "Length") return { overall: "length" };
  const member = MEMBERS[row];
  if (member) return { member };
  const front = planeOver(frame.blocks[0]!, "front");
  const end = frame.blocks[0]!.ends[0]!;
  // Between two rafters near the middle, where nothing else is written.
  const [first, next] = middleBay(boards, front.corner.y);
  const bay = (first + next) / 2;
  switch (row) {
    case "Spacing":
      return { from: { x: first, y: front.run / 2 }, to: { x: next, y: front.run / 2 } };
    case "Overhang":
      return front.overhang > 0 ? { from: { x: bay, y: 0 }, to: { x: bay, y: -front.overhang } } : null;
    case "Pitch":
      return { from: { x: bay, y: 0 }, to: { x: bay, y: front.run } };
    case "End overhang":
      return end.overhang > 0 ? alongEnd(-end.overhang, 0) : null;
    case "End pitch":
      return alongEnd(0, end.run);
    default:
      return null;
  }

  function alongEnd(from: number, to: number): Seen {
    const along = end.width / 2 + frame.spec.spacing / 2;
    return { from: onPlane(end, along, from), to: onPlane(end, along, to) };
  }
}

function inWing({ blocks }: Frame, row: string, letter: string): Seen | null {
  const found = blocks.find((block): block is Wing => block.wing?.letter === letter);
  if (!found) return null;
  const { wall, from, to, spec } = found.wing;
  const at = (along: number, up: number) => onPlane(wall, along, up);
  switch (row) {
    case "Wall":
      return { from: at(0, 0), to: at(wall.width, 0) };
    case "From left corner":
      return from > 0 ? { from: at(0, 0), to: at(from, 0) } : null;
    case "Out from wall":
      return { from: at(from, 0), to: at(from, -spec.out) };
    case "Span":
    case "Ends":
      return { from: at(from, -spec.out), to: at(to, -spec.out) };
    default:
      return null;
  }
}

/** Two neighbors on a plate line, the nearest to their middle. */
function middleBay(boards: readonly PlacedBoard[], plate: number): [number, number] {
  const feet = boards
    .filter(({ foot, piece, heading }) => foot.y === plate && heading.x === 0 && !isBearer(piece.member))
    .map(({ foot }) => foot.x)
    .sort((a, b) => a - b);
  const half = Math.max(1, Math.floor(feet.length / 2));
  return [feet[half - 1] ?? 0, feet[half] ?? 0];
}

/** Draws a length in hand with ticks at its ends, and what it is beside its middle. */
export function drawLit(canvas: Canvas, view: View, { from, to }: Seen, text: string): void {
  if (!from || !to) return;
  const [a, b] = [onCanvas(view, from), onCanvas(view, to)];
  canvas.line([a, b], "lit");
  for (const { x, y } of [a, b])
    canvas.line(
      [
        { x: x - 3.5, y: y + 3.5 },
        { x: x + 3.5, y: y - 3.5 },
      ],
      "lit",
    );
  const [x, y] = [(a.x + b.x) / 2, (a.y + b.y) / 2];
  const { size } = canvas;
  const style = { color: "lit", bold: true } as const;
  const upright = Math.abs(a.x - b.x) < Math.abs(a.y - b.y);
  // Along its line where that is long enough, as dimensions are written.
  const vertical = upright && Math.abs(a.y - b.y) > textWidth(text, size * BOLD) + 12;
  const places: readonly (readonly [Point, TextStyle])[] = vertical
    ? [-4, size + 2].map((aside) => [
        { x: x + aside, y },
        { ...style, vertical },
      ])
    : upright
      ? [
          [
            { x: x + 6, y: y + size * 0.3 },
            { ...style, anchor: "start" },
          ],
          [
            { x: x - 6, y: y + size * 0.3 },
            { ...style, anchor: "end" },
          ],
        ]
      : [-6, size + 5].map((down) => [{ x, y: y + down }, style]);
  const [at, how] = places.find(([place, one]) => canvas.isFree(place, text, one)) ?? places[0]!;
  canvas.text(at, text, how);
}
