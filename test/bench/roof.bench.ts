import type { Cell } from "../../src/registry/worksheetFunction.ts";
import { bundled } from "./bundled.ts";
import type { Row } from "./row.ts";

const TABLES = ["JACKTABLE", "MEMBERS", "PLATEMARKS", "TAKEOFF", "CAUTIONS"];
const WARM = 60;
const CALLS = 31;
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

interface Growth {
  readonly members: number;
  readonly ms: number;
  readonly each: number;
}

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

/** As much of a street as one block takes: a main roof with four wings, blocking and all, that grows with `feet`; some 112 members a foot. */
const street = (feet: number, round: number): Cell[][] => {
  const wide = `${2 * feet}'`;
  return [
    ["", "Main roof", "Wing A", "Wing B", "Wing C", "Wing D"],
    ["Span", `${4 * feet}'`, wide, wide, wide, wide],
    ["Length", `${9 * feet}' ${(round % 190) / 16}"`],
    ["Pitch", 6],
    ["Spacing", 12],
    ["Overhang", 16],
    ["Rafter", "2x10"],
    ["Hip", "2x12"],
    ["Ridge", "2x12"],
    ["Blocking", "both"],
    ["Ends", "hip and hip", "gable", "hip", "gable", "hip"],
    ["Wall", "", "front", "front", "back", "back"],
    ["From left corner", "", wide, `${5 * feet}'`, wide, `${5 * feet}'`],
    ["Out from wall", "", ...Array.from({ length: 4 }, () => `${3 * feet}'`)],
  ];
};
/** Time a member at ten thousand members over that at a thousand: one where a table is linear. */
const [FEW, MANY] = [9, 90];
const MOST_GROWTH = 1.5;

/** Milliseconds of processor, so that what else the machine does counts as little as can be; the middle one of some calls, once the compiler is done. */
function milliseconds(run: () => void, warm = WARM, calls = CALLS): number {
  for (let i = 0; i < warm; i++) run();
  const times = Array.from({ length: calls }, () => {
    const before = process.cpuUsage();
    run();
    const { user, system } = process.cpuUsage(before);
    return (user + system) / 1000;
  });
  return times.sort((a, b) => a - b)[calls >> 1]!;
}

/** Every table of a roof of 200 members and of one with four wings, how it grows with the members, and a grid of 100 roofs, the block read and framed anew each time. */
export async function bench(): Promise<Row[]> {
  const { functions, call } = await bundled();
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
  const count = (table: Cell[][]) =>
    table.slice(1).reduce((sum, row) => sum + Number(row[3]) + Number(row[4]) + Number(row[5]), 0);
  const [members, winged] = [count(answered("MEMBERS")), count(asked("MEMBERS", school(0)))];
  // A page that has been used for a while: what the compiler does with code that is new to it is no table's own time.
  for (const name of TABLES) for (let i = 0; i < WARM; i++) answered(name);
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
        milliseconds(() => answered(name)),
        `${members} members`,
        MOST_MS,
      ),
    ),
    ...WINGED.map((name) =>
      row(
        `${name}, a new roof with four wings`,
        milliseconds(() => asked(name, school(round++))),
        `${winged} members`,
        MOST_WINGED_MS,
      ),
    ),
    ...[...WINGED, "CAUTIONS", "SHEATHING", "SAWSETTINGS", "PIECELIST"].map((name): Row => {
      const [few, many] = [FEW, MANY].map((feet) => {
        const members = count(asked("MEMBERS", street(feet, 0)));
        const ms = milliseconds(() => asked(name, street(feet, round++)), feet === FEW ? 20 : 2, feet === FEW ? 21 : 5);
        return { members, ms, each: (ms * 1000) / members };
      }) as [Growth, Growth];
      return {
        name: `${name}, ${many.members.toLocaleString("en")} members`,
        ratio: many.each / few.each,
        what: `time a member over that of ${few.members.toLocaleString("en")}; ${many.ms.toFixed(0)} ms, ${many.each.toFixed(1)} / ${few.each.toFixed(1)} µs each`,
        most: MOST_GROWTH,
      };
    }),
    row(
      "COMPARE, 10 x 10 roofs",
      milliseconds(
        () =>
          answered(
            "COMPARE",
            [[3, 4, 5, 6, 7, 8, 9, 10, 11, 12]],
            [[12, 13, 14, 15, 16, 18, 19.2, 20, 22, 24]],
            "board feet",
          ),
        3,
        7,
      ),
      "100 roofs",
      20 * MOST_MS,
    ),
  ];
}
