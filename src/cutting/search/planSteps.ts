import { Failure, type Result } from "../../measure/result.ts";
import { plannedBoards } from "../layout/plannedBoards.ts";
import { problemsOf } from "../model/problemsOf.ts";
import { solveSize } from "./solveSize.ts";
import { whyNot } from "../model/whyNot.ts";
import type { StockProblem } from "../model/stockProblem.ts";
import type { CutOptions, CutPlan, PlannedBoard, SizePlan, StockBoard, StockPiece } from "../stock.ts";

/** Steps allowed when the caller does not say: some five seconds, far more than a roof takes. */
const STEPS = 400_000_000;

/**
 * The work of planCuts in short steps, for whoever runs it: it pauses every few milliseconds and may then be gone on with, or left.
 *
 * Sizes are planned one after another; what the first leaves of the work allowed is the next one's.
 */
export function* planSteps(
  pieces: readonly StockPiece[],
  boards: readonly StockBoard[],
  options: CutOptions,
): Generator<void, Result<CutPlan, StockProblem>> {
  const problem = whyNot(pieces, boards);
  if (problem) return new Failure(problem);
  const spent = budgetOf(options);
  const sizes: SizePlan[] = [];
  const planned: PlannedBoard[] = [];
  for (const task of problemsOf(pieces, boards, options.kerf)) {
    const solved = yield* solveSize(task.problem, spent.next());
    if ("impossible" in solved)
      return new Failure({ kind: solved.impossible ? "too few boards" : "no way found", size: task.size });
    const { cuts, cost, bound, proved } = solved;
    sizes.push({ size: task.size, cost, bound, proved });
    for (const board of plannedBoards(task, cuts, pieces, options.kerf)) planned.push(board);
    yield;
  }
  const sum = (of: (size: SizePlan) => number): number => sizes.reduce((total, size) => total + of(size), 0);
  return {
    boards: planned,
    cost: sum((size) => size.cost),
    bound: sum((size) => size.bound),
    proved: sizes.every((size) => size.proved),
    sizes,
  };
}

/** For each size in turn a question whether all sizes so far have spent the budget. */
function budgetOf({ budget }: CutOptions): { next(): (steps: number) => boolean } {
  const most = budget?.steps ?? STEPS;
  const end = budget?.milliseconds === undefined ? Infinity : performance.now() + budget.milliseconds;
  let before = 0;
  return {
    next() {
      const base = before;
      return (steps) => {
        before = base + steps;
        return before > most || performance.now() > end;
      };
    },
  };
}
