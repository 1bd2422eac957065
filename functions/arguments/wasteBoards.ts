import type { PlannedBoard } from "../../src/cutting/stock.ts";
import type { CutOrder } from "./cutOrder.ts";

/** Boards to be bought over and above the plan, for waste. */
export interface WasteBoards extends Pick<PlannedBoard, "size" | "length" | "price"> {
  readonly count: number;
  /** How many more the percent asks than there are. */
  readonly short: number;
}

/**
 * A roof's Waste percent as whole boards: of every size that part of the length ordered, in boards of the longest length ordered, of which any piece of the
 * size can be cut again.
 */
export function wasteBoards({ plan, boards, waste }: CutOrder): WasteBoards[] {
  if (waste === 0) return [];
  return plan.sizes.map(({ size }): WasteBoards => {
    const own = plan.boards.filter((board) => board.size === size);
    const longest = own.reduce((a, b) => (b.length > a.length ? b : a));
    const ordered = own.reduce((sum, { length, repeat }) => sum + length * repeat, 0);
    const wanted = Math.ceil((ordered * waste) / 100 / longest.length - 1e-9);
    const had = boards.filter(
      (board) =>
        board.size === size && board.length === longest.length && (board.price ?? board.length) === longest.price,
    );
    const used = own
      .filter(({ length, price }) => length === longest.length && price === longest.price)
      .reduce((sum, { repeat }) => sum + repeat, 0);
    const left = had.reduce((sum, { count }) => sum + (count ?? Infinity), 0) - used;
    const count = Math.max(0, Math.min(wanted, left));
    return { size, length: longest.length, price: longest.price, count, short: wanted - count };
  });
}
