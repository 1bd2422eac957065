import { KERF, kerfParameter, orderFor, type CutOrder } from "../../../functions/arguments/cutOrder.ts";
import { orderLines } from "../../../functions/arguments/orderLines.ts";
import { cuttingDrawing, type CuttingDrawing } from "../../../functions/arguments/cuttingDrawing.ts";
import { orderProof } from "../../../functions/words/orderProof.ts";
import { lengthText } from "../../measure/lengthText.ts";
import { Failure, type Result } from "../../measure/result.ts";
import { newReading } from "../../registry/reading.ts";
import type { Unit } from "../../measure/unit.ts";
import { blockRows } from "./blockCells.ts";
import { boardsOnHand } from "./boardsOnHand.ts";
import type { Inputs } from "./fields.ts";
import { report } from "./report.ts";

/** What an order is worked out for. */
export interface OrderAsked {
  readonly inputs: Inputs;
  /** As typed; empty for the usual one. */
  readonly kerf: string;
}

/** Two askings with the same key have the same order. */
export const keyOf = (asked: OrderAsked): string => JSON.stringify(asked);

/** Boards of one length to buy. */
export interface OrderLine {
  readonly size: string;
  readonly board: number;
  /** All of them, and how many of these the plan does not cut: they are for waste. */
  readonly count: number;
  readonly waste: number;
  /** Of the boards that the plan cuts. */
  readonly leftOver: number;
}

/** The boards to buy and how they are cut. Lengths in the roof's unit. */
export interface Order {
  readonly lines: readonly OrderLine[];
  /** Boards, and the length of all of them. */
  readonly boards: number;
  readonly length: number;
  /** That nothing less will do, or how much less might. */
  readonly proof: string;
  readonly plan: CuttingDrawing;
}

/** The kerf as a length, the usual one where nothing is typed; or why it cannot be read. */
export function kerfNow(text: string, unit: Unit): Result<number> {
  const read = kerfParameter.read(text.trim() === "" ? undefined : text.trim(), newReading("kerf", unit));
  return read ?? KERF[unit];
}

/** The kerf that papers count: the usual one also where what is typed cannot be read. */
export function kerfOrUsual(text: string, unit: Unit): number {
  const kerf = kerfNow(text, unit);
  return kerf instanceof Failure ? KERF[unit] : kerf;
}

/** A kerf as people read it: finer than other lengths. */
export function kerfText(kerf: number, unit: Unit): string {
  return unit === "mm" ? `${Number(kerf.toFixed(2))} mm` : lengthText(kerf, unit, 64);
}

/** The order that LUMBERORDER and STICKPLAN show for a roof and its boards on hand. */
export async function orderNow({ inputs, kerf }: OrderAsked): Promise<Result<Order>> {
  const { boards } = boardsOnHand(inputs, report(inputs));
  const order = await orderFor(blockRows(inputs), boards, kerf.trim());
  if (order instanceof Failure) return order;
  const lines = linesOf(order);
  return {
    lines,
    boards: lines.reduce((sum, { count }) => sum + count, 0),
    length: lines.reduce((sum, { board, count }) => sum + board * count, 0),
    proof: orderProof(order),
    plan: cuttingDrawing(order),
  };
}

function linesOf(order: CutOrder): OrderLine[] {
  const byBoard = new Map<string, OrderLine>();
  for (const { size, length: board, count, leftOver, waste } of orderLines(order)) {
    const line = byBoard.get(`${size} ${board}`) ?? { size, board, count: 0, waste: 0, leftOver: 0 };
    byBoard.set(`${size} ${board}`, {
      ...line,
      count: line.count + count,
      waste: line.waste + (waste === null ? 0 : count),
      leftOver: line.leftOver + (waste === null ? leftOver : 0),
    });
  }
  return [...byBoard.values()];
}
