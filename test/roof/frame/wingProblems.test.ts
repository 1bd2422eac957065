import { describe, expect, it } from "vitest";
import { Failure } from "../../../src/measure/result.ts";
import { frame } from "../../../src/roof/frame/frame.ts";
import type { FrameProblem } from "../../../src/roof/frame/frameProblem.ts";
import type { RoofSpec, WingSpec } from "../../../src/roof/frame/roofSpec.ts";
import { usual } from "../anySpec.ts";

const main: RoofSpec = { ...usual, length: 480, overhang: 16 };
const wing: WingSpec = {
  letter: "A",
  wall: "front",
  from: 150,
  out: 120,
  span: 144,
  end: "hip",
  pitch: 0.5,
  endPitch: null,
  overhang: null,
  endOverhang: null,
  ridge: main.ridge!,
  longValley: null,
  framing: "framed in",
  sheathing: null,
};

const LAID = { framing: "laid over", sheathing: 0.5 } as const;

function problem(change: Partial<WingSpec>, roof: Partial<RoofSpec> = {}): FrameProblem | null {
  const made = frame({ ...main, ...roof, wings: [{ ...wing, ...change }] });
  return made instanceof Failure ? made.problem : null;
}

/** A wing that is refused, what its refusal says, the change that it names, and one a sixteenth short of that. */
const refused: readonly [
  string,
  Partial<WingSpec>,
  (found: never) => Partial<WingSpec>,
  (found: never) => Partial<WingSpec>,
  Partial<RoofSpec>?,
][] = [
  [
    "wing ridge too high",
    { pitch: 14 / 12 },
    ({ pitch }: FrameProblem<"wing ridge too high">) => ({ pitch: pitch / 12 }),
    ({ pitch }: FrameProblem<"wing ridge too high">) => ({ pitch: pitch / 12 + 0.01 }),
  ],
  [
    "wing ridge nearly level",
    { from: 96, span: 287.5 },
    ({ span }: FrameProblem<"wing ridge nearly level">) => ({ span }),
    ({ span }: FrameProblem<"wing ridge nearly level">) => ({ span: span - 1 / 16 }),
  ],
  [
    "wing ridge nearly level",
    { from: 96, span: 287.5 },
    ({ most }: FrameProblem<"wing ridge nearly level">) => ({ span: most }),
    ({ most }: FrameProblem<"wing ridge nearly level">) => ({ span: most + 1 / 16 }),
  ],
  [
    "wing past the wall",
    { from: 360 },
    ({ limit }: FrameProblem<"wing past the wall">) => ({ from: limit }),
    ({ by }: FrameProblem<"wing past the wall">) => ({ from: 360 - by + 1 / 16 }),
  ],
  [
    "wing too near a corner",
    { from: 1 },
    ({ limit }: FrameProblem<"wing too near a corner">) => ({ from: limit }),
    () => ({ from: 2 }),
  ],
  [
    "wing too near a corner",
    { from: 2, pitch: 0.75 },
    ({ limit }: FrameProblem<"wing too near a corner">) => ({ from: limit }),
    () => ({ from: 3 }),
  ],
  [
    "no valley to the ridge",
    { from: 2.5 },
    ({ limit }: FrameProblem<"no valley to the ridge">) => ({ from: limit }),
    ({ limit }: FrameProblem<"no valley to the ridge">) => ({ from: limit - 1 / 16 }),
  ],
  [
    "no room on the ridge",
    { from: 2.25, span: 288 },
    ({ limit }: FrameProblem<"no room on the ridge">) => ({ from: limit }),
    ({ limit }: FrameProblem<"no room on the ridge">) => ({ from: limit - 1 / 16 }),
  ],
  [
    "wing too short",
    { out: 1 },
    ({ least }: FrameProblem<"wing too short">) => ({ out: least }),
    ({ least }: FrameProblem<"wing too short">) => ({ out: least - 1 / 16 }),
  ],
  [
    "wing too short",
    { out: 12, endPitch: 0.25 },
    ({ least }: FrameProblem<"wing too short">) => ({ out: least }),
    ({ least }: FrameProblem<"wing too short">) => ({ out: least - 1 / 16 }),
  ],
  [
    "long valley off the ridge",
    { from: 48, longValley: "right" },
    ({ other }: FrameProblem<"long valley off the ridge">) => ({ longValley: other }),
    () => ({ longValley: "right" }),
  ],
  [
    "no long valley",
    { from: "flush left", longValley: "right" },
    () => ({ longValley: null }),
    () => ({ longValley: "left" }),
  ],
  ["flush at a gable", { from: "flush right" }, () => ({ from: 150 }), () => ({}), { ends: "hip and gable" }],
  [
    "flush at another pitch",
    { from: "flush left" },
    ({ end }: FrameProblem<"flush at another pitch">) => ({ pitch: end / 12 }),
    () => ({}),
    { endPitch: 8 / 12 },
  ],
  ["flush laid over", { ...LAID, from: "flush left" }, () => ({ from: 150 }), () => ({ from: "flush right" })],
  ["sheathing framed in", { sheathing: 0.5 }, () => ({ sheathing: null }), () => ({ sheathing: 0.75 })],
  ["no long valley", { ...LAID, longValley: "right" }, () => ({ longValley: null }), () => ({ longValley: "left" })],
  [
    "wing too low to lay over",
    { ...LAID, end: "gable", span: 24 },
    ({ least }: FrameProblem<"wing too low to lay over">) => ({ span: least }),
    ({ least }: FrameProblem<"wing too low to lay over">) => ({ span: least - 1 / 16 }),
  ],
  [
    "wing too short",
    // Its apex would stand over the main plate line.
    { ...LAID, out: 72 },
    ({ least }: FrameProblem<"wing too short">) => ({ out: least }),
    ({ least }: FrameProblem<"wing too short">) => ({ out: least - 1 / 16 }),
  ],
  [
    "wing too near a corner",
    { ...LAID, from: 0.5 },
    ({ limit }: FrameProblem<"wing too near a corner">) => ({ from: limit }),
    ({ limit }: FrameProblem<"wing too near a corner">) => ({ from: limit - 1 / 16 }),
  ],
  ["wing spacing", { span: 36 }, () => ({ span: 48.1 }), () => ({ span: 47.9 })],
];

describe("a wing that is laid over stands where one that is framed in does not", () => {
  it.each([
    ["wing ridge nearly level", { from: 96, span: 287.5 }, 480],
    ["no valley to the ridge", { from: 90 }, 324],
  ] as const)("%s", (kind, place, length) => {
    expect(problem({ ...place, end: "gable" }, { length })).toMatchObject({ kind });
    expect(problem({ ...place, ...LAID, end: "gable" }, { length })).toBeNull();
  });
});

describe("a wing that cannot stand", () => {
  it.each(refused)(
    "%s %j: what the refusal names works, and a little less does not",
    (kind, change, fits, misses, roof) => {
      const found = problem(change, roof);
      expect(found).toMatchObject({ kind, wing: "A" });
      expect(problem({ ...change, ...fits(found as never) }, roof)).toBeNull();
      expect(problem({ ...change, ...misses(found as never) }, roof)).toMatchObject({ kind });
    },
  );

  it.each([
    // 45 degrees to the wall.
    [0.5, Math.SQRT1_2],
    // The valley goes 3 in from the wall for 2 along it.
    [0.75, 3 / Math.hypot(2, 3)],
  ])("beside a gable: half its valley, 0.75 in square, has room along the wall, wing at %d", (pitch, sin) => {
    const found = problem({ from: 335.5, pitch }, { ends: "hip and gable" });
    expect(found).toMatchObject({ kind: "wing too near a corner", side: "right", bound: "most", fits: true });
    expect((found as FrameProblem<"wing too near a corner">).limit).toBeCloseTo(480 - 144 - 0.75 / sin, 9);
  });

  it("too near a corner, it could be flush where the end has its pitch and it is not asked to be", () => {
    const flush = (change: Partial<WingSpec>, roof: Partial<RoofSpec> = {}) =>
      (problem(change, roof) as FrameProblem<"wing too near a corner">).flush;
    expect(flush({ from: 1 })).toBe(true);
    expect(flush({ from: 2, pitch: 0.75 })).toBe(false);
    expect(flush({ from: 335.5 }, { ends: "hip and gable" })).toBe(false);
    const thick = { name: "6x10", thickness: 6, depth: 9.25 };
    expect(flush({ from: "flush left", span: 288, end: "gable" }, { length: 291.5, valley: thick })).toBe(false);
  });

  it("just as wide as its wall is long has no room at its corners; a little more is too wide", () => {
    const wide = { from: 0, pitch: 0.25 };
    expect(problem({ ...wide, span: 480 })).toMatchObject({ kind: "wing too near a corner", fits: false });
    expect(problem({ ...wide, span: 480.0625 })).toMatchObject({ kind: "wing wider than wall", most: 480 });
  });

  it("with neither valley to the ridge is moved, whichever is to be the long one", () => {
    for (const longValley of [null, "left", "right"] as const)
      expect(problem({ from: 2.5, longValley })).toMatchObject({ kind: "no valley to the ridge", wing: "A" });
  });

  const two = (from: number, more: Partial<RoofSpec> = {}, own: Partial<WingSpec> = {}) => {
    const gabled = { ...wing, ...own, end: "gable", span: 96 } as const;
    const made = frame({
      ...main,
      ...more,
      wings: [
        { ...gabled, from: 48 },
        { ...gabled, letter: "B", from },
      ],
    });
    return made instanceof Failure ? made.problem : null;
  };

  it("beside another wing: the place that the refusal names works", () => {
    expect(two(120)).toMatchObject({ kind: "wings overlap", wing: "B", other: "A", right: 144 });
    const near = two(150) as FrameProblem<"valleys meet">;
    expect(near).toMatchObject({ kind: "valleys meet", wing: "B", bound: "least" });
    expect(two(near.limit + 1e-6)).toBeNull();
    expect(two(near.limit - 1 / 16)).toMatchObject({ kind: "valleys meet" });
    // Eaves of 30 on both wings reach farther than their valleys; the place that is named for the valleys clears them too.
    const wide = [{ length: 800 }, { overhang: 30 }] as const;
    expect(two(200, ...wide)).toEqual({
      kind: "wings' eaves meet",
      at: "wingFrom",
      wing: "B",
      other: "A",
      bound: "least",
      limit: 204,
    });
    expect(two(150, ...wide)).toMatchObject({ kind: "valleys meet", limit: 204 });
    expect(two(204, ...wide)).toBeNull();
  });
});
