import { describe, expect, it } from "vitest";
import { readRoofBlock, readRows, type BlockReading } from "../../../functions/arguments/roofBlock.ts";
import { Failure } from "../../../src/measure/result.ts";

const read = (block: readonly (readonly unknown[])[]): BlockReading => {
  const answer = readRows("roof", block);
  if (answer instanceof Failure) throw new Error(JSON.stringify(answer.problem));
  return answer;
};

describe("readRows", () => {
  const faulty = [
    ["Span", "wide"],
    ["Length", `36'`],
    ["Seat", -1],
    ["Spacing", "600 mm"],
    ["Waste", "7 %"],
    ["Spares", 0.5],
  ];

  it("gives one problem for every row at fault, at its place", () => {
    const { problems } = read(faulty);
    expect([...problems].map(([row, { problem }]) => [row, problem.kind])).toEqual([
      ["Spacing", "row in other unit"],
      ["Pitch", "row missing"],
      ["Span", "not a length"],
      ["Seat", "length below 0"],
      ["Spares", "number out of range"],
    ]);
    for (const [row, failure] of problems)
      expect(failure).toMatchObject({ place: { argument: "roof", row }, unit: "in" });
  });

  it("reads the rows that are right, and takes the others as left out", () => {
    const { spec } = read(faulty);
    const { spec: without } = read(faulty.filter(([row]) => row === "Length" || row === "Waste"));
    expect(spec).toEqual(without);
    expect(spec).toMatchObject({ length: 432, waste: 7, spacing: 24 });
  });

  it("has no problem where the block is right", () => {
    const right = [
      ["Span", 288],
      ["Length", 432],
      ["Pitch", 6],
    ];
    const { spec, problems } = read(right);
    expect(problems.size).toBe(0);
    expect(readRoofBlock("roof", right)).toEqual(spec);
  });

  it("refuses a block for the first of its problems", () => {
    expect(readRoofBlock("roof", faulty)).toEqual([...read(faulty).problems.values()][0]);
  });

  it("refuses what is no block as a whole", () => {
    expect(readRows("roof", 7)).toMatchObject({ problem: { kind: "no block of labels" }, place: { argument: "roof" } });
  });
});
