import { KERF, kerfParameter } from "../../../functions/arguments/cutOrder.ts";
import { cuttingDrawing, type CuttingDrawing } from "../../../functions/words/cuttingDrawing.ts";
import { lengthText } from "../../measure/lengthText.ts";
import { CellError, Refusal } from "../../registry/refusal.ts";
import type { Unit } from "../../measure/unit.ts";
import { blockRows } from "./blockCells.ts";
import { boardsOnHand } from "./boardsOnHand.ts";
import type { Inputs } from "./fields.ts";
import { report } from "./report.ts";
import { evaluateFunction, type Table } from "./evaluateFunction.ts";

/** What an order is worked out for. */
export interface OrderAsked {
  readonly inputs: Inputs;
  /** As typed; empty for the usual one. */
  readonly kerf: string;
}

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
export function kerfNow(text: string, unit: Unit): number | Refusal {
  const read = kerfParameter.read(text.trim() === "" ? undefined : text.trim(), { unit, unitFrom: "the roof" });
  if (read instanceof CellError) return new Refusal("#VALUE!", read.error);
  return read ?? KERF[unit];
}

/** A kerf as people read it: finer than other lengths. */
export function kerfText(kerf: number, unit: Unit): string {
  return unit === "mm" ? `${Number(kerf.toFixed(2))} mm` : lengthText(kerf, unit, 64);
}

/** What LUMBERORDER and STICKPLAN say of a roof and its boards on hand. */
export async function orderNow({ inputs, kerf }: OrderAsked): Promise<Order | Refusal> {
  const args = [
    blockRows(inputs),
    boardsOnHand(inputs, report(inputs)).boards,
    ...(kerf.trim() === "" ? [] : [kerf.trim()]),
  ] as const;
  const table = await evaluateFunction("LUMBERORDER", args);
  if (table instanceof Refusal) return table;
  const plan = await cuttingDrawing(...args);
  if (plan instanceof Refusal) return plan;
  if (plan instanceof CellError) return new Refusal("#VALUE!", plan.error);
  return { ...orderOf(table), plan };
}

function orderOf(table: Table): Omit<Order, "plan"> {
  const [headings, ...rows] = table as [Table[number], ...Table];
  const at = (name: string) => headings.indexOf(name);
  const byBoard = new Map<string, OrderLine>();
  for (const row of rows.slice(0, -1)) {
    const [size, board, count, used, leftOver] = [
      String(row[at("Size")]),
      ...["Board", "Count", "Used", "Left over"].map((name) => Number(row[at(name)])),
    ] as [string, number, number, number, number];
    const line = byBoard.get(`${size} ${board}`) ?? { size, board, count: 0, waste: 0, leftOver: 0 };
    // Nothing is used of a board that is bought for waste.
    byBoard.set(
      `${size} ${board}`,
      used > 0
        ? { ...line, count: line.count + count, leftOver: line.leftOver + leftOver }
        : { ...line, count: line.count + count, waste: line.waste + count },
    );
  }
  const lines = [...byBoard.values()];
  return {
    lines,
    boards: lines.reduce((sum, { count }) => sum + count, 0),
    length: lines.reduce((sum, { board, count }) => sum + board * count, 0),
    proof: String(rows.at(-1)![at("Note")]),
  };
}
