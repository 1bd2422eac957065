import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { WING_NEEDED, WING_ROWS } from "../../functions/arguments/wingRows.ts";
import { rows } from "../functions/asked.ts";

const guide = readFileSync("functions/GUIDE.md", "utf8");

/** The rows of cells of the tables under a heading, each with its head. */
function tablesUnder(heading: string): string[][][] {
  const section = guide.split(/^#+ /m).find((part) => part.startsWith(`${heading}\n`))!;
  return section
    .split(/\n(?!\|)/)
    .map((part) => part.trim())
    .filter((part) => part.startsWith("|"))
    .map((part) =>
      part.split("\n").map((line) =>
        line
          .split("|")
          .slice(1, -1)
          .map((cell) => cell.trim()),
      ),
    )
    .map(([head, , ...lines]) => [head!, ...lines]);
}

describe("the guide's wings", () => {
  it("have every row of a wing's column, those required named", () => {
    const [, ...lines] = tablesUnder("A column for each wing")[0]!;
    expect(lines.flatMap(([labels]) => labels!.split(", "))).toEqual([...WING_ROWS]);
    expect(lines.filter(([, blank]) => blank === "required").map(([row]) => row)).toEqual([...WING_NEEDED]);
  });

  it("are the worked ones as MEMBERS has them", () => {
    const [given, said] = tablesUnder("Four worked wings") as [string[][], string[][]];
    const [[, ...names], ...lines] = given as [string[], ...string[][]];
    const block = (columns: readonly number[]) => [
      ["Span", "24'", ...columns.map((at) => lines.find(([row]) => row === "Span")![at + 1]!)],
      ...[
        ["Length", "40'"],
        ["Pitch", 6],
        ["Overhang", 16],
        ["Rafter", "2x6"],
        ["Spacing", 24],
      ],
      ...lines
        .filter(([row]) => row !== "Span")
        .map(([row, ...cells]) => [row, "", ...columns.map((at) => cells[at]!)]),
    ];
    const [, ...figures] = said;
    expect(figures.length).toBeGreaterThan(10);
    for (const [wing, piece, member, longPoint, board] of figures) {
      // The two stand on one roof.
      const columns = names.flatMap((name, at) => (name.split(":")[0] === wing!.split(":")[0] ? [at] : []));
      const found = rows("MEMBERS", block(columns)).find((row) => row["Piece"] === piece)!;
      expect([piece, found?.["Member"]]).toEqual([piece, member]);
      expect(Number(found["Long point"]).toFixed(4)).toBe(longPoint);
      expect(Number(found["Shortest board"]).toFixed(4)).toBe(board);
    }
  });
});
