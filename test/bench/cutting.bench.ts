import loadHighs from "highs";
import { solve } from "yalps";
import { planCuts } from "../../src/cutting/planCuts.ts";
import { planSteps } from "../../src/cutting/search/planSteps.ts";
import { chance, hipRoof, twoPitchRoof } from "../cutting/instances.ts";
import { lengthTaken } from "../cutting/otherSolver.ts";
import { planOf } from "../cutting/checkPlan.ts";
import type { Instance } from "../cutting/instances.ts";
import type { Row } from "./row.ts";

/** Milliseconds that another solver gets for one roof. */
const PATIENCE = 5000;

const LISTS_EACH = 5;

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
    const fits = (): boolean => lengthTaken(pieces, counts, kerf) <= board.length * (1 + 1e-9);
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

/** The lists that all three solve: a roof of one pitch, one of two, and a mixed list, some 100 pieces each. */
const LISTS: readonly [string, (seed: number, priced: boolean) => Instance][] = [
  ["hip roof", hipRoof],
  ["two-pitch roof", twoPitchRoof],
  ["25 lengths", mixed],
];

function mixed(seed: number, priced: boolean): Instance {
  const random = chance(seed);
  return {
    ...hipRoof(seed, priced),
    pieces: Array.from({ length: 25 }, (_, n) => ({
      name: `${n}`,
      size: "2x6",
      length: 40 + random() * 170,
      count: 1 + Math.floor(random() * 7),
    })),
  };
}

const plain = ({ pieces, ...rest }: Instance): Instance => ({
  ...rest,
  pieces: pieces
    .filter(({ hand }) => hand !== "right")
    .map(({ hand, turn: _, spread: __, ...piece }) => ({ ...piece, count: hand ? piece.count * 2 : piece.count })),
});

/** Cutting plans: our search against two general solvers that get every pattern, and the longest a page waits. */
export async function bench(): Promise<Row[]> {
  const highs = await loadHighs();
  const rows: Row[] = [];
  for (const [name, make] of LISTS)
    for (const priced of [false, true]) {
      const times = { own: [] as number[], highs: [] as number[], yalps: [] as number[] };
      const open = { own: 0, highs: 0, yalps: 0 };
      let columnsSeen = 0;
      for (let seed = 1; seed <= LISTS_EACH; seed++) {
        const roof = plain(make(seed, priced));
        let cost = Infinity;
        times.own.push(
          cpu(() => {
            const plan = planOf(now(roof));
            cost = plan.cost;
            if (!plan.proved) open.own++;
          }),
        );
        let columns: Column[] = [];
        const listing = cpu(() => (columns = columnsOf(roof)));
        columnsSeen += columns.length;
        times.highs.push(
          listing +
            cpu(() => {
              const demands = roof.pieces.map(
                (piece, i) =>
                  `p${i}: ${columns.flatMap(({ way }, c) => (way[i]! > 0 ? [`${way[i]} x${c}`] : [])).join(" + ")} >= ${piece.count}`,
              );
              const model = `Minimize\n c: ${columns.map((column, c) => `${column.cost} x${c}`).join("\n + ")}\nSubject To\n ${demands.join("\n ")}\nGeneral\n ${columns.map((_, c) => `x${c}`).join("\n ")}\nEnd`;
              const solution = highs.solve(model, { mip_rel_gap: 0, time_limit: PATIENCE / 1000, output_flag: false });
              if (solution.Status !== "Optimal") open.highs++;
              else if (Math.abs(solution.ObjectiveValue - cost) > 1e-6)
                throw new Error(`seed ${seed}: HiGHS finds ${solution.ObjectiveValue}, the plan costs ${cost}`);
            }),
        );
        times.yalps.push(
          listing +
            cpu(() => {
              const variables = columns.map(
                (column, c) =>
                  [
                    `x${c}`,
                    {
                      cost: column.cost,
                      ...Object.fromEntries(column.way.flatMap((count, i) => (count > 0 ? [[`p${i}`, count]] : []))),
                    },
                  ] as const,
              );
              const constraints = Object.fromEntries(roof.pieces.map((piece, i) => [`p${i}`, { min: piece.count }]));
              const solution = solve(
                { direction: "minimize", objective: "cost", constraints, variables, integers: true },
                { timeout: PATIENCE, tolerance: 0, maxIterations: Infinity },
              );
              if (solution.status !== "optimal") open.yalps++;
            }),
        );
      }
      for (const other of ["HiGHS", "yalps"] as const) {
        const theirs =
          other === "HiGHS" ? { times: times.highs, open: open.highs } : { times: times.yalps, open: open.yalps };
        const what = `median ${median(times.own).toFixed(1)} ms, ${open.own} of ${LISTS_EACH} not proved; the other ${median(theirs.times).toFixed(1)} ms, ${theirs.open} not proved in ${PATIENCE / 1000} s (${Math.round(columnsSeen / LISTS_EACH)} patterns)`;
        rows.push({
          name: `${name}${priced ? ", priced" : ""}: own search / ${other} over all patterns`,
          ratio: median(times.own) / median(theirs.times),
          what,
        });
      }
    }
  return [...rows, ...waits(), await throughput()];
}

function now(roof: Instance): ReturnType<ReturnType<typeof planSteps>["next"]>["value"] & object {
  const steps = planSteps(roof.pieces, roof.boards, roof);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
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

/** What letting the page have its turn costs. */
async function throughput(): Promise<Row> {
  const roofs = Array.from({ length: 10 }, (_, n) => hipRoof(n + 1, true));
  let start = performance.now();
  for (const roof of roofs) planOf(now(roof));
  const straight = performance.now() - start;
  start = performance.now();
  for (const roof of roofs) planOf(await planCuts(roof.pieces, roof.boards, roof));
  const sliced = performance.now() - start;
  return {
    name: "in slices / at one go",
    ratio: sliced / straight,
    what: `10 hip roofs with prices, ${sliced.toFixed(0)} ms / ${straight.toFixed(0)} ms`,
  };
}
