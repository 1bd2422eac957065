import type { Stick } from "../../src/drawing/cards/drawSticks.ts";
import type { Unit } from "../../src/measure/unit.ts";
import { CellError, Refusal } from "../../src/registry/refusal.ts";
import type { Input, Reading } from "../../src/registry/worksheetFunction.ts";
import { boardsParameter } from "../arguments/boardTable.ts";
import { cutOrder, kerfParameter, type CutOrder } from "../arguments/cutOrder.ts";
import { piecesParameter } from "../arguments/pieceList.ts";
import { ridgeNote } from "./ridgeNote.ts";

/** What the drawing of a cutting plan needs. */
export interface CuttingDrawing {
  readonly sticks: readonly Stick[];
  /** null: the lengths have no unit. */
  readonly unit: Unit | null;
  /** In words, such as where a ridge is joined. */
  readonly notes: readonly string[];
}

/** The boards of STICKPLAN as they are drawn, for the same raw cells; the search is shared with the worksheet functions. */
export async function cuttingDrawing(
  pieces: Input,
  boards: Input,
  kerf?: Input,
): Promise<CuttingDrawing | Refusal | CellError> {
  const reading: Reading = { unit: null, unitFrom: "" };
  const source = piecesParameter.read(pieces, reading);
  if (source instanceof Refusal || source instanceof CellError) return source;
  const listed = boardsParameter.read(boards, reading);
  if (listed instanceof Refusal || listed instanceof CellError) return listed;
  const cut = kerfParameter.read(kerf, reading);
  if (cut instanceof Refusal || cut instanceof CellError) return cut;
  const order = await cutOrder(source, listed, cut, reading);
  if (order instanceof Refusal) return order;
  const note = order.ridge === null ? "" : ridgeNote(order, order.ridge.size);
  return { sticks: sticksOf(order), unit: order.unit, notes: note === "" ? [] : [note] };
}

function sticksOf({ plan, pieces, depths }: CutOrder): Stick[] {
  let next = 1;
  return plan.boards.map(({ size, length, repeat, leftOver, pieces: placed }): Stick => {
    const number = next;
    next += repeat;
    return {
      number,
      times: repeat,
      size,
      length,
      depth: depths.get(size) ?? null,
      leftOver,
      pieces: placed.map(({ piece, name, hand, start, end, flipped }) => ({
        name,
        hand,
        start,
        end,
        flipped,
        lean: pieces[piece]!.lean ?? 0,
        turn: pieces[piece]!.turn ?? 0,
      })),
    };
  });
}
