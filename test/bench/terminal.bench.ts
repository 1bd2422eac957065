import { spawnSync } from "node:child_process";
import { functions } from "../../functions/index.ts";
import { answer } from "../../src/hosts/terminal/answer.ts";
import type { WorksheetFunction } from "../../src/registry/worksheetFunction.ts";
import type { Row } from "./row.ts";

const FORMULAS = 2_000;
const LONG = 1_000_000;

/** The terminal as a user starts it, and what it makes of a formula that is far too long. */
export async function bench(): Promise<Row[]> {
  const input = Array.from(
    { length: FORMULAS },
    (_, i) => `=ROUND(RAFTER.JACKLEN(${4 + (i % 9)}, ${24 + i / 100}, 1.5, 1.5), 4)`,
  ).join("\n");
  const start = performance.now();
  const { status, stdout } = spawnSync("npm", ["run", "-s", "cell"], { input, encoding: "utf8" });
  const lines = performance.now() - start;
  if (status !== 0 || stdout.trim().split("\n").length !== FORMULAS)
    throw new Error("The terminal did not answer every formula.");

  const named = new Map<string, WorksheetFunction>(functions.map((definition) => [definition.name, definition]));
  const slowest = async (length: number) => {
    const times: number[] = [];
    for (const text of ["(", "1+", "=", " ", "'", "{", "A1:", "-", "🏠", "SUM("]) {
      const formula = `=${text.repeat(length / text.length)}`;
      const began = performance.now();
      await answer(formula, named);
      times.push(performance.now() - began);
    }
    return Math.max(...times);
  };
  await slowest(LONG);
  const long = await slowest(LONG);
  return [
    {
      name: `${FORMULAS.toLocaleString("en")} formulas from standard input`,
      ratio: lines / 10_000,
      most: 1,
      what: `over 10 s; start included ${(lines / 1000).toFixed(2)} s`,
    },
    {
      name: "a formula of a million characters",
      ratio: long / 1_000,
      most: 1,
      what: `over 1 s; the slowest of ten kinds ${long.toFixed(1)} ms`,
    },
  ];
}
