import { describe, expect, it } from "vitest";
import { texts } from "../../../src/pane/words/texts.ts";
import { EMPTY_INPUTS, emptyWing, type Inputs } from "../../../src/pane/state/fields.ts";
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
    const { blocks, changes, lacking } = layoutUpdate(area, [...cells, ...cellsOf([["mine", ""]])], inputs, "in");
    expect(blocks.map(({ row, column, cells: [[cell]] }: any) => [row, column, cell.content])).toEqual([
      [4, 1, "26'"],
      [7, 1, 16],
    ]);
    expect(changes).toEqual([
      { at: "Bid!B5", from: "24'", to: "26'", formula: false },
      { at: "Bid!B8", from: "=B1*2", to: "16", formula: true },
    ]);
    expect(lacking).toEqual([{ row: "Hip" }]);
  });
  it("puts a row that the block does not have below it, where that is free in the block's columns", () => {
    const below = [
      ...cells,
      ...cellsOf([
        ["", "", "mine"],
        ["", ""],
        [texts.cautionInSheet, ""],
        ["", ""],
      ]),
    ];
    const layout = layoutUpdate(area, below, inputs, "in");
    expect(layout.lacking).toEqual([]);
    expect(layout.area).toEqual({ ...area, rows: 5 });
    expect(layout.changes.slice(2)).toEqual([
      { at: "Bid!B9", from: "", to: "2x8", formula: false },
      { at: "Bid!A9", from: "", to: "Hip", formula: false },
    ]);
  });
  it.each([4, 5, 6])(
    "moves the caution %i lines below the block's first down by as many as come to it, and leaves none behind",
    (at) => {
      const below = Array.from({ length: 5 }, (_, i) => [i + 4 === at ? texts.cautionInSheet : "", ""]);
      const { blocks } = layoutUpdate(area, [...cells, ...cellsOf(below)], inputs, "in");
      const now = new Map([[at, texts.cautionInSheet as string]]);
      for (const {
        row,
        column,
        cells: [[cell]],
      } of blocks as any)
        if (column === 0) now.set(row - area.row, cell.content);
      expect(now).toEqual(
        new Map([
          [at, at === 4 ? "Hip" : ""],
          [4, "Hip"],
          [at + 1, texts.cautionInSheet],
        ]),
      );
    },
  );
  it("never moves the caution below the block onto what stands there", () => {
    const below = [
      ...cells,
      ...cellsOf([
        ["", ""],
        [texts.cautionInSheet, ""],
        ["mine", ""],
      ]),
    ];
    const { lacking, blocks } = layoutUpdate(area, below, inputs, "in");
    expect([lacking, blocks.length]).toEqual([[{ row: "Hip" }], 2]);
  });
  it("writes nothing where block and pane agree", () => {
    expect(
      layoutUpdate(area, cells, { ...EMPTY_INPUTS, Span: "24'", Length: "36'", Pitch: "6", Spacing: "0" }, "in"),
    ).toEqual({ blocks: [], changes: [], lacking: [], area });
  });

  describe("for a wing", () => {
    const wing = { ...emptyWing("A"), Wall: "front", "Out from wall": "8'", Span: "12'" };
    const winged: Inputs = { ...EMPTY_INPUTS, Span: "24'", Length: "36'", Pitch: "6", wings: [wing] };
    const plain = { sheet: "Bid", row: 4, column: 0, rows: 3, columns: 2 };
    const rows: (string | number)[][] = [
      ["Span", "24'", ""],
      ["Length", "36'", ""],
      ["Pitch", 6, ""],
      ["", "", ""],
      [texts.cautionInSheet, "", ""],
      ["", "", ""],
      ["", "", ""],
    ];
    const applied = (grid: (string | number)[][], { blocks }: ReturnType<typeof layoutUpdate>) => {
      const now = grid.map((line) => [...line]);
      for (const {
        row,
        column,
        cells: [[cell]],
      } of blocks as any)
        now[row - plain.row]![column] = cell.content;
      return now;
    };

    it("takes the column beside the block and lines below it; the caution below goes down with its end", () => {
      const layout = layoutUpdate(plain, cellsOf(rows), winged, "in");
      expect(layout.area).toEqual({ ...plain, rows: 5, columns: 3 });
      expect(layout.lacking).toEqual([]);
      expect(applied(rows, layout)).toEqual([
        ["Span", "24'", "12'"],
        ["Length", "36'", ""],
        ["Pitch", 6, ""],
        ["Wall", "", "front"],
        ["Out from wall", "", "8'"],
        ["", "", ""],
        [texts.cautionInSheet, "", ""],
      ]);
    });
    it("writes nothing over what stands there, and says what it has no room for", () => {
      const beside = rows.map(([a, b], i) => [a!, b!, i === 1 ? "mine" : ""]);
      const { blocks, lacking } = layoutUpdate(plain, cellsOf(beside), winged, "in");
      expect(blocks).toEqual([]);
      expect(lacking).toEqual(["Wall", "Out from wall", "Span"].map((row) => ({ row, wing: "A" })));
    });
    it("empties the column of one that was removed, and its heading", () => {
      const headed: (string | number)[][] = [
        ["", "Main roof", "Wing A"],
        ["Span", "24'", "12'"],
        ["Length", "36'", ""],
        ["Pitch", 6, ""],
        ["Wall", "", "front"],
      ];
      const area = { ...plain, rows: 5, columns: 3 };
      const layout = layoutUpdate(area, cellsOf(headed), { ...winged, wings: [] }, "in");
      expect(applied(headed, layout).map((line) => line[2])).toEqual(["", "", "", "", ""]);
      expect(layout.changes.map(({ at, to }) => [at, to])).toEqual([
        ["Bid!C5", ""],
        ["Bid!C9", ""],
        ["Bid!C6", ""],
      ]);
    });
    it("heads a new column where the block has headings", () => {
      const headed: (string | number)[][] = [
        ["", "Main roof", ""],
        ...rows.slice(0, 3),
        ["Wall", "", ""],
        ["Out from wall", "", ""],
      ];
      const layout = layoutUpdate(
        { ...plain, rows: 6 },
        cellsOf(headed),
        { ...winged, wings: [{ ...wing, letter: "C" }] },
        "in",
      );
      expect(applied(headed, layout).map((line) => line[2])).toEqual(["Wing C", "12'", "", "", "front", "8'"]);
    });
  });
});
