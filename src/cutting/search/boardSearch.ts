import { looseEnds } from "../model/looseEnds.ts";
import { usedLength } from "../model/usedLength.ts";
import { EndStates } from "./endStates.ts";
import { KnapsackBounds } from "./knapsackBounds.ts";
import type { Item, Pattern, Problem } from "../model/problem.ts";

/** What the search of one board is asked. */
export interface BoardQuestion {
  /** values[i][k]: what k copies of item i are worth; values[i][0] is 0, and there are as many entries as copies may be cut. */
  readonly values: readonly Float64Array[];
  /** What a board of each type must be worth more than. */
  readonly thresholds: Float64Array;
  /** Steps for each type of board, after which the best so far is the answer. */
  readonly limit?: number;
}

/** Patterns, and whether these are all that were asked for. */
export interface Collected {
  readonly patterns: readonly Pattern[];
  readonly complete: boolean;
}

/** Patterns over the threshold of their type of board, the most valuable of each type last of its type, and what no pattern is worth more than. */
export interface BoardAnswer {
  readonly patterns: readonly Pattern[];
  /** The pattern's value, or the threshold where there is none; more than that only where the search was cut short. */
  readonly most: Float64Array;
}

/** Steps for a node. */
const NODE = 10;
/** Steps between two pauses: about a millisecond. */
const PAUSE = 500_000;

/** How finely room is divided for the bounds at first, and how many numbers the finest tables may hold (32 MB). */
const CELLS = 512;
const MOST_ENTRIES = 4_000_000;

/** Pieces worth just what they weigh make a puzzle without end; a search that takes so many steps is such a one. */
const LIMIT = 30_000_000;
/** Of the patterns that one search comes upon, so many are answered: the best and those before. */
const ANSWERS = 3;

/** A pattern as text. */
export function patternKey({ type, items, copies }: Pattern): string {
  return `${type}:${items.join(",")}:${copies.join(",")}`;
}

/**
 * Finds the most valuable way to cut one board, for every type of board: a bounded knapsack with setups per group and what slanting ends without a partner lose.
 *
 * Depth first over copies of one item after another. What the items still to come can add at most is read from {@link KnapsackBounds}, so close a bound that
 * little more than the best patterns is visited. Exact: fits are decided in the problem's whole numbers. One search is kept for all questions
 * about a problem, as its arrays are.
 */
export class BoardSearch {
  /** Work done so far. */
  steps = 0;
  #best = 0;
  #found: Pattern[] = [];
  /** Where patterns are collected; null while the best one is looked for. */
  #list: Pattern[] | null = null;
  #type = 0;
  #level = 0;
  #question: BoardQuestion = { values: [], thresholds: new Float64Array(0) };
  readonly #problem: Problem;
  /** The items of each group. */
  readonly #members: readonly (readonly number[])[];
  /** Made with the first question: for a very long list, none is asked. */
  #ends: EndStates | null = null;
  #bounds: KnapsackBounds | null = null;
  // One entry a level: copies tried, and what is left and open before them.
  readonly #copies: Int32Array;
  readonly #room: Float64Array;
  readonly #worth: Float64Array;
  readonly #state: Int32Array;
  /** Lost so far by the ends of the group. */
  readonly #lost: Float64Array;

  constructor(problem: Problem) {
    const levels = problem.items.length + 1;
    this.#problem = problem;
    this.#members = problem.groups.map((_, g) =>
      [...problem.items.keys()].filter((i) => problem.items[i]!.group === g),
    );
    this.#copies = new Int32Array(levels);
    this.#room = new Float64Array(levels);
    this.#worth = new Float64Array(levels);
    this.#state = new Int32Array(levels);
    this.#lost = new Float64Array(levels);
  }

  *ask(question: BoardQuestion): Generator<void, BoardAnswer> {
    const bounds = yield* this.#begin(question);
    const before = this.steps;
    const patterns: Pattern[] = [];
    const most = new Float64Array(this.#problem.types.length);
    for (let type = 0; type < most.length; type++) {
      this.#start(type);
      const end = this.steps + (question.limit ?? LIMIT);
      let ended = this.#advance(PAUSE);
      while (!ended && this.steps < end) {
        yield;
        ended = this.#advance(PAUSE);
      }
      this.#alone(type);
      most[type] = ended ? this.#best : Math.max(this.#best, bounds.most(0, 0, this.#room[0]!));
      patterns.push(...this.#found.slice(-ANSWERS));
    }
    // Many nodes for the size of the tables: finer ones will spare more than they cost.
    if (this.steps - before > NODE * bounds.entries && bounds.entries * 2 < MOST_ENTRIES)
      this.#bounds = new KnapsackBounds(this.#problem, this.#ends!, bounds.cells * 2);
    return { patterns, most };
  }

  /**
   * Every pattern worth more than its threshold that leaves no room for one piece more and fits no cheaper board, up to so many.
   *
   * Any plan can be made one of such patterns for no more money: pieces are added, then boards exchanged for cheaper ones.
   */
  *collect(question: BoardQuestion, most: number): Generator<void, Collected> {
    yield* this.#begin(question);
    const patterns: Pattern[] = [];
    this.#list = patterns;
    let complete = true;
    for (let type = 0; type < this.#problem.types.length && complete; type++) {
      this.#start(type);
      const end = this.steps + (question.limit ?? LIMIT);
      let ended = false;
      while (!(ended = this.#advance(PAUSE)) && this.steps < end && patterns.length <= most) yield;
      this.#alone(type);
      complete = ended && patterns.length <= most;
    }
    this.#list = null;
    return { patterns, complete };
  }

  *#begin(question: BoardQuestion): Generator<void, KnapsackBounds> {
    yield;
    this.#question = question;
    const ends = (this.#ends ??= new EndStates(this.#problem));
    yield* ends.fill();
    const bounds = (this.#bounds ??= new KnapsackBounds(this.#problem, ends, CELLS));
    this.steps += yield* bounds.fill(question.values);
    return bounds;
  }

  /** Pieces that take an untrimmed board, to which the search of the room does not come. */
  #alone(type: number): void {
    for (const i of this.#problem.types[type]!.alone) {
      const worth = this.#question.values[i]![1] ?? 0;
      if (worth <= this.#best) continue;
      const pattern = { type, items: [i], copies: [1] };
      if (this.#list) this.#list.push(pattern);
      else {
        this.#best = worth;
        this.#found.push(pattern);
      }
    }
  }

  #start(type: number): void {
    this.#type = type;
    this.#best = this.#question.thresholds[type]!;
    this.#found = [];
    this.#level = 0;
    this.#room[0] = this.#problem.types[type]!.room;
    this.#copies[0] = this.#most(0);
  }

  /** @returns whether the search has ended. */
  #advance(limit: number): boolean {
    const { items } = this.#problem;
    const copies = this.#copies;
    for (const end = this.steps + limit; this.steps < end;) {
      this.steps += NODE;
      if (this.#level === items.length) {
        this.#keep();
        copies[--this.#level]!--;
      } else if (copies[this.#level]! < 0) {
        if (--this.#level < 0) return true;
        copies[this.#level]!--;
      } else if (this.#descend(items[this.#level]!, copies[this.#level]!)) {
        if (this.#level < items.length) copies[this.#level] = this.#most(this.#level);
      } else copies[this.#level]!--;
    }
    return false;
  }

  #most(level: number): number {
    return Math.min(
      this.#question.values[level]!.length - 1,
      Math.floor(this.#room[level]! / this.#problem.items[level]!.weight),
    );
  }

  #descend(item: Item, count: number): boolean {
    const level = this.#level;
    const state = this.#state[level]!;
    const ends = this.#ends!;
    const lost = ends.lost(level, state, count);
    let room = this.#room[level]! - count * item.weight - lost;
    if (count > 0 && state === 0) room -= this.#problem.groups[item.group]!.setup;
    const known = this.#lost[level]! + lost;
    if (item.endsGroup && ends.inexact[item.group]) room -= this.#moreLost(item.group, known);
    if (room < 0) return false;
    const next = ends.next(level, state, count);
    const worth = this.#worth[level]! + this.#question.values[level]![count]!;
    if (worth + this.#bounds!.most(level + 1, next, room) <= this.#best) return false;
    this.#level = level + 1;
    this.#room[this.#level] = room;
    this.#worth[this.#level] = worth;
    this.#state[this.#level] = next;
    this.#lost[this.#level] = item.endsGroup ? 0 : known;
    return true;
  }

  /** What ends lose beyond what is known of them is clear when the last of their group is chosen. */
  #moreLost(group: number, known: number): number {
    const own = this.#members[group]!;
    this.steps += NODE * own.length;
    return looseEnds(this.#problem, group, own, (n) => this.#copies[own[n]!]!) - known;
  }

  #keep(): void {
    const used: number[] = [];
    const counts: number[] = [];
    for (let i = 0; i < this.#level; i++) {
      if (this.#copies[i]! > 0) {
        used.push(i);
        counts.push(this.#copies[i]!);
      }
    }
    if (this.#list) {
      if (isFull(this.#problem, this.#copies, this.#question.values, this.#type, used, counts))
        this.#list.push({ type: this.#type, items: used, copies: counts });
      return;
    }
    this.#best = this.#worth[this.#level]!;
    this.#found.push({ type: this.#type, items: used, copies: counts });
  }
}

/** Whether a pattern leaves no room for one piece more, and needs a board as dear as its own. */
function isFull(
  problem: Problem,
  all: Int32Array,
  values: readonly Float64Array[],
  type: number,
  items: readonly number[],
  copies: readonly number[],
): boolean {
  const own = problem.types[type]!;
  const used = usedLength(problem, items, copies);
  for (let j = 0; j < type; j++) {
    const other = problem.types[j]!;
    if (other.count === Infinity && other.cost <= own.cost && other.room >= used) return false;
  }
  const left = own.room - used;
  return problem.items.every((item, i) => {
    if (item.weight - item.saves > left || all[i]! >= values[i]!.length - 1) return true;
    const more = [...new Set([...items, i])].sort((a, b) => a - b);
    const counts = more.map((k) => all[k]! + (k === i ? 1 : 0));
    return usedLength(problem, more, counts) > own.room;
  });
}
