import type { StockProblem } from "../../src/cutting/model/stockProblem.ts";
import { planSteps } from "../../src/cutting/search/planSteps.ts";
import type { CutOptions, CutPlan, StockBoard, StockPiece } from "../../src/cutting/stock.ts";
import type { Result } from "../../src/measure/result.ts";

/** The same plan as planCuts, at one go. */
export function planCutsNow(
  pieces: readonly StockPiece[],
  boards: readonly StockBoard[],
  options: CutOptions,
): Result<CutPlan, StockProblem> {
  const steps = planSteps(pieces, boards, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
