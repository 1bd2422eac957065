import { grouped } from "./grouped.ts";
import { itemsOf, type Lie, type Sources } from "./itemsOf.ts";
import { TOLERANCE } from "./tolerance.ts";
import type { BoardType, Group, Item, Problem } from "./problem.ts";
import type { CutOptions, StockBoard, StockPiece } from "../stock.ts";

/** One size to be solved, and the way back from its items to the pieces given. */
export interface SizeTask {
  readonly size: string;
  readonly problem: Problem;
  /** For each item the pieces it stands for. */
  readonly sources: readonly Sources[];
  readonly groups: readonly SlantGroup[];
}

/** Pieces with parallel plumb cuts: what a board loses to them, in the caller's unit. */
export interface SlantGroup {
  readonly lean: number;
  readonly toe: number;
  /** Width of a cut along the board. */
  readonly cut: number;
}

/**
 * The pieces and boards of every size in the order of the pieces, as whole-number problems. The lists must have passed whyNot.
 *
 * @param lie how pieces may lie.
 */
export function problemsOf(
  pieces: readonly StockPiece[],
  boards: readonly StockBoard[],
  { kerf, trim = 0 }: CutOptions,
  lie: Lie,
): SizeTask[] {
  const wanted = [...pieces.keys()].filter((i) => pieces[i]!.count > 0);
  return [...grouped(wanted, (i) => pieces[i]!.size)].map(([size, own]) =>
    taskOf(
      size,
      own,
      pieces,
      boards.filter((board) => board.size === size && board.count !== 0),
      { kerf, trim, lie },
    ),
  );
}

interface Saw {
  readonly kerf: number;
  readonly trim: number;
  readonly lie: Lie;
}

function taskOf(
  size: string,
  own: readonly number[],
  pieces: readonly StockPiece[],
  boards: readonly StockBoard[],
  { kerf, trim, lie }: Saw,
): SizeTask {
  const unit = Math.max(...boards.map((board) => board.length)) * 2 ** -40;
  const items: Item[] = [];
  const sources: Sources[] = [];
  const groups: SlantGroup[] = [];
  const nodes: (readonly number[])[] = [];
  for (const slanted of grouped(own, (i) => slantOf(pieces[i]!)).values()) {
    const group = slantGroup(
      slanted.map((i) => pieces[i]!),
      kerf,
    );
    const { items: own, turns } = itemsOf(slanted, pieces, lie);
    const half = turns.map((turn) => Math.round(turn / 2 / unit));
    const first = items.length;
    own.forEach(({ length, demand, key, either, ends, source }, n) => {
      const saves = ends.reduce((sum, { node }) => sum + half[node]!, 0);
      items.push({
        weight: Math.round((length + group.cut) / unit) - saves,
        demand,
        group: groups.length,
        key: key < 0 ? -1 : first + key,
        saves,
        either,
        ends,
        endsGroup: n === own.length - 1,
      });
      sources.push(source);
    });
    groups.push(group);
    nodes.push(half);
  }
  const problem: Problem = {
    items,
    groups: groups.map((group, g): Group => ({
      setup: Math.round((group.toe - group.cut + kerf) / unit),
      nodes: nodes[g]!,
    })),
    types: typesOf(boards, kerf, trim, unit, (length) => itemsAsLongAs(length, items, groups, unit)),
  };
  return { size, problem, sources, groups };
}

/** A key that pieces with parallel plumb cuts have in common. */
export function slantOf(piece: StockPiece): string {
  return piece.slant === undefined ? `lean ${piece.lean ?? 0}` : `slant ${piece.slant}`;
}

/** Where pieces of one slant differ in what they lose, the most is taken: safe, and pieces of one roof do not. */
function slantGroup(pieces: readonly StockPiece[], kerf: number): SlantGroup {
  let lean = 0;
  let toe = 0;
  let spread = 1;
  for (const piece of pieces) {
    lean = Math.max(lean, piece.lean ?? 0);
    toe = Math.max(toe, toeOf(piece));
    spread = Math.max(spread, piece.spread ?? 1);
  }
  // A cut that starts where the board ends must run off it within the toe; a spread that does not fit the slant is no plumb cut's.
  return { lean, toe, cut: Math.min(kerf * spread, kerf + toe) };
}

/** How far a piece reaches back beyond its tail tip. */
export function toeOf({ lean = 0, toe = lean }: StockPiece): number {
  return Math.min(lean, toe);
}

/** Items of which one piece, with what its slant loses, is as long as a board. */
function itemsAsLongAs(length: number, items: readonly Item[], groups: readonly SlantGroup[], unit: number): number[] {
  return items.flatMap((item, i) => {
    const { toe, cut } = groups[item.group]!;
    const needs = (item.weight + item.saves) * unit + toe - cut;
    return Math.abs(needs - length) <= TOLERANCE * length ? [i] : [];
  });
}

/** Boards that another type beats in every way are left out. */
function typesOf(
  boards: readonly StockBoard[],
  kerf: number,
  trim: number,
  unit: number,
  asLongAs: (length: number) => number[],
): BoardType[] {
  const types = boards.map(({ length, price, count }): BoardType => ({
    length,
    cost: price ?? length,
    count: count ?? Infinity,
    room: Math.floor((length * (1 + TOLERANCE) - trim + kerf) / unit),
    alone: trim > 0 ? asLongAs(length) : [],
  }));
  const beats = (a: BoardType, b: BoardType, before: boolean): boolean =>
    a.count === Infinity &&
    a.room >= b.room &&
    (b.alone.length === 0 || a.length === b.length || a.length - trim >= b.length) &&
    (a.cost < b.cost || (a.cost === b.cost && (a.room > b.room || before)));
  return types
    .filter((type, j) => !types.some((other, k) => k !== j && beats(other, type, k < j)))
    .sort((a, b) => a.room - b.room || a.cost - b.cost);
}
