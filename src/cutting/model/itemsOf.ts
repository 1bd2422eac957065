import { grouped } from "./grouped.ts";
import { EITHER, type End } from "./problem.ts";
import { slantKey, slantsOf } from "./slants.ts";
import type { StockPiece } from "../stock.ts";

/**
 * How pieces may lie, which says what ends share a cut: all crown up; turned end for end too; or crown up, but each as itself or as its mirror image, which no more than bounds what can be
 * had, with half as many items.
 */
export type Lie = "upright" | "turning" | "mirrored";

/** The pieces that an item stands for: of an item of either hand by the way of their ends, of mirror images by the side that their first slant goes to, else all in one list. */
export interface Sources {
  readonly left: readonly number[];
  readonly right: readonly number[];
  readonly plain: readonly number[];
}

/** An item in the caller's unit, without its group. */
export interface GroupItem {
  readonly length: number;
  readonly demand: number;
  /** Of its own, from 0; -1 where it shares no slanting cut. */
  readonly key: number;
  readonly hand: number;
  readonly ends: readonly End[];
  readonly source: Sources;
}

/** The items of pieces with parallel plumb cuts, and what a slanting cut shared at each of their nodes saves. */
export interface GroupItems {
  readonly items: readonly GroupItem[];
  readonly turns: readonly number[];
  /** Whether a piece has two ends that may share. */
  readonly chained: boolean;
}

interface OpenEnd {
  readonly at: number;
  readonly way: 1 | -1;
}

/** Ends that share a cut: a head and a low end of one slant or, where pieces may lie end for end, any two whose slants are the same seen so. */
function endsOf(piece: StockPiece, lie: Lie): OpenEnd[] {
  const [low, head] = slantsOf(piece).map(slantKey) as [number, number];
  const end = (slant: number, way: 1 | -1): OpenEnd[] => {
    if (slant === 0) return [];
    if (lie === "mirrored") return [{ at: Math.abs(slant), way }];
    return [lie === "turning" && slant < 0 ? { at: -slant, way: way === 1 ? -1 : 1 } : { at: slant, way }];
  };
  return [...end(low, -1), ...end(head, 1)];
}

/** The items of pieces of one slant: key by key, the greatest turn first, and those that share nothing last; within a key longest first. */
export function itemsOf(members: readonly number[], pieces: readonly StockPiece[], lie: Lie): GroupItems {
  const all = new Map(members.map((i) => [i, endsOf(pieces[i]!, lie)]));
  const ways = new Map<number, Set<number>>();
  for (const { at, way } of [...all.values()].flat()) ways.set(at, (ways.get(at) ?? new Set()).add(way));
  const places = [...ways]
    .flatMap(([at, both]) => (both.size === 2 ? [at] : []))
    .sort((a, b) => Math.abs(b) - Math.abs(a));
  const ends = new Map(
    members.map((i) => [
      i,
      all.get(i)!.flatMap(({ at, way }) => (places.includes(at) ? [{ node: places.indexOf(at), way }] : [])),
    ]),
  );
  const keys = places.map((_, node) => node);
  for (const own of ends.values())
    if (own.length === 2) {
      const [one, other] = own.map(({ node }) => keys[node]!) as [number, number];
      keys.forEach((key, node) => (keys[node] = key === one || key === other ? Math.min(one, other) : key));
    }
  const byKey = grouped(members, (i) => (ends.get(i)!.length > 0 ? keys[ends.get(i)![0]!.node]! : -1));
  return {
    items: [...keys.keys(), -1].flatMap((key) => keyItems(byKey.get(key) ?? [], pieces, ends, key, lie)),
    turns: places.map(Math.abs),
    // Of mirror images it is enough to know what each key loses at least.
    chained: lie !== "mirrored" && [...ends.values()].some((own) => own.length === 2),
  };
}

function keyItems(
  members: readonly number[],
  pieces: readonly StockPiece[],
  ends: ReadonlyMap<number, readonly End[]>,
  key: number,
  lie: Lie,
): GroupItem[] {
  const count = (list: readonly number[]): number => list.reduce((total, i) => total + pieces[i]!.count, 0);
  // What differs in the last bits of a double is one length, the longest.
  const byLength = (list: readonly number[]) =>
    [...grouped(list, (i) => pieces[i]!.length.toPrecision(12)).values()]
      .map((all) => [Math.max(...all.map((i) => pieces[i]!.length)), all] as const)
      .sort(([a], [b]) => b - a);
  const shape = (i: number): string => {
    const [low, head] = slantsOf(pieces[i]!);
    // Mirror images have slants of one sign, or of two, alike.
    const signs = lie === "mirrored" && low * head !== 0 ? String(low * head > 0) : "";
    return `${ends.get(i)!.map(({ node, way }) => `${node}${way > 0 ? "+" : "-"}`)}${signs}`;
  };
  const wayOf = (own: readonly End[]): number => own.reduce((sum, { way }) => sum + way, 0);
  const item = (length: number, all: readonly number[], hand: number, source: Partial<Sources>): GroupItem => ({
    length,
    demand: count(all),
    key,
    hand,
    ends: ends.get(all[0]!)!,
    source: { left: [], right: [], plain: [], ...source },
  });
  const single = members.every((i) => ends.get(i)!.length === 1);
  const sided = (list: readonly number[], way: 1 | -1) => list.filter((i) => ends.get(i)![0]!.way === way);
  const even = (): boolean => byLength(members).every(([, all]) => count(sided(all, 1)) === count(sided(all, -1)));
  if (key >= 0 && lie !== "mirrored" && single && even())
    return byLength(members).map(([length, all]) =>
      item(length, all, EITHER, { left: sided(all, 1), right: sided(all, -1) }),
    );
  const toLeft = (i: number): boolean => (slantsOf(pieces[i]!).find((slant) => slant !== 0) ?? 0) > 0;
  const shapes = [...grouped(members, shape).values()].sort(([a], [b]) => wayOf(ends.get(b!)!) - wayOf(ends.get(a!)!));
  return shapes.flatMap((alike) =>
    byLength(alike).map(([length, all]) => {
      const mirrored = lie === "mirrored" && key >= 0;
      const source = mirrored ? { left: all.filter(toLeft), right: all.filter((i) => !toLeft(i)) } : { plain: all };
      return item(length, all, wayOf(ends.get(all[0]!)!), source);
    }),
  );
}
