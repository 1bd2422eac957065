import { grouped } from "../model/grouped.ts";
import type { Item, Problem } from "../model/problem.ts";

/** So many states are told apart at most. */
const MOST_STATES = 64;

/** Ends without a partner at one node before some item: from so many of the rarer way, below zero, to so many of the other. Where more are possible these are one state more, of which nothing is known. */
interface Counted {
  readonly node: number;
  low: number;
  high: number;
  many: boolean;
  /** Whether ends of the rarer way are still to come. */
  readonly comes: boolean;
}

/**
 * What a search of one board knows of slanting ends without a partner while it goes through the items: a state, which every item and its number of copies take to another, and what is
 * lost on the way for good.
 *
 * State 0: no piece of the group yet. State 1: none is without a partner. From 2 on, so many at each node that earlier and later items have in common. Ends of the rarer way come first at a node, so those
 * of the other that find none then are lost at once; what is left of the rarer way is lost after the node's last item.
 */
export class EndStates {
  /** States before each item. */
  readonly states: readonly number[];
  /** Whether a group may lose more than that: what is beyond counting, and rings (see looseEnds). */
  readonly inexact: readonly boolean[];
  /** Whether an item of which none is taken changes nothing. */
  readonly passes: readonly boolean[];
  readonly #problem: Problem;
  readonly #counted: readonly (readonly Counted[])[];
  readonly #copies: readonly number[];
  readonly #next: Int32Array[] = [];
  readonly #lost: Float64Array[] = [];

  constructor(problem: Problem) {
    const { items, groups, types } = problem;
    const { room } = types[types.length - 1]!;
    const counted = items.map((): Counted[] => []);
    for (const own of grouped([...items.keys()], (i) => `${items[i]!.group} ${items[i]!.key}`).values())
      countKey(items, own, room, counted);
    this.#problem = problem;
    this.#counted = counted;
    this.states = counted.map((list) => 1 + statesOf(list));
    this.inexact = groups.map((_, g) =>
      items.some(({ group, ends }, i) => group === g && (ends.length > 1 || counted[i]!.some(({ many }) => many))),
    );
    this.#copies = items.map(({ demand, weight }) => Math.min(demand, Math.max(1, Math.floor(room / weight))));
    this.passes = items.map(
      ({ endsGroup }, i) => !endsGroup && JSON.stringify(counted[i]) === JSON.stringify(counted[i + 1]),
    );
  }

  /** Works out all states, before they are asked for; once is enough. */
  *fill(): Generator<void, void> {
    const counted = this.#counted;
    for (let i = this.#next.length; i < counted.length; i++) {
      this.#fillItem(i, counted[i]!, this.#problem.items[i]!.endsGroup ? [] : counted[i + 1]!);
      yield;
    }
  }

  /** The state after so many copies of an item. */
  next(item: number, state: number, copies: number): number {
    return this.#next[item]![state * (this.#copies[item]! + 1) + copies]!;
  }

  /** What is lost by then. */
  lost(item: number, state: number, copies: number): number {
    return this.#lost[item]![state * (this.#copies[item]! + 1) + copies]!;
  }

  #fillItem(i: number, before: readonly Counted[], after: readonly Counted[]): void {
    const { items, groups } = this.#problem;
    const { group, either, ends, endsGroup } = items[i]!;
    const { nodes } = groups[group]!;
    const width = this.#copies[i]! + 1;
    const next = new Int32Array(this.states[i]! * width);
    const lost = new Float64Array(this.states[i]! * width);
    const all = new Set([...before.map(({ node }) => node), ...ends.map(({ node }) => node)]);
    for (let at = 0; at < next.length; at++) {
      const [state, k] = [Math.floor(at / width), at % width];
      if (state === 0 && k === 0) continue;
      const open = openIn(before, Math.max(0, state - 1));
      for (const node of all) {
        let odds = open.get(node) ?? 0;
        const one = after.find((counted) => counted.node === node);
        if (Number.isNaN(odds)) continue;
        odds = either ? -((k - odds) % 2) : odds + netOf(items[i]!, node) * k;
        if (!one || (odds > 0 && !one.comes)) {
          lost[at]! += nodes[node]! * Math.abs(odds);
          odds = 0;
        }
        open.set(node, odds);
      }
      next[at] = endsGroup ? 0 : 1 + placeOf(after, open);
    }
    this.#next.push(next);
    this.#lost.push(lost);
  }
}

const netOf = ({ ends }: Item, node: number): number =>
  ends.reduce((sum, end) => sum + (end.node === node ? end.way : 0), 0);

const sizeOf = ({ low, high, many }: Counted): number => high - low + 1 + (many ? 1 : 0);

const statesOf = (list: readonly Counted[]): number => list.reduce((product, one) => product * sizeOf(one), 1);

/** Ends without a partner in a place: at each node none first, then down to the lowest, then up from one; NaN where that is not known. */
function openIn(list: readonly Counted[], place: number): Map<number, number> {
  const open = new Map<number, number>();
  let rest = place;
  for (const one of list) {
    const size = sizeOf(one);
    const n = rest % size;
    rest = Math.floor(rest / size);
    open.set(one.node, one.many && n === size - 1 ? NaN : n <= -one.low ? -n : n + one.low);
  }
  return open;
}

function placeOf(list: readonly Counted[], open: ReadonlyMap<number, number>): number {
  let [place, stride] = [0, 1];
  for (const one of list) {
    const size = sizeOf(one);
    const odds = open.get(one.node) ?? 0;
    place += stride * (odds >= one.low && odds <= one.high ? (odds <= 0 ? -odds : odds - one.low) : size - 1);
    stride *= size;
  }
  return place;
}

/** What is counted before each item of a key. */
function countKey(items: readonly Item[], own: readonly number[], board: number, counted: Counted[][]): void {
  const nodes = [...new Set(own.flatMap((i) => items[i]!.ends.map(({ node }) => node)))];
  // Of what once was too many nothing is known later on.
  const beyond = new Set<number>();
  for (const i of own) {
    const list = nodes.flatMap((node): Counted[] => {
      const at = own.filter((k) => items[k]!.ends.some((end) => end.node === node));
      if (i <= at[0]! || i > at.at(-1)!) return [];
      if (items[i]!.either) return [{ node, low: -1, high: 0, many: false, comes: false }];
      const net = (k: number): number => netOf(items[k]!, node);
      const comes = at.some((k) => k >= i && net(k) < 0);
      // As many of a way as fill the board, the last perhaps in part.
      const most = (way: number): number => {
        const room = (k: number): number => items[k]!.weight / Math.abs(net(k));
        let [left, count] = [board, 0];
        for (const k of at.filter((k) => k < i && net(k) * way > 0).sort((a, b) => room(a) - room(b))) {
          const ends = Math.min(items[k]!.demand * Math.abs(net(k)), left / room(k));
          left -= ends * room(k);
          count += ends;
        }
        return Math.floor(count + 1e-9);
      };
      return [{ node, low: -most(-1), high: comes ? most(1) : 0, many: beyond.has(node), comes }];
    });
    while (statesOf(list) > MOST_STATES) {
      const widest = list.reduce((a, b) => (b.high - b.low > a.high - a.low ? b : a));
      widest.many = true;
      beyond.add(widest.node);
      if (widest.low < 0) widest.low++;
      else widest.high--;
    }
    counted[i] = list;
  }
}
