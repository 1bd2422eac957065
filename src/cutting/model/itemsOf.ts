import { grouped } from "./grouped.ts";
import type { End } from "./problem.ts";
import { slantKey, slantsOf } from "./slants.ts";
import type { StockPiece } from "../stock.ts";

/** How pieces may lie, which says what ends share a cut: all crown up, or turned end for end too. */
export type Lie = "upright" | "turning";

/** The pieces that an item stands for: of an item of either hand by the way of their ends, else all in one list. */
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
  readonly either: boolean;
  readonly ends: readonly End[];
  readonly source: Sources;
}

/** The items of pieces with parallel plumb cuts, and what a slanting cut shared at each of their nodes saves. */
export interface GroupItems {
  readonly items: readonly GroupItem[];
  readonly turns: readonly number[];
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
    return [lie === "turning" && slant < 0 ? { at: -slant, way: way === 1 ? -1 : 1 } : { at: slant, way }];
  };
  return [...end(low, -1), ...end(head, 1)];
}

/** The items of pieces of one slant: key by key, the greatest turn first, and those that share nothing last; within a key longest first. */
export function itemsOf(members: readonly number[], pieces: readonly StockPiece[], lie: Lie): GroupItems {
  const all = new Map(members.map((i) => [i, endsOf(pieces[i]!, lie)]));
  const count = (at: number, way: number): number =>
    members.reduce(
      (sum, i) => sum + all.get(i)!.filter((end) => end.at === at && end.way === way).length * pieces[i]!.count,
      0,
    );
  const places = [...new Set([...all.values()].flat().map(({ at }) => at))]
    .filter((at) => count(at, 1) > 0 && count(at, -1) > 0)
    .sort((a, b) => Math.abs(b) - Math.abs(a));
  const turned = places.map((at) => count(at, -1) > count(at, 1));
  const ends = new Map(
    members.map((i) => [
      i,
      all.get(i)!.flatMap(({ at, way }): End[] => {
        const node = places.indexOf(at);
        return node < 0 ? [] : [{ node, way: turned[node] ? (-way as 1 | -1) : way }];
      }),
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
    items: [...keys.keys(), -1].flatMap((key) => keyItems(byKey.get(key) ?? [], pieces, ends, key)),
    turns: places.map(Math.abs),
  };
}

function keyItems(
  members: readonly number[],
  pieces: readonly StockPiece[],
  ends: ReadonlyMap<number, readonly End[]>,
  key: number,
): GroupItem[] {
  const count = (list: readonly number[]): number => list.reduce((total, i) => total + pieces[i]!.count, 0);
  // What differs in the last bits of a double is one length, the longest.
  const byLength = (list: readonly number[]) =>
    [...grouped(list, (i) => pieces[i]!.length.toPrecision(12)).values()]
      .map((all) => [Math.max(...all.map((i) => pieces[i]!.length)), all] as const)
      .sort(([a], [b]) => b - a);
  const shape = (i: number): string => `${ends.get(i)!.map(({ node, way }) => `${node}${way > 0 ? "+" : "-"}`)}`;
  const wayOf = (own: readonly End[]): number => own.reduce((sum, { way }) => sum + way, 0);
  const item = (length: number, all: readonly number[], source: Partial<Sources>): GroupItem => ({
    length,
    demand: count(all),
    key,
    either: source.plain === undefined,
    ends: ends.get(all[0]!)!,
    source: { left: [], right: [], plain: [], ...source },
  });
  const single = members.every((i) => ends.get(i)!.length === 1);
  const sided = (list: readonly number[], way: 1 | -1) => list.filter((i) => ends.get(i)![0]!.way === way);
  const even = (): boolean => byLength(members).every(([, all]) => count(sided(all, 1)) === count(sided(all, -1)));
  if (key >= 0 && single && even())
    return byLength(members).map(([length, all]) => item(length, all, { left: sided(all, 1), right: sided(all, -1) }));
  // Node after node, ends of the rarer way first: when the others come it is known which of them find no partner.
  const firstOf = (own: readonly End[]): number => Math.min(...own.map(({ node }) => node));
  const shapes = [...grouped(members, shape).values()].sort(([a], [b]) => {
    const [one, other] = [ends.get(a!)!, ends.get(b!)!];
    return firstOf(one) - firstOf(other) || wayOf(one) - wayOf(other);
  });
  return shapes.flatMap((alike) => byLength(alike).map(([length, all]) => item(length, all, { plain: all })));
}
