import { describe, expect, it } from "vitest";
import { compare } from "../../../functions/compare.ts";
import { jackTable } from "../../../functions/jackTable.ts";
import type { BlockLayout } from "../../../src/hosts/host.ts";
import { blockRows } from "../../../src/pane/state/blockCells.ts";
import { evaluateFunction, type Table } from "../../../src/pane/state/evaluateFunction.ts";
import { START_INPUTS } from "../../../src/pane/state/fields.ts";
import { layoutCheck } from "../../../src/pane/writing/layoutCheck.ts";
import { layoutComparison } from "../../../src/pane/writing/layoutComparison.ts";
import { layoutFill, type TableToWrite } from "../../../src/pane/writing/layoutFill.ts";
import { roofTables } from "../../../src/pane/writing/roofTables.ts";
import { TABLES } from "../../../src/pane/writing/tables.ts";

/**
 * How many calls hang on one another at most: a call that reads what another call spilled waits for it.
 *
 * Measured on the vendor's runtime: Excel hears of results at most every half second, so a chain of five takes 2.5 s.
 */
function longestChain(blocks: readonly BlockLayout[]): number {
  const cells = new Map<string, string>();
  const spills: { key: string; sheet: string; row: number; column: number; rows: number; columns: number }[] = [];
  for (const { sheet, row, column, cells: lines, spill } of blocks) {
    for (const [i, line] of lines.entries())
      for (const [j, cell] of line.entries())
        if (String(cell?.content).startsWith("="))
          cells.set(`${sheet}!${row + i},${column + j}`, String(cell!.content));
    if (spill) {
      const [top, left] = [row + spill.row, column + spill.column];
      spills.push({ ...spill, sheet, row: top, column: left, key: `${sheet}!${top},${left}` });
    }
  }
  const known = new Map<string, number>();
  const depth = (key: string): number => {
    const formula = cells.get(key);
    if (formula === undefined) return 0;
    if (known.has(key)) return known.get(key)!;
    known.set(key, 0);
    const below = [...precedents(formula, key.slice(0, key.lastIndexOf("!")))].map(depth);
    const own = /RAFTER\./.test(formula) ? 1 : 0;
    known.set(key, own + Math.max(0, ...below));
    return known.get(key)!;
  };
  function* precedents(formula: string, here: string): Iterable<string> {
    const area = /(?:('(?:[^']|'')+'|[A-Za-z]\w*)!)?\$?([A-Z]{1,3})\$?(\d+)(?::\$?([A-Z]{1,3})\$?(\d+))?/g;
    for (const [, quoted, left, top, right = left, bottom = top] of formula.replace(/"[^"]*"/g, "").matchAll(area)) {
      const sheet = quoted ? quoted.replace(/^'|'$/g, "").replaceAll("''", "'") : here;
      const [c0, c1] = [columnOf(left!), columnOf(right!)];
      const [r0, r1] = [Number(top) - 1, Number(bottom) - 1];
      for (const { key, ...spill } of spills)
        if (
          spill.sheet === sheet &&
          r0 < spill.row + spill.rows &&
          r1 >= spill.row &&
          c0 < spill.column + spill.columns &&
          c1 >= spill.column
        )
          yield key;
      for (let row = r0; row <= r1; row++)
        for (let column = c0; column <= c1; column++) yield `${sheet}!${row},${column}`;
    }
  }
  return Math.max(...[...cells.keys()].map(depth));
}
const columnOf = (letters: string) => [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;

const rows = blockRows(START_INPUTS);
const now = evaluateFunction(jackTable, [rows]) as Table;
const grid = evaluateFunction(compare, [rows, [["6"], ["8"]], [["16", "24"]], "step"]) as Table;
const CHECK: TableToWrite = {
  title: "Check",
  sheet: "Check",
  layout: (place, on) => layoutCheck(place, on, { cuts: [], now }),
};
const COMPARISON: TableToWrite = {
  title: "Compare",
  sheet: "Compare",
  layout: (place, on) =>
    layoutComparison(place, on, { pitches: ["6", "8"], spacings: ["16", "24"], what: "step" }, grid),
};

describe("what the pane writes", () => {
  it.each([null, { sheet: "Bid", row: 2, column: 1 }])("has at most two calls in a chain, at %j", async (at) => {
    const tables = await roofTables(new Set(TABLES.map(({ id }) => id)), START_INPUTS);
    if (typeof tables === "string") throw new Error(tables);
    const { step } = layoutFill({
      inputs: START_INPUTS,
      block: null,
      name: null,
      unit: "in",
      tables: [...tables, CHECK, COMPARISON],
      at,
      sheets: ["Bid"],
    });
    expect(longestChain(step.blocks)).toBe(2);
  });
  it("is counted right", () => {
    const cells = [["=RAFTER.A(B9)", "=RAFTER.B(A1)", "=1+B1", "=RAFTER.C($C$1:$D$2)"]].map((line) =>
      line.map((content) => ({ content })),
    );
    expect(longestChain([{ sheet: "S", row: 0, column: 0, cells }])).toBe(3);
  });
});
