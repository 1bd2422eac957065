import type { StockProblem } from "../../src/cutting/model/stockProblem.ts";
import { whyNot } from "../../src/cutting/model/whyNot.ts";
import { planSteps } from "../../src/cutting/search/planSteps.ts";
import type { CutOptions, CutPlan, StockBoard, StockPiece } from "../../src/cutting/stock.ts";
import { Failure, type Result } from "../../src/measure/result.ts";
import { atOnce } from "./atOnce.ts";

/** The same plan as planCuts, at one go. */
export function planCutsNow(
  pieces: readonly StockPiece[],
  boards: readonly StockBoard[],
  options: CutOptions,
): Result<CutPlan, StockProblem> {
  const problem = whyNot(pieces);
  if (problem) return new Failure(problem);
  return atOnce(planSteps(pieces, boards, options));
}
