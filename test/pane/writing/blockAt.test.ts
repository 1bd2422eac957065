import { describe, expect, it } from "vitest";
import { blockAt, firstLine, spilledHeading, type TablePlace } from "../../../src/pane/writing/blockAt.ts";

const own: TablePlace = { sheet: "Jacks", newSheet: true, row: 0, column: 0, title: null };
const titled: TablePlace = { sheet: "Bid", newSheet: false, row: 4, column: 2, title: "Jacks" };
const [a, b] = [{ content: "a" }, { content: "b" }];

describe("a block", () => {
  it("on a sheet of its own has no title, and its headings stay in view", () => {
    expect(
      blockAt(own, [[a, b], [a]], { spill: { row: 0, column: 1, rows: 5, columns: 1 }, widths: [70, null] }),
    ).toEqual({
      sheet: "Jacks",
      newSheet: true,
      row: 0,
      column: 0,
      cells: [
        [a, b],
        [a, null],
      ],
      spill: { row: 0, column: 1, rows: 5, columns: 1 },
      widths: [70, null],
      frozenRows: 1,
    });
  });
  it("under a title is a line longer, all of one width, and spills a line further down", () => {
    expect(
      blockAt(titled, [[a], [], [a, b]], { spill: { row: 2, column: 0, rows: 5, columns: 2 }, widths: [70, 80] }),
    ).toEqual({
      sheet: "Bid",
      newSheet: false,
      row: 4,
      column: 2,
      cells: [
        [{ content: "Jacks", style: "title" }, null],
        [a, null],
        [null, null],
        [a, b],
      ],
      spill: { row: 3, column: 0, rows: 5, columns: 2 },
      widths: [70, 80],
    });
  });
  it.each([
    ["headings that do not stand first", own, 4],
    ["a sheet that was there", { ...titled, title: null }, 0],
  ])("keeps nothing in view with %s", (_, place, row) =>
    expect(
      blockAt(place, [[a]], { spill: { row, column: 0, rows: 1, columns: 1 }, widths: [] }).frozenRows,
    ).toBeUndefined(),
  );
});

it("begins below its title", () => expect([firstLine(own), firstLine(titled)]).toEqual([0, 5]));

it("has a formula in the first heading, and the cells beside it made ready for what it spills", () => {
  const rest = { style: "heading", format: "General" };
  expect(spilledHeading("=A()", 3)).toEqual([
    { content: "=A()", ...rest },
    { content: "", ...rest },
    { content: "", ...rest },
  ]);
});
