import type { CutOrder } from "./cutOrder.ts";
import { wasteBoards } from "./wasteBoards.ts";

/** Boards of one size, length and price to buy. */
export interface OrderLine {
  readonly size: string;
  readonly length: number;
  readonly price: number;
  readonly count: number;
  /** Over all of its boards. */
  readonly used: number;
  readonly leftOver: number;
  /** The first line of its size. */
  readonly first: boolean;
  /** Bought for waste, and not in the plan: how many more the percent asks than there are. */
  readonly waste: { readonly short: number } | null;
}

/** What an order comes to, size by size: the boards that its plan cuts, shortest first, then those for waste. */
export function orderLines(order: CutOrder): OrderLine[] {
  const extra = wasteBoards(order);
  return order.plan.sizes.flatMap(({ size }) => {
    const own = new Map<string, OrderLine>();
    for (const { size: of, length, price, repeat, used, leftOver } of order.plan.boards) {
      if (of !== size) continue;
      const sum = own.get(`${length} ${price}`) ?? { count: 0, used: 0, leftOver: 0 };
      own.set(`${length} ${price}`, {
        ...{ size, length, price, first: false, waste: null },
        count: sum.count + repeat,
        used: sum.used + used * repeat,
        leftOver: sum.leftOver + leftOver * repeat,
      });
    }
    const cut = [...own.values()].sort((a, b) => a.length - b.length || a.price - b.price);
    const spare = extra
      .filter((one) => one.size === size)
      .map(({ length, price, count, short }) => ({
        ...{ size, length, price, count, first: false, waste: { short } },
        used: 0,
        leftOver: count * length,
      }));
    return [...cut, ...spare].map((line, i) => ({ ...line, first: i === 0 }));
  });
}
