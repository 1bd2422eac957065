import { messageOf } from "../../functions/words/problemText.ts";
import { functions } from "../../functions/index.ts";
import { call } from "../../src/registry/call.ts";
import { Refusal } from "../../src/registry/refusal.ts";
import type { Cell } from "../../src/registry/worksheetFunction.ts";
import type { Row } from "./row.ts";

const ROUNDS = 5;
const BOARDS = [
  ["Size", "Length", "Price"],
  ...["2x6", "2x8"].flatMap((size) =>
    [8, 10, 12, 14, 16, 18, 20, 22, 24].map((feet) => [
      size,
      feet * 12,
      Math.round(feet * (size === "2x6" ? 81 : 112) + feet * feet) / 100,
    ]),
  ),
];
/** A roof of some hundred members, never planned before: its length differs in the last sixteenth. */
const block = (round: number) => [
  ["Span", `26'`],
  ["Length", 456 + round / 16],
  ["Pitch", 6],
  ["End pitch", 8],
  ["Spacing", 16],
  ["Overhang", 12],
];

/** A T of some hundred and forty members, whose valleys cut feet that share their cuts with jacks' heads. */
const winged = (round: number) => [
  ["", "Main roof", "Wing A"],
  ["Span", `26'`, `16'`],
  ["Length", 480 + round / 16],
  ["Pitch", 6],
  ["Spacing", 16],
  ["Overhang", 16],
  ["Ends", "hip and hip", "hip"],
  ["Wall", "", "front"],
  ["From left corner", "", `12'`],
  ["Out from wall", "", `10'`],
];

/** LUMBERORDER of a whole roof: its time over the second that is allowed, the longest it keeps the page from its turn over 50 ms, and what STICKPLAN adds. */
export async function bench(): Promise<Row[]> {
  const [order, plan, members] = ["LUMBERORDER", "STICKPLAN", "MEMBERS"].map((name) =>
    functions.find((one) => one.name === name)!,
  ) as [(typeof functions)[number], (typeof functions)[number], (typeof functions)[number]];
  const count = (await rowsOf(members, [block(0)]))
    .slice(1)
    .reduce((sum, row) => sum + Number(row[3]) + Number(row[4]) + Number(row[5]), 0);
  const [times, again, stalls, wings]: [number[], number[], number[], number[]] = [[], [], [], []];
  for (let round = 0; round < 2 * ROUNDS; round++) {
    // Every other one has a wing.
    const cells = [round % 2 === 0 ? block(round) : winged(round), BOARDS];
    let last = performance.now();
    let worst = 0;
    let running = true;
    const tick = (): void => {
      const now = performance.now();
      worst = Math.max(worst, now - last);
      last = now;
      if (running) setImmediate(tick);
    };
    tick();
    const start = performance.now();
    const rows = await rowsOf(order, cells);
    (round % 2 === 0 ? times : wings).push(performance.now() - start);
    running = false;
    // A search that never gave a turn away held the page from its start.
    stalls.push(Math.max(worst, performance.now() - last));
    const said = String(rows.at(-1)![rows[0]!.indexOf("Note")]);
    if (!said.startsWith("proved")) throw new Error(`Round ${round} was not proved: ${said}`);
    const second = performance.now();
    await rowsOf(plan, cells);
    if (round % 2 === 0) again.push(performance.now() - second);
  }
  const [time, stall, more, wing] = [times, stalls, again, wings].map(
    (all) => [...all].sort((a, b) => a - b)[all.length >> 1]!,
  ) as [number, number, number, number];
  return [
    {
      name: "LUMBERORDER of a roof",
      ratio: time / 1000,
      most: 1,
      what: `time over 1 s: ${time.toFixed(0)} ms for ${count} members with prices, proved least; slowest of ${ROUNDS} ${Math.max(...times).toFixed(0)} ms`,
    },
    {
      name: "LUMBERORDER of a roof with a wing",
      ratio: wing / 1000,
      most: 1,
      what: `time over 1 s: ${wing.toFixed(0)} ms, proved least; slowest of ${ROUNDS} ${Math.max(...wings).toFixed(0)} ms`,
    },
    {
      name: "longest stall meanwhile",
      ratio: stall / 50,
      most: 1,
      what: `over 50 ms: ${stall.toFixed(0)} ms without a turn for anything else`,
    },
    {
      name: "STICKPLAN after it",
      ratio: more / time,
      most: 0.5,
      what: `time over LUMBERORDER's: ${more.toFixed(1)} ms, for the search is shared`,
    },
  ];
}

async function rowsOf(
  definition: (typeof functions)[number],
  cells: readonly unknown[],
): Promise<readonly (readonly Cell[])[]> {
  const answer = await call(definition, cells);
  if (!Array.isArray(answer)) throw new Error(answer instanceof Refusal ? messageOf(answer) : definition.name);
  return answer as readonly (readonly Cell[])[];
}
