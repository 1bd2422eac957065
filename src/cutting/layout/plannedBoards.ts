import { assignHands } from "./assignHands.ts";
import { layBoard } from "./layBoard.ts";
import { TOLERANCE } from "../model/tolerance.ts";
import { grouped } from "../model/grouped.ts";
import type { HandedCut, HandedPart } from "./assignHands.ts";
import type { GroupOnBoard } from "./layBoard.ts";
import type { Cut } from "../model/problem.ts";
import type { SizeTask } from "../model/problemsOf.ts";
import type { CutOptions, Hand, PlannedBoard, StockPiece } from "../stock.ts";

const HANDS: readonly Hand[] = ["left", "right", "plain"];

/** The boards of one size with their pieces by name and place: longest boards first, and of these the fullest. */
export function plannedBoards(
  task: SizeTask,
  cuts: readonly Cut[],
  pieces: readonly StockPiece[],
  { kerf, trim = 0 }: CutOptions,
): PlannedBoard[] {
  const shelf = new Shelf(task, pieces);
  const boards: PlannedBoard[] = [];
  for (const cut of assignHands(task.problem, cuts)) {
    for (let open = cut.times; open > 0;) {
      const repeat = Math.min(open, shelf.alike(cut));
      const { length, cost, alone } = task.problem.types[cut.type]!;
      const untrimmed = cut.parts.length === 1 && alone.includes(cut.parts[0]!.item);
      const lost = untrimmed ? 0 : trim;
      const laid = layBoard(pieces, groupsOf(task, cut, shelf, repeat), kerf, length * (1 + TOLERANCE) - lost);
      boards.push({
        size: task.size,
        length,
        price: cost,
        repeat,
        pieces: laid.pieces,
        used: laid.used,
        trim: lost,
        leftOver: Math.max(0, length - lost - laid.used),
      });
      open -= repeat;
    }
  }
  return boards.sort((a, b) => b.length - a.length || a.leftOver - b.leftOver);
}

/** The pieces of each slant: key by key, and of a key first those of either hand. */
function groupsOf(task: SizeTask, cut: HandedCut, shelf: Shelf, repeat: number): GroupOnBoard[] {
  const items = (part: HandedPart) => task.problem.items[part.item]!;
  return [...grouped(cut.parts, (part) => items(part).group)].map(([group, parts]) => ({
    group: task.groups[group]!,
    pieces: [...grouped(parts, (part) => items(part).key).values()].flatMap((own) =>
      HANDS.flatMap((hand) => own.flatMap((part) => shelf.take(part.item, hand, part[hand], repeat))),
    ),
  }));
}

/** The pieces still to be named: for each item and hand the rows given, in their order. */
class Shelf {
  readonly #rows: readonly Record<Hand, { piece: number; left: number }[]>[];

  constructor(task: SizeTask, pieces: readonly StockPiece[]) {
    const queue = (list: readonly number[]): { piece: number; left: number }[] =>
      list.map((piece) => ({ piece, left: pieces[piece]!.count })).reverse();
    this.#rows = task.sources.map((source) => ({
      left: queue(source.left),
      right: queue(source.right),
      plain: queue(source.plain),
    }));
  }

  /** How many boards of a cut can carry the same names. */
  alike(cut: HandedCut): number {
    let boards = cut.times;
    for (const part of cut.parts) {
      for (const hand of HANDS) {
        if (part[hand] > 0)
          boards = Math.min(boards, Math.max(1, Math.floor(this.#rows[part.item]![hand].at(-1)!.left / part[hand])));
      }
    }
    return boards;
  }

  /** The pieces for `count` places of an item on each of `repeat` boards alike. */
  take(item: number, hand: Hand, count: number, repeat: number): number[] {
    const queue = this.#rows[item]![hand];
    const taken: number[] = [];
    while (taken.length < count) {
      const row = queue.at(-1)!;
      taken.push(row.piece);
      row.left -= repeat;
      if (row.left === 0) queue.pop();
    }
    return taken;
  }
}
