import { describe, expect, it } from "vitest";
import type { BlockLayout } from "../../src/hosts/host.ts";
import { cellsToWrite } from "../../src/hosts/cellsToWrite.ts";
import { changedSince } from "../../src/hosts/changedSince.ts";
import { stepCells } from "../../src/hosts/stepCells.ts";

const TABLE: BlockLayout = {
  sheet: "jacks",
  newSheet: true,
  row: 2,
  column: 3,
  cells: [
    [{ content: "Jacks", style: "title" }, null, null],
    [{ content: "=A1" }, null, { content: "tape", format: "@" }],
  ],
  spill: { row: 1, column: 0, rows: 2, columns: 2, formats: ["0.0", null] },
  widths: [null, 90, 40],
  frozenRows: 1,
};
const step = (...blocks: BlockLayout[]) => ({ title: "Fill", blocks });

describe("stepCells", () => {
  it("spells out every cell of a block and of its spill, each with its format", () => {
    const { newSheets, blocks } = stepCells(step(TABLE, { ...TABLE, sheet: "Jacks", row: 9, frozenRows: 0 }), ["Roof"]);
    expect(newSheets).toEqual([{ name: "jacks", frozenRows: 1 }]);
    expect(blocks[0]).toEqual({
      area: { sheet: "jacks", row: 2, column: 3, rows: 3, columns: 3 },
      cells: [
        [{ content: "Jacks", style: "title", format: "General" }, null, null],
        [
          { content: "=A1", format: "0.0" },
          { content: "", format: "General" },
          { content: "tape", format: "@" },
        ],
        [{ content: "", format: "0.0" }, { content: "", format: "General" }, null],
      ],
      widths: [
        { column: 4, width: 90 },
        { column: 5, width: 40 },
      ],
    });
    expect(blocks[1]!.area).toEqual({ sheet: "jacks", row: 9, column: 3, rows: 3, columns: 3 });
    expect(cellsToWrite(blocks[0]!).map(({ row, column }) => `${row},${column}`)).toEqual([
      "2,3",
      "3,3",
      "3,4",
      "3,5",
      "4,3",
      "4,4",
    ]);
  });
  it("refuses what cannot be written", () => {
    expect(() => stepCells(step(TABLE), ["Jacks"])).toThrow("already a sheet named jacks");
  });
});

describe("changedSince", () => {
  const [block] = stepCells(step({ sheet: "A", row: 0, column: 0, cells: [[{ content: 1 }, null]] }), ["A"]).blocks;
  it.each<[string, (string | number)[], string[]]>([
    ["as written", [1, "beside"], []],
    ["edited", [2, "beside"], ["B!A1"]],
    ["the text of a number", ["1", ""], ["B!A1"]],
  ])("%s", (_, line, edited) => {
    expect(changedSince([{ block: block!, after: [[1, ""]], now: { sheet: "B", contents: [line] } }], [])).toEqual(
      edited,
    );
  });
  it("names what else stands on a made sheet, and nothing of one that is gone", () => {
    const now = { sheet: "B", contents: [[1, ""]] };
    const filled = [
      { row: 0, column: 0 },
      { row: 0, column: 1 },
    ];
    expect(changedSince([{ block: block!, after: [[1, ""]], now }], [{ sheet: "B", filled }])).toEqual(["B!B1"]);
    expect(changedSince([{ block: block!, after: [[1, ""]], now: null }], [])).toEqual([]);
  });
});
