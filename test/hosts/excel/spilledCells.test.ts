import fc from "fast-check";
import { beforeEach, expect, it } from "vitest";
import { spilledCells } from "../../../src/hosts/excel/spilledCells.ts";
import { excelUnderTest } from "../excelUnderTest.ts";
import type { ExcelFake } from "../excelFake.ts";

let fake: ExcelFake;
beforeEach(() => {
  ({ fake } = excelUnderTest());
});

const AT = { row: 2, column: 1, rows: 9, columns: 6 };

async function found(): Promise<string[]> {
  return Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem("Sheet1");
    const range = sheet.getRangeByIndexes(AT.row, AT.column, AT.rows, AT.columns).load("formulas,values,hasSpill");
    await context.sync();
    return [...(await spilledCells(context, range, AT))].sort();
  });
}

/** The same, cell by cell. */
function looked(): string[] {
  const spilled: string[] = [];
  for (let i = 0; i < AT.rows; i++)
    for (let j = 0; j < AT.columns; j++) {
      const [row, column] = [AT.row + i, AT.column + j];
      const { anchor } = fake.sheet("Sheet1")!.peek(row, column);
      if (anchor && (anchor.row !== row || anchor.column !== column)) spilled.push(`${i},${j}`);
    }
  return spilled.sort();
}

// Spills that begin anywhere and overlap nothing, with empty texts in them, formulas of one text side by side, and plain formulas between.
const spill = fc.record({
  row: fc.nat(10),
  column: fc.nat(7),
  rows: fc.integer({ min: 1, max: 5 }),
  columns: fc.integer({ min: 1, max: 5 }),
  formula: fc.constantFrom("=SEQUENCE(9)", "=SEQUENCE(3)", "=A1"),
});

it("finds every spilled cell of a range, whatever stands in it", async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(spill, { maxLength: 9 }),
      fc.constantFrom("value" as const, "parent" as const),
      async (spills, spilledFormulas) => {
        fake.sheets = [new (fake.sheets[0]!.constructor as new (name: string) => (typeof fake.sheets)[0])("Sheet1")];
        fake.spilledFormulas = spilledFormulas;
        const taken = new Set<string>();
        for (const { row, column, rows, columns, formula } of spills) {
          const cells = Array.from({ length: rows * columns }, (_, k) => [
            row + Math.floor(k / columns),
            column + (k % columns),
          ]);
          if (cells.some((cell) => taken.has(String(cell)))) continue;
          for (const cell of cells) taken.add(String(cell));
          fake.type("Sheet1", row, column, formula);
          if (cells.length > 1)
            fake.spill(
              "Sheet1",
              row,
              column,
              Array.from({ length: rows }, (_, i) =>
                Array.from({ length: columns }, (__, j) => ((i + j) % 3 ? "" : 7)),
              ),
            );
        }
        expect(await found()).toEqual(looked());
      },
    ),
    { seed: 13, numRuns: 150 },
  );
});

it("asks a few things of a large spill, not one of each cell", async () => {
  fake.type("Sheet1", 2, 1, "=SEQUENCE(9,6)");
  fake.spill(
    "Sheet1",
    2,
    1,
    Array.from({ length: 8 }, () => [1, 2, 3, 4, 5]),
  );
  fake.syncs = 0;
  expect(await found()).toHaveLength(39);
  expect(fake.syncs).toBeLessThanOrEqual(3);
});
