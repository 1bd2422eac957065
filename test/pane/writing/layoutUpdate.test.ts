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
  it("says that a row has no place below the sheet's last one", () => {
    expect(layoutUpdate(area, cells, inputs, "in").lacking).toEqual([{ row: "Hip" }]);
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
  it("writes a new row as the fill does: its label, a value to be changed, and the caution as a note", () => {
    const below = cellsOf([
      [texts.cautionInSheet, ""],
      ["", ""],
    ]);
    const { blocks } = layoutUpdate(area, [...cells, ...below], inputs, "in");
    expect(blocks.slice(2).map(({ sheet, row, column, cells: [[cell]] }: any) => [sheet, row, column, cell])).toEqual([
      ["Bid", 8, 1, { content: "2x8", style: "input" }],
      ["Bid", 8, 0, { content: "Hip", style: "label" }],
      ["Bid", 9, 0, { content: texts.cautionInSheet, style: "note" }],
    ]);
  });
  it("says what a bare number is measured in", () => {
    const { blocks } = layoutUpdate(area, cells, { ...inputs, Hip: "", Span: "26'", Spacing: "400" }, "mm");
    expect(blocks.at(-1)!.cells).toEqual([[{ content: 400, style: "input", format: 'General "mm"' }]]);
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
    it("has no room below the block where something stands under its own column", () => {
      const under = rows.map((line, i) => (i === 3 ? ["", "", "mine"] : line));
      const { blocks, lacking } = layoutUpdate(plain, cellsOf(under), winged, "in");
      expect(lacking).toEqual(["Wall", "Out from wall"].map((row) => ({ row, wing: "A" })));
      expect(blocks).toHaveLength(1);
    });
    it("lacks nothing for one in whose fields nothing is typed yet", () => {
      const beside = rows.map(([a, b]) => [a!, b!, "mine"]);
      const { blocks, lacking } = layoutUpdate(plain, cellsOf(beside), { ...winged, wings: [emptyWing("A")] }, "in");
      expect([blocks, lacking]).toEqual([[], []]);
    });
    it("takes the place of its letter where the block has no headings, whatever stands beside it", () => {
      const four = rows.map((line) => [...line, ""]);
      const b = layoutUpdate(plain, cellsOf(four), { ...winged, wings: [{ ...wing, letter: "B" }] }, "in");
      expect(applied(four, b).map((line) => line.slice(2))).toEqual([
        ["", "12'"],
        ["", ""],
        ["", ""],
        ["", "front"],
        ["", "8'"],
        ["", ""],
        ["", ""],
      ]);
      expect(b.area).toEqual({ ...plain, rows: 5, columns: 4 });
      const own = applied(four, b);
      const both = [wing, { ...wing, letter: "B", Span: "10'" }];
      const a = layoutUpdate({ ...plain, rows: 5, columns: 4 }, cellsOf(own), { ...winged, wings: both }, "in");
      expect(applied(own, a).map((line) => line.slice(2))).toEqual([
        ["12'", "10'"],
        ["", ""],
        ["", ""],
        ["front", "front"],
        ["8'", "8'"],
        ["", ""],
        ["", ""],
      ]);
      expect(a.area).toEqual({ ...plain, rows: 5, columns: 4 });
    });
    it("is found under its heading, wherever that stands", () => {
      const headed: (string | number)[][] = [
        ["", "Main roof", "Wing C", "Wing A"],
        ["Span", "24'", "10'", "12'"],
        ["Length", "36'", "", ""],
        ["Pitch", 6, "", ""],
        ["Wall", "", "back", "front"],
        ["Out from wall", "", "6'", "8'"],
      ];
      const wings = [
        { ...wing, Span: "14'" },
        { ...wing, letter: "C", Wall: "back", Span: "10'", "Out from wall": "6'" },
      ];
      const layout = layoutUpdate({ ...plain, rows: 6, columns: 4 }, cellsOf(headed), { ...winged, wings }, "in");
      expect(layout.changes).toEqual([{ at: "Bid!D6", from: "12'", to: "14'", formula: false }]);
    });
    it("has no room beyond the last column that a block can have", () => {
      const beside = ["", ..."BCDEFGH"].map((letter) => (letter === "" ? "" : `Wing ${letter}`));
      const headed = [
        ["", "Main roof", ...beside],
        ...[
          ["Span", "24'"],
          ["Length", "36'"],
          ["Pitch", 6],
          ["Wall", ""],
          ["Out from wall", ""],
        ].map((line) => [...line, ...beside.map(() => "")]),
      ];
      const wings = [wing, ...[..."BCDEFGH"].map((letter) => emptyWing(letter))];
      const { blocks, lacking } = layoutUpdate(
        { ...plain, rows: 6, columns: 10 },
        cellsOf(headed),
        { ...winged, wings },
        "in",
      );
      expect(blocks).toEqual([]);
      expect(lacking).toEqual(["Wall", "Out from wall", "Span"].map((row) => ({ row, wing: "A" })));
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
