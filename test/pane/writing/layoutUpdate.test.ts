import { describe, expect, it } from "vitest";
import { EMPTY_INPUTS, type Inputs } from "../../../src/pane/state/fields.ts";
import { layoutUpdate } from "../../../src/pane/writing/layoutUpdate.ts";
import { cellsOf } from "../cellsOf.ts";

describe("layoutUpdate", () => {
  const area = { sheet: "Bid", row: 4, column: 0, rows: 4, columns: 2 };
  const cells = cellsOf([
    ["Span", "24'"],
    ["Length", "36'"],
    ["Pitch", 6],
    ["Spacing", "=B1*2"],
  ]);
  const inputs: Inputs = { ...EMPTY_INPUTS, Span: "26'", Length: "36'", Pitch: "6", Spacing: "16", Hip: "2x8" };

  it("writes only the cells that differ, and says which, what stands there, and what the block lacks", () => {
    const { blocks, changes, lacking } = layoutUpdate(area, cells, inputs, "in");
    expect(blocks.map(({ row, column, cells: [[cell]] }: any) => [row, column, cell.content])).toEqual([
      [4, 1, "26'"],
      [7, 1, 16],
    ]);
    expect(changes).toEqual([
      { at: "Bid!B5", from: "24'", to: "26'", formula: false },
      { at: "Bid!B8", from: "=B1*2", to: "16", formula: true },
    ]);
    expect(lacking).toEqual(["Hip"]);
  });
  it("puts rows that the block lacks below it where there are empty lines enough", () => {
    const below = (rows: (string | number)[][]) =>
      layoutUpdate(area, [...cells, ...cellsOf(rows)], { ...inputs, Ridge: "2x10" }, "in");
    const { blocks, changes, lacking } = below([
      ["", ""],
      ["", ""],
      ["Total", 5],
    ]);
    expect(blocks.at(-1)).toMatchObject({
      row: 8,
      column: 0,
      cells: [
        [{ content: "Hip" }, { content: "2x8" }],
        [{ content: "Ridge" }, { content: "2x10" }],
      ],
    });
    expect(changes.slice(-2).map(({ at, to }) => [at, to])).toEqual([
      ["Bid!A9", "Hip, 2x8"],
      ["Bid!A10", "Ridge, 2x10"],
    ]);
    expect(lacking).toEqual([]);
    expect(
      below([
        ["", ""],
        ["Total", 5],
      ]).lacking,
    ).toEqual(["Hip", "Ridge"]);
  });
  it("writes nothing where block and pane agree", () => {
    expect(
      layoutUpdate(area, cells, { ...EMPTY_INPUTS, Span: "24'", Length: "36'", Pitch: "6", Spacing: "0" }, "in"),
    ).toEqual({ blocks: [], changes: [], lacking: [] });
  });
});
