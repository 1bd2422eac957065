import { Failure } from "../../../src/measure/result.ts";
import { newReading } from "../../../src/registry/reading.ts";
import { messageOf } from "../../../functions/words/problemText.ts";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boardLengths } from "../../../functions/arguments/boardLengths.ts";
import { CellError, Refusal } from "../../../src/registry/refusal.ts";
import { anyText } from "../../measure/anyText.ts";

const reading = () => newReading("boards");
const read = (cell: unknown, from = reading()) => boardLengths(cell, from);
const message = (cell: unknown, from = reading()): string => {
  const answer = read(cell, from);
  if (!(answer instanceof Refusal)) throw new Error(`${JSON.stringify(answer)} was not refused.`);
  return messageOf(answer);
};

describe("boardList", () => {
  it.each<[string, unknown, number[]]>([
    ["a range of lengths", `8' to 20' by 2'`, [96, 120, 144, 168, 192, 216, 240]],
    ["a range that the last step does not meet", `8' to 13' by 2'`, [96, 120, 144]],
    ["a list", `8', 12', 16'`, [96, 144, 192]],
    ["a list without blanks", `8';12';16'`, [96, 144, 192]],
    ["bare numbers", "96,120", [96, 120]],
    ["a list with a range in it", `6', 8' to 12' by 2'`, [72, 96, 120, 144]],
    ["each once, shortest first", `16', 8', 16'`, [96, 192]],
    ["metric", "2.4 m, 3 m", [2400, 3000]],
    ["a number", 144, [144]],
    [
      "cells",
      [
        [`8'`, 144],
        [null, ""],
        [192, undefined],
      ],
      [96, 144, 192],
    ],
    ["a list with a comma too many", `8', , 12',`, [96, 144]],
    ["a range with a fraction", `1 1/2" to 3" by 1/2"`, [1.5, 2, 2.5, 3]],
  ])("%s: %j", (_, cell, lengths) => expect(read(cell)).toEqual(lengths.map((length) => expect.closeTo(length, 9))));

  it("reads the call's unit and decides it like any length", () => {
    const from = reading();
    read("2.4 m", from);
    expect(from).toMatchObject({ unit: "mm", unitFrom: { argument: "boards" } });
    expect(message(`8'`, from)).toMatch(/^boards: "8'" is feet and inches, but boards is metric/);
    expect(message(`8', 3 m`)).toMatch(/^boards: "3 m" is metric/);
  });

  it.each<[string, unknown, RegExp]>([
    ["nothing", "", /^boards: /],
    ["empty cells", [[null, ""]], /^boards: no length of board was given/],
    ["a range that runs backwards", `20' to 8' by 2'`, /runs backwards\. Type the shortest length first/],
    [
      "a range without its step",
      `8' to 20'`,
      /^boards: "8' to 20'" was read\. Type the shortest length, the longest and the step between them, such as "8' to 20' by 2'"/,
    ],
    [
      "an empty cell handed over as 0",
      [[96], [0]],
      /^boards: 0 was read, as some sheets hand over an empty cell\. Point to the filled cells only/,
    ],
    ["a step of nothing", `8' to 20' by 0`, /^boards: 0 was read/],
    ["too many lengths", `8' to 20' by 1/16"`, /more than 60 lengths/],
    ["too many cells", [Array.from({ length: 61 }, (_, i) => 90 + i)], /more than 60 lengths/],
    ["a word among them", `8', twelve`, /^boards: "twelve" was read/],
    ["a negative length", -96, /must not be negative/],
    // The comma parts lengths, so 2,4 m would be boards of 2 mm and of 4 m.
    ["a decimal comma", "2,4 m", /^boards: "2,4 m" was read\. Type a decimal point instead of a decimal comma/],
    ["decimal commas in a list", "2,4 m; 3,6 m", /decimal point instead of a decimal comma/],
  ])("refuses %s", (_, cell, words) => expect(message(cell)).toMatch(words));

  it("loses nothing of a long list: what it cannot read whole it refuses", () => {
    const list = Array.from({ length: 60 }, (_, i) => `${i + 8}' 6 1/2"`).join(", ");
    expect(read(list)).toHaveLength(60);
    expect(message(`${list}, ${" ".repeat(2_000)}99'`)).toMatch(/^boards: .*too long/);
  });

  it("passes an error among its cells on", () => {
    const error = new CellError("#REF!");
    expect(read([[96, error]])).toBe(error);
  });

  it("never throws, and gives lengths in order or a refusal by name", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const answer = read(text);
        if (answer instanceof Failure) {
          expect(messageOf(answer).startsWith("boards: ")).toBe(true);
          return;
        }
        expect([...answer].sort((a, b) => a - b)).toEqual(answer);
        expect(answer.length).toBeGreaterThan(0);
      }),
      { seed: 1, numRuns: 1_000 },
    );
  });
});
