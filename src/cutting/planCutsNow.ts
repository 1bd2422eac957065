import { planSteps } from "./planSteps.ts";
import type { Reason } from "../measure/reason.ts";
import type { CutOptions, CutPlan, StockBoard, StockPiece } from "./stock.ts";

/**
 * The same plan as planCuts, at one go: for scripts and tests, where nobody waits to type.
 *
 * @example
 * planCutsNow([{ name: "stud", size: "2x4", length: 30, count: 4 }], [{ size: "2x4", length: 96 }, { size: "2x4", length: 144 }], { kerf: 0.125 }).cost // => 144
 */
export function planCutsNow(pieces: readonly StockPiece[], boards: readonly StockBoard[], options: CutOptions): CutPlan | Reason {
  const steps = planSteps(pieces, boards, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
