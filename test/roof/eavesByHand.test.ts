import { describe, expect, it } from "vitest";
import { refusal, rows } from "../functions/asked.ts";

type Block = readonly (readonly unknown[])[];
const OF_EAVES = ["fascia", "sub-fascia", "block"];
const eaves = (block: Block) =>
  rows("MEMBERS", block)
    .filter((row) => OF_EAVES.includes(String(row["Member"])))
    .map((row) => [
      row["Piece"],
      Number(row["Left"]) + Number(row["Right"]) + Number(row["Plain"]),
      Number(Number(row["Long point"]).toFixed(4)),
      Number(Number(row["Short point"]).toFixed(4)),
    ]);

/**
 * A market hall, 24' by 36', 6 in 12, rafters of 1 1/2 in at 24 in, overhang 18 in; 2x8 hips of 1 1/2 in; 2x4 on the tails, 1x6 on that.
 *
 * The eaves are 36' + 3' = 468 in and 24' + 3' = 324 in along the tail cuts. The sub-fascia's inner face is as long, its outer face 1 1/2 in longer at either
 * end: 471 and 327. The fascia begins there and is 3/4 in thick: 472 1/2 and 328 1/2.
 *
 * Rafters on a main plate at 24, 48 ... 408: 17 of them, 16 bays of 24 - 1 1/2 = 22 1/2 clear; on an end plate at 24 ... 264: 11, 10 bays. 2 x 16 + 2 x 10 = 52.
 * The corner bay: the last jack's near face is 24 - 3/4 = 23 1/4 from the corner, the hip's face 3/4 / sin 45 = 1.0607: 22.1893 on the outer face; 1 1/2 in farther in
 * the hip's face is 1 1/2 in farther along: 20.6893. Two at each of four corners.
 */
describe("eaves and blocks counted by hand", () => {
  const hall: Block = [
    ["Span", "24'"],
    ["Length", "36'"],
    ["Pitch", 6],
    ["Overhang", 18],
    ["Spacing", 24],
    ["Sub-fascia", "2x4"],
    ["Fascia", "1x6"],
    ["Blocking", "both"],
  ];

  it("a hip roof", () => {
    expect(eaves(hall)).toEqual([
      ["SF1", 2, 471, 468],
      ["SF2", 2, 327, 324],
      ["F1", 2, 472.5, 471],
      ["F2", 2, 328.5, 327],
      ["BP", 52, 22.5, 22.5],
      ["BC", 8, 22.1893, 20.6893],
    ]);
  });

  it("its last jack names the block, or asks for one", () => {
    const note = (block: Block) => String(rows("MEMBERS", block).find((row) => row["Piece"] === "J5")!["Note"]);
    expect(note(hall)).toBe(`2' 0" left at the corner: its block, 1' 10 3/16" on the outer face, is in the list`);
    for (const blocking of ["none", "plate"])
      expect(note([...hall.slice(0, -1), ["Blocking", blocking]])).toBe(`2' 0" left at the corner: block it`);
    expect(rows("PLATEMARKS", hall)[0]!["Note"]).toContain("is in the list");
  });

  /**
   * The hall with a gable at its right end, which reaches 18 in past its plate line: main eaves of 36' + 18 in + 18 in as before, square at the gable, so only one
   * end grows: 469 1/2 and 470 1/4. One end eave. The last pair stands at 432 - 3/4, and 408 before it: bays at 24 ... 408 sixteen, and one of 23 1/4 - 1 1/2 =
   * 21 3/4. Two hips, four corner blocks.
   */
  it.each(["hip and gable", "gable and hip"])("one end a gable: %s", (ends) => {
    expect(eaves([...hall, ["Ends", ends]])).toEqual([
      ["SF1", 2, 469.5, 468],
      ["SF2", 1, 327, 324],
      ["F1", 2, 470.25, 469.5],
      ["F2", 1, 328.5, 327],
      ["BP1", 42, 22.5, 22.5],
      ["BP2", 2, 21.75, 21.75],
      ["BC", 4, 22.1893, 20.6893],
    ]);
  });

  // Runs of 6' and 12': a hip lies at tan 2 to the end plate and 1/2 to the main one, so half its 1 1/2 in takes 0.8385 and 1.6771 of the 23 1/4 to the jack,
  // and 1 1/2 in farther in 3/4 and 3 in more. The longer block comes first.
  it("corner blocks of a steeper main roof", () => {
    const rows = [["Span", "12'"], ["Length", "36'"], ["Pitch", 12], ["End pitch", 6], ...hall.slice(3)];
    expect(eaves(rows).filter(([mark]) => String(mark).startsWith("BC"))).toEqual([
      ["BC1", 4, 22.4115, 21.6615],
      ["BC2", 4, 21.5729, 18.5729],
    ]);
  });

  // Four eaves of 24' + 3'; on each plate rafters at 24 ... 264. One kind of each board needs no number.
  it("a pyramid", () => {
    expect(eaves(hall.map(([label, value]) => [label, label === "Length" ? "24'" : value]))).toEqual([
      ["SF", 4, 327, 324],
      ["F", 4, 328.5, 327],
      ["BP", 40, 22.5, 22.5],
      ["BC", 8, 22.1893, 20.6893],
    ]);
  });

  /**
   * A wing of 16' span, gabled, 10' out, from 10' to 26' of the front wall of a hall 24' by 40', overhangs 16 in. Its side eaves run from its gable's rake, 16 in past
   * 10', in to the main eave, 16 in from the wall: 120 in, and at the inside corner each face of the sub-fascia loses how far out it stands: 120 and 118 1/2; the
   * fascia from there 118 1/2 and 117 3/4. The front eave is in two parts: left 120 + 16 - 16 = 120, one corner outside and one inside, so both faces are as
   * long; right 480 - 312 = 168 likewise.
   */
  it("a wing with two inside corners", () => {
    const wing: Block = [
      ["Span", 288, 192],
      ["Length", 480],
      ["Pitch", 6],
      ["Overhang", 16],
      ["Wall", "", "front"],
      ["From left corner", "", 120],
      ["Out from wall", "", 120],
      ["Ends", "", "gable"],
      ["Sub-fascia", "2x4"],
      ["Fascia", "1x6"],
    ];
    expect(eaves(wing)).toEqual([
      ["SF1", 1, 515, 512],
      ["SF2", 2, 323, 320],
      ["SF3", 1, 168, 168],
      ["SF4", 1, 120, 120],
      ["SF5", 2, 120, 118.5],
      ["F1", 1, 516.5, 515],
      ["F2", 2, 324.5, 323],
      ["F3", 1, 168, 168],
      ["F4", 1, 120, 120],
      ["F5", 2, 118.5, 117.75],
    ]);
  });

  // Rafters at 48, 144, 240, 336 and 432 on the front plate. The wing takes all of the bay between 144 and 240, in which no rafter stands over its mouth; at 240 a
  // jack to the valley stands on the plate and a valley jack over it. So three bays in front, four at the back and two at either end, 96 - 1 1/2 clear.
  it("a wing takes the bay that it stands in, and what stands off the plate takes none", () => {
    const narrow: Block = [
      ["Span", 288, 60],
      ["Length", 480],
      ["Pitch", 6],
      ["Spacing", 96],
      ["Wall", "", "front"],
      ["From left corner", "", 162],
      ["Out from wall", "", 60],
      ["Ends", "", "gable"],
      ["Blocking", "plate"],
    ];
    expect(eaves(narrow)).toEqual([["BP", 11, 94.5, 94.5]]);
    expect(rows("MEMBERS", narrow).filter((row) => row["Member"] === "jack to the valley")).toHaveLength(1);
  });

  it("square and level tails take less board, along the same top edge", () => {
    const common = (cut: string) => rows("MEMBERS", [...hall, ["Tail cut", cut]]).find((row) => row["Piece"] === "C")!;
    // Long point (144 - 3/4) sqrt 5 / 2, tail 18 sqrt 5 / 2; plumb ends lean 5 1/2 / 2, and a plumb part of 3 1/2 in reaches 3 1/2 / sqrt 5 back.
    const edge = ((144 - 0.75 + 18) * Math.sqrt(5)) / 2;
    expect(common("plumb")["Shortest board"]).toBeCloseTo(edge + 2.75, 9);
    expect(common("square")["Shortest board"]).toBeCloseTo(edge, 9);
    expect(common("level")["Shortest board"]).toBeCloseTo(edge + 3.5 / Math.sqrt(5), 9);
    for (const cut of ["plumb", "square", "level"]) expect(common(cut)["Tail"]).toBeCloseTo((18 * Math.sqrt(5)) / 2, 9);
  });

  it("counts its boards in the take-off, by size", () => {
    const item = (name: string) => rows("TAKEOFF", hall).find((row) => row["Item"] === name)?.["Amount"];
    // 2 x 472 1/2 + 2 x 328 1/2 in of 1x6, half a board foot each foot.
    expect(item("1x6, lineal")).toBeCloseTo((2 * 472.5 + 2 * 328.5) / 12, 9);
    expect(item("1x6, board feet")).toBeCloseTo((2 * 472.5 + 2 * 328.5) / 24, 9);
    expect(item("2x4, pieces")).toBe(4);
    // 56 rafters and 60 blocks.
    expect(item("2x6, pieces")).toBe(116);
  });
});

describe("rows of the eaves that cannot be", () => {
  const block = (...more: readonly unknown[][]) => [
    ["Span", "24'"],
    ["Length", "36'"],
    ["Pitch", 6],
    ["Overhang", 16],
    ...more,
  ];
  it.each([
    [
      [["Tail cut", "level"]],
      "Tail cut: a level cut starts at the foot of the board on the tail, and the block has neither Fascia nor Sub-fascia",
    ],
    [
      [["Blocking", "corner"]],
      "Blocking: blocks are cut to the spacing, and the block has no value for it. Type 24 beside the label Spacing",
    ],
    [
      [
        ["Tail cut", "level"],
        ["Fascia", "2x8"],
      ],
      "nothing is left to cut level",
    ],
    [
      [
        ["Tail cut", "square"],
        ["Overhang", 1],
      ],
      "would cut into the seat",
    ],
    [[["Tail cut", "pointed"]], `"pointed"`],
    [[["Fascia", "thick"]], "Fascia"],
  ])("%j", (more, words) => {
    const rest = block().filter(([label]) => !more.some(([own]) => own === label));
    expect(refusal("MEMBERS", [...rest, ...more])).toContain(words);
  });
});
