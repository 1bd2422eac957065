import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { messageOf } from "../../../functions/words/problemText.ts";
import { readRoofBlock, readRows } from "../../../functions/arguments/roofBlock.ts";
import { WING_ROWS } from "../../../functions/arguments/wingRows.ts";
import { Failure } from "../../../src/measure/result.ts";
import { Refusal } from "../../../src/registry/refusal.ts";
import { block, MAIN, message, read, T } from "./wingBlocks.ts";

describe("a wing is refused by its letter and row", () => {
  const without = (row: keyof typeof T) => Object.fromEntries(Object.entries(T).filter(([label]) => label !== row));
  it.each<[string, unknown, RegExp]>([
    [
      "no Wall",
      block([without("Wall")]),
      /^Wing A, Wall: the column has no value for it\. Type front or back, or clear the column\.$/,
    ],
    ["no Span", block([without("Span")]), /^Wing A, Span: the column has no value for it\. Type its span/],
    ["a heading with nothing under it", block([{}], [], ["Wing C"]), /^Wing C, Wall: the column has no value/],
    [
      "a wing on an end",
      block([{ ...T, Wall: "left" }]),
      /^Wing A, Wall: "left" was read, and the ends .* take no wing yet\. Type front or back\.$/,
    ],
    [
      "no such wall",
      block([{ ...T, Wall: "north" }]),
      /^Wing A, Wall: "north" was read; it must be one of front, back\.$/,
    ],
    ["two ends", block([{ ...T, Ends: "hip and hip" }]), /^Wing A, Ends: .*one of hip, gable/],
    [
      "a length",
      block([{ ...T, Length: `20'` }]),
      /^Wing A, Length: "20'" was read in a wing's column\. Type Out from wall instead\.$/,
    ],
    ...[
      "Spacing",
      "Rafter",
      "Hip",
      "Valley",
      "Seat",
      "Heel",
      "Set out from",
      "Hip top",
      "Hip head",
      "Correction",
      "End correction",
      "Boards",
      "Waste",
      "Spares",
      "Unit",
    ].map((row): [string, unknown, RegExp] => [
      `${row}, which is the main roof's`,
      block([T, { ...T, [row]: "x" }]),
      new RegExp(`^Wing B, ${row}: "x" was read in a wing's column\\. Clear it: the main roof's value counts`),
    ]),
    ...["Wall", "From left corner", "Out from wall", "Long valley", "Wing framing"].map(
      (row): [string, unknown, RegExp] => [
        `${row} in the main roof's column`,
        block([T], [[row, "front"]]),
        new RegExp(`^${row}: "front" was read in the main roof's column\\. Type it in a column of its own`),
      ],
    ),
    [
      "at the very corner",
      block([{ ...T, "From left corner": `0"` }]),
      /^Wing A, From left corner: "0"" was read\. Type a length above 0, such as 8', or flush left or flush right\.$/,
    ],
    [
      "a word for a place",
      block([{ ...T, "From left corner": "middle" }]),
      /^Wing A, From left corner: "middle" was read\. Type a length/,
    ],
    [
      "bare feet out",
      block([{ ...T, "Out from wall": 10 }]),
      /^Wing A, Out from wall: 10 was read, which is too short in inches\. Type 10' for feet\.$/,
    ],
    ["bare feet across", block([{ ...T, Span: 12 }]), /^Wing A, Span: 12 was read, .*Type 12' for feet/],
    ["a typed 0 for no overhang", block([{ ...T, Overhang: "0" }]), /^Wing A, Overhang: .*Type none for no overhang/],
    ["no such long valley", block([{ ...T, "Long valley": "both" }]), /^Wing A, Long valley: .*one of left, right/],
    [
      "no such framing",
      block([{ ...T, "Wing framing": "hung" }]),
      /^Wing A, Wing framing: .*one of framed in, laid over/,
    ],
    [
      "a wing without a ridge",
      block([{ ...T, Ridge: "none" }]),
      /^Wing A, Ridge: a roof with wings needs its ridge boards/,
    ],
    [
      "a main roof without a ridge",
      block([T], [["Ridge", "none"]]),
      /^Ridge: a roof with wings needs its ridge boards/,
    ],
    [
      "a wing in the other unit",
      block([{ ...T, Span: "3.6 m" }]),
      /^Wing A, Span: "3\.6 m" is metric, but the block is in feet and inches/,
    ],
    [
      "one letter twice",
      block([T, T], [], ["Wing A", "wing A"]),
      /^roof: Wing A stands there twice\. Type another letter/,
    ],
    ["a heading's letter at another's place", block([T, T], [], ["Wing B", ""]), /^roof: Wing B stands there twice/],
    ["a ninth letter", block([T], [], ["Wing I"]), /^roof: "Wing I" heads no column of a roof block\. Type Main roof/],
    ["another heading", [["", "House"], ...MAIN], /^roof: "House" heads no column/],
    [
      "thirty wings",
      block(Array.from({ length: 30 }, () => T)),
      /^roof: there are more than 8 columns of wings\. Keep 8 at most/,
    ],
    ["nine wings", block(Array.from({ length: 9 }, () => T)), /^roof: there are more than 8 columns of wings/],
  ])("%s", (_, input, words) => expect(message(input)).toMatch(words));

  it("eight are read", () => {
    expect(
      read(block(Array.from({ length: 8 }, () => T)))
        .wings.map(({ letter }) => letter)
        .join(""),
    ).toBe("ABCDEFGH");
  });

  it("all faults at once, each at its wing and row", () => {
    const answer = readRows(
      "roof",
      block([{ ...T, Wall: "left", Span: "wide" }, T, { ...T, Length: 9 }], [["Waste", -1]]),
    );
    if (answer instanceof Failure) throw new Error(messageOf(answer));
    expect([...answer.problems.keys()]).toEqual(["Waste"]);
    expect(answer.wings.map(({ letter, problems }) => [letter, ...problems.keys()])).toEqual([
      ["A", "Wall", "Span"],
      ["B"],
      ["C", "Length"],
    ]);
    for (const { letter, problems } of answer.wings)
      for (const [row, failure] of problems)
        expect(failure).toMatchObject({ place: { argument: "roof", row, wing: letter } });
  });
});

it("never throws, and refuses by name, whatever stands in the columns", () => {
  const cell = fc.oneof(
    fc.constantFrom(
      "",
      0,
      null,
      "front",
      "back",
      "left",
      "flush left",
      `8'`,
      "2.4 m",
      "none",
      "hip",
      "gable",
      6,
      96,
      "2x8",
      "Wing A",
      "Main roof",
    ),
    fc.string({ maxLength: 12 }),
    fc.double(),
    fc.anything({ maxDepth: 1 }),
  );
  const label = fc.oneof(
    { weight: 4, arbitrary: fc.constantFrom(...WING_ROWS, "Length", "Ridge", "Valley", "Spacing", "") },
    { weight: 1, arbitrary: cell },
  );
  fc.assert(
    fc.property(
      fc.array(fc.tuple(label, fc.array(cell, { minLength: 1, maxLength: 10 })), { maxLength: 12 }),
      (lines) => {
        const input = [...MAIN, ...lines.map(([head, cells]) => [head, ...cells])].filter(
          ([head], i, all) => all.findIndex(([other]) => other === head) === i,
        );
        const answer = readRoofBlock("roof", input);
        if (answer instanceof Refusal) expect(messageOf(answer)).toMatch(/^(roof|Wing [A-H], [A-Z]|[A-Z])[^:]*: /);
        else if (!(answer instanceof Failure)) expect(answer.wings.length).toBeLessThanOrEqual(8);
      },
    ),
    { seed: 1, numRuns: 2000 },
  );
});
