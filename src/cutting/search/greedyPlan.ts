import { looseEnds } from "../model/looseEnds.ts";
import { PartPlan } from "./partPlan.ts";
import type { Cut, Pattern, Problem } from "../model/problem.ts";

/** A first plan, board after board, each filled with the largest piece that still fits, in the type of board that costs least for what it holds. */
export function* greedyPlan(problem: Problem): Generator<void, Cut[] | null> {
  const { types } = problem;
  const plan = new PartPlan(problem);
  const sorter = new Largest(problem, plan.wanted);
  for (let n = 1; sorter.any(); n++) {
    let best: Pattern | null = null;
    let bestRate = Infinity;
    for (let type = 0; type < types.length; type++) {
      if (plan.left[type]! < 1) continue;
      const filled = sorter.fill(type);
      if (filled.worth === 0) continue;
      const rate = types[type]!.cost / filled.worth;
      if (rate < bestRate) {
        bestRate = rate;
        best = filled.pattern;
      }
    }
    if (best === null) return null;
    plan.takeMost(best);
    if (n % 20 === 0) yield;
  }
  return plan.cuts;
}

/** Items by weight, with the used up ones skipped. */
class Largest {
  readonly #problem: Problem;
  readonly #remaining: readonly number[];
  /** Items of each group, heaviest first, and for each used up place a later one, with none between that is not used up. */
  readonly #orders: readonly (readonly number[])[];
  readonly #next: readonly Int32Array[];

  constructor(problem: Problem, remaining: readonly number[]) {
    this.#problem = problem;
    this.#remaining = remaining;
    const orders: number[][] = problem.groups.map(() => []);
    problem.items.forEach((item, i) => orders[item.group]!.push(i));
    for (const order of orders) order.sort((a, b) => problem.items[b]!.weight - problem.items[a]!.weight);
    this.#orders = orders;
    this.#next = orders.map((order) => Int32Array.from({ length: order.length + 1 }, (_, n) => n + 1));
  }

  any(): boolean {
    return this.#orders.some((order, group) => this.#available(group, 0) < order.length);
  }

  fill(type: number): { pattern: Pattern; worth: number } {
    const whole = this.#problem.types[type]!.alone.find((i) => this.#remaining[i]! > 0);
    if (whole !== undefined)
      return { pattern: { type, items: [whole], copies: [1] }, worth: this.#problem.items[whole]!.weight };
    const { items, groups, types } = this.#problem;
    const counts = new Map<number, number>();
    const open = new Set<number>();
    let room = types[type]!.room;
    let worth = 0;
    for (;;) {
      let chosen = -1;
      let costs = 0;
      for (let group = 0; group < groups.length; group++) {
        const setup = open.has(group) ? 0 : groups[group]!.setup;
        const found = this.#largest(group, room - setup, counts);
        if (found.item >= 0 && (chosen < 0 || items[found.item]!.weight > items[chosen]!.weight)) {
          chosen = found.item;
          costs = found.costs + setup;
        }
      }
      if (chosen < 0) break;
      const item = items[chosen]!;
      counts.set(chosen, (counts.get(chosen) ?? 0) + 1);
      open.add(item.group);
      room -= costs;
      worth += item.weight;
    }
    const used = [...counts.keys()].sort((a, b) => a - b);
    return { pattern: { type, items: used, copies: used.map((i) => counts.get(i)!) }, worth };
  }

  #largest(group: number, room: number, counts: ReadonlyMap<number, number>): { item: number; costs: number } {
    const { items } = this.#problem;
    const order = this.#orders[group]!;
    let low = 0;
    let high = order.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      const item = items[order[middle]!]!;
      if (item.weight - item.saves > room) low = middle + 1;
      else high = middle;
    }
    // A piece that wants a partner takes a little more than its weight, one that finds it a little less: a few must be tried.
    for (
      let n = this.#available(group, low), tries = 0;
      n < order.length && tries < 12;
      n = this.#available(group, n + 1), tries++
    ) {
      const i = order[n]!;
      const item = items[i]!;
      if ((counts.get(i) ?? 0) >= this.#remaining[i]!) continue;
      const costs = item.weight + this.#moreLost(i, counts);
      if (costs <= room) return { item: i, costs };
    }
    return { item: -1, costs: 0 };
  }

  /** What slanting ends lose more, or less, with one piece more on the board. */
  #moreLost(i: number, counts: ReadonlyMap<number, number>): number {
    const { group, ends } = this.#problem.items[i]!;
    if (ends.length === 0) return 0;
    const list = [...new Set([...counts.keys(), i])];
    const lost = (more: number): number =>
      looseEnds(this.#problem, group, list, (n) => (counts.get(list[n]!) ?? 0) + (list[n] === i ? more : 0));
    return lost(1) - lost(0);
  }

  /** The first place from `place` on whose item is not used up. */
  #available(group: number, place: number): number {
    const order = this.#orders[group]!;
    const next = this.#next[group]!;
    const usedUp = (n: number): boolean => n < order.length && this.#remaining[order[n]!]! === 0;
    let at = place;
    while (usedUp(at)) {
      // Every way through used up items is halved, so that it is not walked again.
      if (usedUp(next[at]!)) next[at] = next[next[at]!]!;
      at = next[at]!;
    }
    return at;
  }
}
