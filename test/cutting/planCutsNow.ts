import { planSteps } from "../../src/cutting/search/planSteps.ts";
import type { CutOptions, CutPlan, StockBoard, StockPiece } from "../../src/cutting/stock.ts";
import type { Reason } from "../../src/measure/reason.ts";

/** The same plan as planCuts, at one go. */
export function planCutsNow(
  pieces: readonly StockPiece[],
  boards: readonly StockBoard[],
  options: CutOptions,
): CutPlan | Reason {
  const steps = planSteps(pieces, boards, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
