import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { answerText } from "../../../src/hosts/terminal/answerText.ts";
import type { Cell } from "../../../src/registry/worksheetFunction.ts";

describe("answerText", () => {
  it.each<[Cell | Cell[][], string]>([
    [53.318302838, "53.318302838"],
    [0.1 + 0.2, "0.3"],
    [-0, "0"],
    [1e21, "1E+21"],
    [true, "TRUE"],
    ["9' 4 5/8\"", "9' 4 5/8\""],
    [
      [
        ["Piece", "Tape"],
        [1, 2.5],
      ],
      "Piece\tTape\n1\t2.5",
    ],
    [[["a\tb\nc", ""]], "a b c\t"],
  ])("shows %j", (value, expected) => {
    expect(answerText({ formula: "=1", value }, false)).toBe(expected);
  });

  it.each([false, true])("prints nothing that a terminal obeys (JSON: %s)", (json) => {
    const bad = "\u001b[2J\u009b31m\u0007\u202etext\u2066\u007f";
    for (const value of [bad, [[bad, bad]]])
      expect(answerText({ formula: "=1", value }, json)).toMatch(/^(?:\t|[^\p{Cc}\u202a-\u202e\u2066-\u2069])*$/u);
    expect(answerText({ formula: "=1", value: "a\nb" }, false)).toBe("a b");
    expect(JSON.parse(answerText({ formula: "=1", value: bad }, true))).toEqual({ formula: "=1", value: bad });
  });

  it("shows the error that a cell would show", () => {
    expect(answerText({ formula: "=1", error: "#VALUE!", message: "pitch: ..." }, false)).toBe("#VALUE!");
  });

  it("keeps every number whole in JSON, one line for each answer", () => {
    fc.assert(
      fc.property(
        fc.string(),
        fc.array(
          fc.array(
            fc.oneof(
              fc.double({ noNaN: true, noDefaultInfinity: true }).map((n) => n + 0),
              fc.string(),
            ),
            { minLength: 1 },
          ),
          { minLength: 1 },
        ),
        (formula, value) => {
          const line = answerText({ formula, value }, true);
          expect(line).not.toContain("\n");
          expect(JSON.parse(line)).toEqual({
            formula,
            value: value.map((row) => row.map((cell) => (cell === 0 ? 0 : cell))),
          });
        },
      ),
    );
  });
});
