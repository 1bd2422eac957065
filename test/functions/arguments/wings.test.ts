import { describe, expect, it } from "vitest";
import { WING_ROWS } from "../../../functions/arguments/wingRows.ts";
import type { WingSpec } from "../../../src/roof/frame/roofSpec.ts";
import { block, MAIN, message, read, T } from "./wingBlocks.ts";

const spec: WingSpec = {
  letter: "A",
  wall: "front",
  from: 96,
  out: 120,
  span: 144,
  end: "gable",
  pitch: 0.5,
  endPitch: null,
  overhang: null,
  endOverhang: null,
  ridge: { name: "2x8", thickness: 1.5, depth: 7.25 },
  longValley: null,
  framing: "framed in",
  sheathing: null,
};

describe("a wing's column", () => {
  it("needs five rows, and has the main roof's pitch and ridge where it says nothing else", () => {
    expect(read(block([T])).wings).toEqual([spec]);
    const main = block(
      [T],
      [
        ["Ridge", "2x12"],
        ["Valley", "2x10"],
      ],
    );
    expect(read(main)).toMatchObject({
      valley: { name: "2x10" },
      hip: { name: "2x8" },
      wings: [{ ridge: { name: "2x12", depth: 11.25 } }],
    });
  });

  it("reads every row", () => {
    const all = {
      Wall: "Back",
      "From left corner": "flush  RIGHT",
      "Out from wall": `8' 6`,
      Span: 120,
      Ends: "hip",
      Pitch: "8/12",
      "End pitch": 9,
      Overhang: "none",
      "End overhang": 12,
      Ridge: "2x6",
      "Long valley": "left",
      "Wing framing": "laid over",
      Sheathing: "5/8",
    };
    expect(Object.keys(all)).toEqual([...WING_ROWS]);
    expect(read(block([all])).wings[0]).toEqual({
      letter: "A",
      wall: "back",
      from: "flush right",
      out: 102,
      span: 120,
      end: "hip",
      pitch: 8 / 12,
      endPitch: 0.75,
      overhang: 0,
      endOverhang: 12,
      ridge: { name: "2x6", thickness: 1.5, depth: 5.5 },
      longValley: "left",
      framing: "laid over",
      sheathing: 0.625,
    });
  });

  it("takes a 0 for an empty cell, as some hosts hand it over", () => {
    const zeros = { Pitch: 0, "End pitch": 0, Overhang: 0, "End overhang": 0, Ridge: 0, "Long valley": 0, Length: 0 };
    expect(read(block([{ ...T, ...zeros }])).wings).toEqual([spec]);
    const grid = block([T], [], ["Wing A"]).map((row) => [...row.map((cell) => (cell === "" ? 0 : cell)), 0, 0]);
    expect(read(grid.map(([label, main, ...wing]) => [label, main, ...wing])).wings).toEqual([spec]);
  });

  it("has its letter from its heading, else from its place", () => {
    const two = [T, { ...T, "From left corner": `24'` }];
    const letters = (input: unknown) => read(input).wings.map(({ letter }) => letter);
    expect(letters(block(two))).toEqual(["A", "B"]);
    expect(letters(block(two, [], ["Wing B", "wing d:"]))).toEqual(["B", "D"]);
    expect(letters(block([{}, T]))).toEqual(["B"]);
    expect(letters(block([{}, T], [], ["", "Wing A"]))).toEqual(["A"]);
  });

  it("says its own unit for the whole block", () => {
    const metric = { ...T, "From left corner": "2.4 m", "Out from wall": 3000, Span: 3600 };
    const rows = [
      ["Span", 7200],
      ["Length", 12000],
      ["Pitch", 6],
      ["Overhang", 400],
    ];
    expect(read(block([metric], rows))).toMatchObject({ unit: "mm", wings: [{ from: 2400, out: 3000, span: 3600 }] });
  });
});

describe("a block without a wing means what it meant", () => {
  it("with or without a heading over it, and empty columns beside it", () => {
    const plain = read(MAIN);
    expect(plain.wings).toEqual([]);
    expect(read([["", "Main roof"], ...MAIN])).toEqual(plain);
    expect(read(MAIN.map((row) => [...row, "", 0, null]))).toEqual(plain);
  });

  it("reads none as no end overhang", () => {
    expect(read([...MAIN, ["End overhang", "None"]]).endOverhang).toBe(0);
    expect(read([...MAIN, ["End overhang", `0"`]]).endOverhang).toBe(0);
    expect(message([...MAIN, ["End overhang", "0"]])).toMatch(/^End overhang: 0 was read.*Type none for no overhang/);
  });
});
