import loadHighs from "highs";
import type { Instance } from "./instances.ts";

// Least costs from HiGHS (an open-source solver of the University of Edinburgh), by two models that share no code with src/cutting: the rule of what fits is
// written here again from trade.md's sentence, in plain doubles.

const loaded = loadHighs();

/** The least cost of a model in the LP format; null where nothing satisfies it. */
export async function optimum(model: string): Promise<number | null> {
  const solution = (await loaded).solve(model, { mip_rel_gap: 0, mip_abs_gap: 1e-7, output_flag: false });
  if (solution.Status === "Infeasible") return null;
  if (solution.Status !== "Optimal") throw new Error(`HiGHS: ${solution.Status}`);
  return solution.ObjectiveValue;
}

/** What slanting cuts save at most in a row of pieces of one slant, given how many of each and where the row ends so far: every order is tried, and where `turning` every piece either way. */
function sharedAtBest(
  ends: readonly (readonly [left: number, right: number])[],
  counts: readonly number[],
  turning: boolean,
  at = 0,
  known = new Map<string, number>(),
): number {
  const key = `${at} ${counts.join(" ")}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  let most = 0;
  ends.forEach(([low, head], i) => {
    if (counts[i] === 0) return;
    const rest = counts.map((count, k) => (k === i ? count - 1 : count));
    for (const [left, right] of turning ? [[low, head] as const, [-head, -low] as const] : [[low, head] as const])
      most = Math.max(most, (left === at ? Math.abs(left) : 0) + sharedAtBest(ends, rest, turning, right, known));
  });
  known.set(key, most);
  return most;
}

/** What pieces take of a board, given how many of each: lengths, a kerf between neighbors, a lean per slant, less a turn for every left and right pair where one may be turned, or for every cut that slanting ends share. */
export function lengthTaken(
  { pieces, kerf, crownDown = false }: Pick<Instance, "pieces" | "kerf" | "crownDown">,
  counts: readonly number[],
): number {
  const leans = new Map<string, number>();
  const hands = new Map<string, { left: number; right: number; turn: number }>();
  const slanted = pieces.some(({ slants }) => slants?.some((slant) => slant !== 0));
  let [total, number] = [0, 0];
  pieces.forEach(({ length, slant = "", lean = 0, hand = "plain", turn = 0 }, i) => {
    const count = counts[i]!;
    if (count === 0) return;
    total += count * length;
    number += count;
    leans.set(slant, lean);
    if (slanted || hand === "plain" || !crownDown) return;
    const pair = hands.get(`${slant} ${turn}`) ?? { left: 0, right: 0, turn };
    pair[hand] += count;
    hands.set(`${slant} ${turn}`, pair);
  });
  for (const [slant, lean] of leans) {
    total += lean;
    if (!slanted) continue;
    const own = [...pieces.keys()].filter((i) => counts[i]! > 0 && (pieces[i]!.slant ?? "") === slant);
    const ends = own.map((i) => pieces[i]!.slants ?? ([0, 0] as const));
    total -= sharedAtBest(
      ends,
      own.map((i) => counts[i]!),
      crownDown,
    );
  }
  for (const { left, right, turn } of hands.values()) total -= Math.min(left, right) * turn;
  return total + Math.max(0, number - 1) * kerf;
}

/** Whether a board holds pieces: less its trim, or one piece alone that is as long as the board. */
function holds(list: Instance, length: number, counts: readonly number[]): boolean {
  const taken = lengthTaken(list, counts);
  const alone = counts.reduce((sum, count) => sum + count, 0) === 1 && Math.abs(taken - length) <= length * 1e-9;
  return alone || taken <= length * (1 + 1e-9) - (list.trim ?? 0);
}

/** Every way to fill a board, written down; whole numbers of each by HiGHS. Null when there is no plan. */
export async function leastByPatterns(list: Instance): Promise<number | null> {
  const { pieces, boards } = list;
  const longest = Math.max(...boards.map((board) => board.length));
  const ways: number[][] = [];
  const counts = pieces.map(() => 0);
  const fill = (i: number): void => {
    if (i === pieces.length) {
      if (counts.some((count) => count > 0)) ways.push([...counts]);
      return;
    }
    for (let count = 0; count <= pieces[i]!.count; count++) {
      counts[i] = count;
      // A longer way never takes less, so nothing more fits either; half a turn short of that for a partner still to come.
      if (lengthTaken(list, counts) - 3 * pieces.length > longest) break;
      fill(i + 1);
    }
    counts[i] = 0;
  };
  fill(0);
  const columns: { way: number[]; board: number }[] = [];
  for (const way of ways) {
    boards.forEach((board, j) => {
      if (holds(list, board.length, way)) columns.push({ way, board: j });
    });
  }
  if (columns.length === 0) return null;
  return leastOfColumns(
    pieces.map((piece) => piece.count),
    columns,
    boards.map((board) => ({ cost: board.price ?? board.length, count: board.count ?? Infinity })),
  );
}

/** The least cost of numbers of given ways to cut boards, whole ones unless said otherwise; null when no numbers of them do. */
export async function leastOfColumns(
  demands: readonly number[],
  columns: readonly { readonly way: readonly number[]; readonly board: number }[],
  boards: readonly { readonly cost: number; readonly count: number }[],
  whole = true,
): Promise<number | null> {
  if (demands.some((count, i) => count > 0 && columns.every(({ way }) => way[i] === 0))) return null;
  const rows = demands.flatMap((count, i) =>
    count === 0
      ? []
      : [`p${i}: ${columns.flatMap(({ way }, c) => (way[i]! > 0 ? [`${way[i]} x${c}`] : [])).join(" + ")} >= ${count}`],
  );
  boards.forEach((board, j) => {
    const own = columns.flatMap((column, c) => (column.board === j ? [`x${c}`] : []));
    if (board.count < Infinity && own.length > 0) rows.push(`b${j}: ${own.join(" + ")} <= ${board.count}`);
  });
  const costs = columns.map(({ board }, c) => `${boards[board]!.cost} x${c}`);
  const general = whole ? `General\n ${columns.map((_, c) => `x${c}`).join("\n ")}\n` : "";
  return optimum(`Minimize\n c: ${costs.join("\n + ")}\nSubject To\n ${rows.join("\n ")}\n${general}End`);
}

/** Every board with a place of its own, every piece put on one by HiGHS: no patterns at all. For small lists, without trim. */
export async function leastByPlaces({ pieces, boards, kerf, crownDown }: Instance): Promise<number | null> {
  const most = pieces.reduce((sum, piece) => sum + piece.count, 0);
  const slants = [...new Set(pieces.map((piece) => piece.slant ?? ""))];
  const keys = [
    ...new Set(
      pieces.flatMap(({ hand = "plain", slant = "", turn = 0 }) =>
        hand === "plain" || !crownDown ? [] : [`${slant}|${turn}`],
      ),
    ),
  ];
  const [rows, whole, binary, costs] = [[] as string[], [] as string[], [] as string[], [] as string[]];
  for (let k = 0; k < most; k++) {
    const used = boards.map((board, j) => ({ name: `y${k}_${j}`, board }));
    used.forEach(({ name, board }) => {
      binary.push(name);
      costs.push(`${board.price ?? board.length} ${name}`);
    });
    rows.push(`one${k}: ${used.map(({ name }) => name).join(" + ")} <= 1`);
    pieces.forEach((_, i) => whole.push(`n${i}_${k}`));
    const parts = pieces.map((piece, i) => `+ ${piece.length + kerf} n${i}_${k}`);
    slants.forEach((slant, s) => {
      const own = pieces.flatMap((piece, i) => ((piece.slant ?? "") === slant ? [i] : []));
      const lean = pieces[own[0]!]!.lean ?? 0;
      binary.push(`g${s}_${k}`);
      parts.push(`+ ${lean} g${s}_${k}`);
      own.forEach((i) => rows.push(`g${s}_${i}_${k}: n${i}_${k} - ${pieces[i]!.count} g${s}_${k} <= 0`));
    });
    keys.forEach((key, q) => {
      const [slant, turn] = key.split("|") as [string, string];
      whole.push(`q${q}_${k}`);
      parts.push(`- ${turn} q${q}_${k}`);
      for (const hand of ["left", "right"]) {
        const own = pieces.flatMap((piece, i) =>
          piece.hand === hand && (piece.slant ?? "") === slant && String(piece.turn) === turn ? [`- n${i}_${k}`] : [],
        );
        rows.push(`q${q}_${hand}_${k}: q${q}_${k} ${own.join(" ")} <= 0`);
      }
    });
    rows.push(
      `room${k}: ${parts.join(" ")} ${used.map(({ name, board }) => `- ${board.length * (1 + 1e-9) + kerf} ${name}`).join(" ")} <= 0`,
    );
    // Boards change places freely; the dearer first saves most of the search.
    if (k > 0)
      rows.push(
        `order${k}: ${used.map(({ name, board }) => `${board.length} ${name}`).join(" + ")} ${boards.map((board, j) => `- ${board.length} y${k - 1}_${j}`).join(" ")} <= 0`,
      );
  }
  pieces.forEach((piece, i) =>
    rows.push(`cut${i}: ${Array.from({ length: most }, (_, k) => `n${i}_${k}`).join(" + ")} = ${piece.count}`),
  );
  boards.forEach((board, j) => {
    if (board.count !== undefined)
      rows.push(`stock${j}: ${Array.from({ length: most }, (_, k) => `y${k}_${j}`).join(" + ")} <= ${board.count}`);
  });
  return optimum(
    `Minimize\n c: ${costs.join("\n + ")}\nSubject To\n ${rows.join("\n ")}\nGeneral\n ${whole.join("\n ")}\nBinary\n ${binary.join("\n ")}\nEnd`,
  );
}
