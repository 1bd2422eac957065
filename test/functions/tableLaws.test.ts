import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { asked, number, rows, type Row } from "./asked.ts";

// Tables of one roof say the same of it, in whatever order its block stands and in whatever unit it is measured.

const between = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
const quarter = (low: number, high: number) => fc.integer({ min: low * 4, max: high * 4 }).map((value) => value / 4);

/** Roofs of one building: lengths in inches, to the quarter. */
const roof = fc.record({
  Span: quarter(180, 340),
  More: quarter(1, 200),
  Pitch: between(3, 14),
  "End pitch": between(3, 14),
  Spacing: fc.constantFrom(12, 16, 19.25, 24),
  Overhang: quarter(0, 12),
  Rafter: fc.constantFrom("2x8", "2x10"),
  Seat: quarter(2, 3),
  "Set out from": fc.constantFrom("king common", "corner"),
});
type Roof = typeof roof extends fc.Arbitrary<infer T> ? T : never;
type Block = (string | number)[][];

/** The block of a roof, long enough for hips at both ends. */
function blockOf({ More, ...rest }: Roof): Block {
  const ends = rest.Span * Math.max(1, rest.Pitch / rest["End pitch"]);
  const Length = Math.ceil(ends) + 48 + More;
  return Object.entries({ ...rest, Length, Hip: "2x12", Ridge: "2x12" });
}

/** Holds a law on roofs that can be framed; most of them must be. */
function holds(law: (block: Block, jacks: readonly Row[]) => void, numRuns = 25): void {
  let framed = 0;
  fc.assert(
    fc.property(roof, (given) => {
      const block = blockOf(given);
      if (!Array.isArray(asked("JACKTABLE", block))) return;
      framed++;
      law(block, rows("JACKTABLE", block));
    }),
    { seed: 12, numRuns },
  );
  expect(framed).toBeGreaterThan(numRuns / 2);
}

const of = (block: Block, label: string) => block.find(([one]) => one === label)![1]!;
const sum = (values: readonly (number | string | boolean | null)[]) =>
  values.reduce<number>((total, value) => total + Number(value || 0), 0);
const count = (row: Row) => sum([row.Left!, row.Right!, row.Plain ?? 0]);

describe("the tables of a roof agree", () => {
  it("jacks: schedule, members and piece list count the same, to the same length; the cell's own functions say it too", () => {
    holds((block, jacks) => {
      const members = rows("MEMBERS", block);
      const pieces = rows("PIECELIST", block);
      expect(jacks.length).toBeGreaterThan(0);
      for (const jack of jacks) {
        const member = members.find(({ Piece }) => Piece === jack.Piece)!;
        for (const same of ["Left", "Right", "Long point", "Short point", "Tape", "Shortest board", "Saw tilt"])
          expect([jack.Piece, same, member[same]]).toEqual([jack.Piece, same, jack[same]]);
        const listed = pieces.filter(({ Piece }) => Piece === jack.Piece);
        expect(sum(listed.map(({ Count }) => Count!))).toBe(count(jack));
        const [own, other] =
          jack.Side === "End"
            ? [of(block, "End pitch"), of(block, "Pitch")]
            : [of(block, "Pitch"), of(block, "End pitch")];
        if (jack.Side !== "Both")
          expect(jack["Long point"]).toBeCloseTo(number("JACKLEN", own, jack.Offset, 1.5, 1.5, other), 6);
      }
    });
  });

  it("pieces: members, piece list and take-off count the same boards and board feet", () => {
    holds((block) => {
      const members = rows("MEMBERS", block);
      const takeOff = rows("TAKEOFF", block);
      const amount = (end: string) =>
        sum(takeOff.filter(({ Item }) => String(Item).endsWith(end)).map(({ Amount }) => Amount!));
      expect(amount(", pieces")).toBe(sum(members.map(count)));
      expect(sum(rows("PIECELIST", block).map(({ Count }) => Count!))).toBe(sum(members.map(count)));
      expect(amount(", board feet")).toBeCloseTo(sum(members.map((row) => row["Board feet"]!)), 6);
    });
  });

  it("areas: plan over the cosine of its pitch is what lies on the slope, and the planes are the roof", () => {
    holds((block) => {
      const amount = Object.fromEntries(rows("TAKEOFF", block).map(({ Item, Amount }) => [Item, Amount as number]));
      for (const [side, row] of [
        ["Main", "Pitch"],
        ["End", "End pitch"],
      ] as const) {
        const slope = Math.hypot(1, Number(of(block, row)) / 12);
        expect(amount[`${side} planes, sloped`]).toBeCloseTo(amount[`${side} planes, plan`]! * slope, 6);
      }
      expect(amount["Roof, sloped"]).toBeCloseTo(amount["Main planes, sloped"]! + amount["End planes, sloped"]!, 6);
    });
  });
});

describe("a block", () => {
  const tables = ["JACKTABLE", "MEMBERS", "PLATEMARKS", "TAKEOFF", "PIECELIST"];

  it("says the same in whatever order its rows stand, with empty rows between", () => {
    let seed = 1;
    holds((block) => {
      const shuffled: Block = fc.sample(fc.shuffledSubarray(block, { minLength: block.length }), {
        seed: seed++,
        numRuns: 1,
      })[0]!;
      shuffled.splice(seed % shuffled.length, 0, ["", ""]);
      for (const table of tables) expect(asked(table, shuffled)).toEqual(asked(table, block));
    }, 10);
  });

  it("in millimeters is the same roof", () => {
    const lengths = ["Span", "Length", "Spacing", "Overhang", "Seat"];
    // As dressed: a nominal size in a metric roof is the metric trade's, 38 mm thick.
    const sizes = new Map([
      ["2x8", "38.1x184.15"],
      ["2x10", "38.1x234.95"],
      ["2x12", "38.1x285.75"],
    ]);
    const inMetric = (label: string | number, value: string | number) =>
      lengths.includes(String(label)) ? 25.4 * (value as number) : (sizes.get(String(value)) ?? value);
    holds((block, jacks) => {
      const metric = block.map(([label, value]) => [label!, inMetric(label!, value!)]);
      const there = rows("JACKTABLE", [...metric, ["Unit", "mm"]]);
      expect(there.map(({ Piece, Left, Right }) => [Piece, Left, Right])).toEqual(
        jacks.map(({ Piece, Left, Right }) => [Piece, Left, Right]),
      );
      there.forEach((row, i) => {
        expect((row["Long point"] as number) / 25.4).toBeCloseTo(jacks[i]!["Long point"] as number, 6);
        expect(row["Saw tilt"]).toBeCloseTo(jacks[i]!["Saw tilt"] as number, 8);
      });
    });
  });

  it("of a longer roof has no jack more or less, only commons: its hips stay", () => {
    holds((block, jacks) => {
      const longer = block.map(([label, value]) => [label!, label === "Length" ? (value as number) + 240 : value!]);
      if (of(block, "Set out from") !== "king common") return;
      expect(rows("JACKTABLE", longer)).toEqual(jacks);
      const commons = (of: Block) =>
        sum(
          rows("MEMBERS", of)
            .filter(({ Piece }) => Piece === "C")
            .map(count),
        );
      expect(commons(longer)).toBeGreaterThan(commons(block));
    });
  });
});
