import { functions } from "../../functions/index.ts";
import { call } from "../../src/registry/call.ts";
import type { Cell } from "../../src/registry/worksheetFunction.ts";
import type { Row } from "./row.ts";

const TABLES = ["JACKTABLE", "MEMBERS", "PLATEMARKS", "TAKEOFF", "CAUTIONS"];
const CALLS = 25;
const MOST_MS = 5;

/** A depot of some 200 members; each round is a sixteenth longer, so that no call is answered from a roof framed before. */
const depot = (round: number): Cell[][] => [
  ["Span", `36'`],
  ["Length", 1140 + round / 16],
  ["Pitch", 6],
  ["End pitch", 7],
  ["Spacing", 16],
  ["Overhang", 16],
  ["Rafter", "2x8"],
  ["Ends", "hip and hip"],
  ["Waste", 10],
  ["Boards", `8' to 24' by 2'`],
];

const WINGED = ["MEMBERS", "TAKEOFF", "PLATEMARKS", "JACKTABLE"];
const MOST_WINGED_MS = 10;

/** A school of some 400 members with four wings, one of them laid over; each round is a sixteenth longer. */
const school = (round: number): Cell[][] => [
  ["", "Main roof", "Wing A", "Wing B", "Wing C", "Wing D"],
  ["Span", `36'`, `20'`, `24'`, `22'`, `18'`],
  ["Length", 1380 + round / 16],
  ["Pitch", 6, 6, 7, "", ""],
  ["Spacing", 16],
  ["Overhang", 16],
  ["Rafter", "2x8"],
  ["Ends", "hip and hip", "hip", "gable", "hip", "gable"],
  ["Wall", "", "front", "front", "back", "back"],
  ["From left corner", "", `20'`, `70'`, `24'`, `72'`],
  ["Out from wall", "", `18'`, `14'`, `16'`, `12'`],
  ["Wing framing", "", "", "", "", "laid over"],
  ["Boards", `8' to 32' by 2'`],
];

/** Every table of a roof of 200 members, and a grid of 100 roofs, the block read and framed anew each time. */
export async function bench(): Promise<Row[]> {
  let round = 0;
  const answered = (name: string, ...more: unknown[]): Cell[][] => asked(name, depot(round++), ...more);
  const asked = (name: string, block: Cell[][], ...more: unknown[]): Cell[][] => {
    const answer = call(
      functions.find((one) => one.name === name)!,
      [block, ...more],
    );
    if (!Array.isArray(answer)) throw new Error(`${name}: ${JSON.stringify(answer)}`);
    return answer as Cell[][];
  };
  const milliseconds = (times: number, run: () => void) => {
    const rounds = Array.from({ length: 20 }, () => {
      const start = performance.now();
      for (let i = 0; i < times; i++) run();
      return (performance.now() - start) / times;
    });
    // The first rounds are the compiler's; the best of the others is the least disturbed.
    return Math.min(...rounds.slice(5));
  };
  const count = (table: Cell[][]) =>
    table.slice(1).reduce((sum, row) => sum + Number(row[3]) + Number(row[4]) + Number(row[5]), 0);
  const [members, winged] = [count(answered("MEMBERS")), count(asked("MEMBERS", school(0)))];
  const row = (name: string, ms: number, what: string, most: number): Row => ({
    name,
    ratio: ms / most,
    what: `time of one call over ${most} ms; ${what}, ${ms.toFixed(3)} ms`,
    most: 1,
  });
  return [
    ...TABLES.map((name) =>
      row(
        `${name}, a new roof`,
        milliseconds(CALLS, () => answered(name)),
        `${members} members`,
        MOST_MS,
      ),
    ),
    ...WINGED.map((name) =>
      row(
        `${name}, a new roof with four wings`,
        milliseconds(CALLS, () => asked(name, school(round++))),
        `${winged} members`,
        MOST_WINGED_MS,
      ),
    ),
    row(
      "COMPARE, 10 x 10 roofs",
      milliseconds(1, () =>
        answered(
          "COMPARE",
          [[3, 4, 5, 6, 7, 8, 9, 10, 11, 12]],
          [[12, 13, 14, 15, 16, 18, 19.2, 20, 22, 24]],
          "board feet",
        ),
      ),
      "100 roofs",
      20 * MOST_MS,
    ),
  ];
}
