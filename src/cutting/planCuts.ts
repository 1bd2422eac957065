import { Failure, type Result } from "../measure/result.ts";
import { whyNot } from "./model/whyNot.ts";
import type { StockProblem } from "./model/stockProblem.ts";
import type { CutOptions, CutPlan, StockBoard, StockPiece } from "./stock.ts";

/** Milliseconds of work before the page gets a turn. */
const SLICE = 8;

/**
 * Which pieces to cut from which boards, at the least price, or without prices the least total length.
 *
 * The model, the tolerance and where every piece lies are in stock.ts. The plan carries a bound: no plan costs less than that, and `proved` says that this
 * one costs no more. Of plans that cost the same one with fewer boards, then one with a longer left-over, is preferred where it is found; that is not
 * proved. Works in slices of some 8 ms and lets the page have its turn between them.
 *
 * Lengths, prices and counts must be finite and not below 0. "too few boards" is proved; "no way found" in the work allowed.
 */
export async function planCuts(
  pieces: readonly StockPiece[],
  boards: readonly StockBoard[],
  options: CutOptions,
): Promise<Result<CutPlan, StockProblem>> {
  const problem = whyNot(pieces);
  if (problem) return new Failure(problem);
  // The search is a good part of all code, and many a sheet never asks for an order: it is loaded when first wanted.
  const { planSteps } = await import(/* webpackChunkName: "search" */ "./search/planSteps.ts");
  const steps = planSteps(pieces, boards, options);
  for (;;) {
    const end = performance.now() + SLICE;
    do {
      const step = steps.next();
      if (step.done) return step.value;
    } while (performance.now() < end);
    await new Promise((resolve) => setTimeout(resolve, 0));
  }
}
