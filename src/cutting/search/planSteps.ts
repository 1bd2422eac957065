import { Failure, type Result } from "../../measure/result.ts";
import { plannedBoards } from "../layout/plannedBoards.ts";
import { problemsOf } from "../model/problemsOf.ts";
import { solveSize } from "./solveSize.ts";
import { missingSizes } from "../model/missingSizes.ts";
import type { SizeTask } from "../model/problemsOf.ts";
import type { Solved, Unsolved } from "./solveSize.ts";
import type { Spent } from "./spent.ts";
import type { StockProblem } from "../model/stockProblem.ts";
import type { CutOptions, CutPlan, PlannedBoard, SizePlan, StockBoard, StockPiece } from "../stock.ts";

/** Steps allowed when the caller does not say: some five seconds, far more than a roof takes. */
const STEPS = 1_200_000_000;

/**
 * The work of planCuts in short steps, for whoever runs it: it pauses every few milliseconds and may then be gone on with, or left.
 *
 * The pieces can be cut (planCuts asks before). Sizes are planned one after another, those of few lengths first: what one leaves of the work allowed is the next one's, and the
 * longest list may take it all.
 */
export function* planSteps(
  pieces: readonly StockPiece[],
  boards: readonly StockBoard[],
  options: CutOptions,
): Generator<void, Result<CutPlan, StockProblem>> {
  const missing = missingSizes(pieces, boards, options.trim);
  const left = new Set(missing.map(({ size }) => size));
  const wanted = pieces.map((piece) => (left.has(piece.size) ? { ...piece, count: 0 } : piece));
  const next = budgetOf(options.steps ?? STEPS);
  const sizes: SizePlan[] = [];
  const planned: PlannedBoard[][] = [];
  const turning = options.crownDown ? problemsOf(wanted, boards, options, "turning") : [];
  const all = problemsOf(wanted, boards, options, "upright").map((upright, n) => ({ upright, n }));
  for (const { upright, n } of all.sort((a, b) => lengthsOf(a.upright) - lengthsOf(b.upright))) {
    const { task, solved } = yield* planOf(upright, turning[n], next);
    if (!("cuts" in solved))
      return new Failure({ kind: solved.impossible ? "too few boards" : "no way found", size: task.size });
    const { cuts, cost, bound, proved } = solved;
    sizes[n] = { size: task.size, cost, bound, proved };
    planned[n] = plannedBoards(task, cuts, pieces, options);
    yield;
  }
  const sum = (of: (size: SizePlan) => number): number => sizes.reduce((total, size) => total + of(size), 0);
  return {
    boards: planned.flat(),
    missing,
    cost: sum((size) => size.cost),
    bound: sum((size) => size.bound),
    proved: sizes.every((size) => size.proved),
    sizes,
  };
}

const lengthsOf = ({ problem }: SizeTask): number => problem.items.length;

/** All pieces crown up, unless some may be turned and that costs less; the bound is that of what is allowed. */
function* planOf(
  upright: SizeTask,
  turning: SizeTask | undefined,
  next: () => Spent,
): Generator<void, { task: SizeTask; solved: Solved | Unsolved }> {
  const solved = yield* solveSize(upright.problem, next());
  if (!turning?.problem.items.some((item) => item.saves > 0)) return { task: upright, solved };
  const most = "cuts" in solved ? solved.cost : Infinity;
  const turned = yield* solveSize(turning.problem, next(), most);
  if ("cuts" in turned || !("cuts" in solved)) return { task: turning, solved: turned };
  const bound = Math.min(turned.bound, solved.cost);
  return { task: upright, solved: { ...solved, bound, proved: bound >= solved.cost * (1 - 1e-9) } };
}

/** For each search in turn a question whether all searches so far have spent the steps. */
function budgetOf(most: number): () => Spent {
  let before = 0;
  return () => {
    const base = before;
    return (steps) => {
      before = base + steps;
      return before > most;
    };
  };
}
