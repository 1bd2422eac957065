import { describe, expect, it } from "vitest";
import { leastByPatterns } from "../cutting/otherSolver.ts";
import { asked } from "./asked.ts";

type Table = readonly (readonly unknown[])[];
const tableOf = async (name: string, ...cells: readonly unknown[]) => (await asked(name, ...cells)) as unknown as Table;

const ONE = [
  ["Span", "12'"],
  ["Length", "16'"],
  ["Pitch", 6],
  ["Overhang", 12],
  ["Job name", "Pump house"],
];
const OTHER = [
  ["Span", "10'"],
  ["Length", "14'"],
  ["Pitch", 9],
  ["Spares", 1],
  ["Job name", "Wood shed"],
];
const TRIM = 0.5;
const SIZE = "2x6";
/** Depth of a 2x6, as the trade has it. */
const DEPTH = 5.5;

/** The rows of one size as an instance of the other solver's: a slant for each pitch, which loses depth x pitch once a board. Without a kerf, for what a slanting one takes is our own rule. */
function instanceOf(list: Table, boards: readonly { length: number; count?: number }[]) {
  const [headings] = list as [readonly unknown[]];
  const at = (row: readonly unknown[], heading: string) => row[headings.indexOf(heading)];
  const pieces = list
    .filter((row) => at(row, "Size") === SIZE)
    .map((row) => ({
      name: String(at(row, "Piece")),
      size: SIZE,
      length: Number(at(row, "Length")),
      count: Number(at(row, "Count")),
      lean: (DEPTH * Number(at(row, "Pitch"))) / 12,
      slant: `pitch ${String(at(row, "Pitch"))}`,
    }));
  return { pieces, boards: boards.map((board) => ({ size: SIZE, ...board })), kerf: 0, trim: TRIM, crownDown: false };
}

/** The sum over the boards of that size. */
const bought = (order: Table) =>
  order.filter(([size]) => size === SIZE).reduce((sum, row) => sum + Number(row[1]) * Number(row[2]), 0);

// The least lengths are HiGHS's (see test/cutting/otherSolver.ts).
describe("one order for the stacked lists of two roofs, against an independent solver", { timeout: 60_000 }, () => {
  const cases = [
    ["as many boards as wanted", [{ length: 96 }, { length: 144 }]],
    ["a few long ones", [{ length: 96 }, { length: 120 }, { length: 144, count: 5 }]],
    ["one odd board", [{ length: 96 }, { length: 108, count: 2 }, { length: 144, count: 9 }]],
  ] as const;
  it.each(cases)("%s: crown up, trimmed, the least", async (_, boards) => {
    const list = [...(await tableOf("PIECELIST", ONE)), ...(await tableOf("PIECELIST", OTHER))];
    const stock = [
      ["Size", "Length", "Count"],
      ...boards.map((board) => [SIZE, board.length, "count" in board ? board.count : ""]),
    ];
    const own = [...stock, ["2x8", 240, ""]];
    const order = await tableOf("LUMBERORDER", list, own, 0, TRIM, "no");
    const least = await leastByPatterns(instanceOf(list, boards));
    expect(String(order.at(-1)![6])).toContain("proved");
    expect(bought(order)).toBeCloseTo(least!, 6);
  });

  it("is less than the two orders apart, or the same", async () => {
    const boards = [
      ["Size", "Length"],
      [SIZE, 96],
      [SIZE, 144],
      ["2x8", 240],
    ];
    const lists = [await tableOf("PIECELIST", ONE), await tableOf("PIECELIST", OTHER)] as const;
    const [both, one, other] = await Promise.all(
      [[...lists[0], ...lists[1]], ...lists].map(async (list) =>
        bought(await tableOf("LUMBERORDER", list, boards, "", TRIM)),
      ),
    );
    expect(both!).toBeLessThanOrEqual(one! + other!);
  });
});
