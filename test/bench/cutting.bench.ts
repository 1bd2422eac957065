import loadHighs from "highs";
import { planCuts } from "../../src/cutting/planCuts.ts";
import { planSteps } from "../../src/cutting/search/planSteps.ts";
import { perfect, triplets, uniform } from "../cutting/classics.ts";
import { lengthsOf, realRoofs, wingedRoof } from "../cutting/roofs.ts";
import { hipRoof, twoPitchRoof, village } from "../cutting/instances.ts";
import { chance } from "../solids/chance.ts";
import { lengthTaken } from "../cutting/otherSolver.ts";
import { planOf } from "../cutting/checkPlan.ts";
import type { Instance } from "../cutting/instances.ts";
import { planCutsNow } from "../cutting/planCutsNow.ts";
import type { CutPlan } from "../../src/cutting/stock.ts";
import type { Row } from "./row.ts";

/** Milliseconds that another solver gets for one roof. */
const PATIENCE = 5000;

const LISTS_EACH = 2;
/** Half of so many roofs with wings are refused for their place. */
const WINGED = 70;

/** Processor time, so that other work on the machine does not count. */
function cpu(work: () => void): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

const median = (list: readonly number[]): number => [...list].sort((a, b) => a - b)[list.length >> 1]!;

interface Column {
  readonly way: readonly number[];
  readonly cost: number;
}

/** All ways to cut a board that leave no room for one piece more. The lists are taken without hands here, or there would be far too many. */
function columnsOf({ pieces, boards, kerf }: Instance): Column[] {
  const columns: Column[] = [];
  const counts = pieces.map(() => 0);
  for (const board of boards) {
    const fits = (): boolean => lengthTaken({ pieces, kerf }, counts) <= board.length * (1 + 1e-9);
    const fill = (i: number): void => {
      if (i === pieces.length) {
        const full = pieces.every((piece, k) => {
          if (counts[k] === piece.count) return true;
          counts[k]!++;
          const more = fits();
          counts[k]!--;
          return !more;
        });
        if (full && counts.some((count) => count > 0))
          columns.push({ way: [...counts], cost: board.price ?? board.length });
        return;
      }
      for (counts[i] = 0; counts[i]! <= pieces[i]!.count && fits(); counts[i]!++) fill(i + 1);
      counts[i] = 0;
    };
    fill(0);
  }
  return columns;
}

/** The lists that both solve: a roof of one pitch, one of two, and a mixed list, some 100 pieces each. */
const LISTS: readonly [string, (seed: number, priced: boolean) => Instance][] = [
  ["hip roof", hipRoof],
  ["two-pitch roof", twoPitchRoof],
  ["25 lengths", mixed],
];

function mixed(seed: number, priced: boolean, lengths = 25, most = 7): Instance {
  const random = chance(seed);
  return {
    ...hipRoof(seed, priced),
    pieces: Array.from({ length: lengths }, (_, n) => ({
      name: `${n}`,
      size: "2x6",
      length: 40 + random() * 170,
      count: 1 + Math.floor(random() * most),
    })),
  };
}

const plain = ({ pieces, ...rest }: Instance): Instance => ({
  ...rest,
  pieces: pieces
    .filter(({ hand }) => hand !== "right")
    .map(({ hand, turn: _, spread: __, ...piece }) => ({ ...piece, count: hand ? piece.count * 2 : piece.count })),
});

/** Cutting plans: our search against a general solver that gets every pattern, what is proved how often, and the longest a page waits. */
export async function bench(): Promise<Row[]> {
  const highs = await loadHighs();
  const rows: Row[] = [];
  const ratios: number[] = [];
  for (const [name, make] of LISTS)
    for (const priced of [false, true])
      for (let seed = 1; seed <= LISTS_EACH; seed++) {
        const list = plain(make(seed, priced));
        let plan: CutPlan | null = null;
        const own = cpu(() => (plan = planOf(planCutsNow(list.pieces, list.boards, list))));
        let cost: number | null = null;
        const theirs = cpu(() => {
          const model = modelOf(list, columnsOf(list));
          const solution = highs.solve(model, { mip_rel_gap: 0, time_limit: PATIENCE / 1000, output_flag: false });
          if (solution.Status === "Optimal") cost = solution.ObjectiveValue;
        });
        const { cost: least, proved } = plan!;
        if (cost !== null && Math.abs(cost - least) > 1e-6)
          throw new Error(`${name} ${seed}: HiGHS finds ${cost}, the plan costs ${least}`);
        ratios.push(own / theirs);
        rows.push({
          name: `${name} ${seed}${priced ? ", priced" : ""}: own search / HiGHS over all patterns`,
          ratio: own / theirs,
          most: 2,
          what: `${own.toFixed(0)} ms ${proved ? "proved" : "not proved"}; HiGHS ${theirs.toFixed(0)} ms${cost === null ? ", not solved" : ""}`,
        });
      }
  rows.push({ name: "own search / HiGHS, median", ratio: median(ratios), most: 0.5, what: `${ratios.length} lists` });
  return [...rows, ...proofs(), ...streets(), ...cliff(), ...classics(), ...waits(), await throughput()];
}

/** The integer program over patterns, as text. */
function modelOf({ pieces }: Instance, columns: readonly Column[]): string {
  const demands = pieces.map(
    (piece, i) =>
      `p${i}: ${columns.flatMap(({ way }, c) => (way[i]! > 0 ? [`${way[i]} x${c}`] : [])).join(" + ")} >= ${piece.count}`,
  );
  return `Minimize\n c: ${columns.map((column, c) => `${column.cost} x${c}`).join("\n + ")}\nSubject To\n ${demands.join("\n ")}\nGeneral\n ${columns.map((_, c) => `x${c}`).join("\n ")}\nEnd`;
}

/** Of lists of many lengths, the part that is not proved, and the longest search over the five seconds that it may take. */
function proofs(): Row[] {
  const families: [string, number, number, (seed: number) => Instance][] = [
    ["several roofs, 30 to 99 lengths", 0, 6, (seed) => village(seed, seed % 2 === 0, 4 + (seed % 4))],
    ["60 to 99 mixed lengths", 0, 6, (seed) => mixed(seed, seed % 2 === 0, 60 + 13 * (seed % 4), 4)],
    ["100 to 200 mixed lengths", 0.1, 10, (seed) => mixed(seed, seed % 2 === 0, 110 + 30 * (seed % 4), 2)],
  ];
  return families.flatMap(([name, most, lists, make]) => {
    let [open, slowest] = [0, 0];
    for (let seed = 1; seed <= lists; seed++) {
      const list = make(seed);
      const time = cpu(() => (open += planOf(planCutsNow(list.pieces, list.boards, list)).proved ? 0 : 1));
      slowest = Math.max(slowest, time);
    }
    return [
      { name: `${name}: not proved`, ratio: open / lists, most, what: `${open} of ${lists}` },
      { name: `${name}: slowest / 5 s`, ratio: slowest / 5000, most: 1, what: `${slowest.toFixed(0)} ms` },
    ];
  });
}

/** Roofs that the program framed itself, alone and ordered together, every other street with prices, and roofs with wings: the part that is not proved, by how many lengths there are. */
function streets(): Row[] {
  const open = new Map<string, { lists: number; open: number; most: number; gap: number; slowest: number }>();
  const plan = (key: string, most: number, list: Instance): void => {
    const tally = open.get(key) ?? { lists: 0, open: 0, most, gap: 0, slowest: 0 };
    open.set(key, tally);
    const time = cpu(() => {
      const { proved, cost, bound } = planOf(planCutsNow(list.pieces, list.boards, list));
      if (!proved) tally.open++;
      tally.gap = Math.max(tally.gap, cost / bound - 1);
    });
    tally.lists++;
    tally.slowest = Math.max(tally.slowest, time);
  };
  for (const [roofs, widest, seeds] of [
    [1, 480, 12],
    [1, 960, 6],
    [3, 480, 12],
    [6, 480, 4],
  ] as const)
    for (let seed = 1; seed <= seeds; seed++) {
      const list = realRoofs(seed, roofs, widest);
      if (roofs === 1) plan("one roof", 0, list);
      else if (lengthsOf(list) < 100) plan(`${roofs} roofs together, under 100 lengths`, 0, list);
      else plan(`${roofs} roofs together, from 100 lengths`, 0.1, list);
    }
  for (let seed = 1; seed <= WINGED; seed++) {
    const list = wingedRoof(seed);
    if (list === null) continue;
    if (lengthsOf(list) < 100) plan("one roof with wings, under 100 lengths", 0, list);
    else plan("one roof with wings, from 100 lengths", 0.1, list);
  }
  return [...open].map(([name, { lists, open, most, gap, slowest }]) => ({
    name: `${name}: not proved`,
    ratio: open / lists,
    most,
    what: `${open} of ${lists}, at most ${(gap * 100).toFixed(3)} % over the bound, slowest ${slowest.toFixed(0)} ms`,
  }));
}

/** Lists of so many lengths, each another: where lengths begin to be taken together the gap must not jump. */
function cliff(): Row[] {
  return [299, 301, 399, 401, 1000].map((lengths) => {
    const list = mixed(lengths, false, lengths, 2);
    const { cost, bound, proved } = planOf(planCutsNow(list.pieces, list.boards, list));
    const gap = (cost / bound - 1) * 100;
    return {
      name: `${lengths} lengths: over the bound / 0.25 %`,
      ratio: gap / 0.25,
      most: 1,
      what: `${gap.toFixed(3)} %, ${proved ? "proved" : "not proved"}`,
    };
  });
}

/** Bin packing by published generators (sources in classics.ts): bins over the optimum, which the triplets and perfect packings have by the way they are made; the others by proof. */
function classics(): Row[] {
  const lists: [string, Instance, number | null][] = [
    ["Falkenauer triplets, 60", triplets(1, 60), 20],
    ["Falkenauer triplets, 120", triplets(1, 120), 40],
    ["Falkenauer triplets, 249", triplets(2, 249), 83],
    ["perfect packing, 30 bins of 3", perfect(1, 30, 3), 30],
    ["Scholl set 1, 50 in 100", uniform(1, 50, 100, 1, 100), null],
    ["Scholl set 1, 200 in 120", uniform(1, 200, 120, 20, 100), null],
    ["Scholl set 1, 500 in 150", uniform(1, 500, 150, 30, 100), null],
    ["Scholl set 3", uniform(1, 200, 100_000, 20_000, 35_000), null],
  ];
  return lists.map(([name, list, optimum]) => {
    let plan: CutPlan | null = null;
    const time = cpu(() => (plan = planOf(planCutsNow(list.pieces, list.boards, list))));
    const { cost, bound, proved } = plan!;
    if (optimum !== null && (bound > optimum || cost < optimum)) throw new Error(`${name}: ${cost}, bound ${bound}`);
    return {
      name: `${name}: bins / optimum`,
      ratio: cost / (optimum ?? bound),
      most: 1,
      what: `${cost} bins, ${proved ? "proved" : "not proved"}, ${time.toFixed(0)} ms`,
    };
  });
}

/** The whole plan against the second it may take, and its longest step against the 50 ms that typing may wait. */
function waits(): Row[] {
  let [longest, slowest, open] = [0, 0, 0];
  for (let seed = 1; seed <= 40; seed++) {
    const roof = (seed > 20 ? hipRoof : twoPitchRoof)(seed, seed % 2 === 0);
    const steps = planSteps(roof.pieces, roof.boards, roof);
    const total = cpu(() => {
      for (let done = false; !done;) {
        longest = Math.max(
          longest,
          cpu(() => {
            const step = steps.next();
            done = step.done === true;
            if (step.done && !planOf(step.value).proved) open++;
          }),
        );
      }
    });
    slowest = Math.max(slowest, total);
  }
  return [
    {
      name: "slowest of 40 roofs / 1 s",
      ratio: slowest / 1000,
      most: 1,
      what: `${slowest.toFixed(0)} ms; ${open} not proved`,
    },
    { name: "longest step of 40 roofs / 50 ms", ratio: longest / 50, most: 1, what: `${longest.toFixed(1)} ms` },
  ];
}

/** How often slices are measured against one go. */
const ROUNDS = 3;

/** What letting the page have its turn costs. */
async function throughput(): Promise<Row> {
  // Of many slices each: a roof by itself takes hardly one.
  const roofs = Array.from({ length: 4 }, (_, n) => realRoofs(n + 1, 3, 480));
  // In turns, and the quickest of each: what the engine still compiles and clears away of the rows before would count here.
  let [straight, sliced] = [Infinity, Infinity];
  for (let round = 0; round < ROUNDS; round++) {
    straight = Math.min(
      straight,
      cpu(() => roofs.forEach((roof) => planOf(planCutsNow(roof.pieces, roof.boards, roof)))),
    );
    const before = process.cpuUsage();
    for (const roof of roofs) planOf(await planCuts(roof.pieces, roof.boards, roof));
    const { user, system } = process.cpuUsage(before);
    sliced = Math.min(sliced, (user + system) / 1000);
  }
  return {
    name: "in slices / at one go",
    ratio: sliced / straight,
    most: 1.2,
    what: `4 times three roofs, ${sliced.toFixed(0)} ms / ${straight.toFixed(0)} ms`,
  };
}
