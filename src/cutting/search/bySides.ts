import { assignSides } from "../layout/assignSides.ts";
import { boardsLeft } from "../model/boardsLeft.ts";
import { costOf } from "../model/costOf.ts";
import { restOf } from "../model/restOf.ts";
import { usedLength } from "../model/usedLength.ts";
import type { Cut, Problem } from "../model/problem.ts";
import type { SizeTask } from "../model/problemsOf.ts";
import { solveSize, type Solved, type Spent, type Unsolved } from "./solveSize.ts";

/** So many boards are taken apart for the pieces of boards whose sides did not come out, and so many steps may pass over them. */
const TAKEN = [8, 16, 32, 64];
const STEPS = 60_000_000;

/**
 * All pieces crown up, where slanting ends may share cuts: first as if each piece were as good as its mirror image, which halves the lengths; then each is given the side that it has.
 *
 * The pieces of boards whose sides do not come out are planned anew, with those of some other boards and for no more money. Where that fails the search is made again with each
 * piece as it is, and what the first has proved still holds.
 */
export function* bySides(upright: SizeTask, mirrored: SizeTask, next: () => Spent): Generator<void, Solved | Unsolved> {
  const either = yield* solveSize(mirrored.problem, next());
  if ("cuts" in either) {
    const sided = yield* assignSides(mirrored, upright, either.cuts);
    const cuts = sided.open === 0 ? sided.cuts : yield* repaired(upright.problem, sided.cuts, either.cost, next);
    if (cuts) return { ...either, cuts };
  } else if (either.impossible) return either;
  return yield* solveSize(upright.problem, next(), Infinity, either.bound);
}

/** A whole plan for no more than a cost, from boards that do not cut every piece: those with most room left are planned anew. */
function* repaired(
  problem: Problem,
  cuts: readonly Cut[],
  cost: number,
  next: () => Spent,
): Generator<void, readonly Cut[] | null> {
  const roomLeft = ({ pattern: { type, items, copies } }: Cut): number =>
    problem.types[type]!.room - usedLength(problem, items, copies);
  const fullest = [...cuts].sort((a, b) => roomLeft(a) - roomLeft(b));
  for (const taken of TAKEN) {
    const kept = fullest.slice(0, Math.max(0, fullest.length - taken));
    const wanted = problem.items.map((item) => item.demand);
    for (const { pattern, times } of kept) pattern.items.forEach((i, n) => (wanted[i]! -= pattern.copies[n]! * times));
    const rest = restOf(problem, wanted, boardsLeft(problem, kept));
    const most = cost - costOf(problem, kept);
    const least = Math.min(...problem.types.map((type) => type.cost));
    const spent = next();
    const solved = yield* solveSize(rest, (steps) => spent(steps) || steps > STEPS, most + 1e-4 * least, most);
    if ("cuts" in solved && solved.cost <= most * (1 + 1e-9)) return [...kept, ...solved.cuts];
    if (kept.length === 0) break;
  }
  return null;
}
