import { newReading } from "../../src/registry/reading.ts";
import { messageOf } from "../../functions/words/problemText.ts";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { labelledBlock, plainLabel } from "../../src/registry/labelledBlock.ts";
import { CellError, Refusal } from "../../src/registry/refusal.ts";

const LABELS = ["Span", "End pitch", "Set out from"];
const read = (input: unknown) => labelledBlock(input, newReading("roof"), LABELS);
const rows = (...entries: readonly (readonly [string, ...unknown[]])[]) => ({
  headings: [],
  rows: new Map(entries.map(([label, ...values]) => [label, values])),
});
const message = (input: unknown): string => {
  const answer = read(input);
  if (!(answer instanceof Refusal)) throw new Error("It was not refused.");
  return messageOf(answer);
};

describe("labelledBlock", () => {
  it("takes labels in any order, case and spacing, with or without a colon", () => {
    expect(
      read([
        ["  END   pitch : ", 6],
        ["span:", 288],
      ]),
    ).toEqual(rows(["End pitch", 6], ["Span", 288]));
    expect(plainLabel(" Set  Out\tFROM: ")).toBe("set out from");
    expect(plainLabel("Set: out")).toBe("set: out");
  });

  it.each([undefined, null, ""])("leaves out a row whose value is blank: %j", (blank) =>
    expect(
      read([
        ["Span", 288],
        ["End pitch", blank],
      ]),
    ).toEqual(rows(["Span", 288])),
  );
  it.each([[[null, null]], [["", ""]], [["", 0]], [[undefined, undefined]]])("leaves out an empty row: %j", (row) =>
    expect(read([["Span", 288], row])).toEqual(rows(["Span", 288])),
  );
  it("takes empty columns to the right", () =>
    expect(read([["Span", 288, null, ""]])).toEqual(rows(["Span", 288, null, ""])));
  it("takes a column of values more for each, in which a 0 is an empty cell, under headings", () => {
    expect(
      read([
        [0, "House", 0, "Shed"],
        ["Span", 0, 0, 96],
        ["End pitch", "", 6, 0],
        ["Set out from", "", 0],
      ]),
    ).toEqual({
      headings: ["House", undefined, "Shed"],
      rows: new Map<string, unknown>([
        ["Span", [0, undefined, 96]],
        ["End pitch", ["", 6, undefined]],
      ]),
    });
  });
  it("keeps the value as it is: 0, a flag and a text", () =>
    expect(
      read([
        ["Span", 0],
        ["End pitch", false],
        ["Set out from", " corner "],
      ]),
    ).toEqual(rows(["Span", 0], ["End pitch", false], ["Set out from", " corner "])));

  it.each<[string, unknown, string]>([
    [
      "an unknown label",
      [["Spam", 1]],
      `roof: "Spam" is no row of a roof block. The rows are: Span, End pitch, Set out from.`,
    ],
    ["a number for a label", [[288, "Span"]], "288 is no row"],
    ["a flag for a label", [[true, 1]], "TRUE is no row"],
    [
      "a doubled label",
      [
        ["Span", 1],
        ["SPAN:", 2],
      ],
      "Span stands there twice",
    ],
    [
      "a doubled label whose second value is blank",
      [
        ["Span", 1],
        ["span", ""],
      ],
      "Span stands there twice",
    ],
    ["a value with no label", [["", 24]], "the value 24 has no label beside it"],
    [
      "a second row of headings",
      [
        ["", "House"],
        ["", "Shed"],
        ["Span", 288],
      ],
      `the value "Shed" has no label beside it`,
    ],
    [
      "headings below a label",
      [
        ["Span", 288],
        ["", "House"],
      ],
      `the value "House" has no label beside it`,
    ],
    ["a number among headings", [["", "House", 7]], `the value "House" has no label beside it`],
    ["one column", [["Span"]], "is no roof block. Point to two columns"],
    ["no rows", [], "is no roof block"],
    ["one cell", 288, "288 is no roof block"],
    ["a text", "Span", `"Span" is no roof block`],
    ["nothing", undefined, "nothing was given. Point to two columns, label and value"],
    ["more than 200 rows", Array.from({ length: 201 }, () => ["", ""]), "at most 200 rows"],
  ])("refuses %s", (_, input, words) => {
    expect(message(input)).toContain(words);
    expect(message(input).startsWith("roof: ")).toBe(true);
  });

  it("reads a label of 10,000 characters no further than it shows it", () =>
    expect(message([["Span".padEnd(10_000), 1]]).length).toBeLessThan(200));

  it("passes the first error on, before it judges the label beside it", () => {
    const error = new CellError("#DIV/0!");
    expect(read([["Span", error]])).toBe(error);
    expect(
      read([
        [error, 1],
        ["Spam", 2],
      ]),
    ).toBe(error);
    expect(read([["Nonsense", error]])).toBe(error);
  });

  it("never throws, whatever a host hands over", () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.anything(), fc.array(fc.array(fc.anything(), { maxLength: 4 }), { maxLength: 5 })),
        (input) => {
          const answer = read(input);
          expect(Object.hasOwn(answer, "headings") || answer instanceof Refusal || answer instanceof CellError).toBe(
            true,
          );
        },
      ),
      { seed: 1, numRuns: 500 },
    );
  });
});
