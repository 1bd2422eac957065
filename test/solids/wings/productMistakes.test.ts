import { afterAll, describe, expect, it } from "vitest";
import { asked, rows } from "../../functions/asked.ts";
import { Shop } from "../shop.ts";
import { wingedCases } from "./cases.ts";
import { differences } from "./compare.ts";
import type { RoofFigures } from "./figures.ts";
import { tablesSaid } from "./fromTables.ts";
import { measureRoof } from "./measureRoof.ts";
import { mistakes, type Mistake } from "./mistakes.ts";
import { blockOf, type WingedPlan } from "./plan.ts";
import type { Said, SaidJack, SaidMember } from "./said.ts";
import { frameWinged } from "./winged.ts";

const shop = new Shop();
afterAll(() => shop.sweep());

/** What is made once for a plan. */
function once<T>(make: (plan: WingedPlan) => T): (plan: WingedPlan) => T {
  const known = new Map<string, T>();
  return (plan) => {
    const name = JSON.stringify(plan);
    const made = known.get(name) ?? make(plan);
    known.set(name, made);
    return made;
  };
}

const figuresOf = once((plan): RoofFigures => measureRoof(shop, frameWinged(shop, plan)));

/** What the worksheet functions say of a roof. */
const tablesOf = once((plan): Said =>
  tablesSaid(
    ["MEMBERS", "JACKTABLE", "PLATEMARKS", "TAKEOFF"].map(
      (name) => asked(name, blockOf(plan)) as (string | number)[][],
    ),
  ),
);

const T = wingedCases["a T with a lower ridge"]!;
const laid: WingedPlan = { ...T, wings: T.wings.map((wing) => ({ ...wing, framing: "laid over" })) };
const along = Math.hypot(1, laid.pitch.slope);
const onBoard = ({ footTilt, headMark }: SaidJack): boolean => footTilt > 0 && headMark === 0;
const laidMembers =
  (change: (row: SaidMember) => Partial<SaidMember>) =>
  (said: Said): Said => ({
    ...said,
    members: said.members.map((row) => (row.member === "valley jack" ? { ...row, ...change(row) } : row)),
  });

/** Those of a wing that is laid over. */
const overlays: readonly Mistake[] = [
  {
    name: "an overlay's jacks without sheathing and valley board",
    plan: laid,
    spoil: laidMembers(({ long, short, board }) => {
      const more = (((0.5 + laid.valley.thickness) * along) / laid.pitch.slope) * along;
      return { long: long + more, short: short + more, board: board + more };
    }),
  },
  {
    name: "an overlay's seat cut square",
    plan: laid,
    spoil: (said) => ({ ...said, jacks: said.jacks.map((row) => (onBoard(row) ? { ...row, footTilt: 0 } : row)) }),
  },
  {
    name: "an overlay's main plate and commons interrupted",
    plan: laid,
    spoil: (said, { of }) => {
      const framed = of(T);
      return {
        ...said,
        members: [
          ...said.members.filter(({ side }) => side !== "Main"),
          ...framed.members.filter(({ side }) => side === "Main"),
        ],
      };
    },
  },
];

describe("a mistake in the tables of the worksheet functions is noticed", { timeout: 60_000 }, () => {
  it.each([...mistakes, ...overlays])("$name", ({ plan, spoil }) => {
    const figures = figuresOf(plan);
    const right = tablesOf(plan);
    expect(differences(figures, right)).toEqual([]);
    const wrong = spoil(right, { plan, figures, of: tablesOf });
    expect(wrong).not.toEqual(right);
    expect(differences(figures, wrong)).not.toEqual([]);
  });
});

// Not lengths but words and whole rows: what the tables must say.
describe("what the tables say of a place where framers look first", () => {
  const noteOf = (plan: WingedPlan, member: string) =>
    rows("MEMBERS", blockOf(plan))
      .filter((row) => row["Member"] === member)
      .map((row) => String(row["Note"]));

  it("how far the supporting valley's corner stands proud past the crossing, as it does", () => {
    const [long] = figuresOf(T).bearers.filter(({ role }) => role === "supporting");
    // 0.75 x 0.5 x cos 45 = 0.265 in, 17/64 of an inch.
    expect(long!.proud).toBeCloseTo(0.75 * 0.5 * Math.SQRT1_2, 6);
    expect(noteOf(T, "valley").filter((note) => note.includes(`17/64"`))).toHaveLength(1);
  });

  it("that two thicknesses of fascia come off at an inside corner", () => {
    const fascia = rows("TAKEOFF", blockOf(T)).find(({ Item }) => Item === "Fascia")!;
    expect(fascia["How"]).toMatch(/add two thicknesses at each outside corner, take two off at each inside corner/);
    const { edges } = figuresOf(T);
    expect([edges.outerCorners, edges.innerCorners]).toEqual([6, 2]);
  });

  it("that a broken hip stands on ridge and valley only, and that a valley is cut the other way round than a hip", () => {
    const L = wingedCases["an L, flush left, lower ridge"]!;
    expect(noteOf(L, "broken hip")).toEqual([expect.stringMatching(/only that ridge and the valley carry its foot/)]);
    expect(
      rows("CAUTIONS", blockOf(L)).some(
        ({ Check, Remark }) => Check === "Broken hip's foot" && /^OUTSIDE/.test(String(Remark)),
      ),
    ).toBe(true);
    // A valley's heel is not dropped: it is the common one.
    const members = rows("MEMBERS", blockOf(L));
    const heel = (member: string) => Number(members.find((row) => row["Member"] === member)!["Heel"]);
    expect(heel("valley")).toBeCloseTo(heel("common"), 9);
    expect(heel("hip")).toBeLessThan(heel("common"));
  });

  it("a wing of the same span at a flatter pitch as lower, and equal overhangs at unequal pitches as fascias that miss the valley", () => {
    const flatter: WingedPlan = {
      ...T,
      wings: T.wings.map((wing) => ({ ...wing, from: 100, span: 288, pitch: { cell: 4, slope: 4 / 12 } })),
    };
    expect(rows("MEMBERS", blockOf(flatter)).some(({ Piece }) => Piece === "VS-A")).toBe(true);
    const unequal = wingedCases["a T at two pitches, long valley right"]!;
    const equal: WingedPlan = { ...unequal, wings: unequal.wings.map((wing) => ({ ...wing, overhang: 16 })) };
    // Level it is 16 x 8 / 6 = 21 5/16.
    expect(noteOf(equal, "valley").join()).toMatch(/1' 9 5\/16"/);
    expect(noteOf(unequal, "valley").join()).not.toMatch(/fascia/);
  });
});
