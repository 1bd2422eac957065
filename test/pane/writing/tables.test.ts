import { expect, it } from "vitest";
import { columnAt } from "../../../src/registry/columns.ts";
import { textWidth } from "../../../src/drawing/canvas/textWidth.ts";
import { TABLES } from "../../../src/pane/writing/tables.ts";
import { evaluateFunction, type Table } from "../../../src/pane/state/evaluateFunction.ts";

const ROOFS = {
  regular: [
    ["Span", "24'"],
    ["Length", "36'"],
    ["Pitch", 6],
    ["Overhang", 18],
    ["Rafter", "2x8"],
  ],
  "two pitches, fascias not level": [
    ["Span", "24'"],
    ["Length", "40'"],
    ["Pitch", 5],
    ["End pitch", 12],
    ["Overhang", 18],
    ["End overhang", 18],
    ["Rafter", "2x8"],
  ],
  gable: [
    ["Span", "20'"],
    ["Length", "30'"],
    ["Pitch", 7],
    ["Overhang", 16],
    ["Ends", "hip and gable"],
  ],
  metric: [
    ["Span", "7320 mm"],
    ["Length", "11 m"],
    ["Pitch", 6],
    ["End pitch", 8],
    ["Overhang", "450 mm"],
    ["Rafter", "45 x 195"],
  ],
} as const;

/** A cell's letters in pixels, 11 points; the table of widths is on the wide side of the faces that sheets use. */
const wide = (text: string) => textWidth(text, 11 / 0.75) * 0.93;

// These say what belongs together in one cell, however much it is; How and Remark are the last of their tables and run on.
const long = new Set(["Note", "How", "Remark", "Join"]);

it.each(TABLES.filter(({ boardsToo }) => !boardsToo))(
  "$definition.name: no text is cut off by the column beside it",
  async ({ definition }) => {
    for (const [name, roof] of Object.entries(ROOFS)) {
      const [headings, ...rows] = (await evaluateFunction(definition, [roof])) as Table as [Table[number], ...Table];
      expect(rows.length).toBeGreaterThan(3);
      headings.forEach((heading, j) => {
        const { width } = definition.columns[j]!;
        for (const row of rows)
          if (typeof row[j] === "string" && !long.has(String(heading)))
            expect([name, heading, row[j], wide(row[j]) <= width]).toEqual([name, heading, row[j], true]);
        if (j < headings.length - 1) expect([heading, wide(String(heading)) <= width]).toEqual([heading, true]);
      });
    }
  },
);

it.each(TABLES)("$definition.name: what is shown on the tape is a length", ({ definition: { columns }, onTape }) => {
  expect(onTape.map((name) => columns[columnAt(columns, name)]!.kind)).toEqual(onTape.map(() => "length"));
});
