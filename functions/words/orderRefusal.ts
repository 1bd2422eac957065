import type { StockProblem } from "../../src/cutting/model/stockProblem.ts";
import type { Unit } from "../../src/measure/unit.ts";
import { Refusal } from "../../src/registry/refusal.ts";
import type { PieceSource } from "../arguments/pieceList.ts";
import { stockWords } from "./stockWords.ts";
import { sayIn } from "./words.ts";

/** Why pieces cannot be cut from boards, worded by the piece and, on a user's own list, by its row. */
export function orderRefusal(problem: StockProblem, source: PieceSource, unit: Unit | null): Refusal {
  const row = "row" in problem && "list" in source ? source.list[problem.row! - 1]!.row : null;
  const at = AT[problem.kind] === "boards" ? "boards" : row === null ? "pieces" : `pieces, row ${row}`;
  const said = stockWords[problem.kind]({ ...problem, row } as never, sayIn(unit, true));
  return new Refusal("#VALUE!", `${at}: ${said.join(". ")}.`);
}

const AT: Readonly<Record<StockProblem["kind"], "pieces" | "boards">> = {
  "no pieces": "pieces",
  "no board of that size": "boards",
  "piece too long": "pieces",
  "head longer than piece": "pieces",
  "too few boards": "boards",
  "no way found": "boards",
  "no board long enough": "boards",
};
