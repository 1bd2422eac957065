import { expect } from "vitest";
import { Failure, type Result } from "../../src/measure/result.ts";
import type { StockProblem } from "../../src/cutting/model/stockProblem.ts";
import { lengthTaken } from "./otherSolver.ts";
import type { Instance } from "./instances.ts";
import type { CutPlan, PlannedBoard } from "../../src/cutting/stock.ts";

/** A plan, or a failed test. */
export function planOf(answer: Result<CutPlan, StockProblem>): CutPlan {
  if (answer instanceof Failure) throw new Error(JSON.stringify(answer.problem));
  return answer;
}

/** Holds a plan to the lists it is for, with nothing taken from the search: counts, costs, room, and every piece's place. */
export function checkPlan(plan: CutPlan, list: Instance): void {
  const { pieces, boards } = list;
  const cut = pieces.map(() => 0);
  for (const board of plan.boards) {
    for (const { piece, name, hand } of board.pieces) {
      cut[piece]! += board.repeat;
      expect([name, hand]).toEqual([pieces[piece]!.name, pieces[piece]!.hand ?? "plain"]);
    }
    checkPlaces(board, list);
  }
  expect(cut).toEqual(pieces.map((piece) => piece.count));
  const cost = plan.boards.reduce((sum, board) => sum + board.price * board.repeat, 0);
  expect(plan.cost).toBeCloseTo(cost, 6);
  expect(plan.bound).toBeLessThanOrEqual(plan.cost);
  expect(plan.proved).toBe(plan.cost - plan.bound <= 1e-9 * plan.cost);
  for (const { size, length, price, count = Infinity } of boards) {
    const alike = (board: { size: string; length: number }): boolean => board.size === size && board.length === length;
    const used = plan.boards
      .filter((board) => alike(board) && board.price === (price ?? length))
      .reduce((sum, board) => sum + board.repeat, 0);
    const stock = boards
      .filter((board) => alike(board) && board.price === price)
      .reduce((sum, board) => sum + (board.count ?? Infinity), 0);
    expect(used).toBeLessThanOrEqual(Math.max(stock, count));
  }
}

/**
 * Cuts the board: every piece as the solid it is, in coordinates of the board's side face (x, y) and thickness (z from the near face), with depth 1 and thickness 1.
 *
 * Depth and thickness do not matter, only lean = D tan A and turn = t tan f / cos A: a piece is between two planes x = x0 + lean y - turn z (or turn (z - 1), ...), so
 * that two neighbors lie a kerf apart everywhere if they do at the four corners of the section.
 */
function checkPlaces(board: PlannedBoard, { pieces, kerf, trim = 0, crownDown = false }: Instance): void {
  const whole = board.pieces.length === 1 && board.trim === 0;
  if (!whole) expect(board.trim).toBe(trim);
  const room = board.length * (1 + 1e-9) - board.trim;
  let before: ((y: number, z: number) => number) | null = null;
  for (const { piece, hand, start, end, flipped } of board.pieces) {
    const { length, lean = 0, turn = 0, toe = lean, spread = 1, slants } = pieces[piece]!;
    expect(end - start).toBeCloseTo(length, 9);
    // A right's long point is on the near face (z = 0), a left's on the far one.
    const turned = hand === "plain" ? 0 : hand === "right" ? -turn : turn;
    const [low, head] = slants ?? [0, turned];
    // How far behind the outermost point an end is at a depth into the board.
    const behind = (slant: number, z: number): number => (slant > 0 ? slant * (1 - z) : -slant * z);
    const short = (z: number): number => behind(head, z);
    const inset = (z: number): number => behind(-low, z);
    // The piece's own top edge is at y = 1, flipped at y = 0; every end leans by `lean` over the depth.
    const slant = (x: number, y: number): number => x + lean * (flipped ? y : y - 1);
    const left = (y: number, z: number): number => slant(start + (flipped ? short(z) : inset(z)), y);
    const right = (y: number, z: number): number => slant(end - (flipped ? inset(z) : short(z)), y);
    const wide = before === null || lean === 0 ? kerf : Math.min(kerf * spread, kerf + toe);
    for (const y of [0, 1]) {
      for (const z of [0, 1]) {
        if (before !== null)
          expect(left(y, z) - before(y, z)).toBeGreaterThan((sameSlant(board, pieces, piece) ? wide : kerf) - 1e-6);
        // With no tail the low end is cut off at the toe; a full plumb end would stand out by the rest.
        const cutOff = lean - toe;
        expect(left(y, z)).toBeGreaterThan(-cutOff - 1e-6);
        expect(right(y, z)).toBeLessThan(room + (flipped ? cutOff : 0) + 1e-6);
      }
    }
    before = right;
  }
  const counts = pieces.map((_, i) => board.pieces.filter(({ piece }) => piece === i).length);
  const turns = board.pieces.filter(({ flipped }) => flipped).map(({ piece }) => pieces[piece]!.turn!);
  if (!crownDown) expect(turns).toEqual([]);
  const plain = pieces.every(({ lean = 0, toe = lean, spread = 1 }) => toe === lean && spread === 1);
  if (plain && pieces.some(({ slants }) => slants)) {
    // Crown up all cuts are shared that can be; what lies end for end would not fit so.
    const upright = lengthTaken({ pieces, kerf }, counts);
    if (turns.length === 0) expect(board.used).toBeCloseTo(upright, 6);
    else expect(upright).toBeGreaterThan(room);
    expect(board.used).toBeGreaterThan(lengthTaken({ pieces, kerf, crownDown }, counts) - 1e-6);
    return;
  }
  const saved = turns.reduce((sum, turn) => sum + turn, 0);
  if (plain) expect(board.used).toBeCloseTo(lengthTaken({ pieces, kerf }, counts) - saved, 6);
  // One piece less end for end would not do.
  if (turns.length > 0) expect(board.used + Math.min(...turns)).toBeGreaterThan(room);
  expect(board.used).toBeLessThanOrEqual(room);
  if (whole && trim > 0) expect(board.used).toBeCloseTo(board.length, 6);
  expect(board.leftOver).toBeCloseTo(Math.max(0, board.length - board.trim - board.used), 9);
}

/** Whether all pieces on the board are of one slant: only then is the cut between neighbors known to be as wide as its spread. */
function sameSlant(board: PlannedBoard, pieces: Instance["pieces"], piece: number): boolean {
  return board.pieces.every((other) => pieces[other.piece]!.slant === pieces[piece]!.slant);
}
