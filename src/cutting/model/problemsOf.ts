import { grouped } from "./grouped.ts";
import { TOLERANCE } from "./tolerance.ts";
import type { BoardType, Group, Item, Problem } from "./problem.ts";
import type { CutOptions, StockBoard, StockPiece } from "../stock.ts";

/** One size to be solved, and the way back from its items to the pieces given. */
export interface SizeTask {
  readonly size: string;
  readonly problem: Problem;
  /** For each item the pieces it stands for; an item of either hand has both. */
  readonly sources: readonly Sources[];
  readonly groups: readonly SlantGroup[];
}

export interface Sources {
  readonly left: readonly number[];
  readonly right: readonly number[];
  readonly plain: readonly number[];
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
 * @param turning whether a right may lie end for end, head to head with a left.
 */
export function problemsOf(
  pieces: readonly StockPiece[],
  boards: readonly StockBoard[],
  { kerf, trim = 0 }: CutOptions,
  turning: boolean,
): SizeTask[] {
  const wanted = [...pieces.keys()].filter((i) => pieces[i]!.count > 0);
  return [...grouped(wanted, (i) => pieces[i]!.size)].map(([size, own]) =>
    taskOf(
      size,
      own,
      pieces,
      boards.filter((board) => board.size === size && board.count !== 0),
      { kerf, trim, turning },
    ),
  );
}

interface Saw {
  readonly kerf: number;
  readonly trim: number;
  readonly turning: boolean;
}

function taskOf(
  size: string,
  own: readonly number[],
  pieces: readonly StockPiece[],
  boards: readonly StockBoard[],
  { kerf, trim, turning }: Saw,
): SizeTask {
  const unit = Math.max(...boards.map((board) => board.length)) * 2 ** -40;
  const items: Item[] = [];
  const sources: Sources[] = [];
  const groups: SlantGroup[] = [];
  for (const slanted of grouped(own, (i) => slantOf(pieces[i]!)).values()) {
    const group = slantGroup(
      slanted.map((i) => pieces[i]!),
      kerf,
    );
    // Handed pieces whose compound cuts are parallel, each key together; the plain ones last.
    const keys = grouped(slanted, (i) => (turning ? turnOf(pieces[i]!) : 0));
    let key = 0;
    for (const [turn, members] of [...keys].sort(([a], [b]) => b - a)) {
      key = turn > 0 ? items.length : -1;
      keyItems(members, pieces, turn, group).forEach(({ item, source }, n, all) => {
        items.push({
          ...item,
          weight: Math.round(item.weight / unit),
          half: Math.round(item.half / unit),
          group: groups.length,
          key,
          endsKey: n === all.length - 1,
          endsGroup: false,
        });
        sources.push(source);
      });
    }
    items[items.length - 1] = { ...items[items.length - 1]!, endsGroup: true };
    groups.push(group);
  }
  const problem: Problem = {
    items,
    groups: groups.map((group): Group => ({ setup: Math.round((group.toe - group.cut + kerf) / unit) })),
    types: typesOf(boards, kerf, trim, unit, (length) => itemsAsLongAs(length, items, groups, unit)),
  };
  return { size, problem, sources, groups };
}

/** A key that pieces with parallel plumb cuts have in common. */
export function slantOf(piece: StockPiece): string {
  return piece.slant === undefined ? `lean ${piece.lean ?? 0}` : `slant ${piece.slant}`;
}

function turnOf(piece: StockPiece): number {
  return piece.hand === undefined || piece.hand === "plain" ? 0 : (piece.turn ?? 0);
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

interface KeyItem {
  readonly item: Pick<Item, "weight" | "demand" | "half" | "hand" | "turn">;
  readonly source: Sources;
}

/** The items of one compound cut, longest first: of either hand when every length is asked as often left as right, else by hand. */
function keyItems(
  members: readonly number[],
  pieces: readonly StockPiece[],
  turn: number,
  group: SlantGroup,
): KeyItem[] {
  const sum = (list: readonly number[]): number => list.reduce((total, i) => total + pieces[i]!.count, 0);
  const lengths = [...grouped(members, (i) => pieces[i]!.length)].sort(([a], [b]) => b - a);
  const split = lengths.map(([length, all]) => ({
    length,
    left: turn > 0 ? all.filter((i) => pieces[i]!.hand === "left") : [],
    right: turn > 0 ? all.filter((i) => pieces[i]!.hand === "right") : [],
    plain: turn > 0 ? [] : all,
  }));
  // With no turn, or all of one hand, there is nothing to share.
  const single = split.every(({ left }) => sum(left) === 0) || split.every(({ right }) => sum(right) === 0);
  if (single)
    return split.map(({ length, left, right, plain }) => {
      const all = [...left, ...right, ...plain];
      return {
        item: { turn, weight: length + group.cut, half: 0, hand: 0, demand: sum(all) },
        source: { left: [], right: [], plain: all },
      };
    });
  const half = turn / 2;
  const item = (length: number, hand: -1 | 1 | 2, demand: number): KeyItem["item"] => ({
    turn,
    weight: length + group.cut - half,
    half,
    hand,
    demand,
  });
  if (split.every(({ left, right }) => sum(left) === sum(right)))
    return split.map(({ length, left, right, plain }) => ({
      item: item(length, 2, sum(left) * 2),
      source: { left, right, plain },
    }));
  const lefts = split
    .filter(({ left }) => sum(left) > 0)
    .map(({ length, left }): KeyItem => ({ item: item(length, 1, sum(left)), source: { left, right: [], plain: [] } }));
  const rights = split
    .filter(({ right }) => sum(right) > 0)
    .map(({ length, right }): KeyItem => ({
      item: item(length, -1, sum(right)),
      source: { left: [], right, plain: [] },
    }));
  return [...lefts, ...rights];
}

/** Items of which one piece, with what its slant loses, is as long as a board. */
function itemsAsLongAs(length: number, items: readonly Item[], groups: readonly SlantGroup[], unit: number): number[] {
  return items.flatMap((item, i) => {
    const { toe, cut } = groups[item.group]!;
    const needs = (item.weight + 2 * item.half) * unit + toe - cut;
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
