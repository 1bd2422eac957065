import type { PlacedBoard } from "../../roof/frame/placedBoards.ts";
import { boxAround } from "../canvas/segment.ts";
import { Canvas, type DrawingOptions } from "../canvas/canvas.ts";
import type { View } from "../canvas/view.ts";

/** Height over width, at the most. */
const TALLEST = 0.62;

/** The whole roof from above, very small, with the boards that are meant in black. */
export function drawKeyPlan(
  boards: readonly PlacedBoard[],
  marks: ReadonlySet<string>,
  { width, ...options }: DrawingOptions,
): string {
  const canvas = new Canvas({ width, ...options });
  const { left, right, top, bottom } = boxAround(boards.flatMap(({ plan }) => plan));
  const scale = Math.min((width - 2) / (right - left), (width * TALLEST - 2) / (bottom - top));
  const height = (bottom - top) * scale + 2;
  const draw = (own: boolean, weight: number, color: "ink" | "faint") => {
    const view: View = { name: "key", scale, x: width - 1 - right * scale, y: 1 + bottom * scale, weight };
    canvas.boards(
      view,
      boards
        .filter(({ piece }) => marks.has(piece.mark) === own)
        .map(({ piece: { mark }, hand, plan }) => ({ polygon: plan, mark, hand, color, fill: own ? "ink" : "none" })),
    );
  };
  draw(false, 0.4, "faint");
  draw(true, 2, "ink");
  return canvas.svg(height, canvas.words.card.keyPlan, [...marks].join(", "));
}
