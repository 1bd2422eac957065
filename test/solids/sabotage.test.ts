import { afterEach, describe, expect, it } from "vitest";
import { disagreements, inches } from "./agreement.ts";
import { answered } from "./answers.ts";
import { assemble } from "./assemble.ts";
import type { Cutter } from "./assemble.ts";
import { detailCheck } from "./detailCheck.ts";
import { plateCheck } from "./plateCheck.ts";
import { faults } from "./proof.ts";
import { regular, roofCases } from "./roofCases.ts";
import { membersCheck, toTheTables } from "./schedule.ts";
import { Shop } from "./shop.ts";
import type { RoofPlan } from "./roofPlan.ts";

const shop = new Shop();
afterEach(() => shop.sweep());

const SIXTEENTH = 1 / 16;
/** The third jack from the king common: offset 72 on a regular roof. */
const OFFSET = 72;

/** What is found when one jack of every corner is cut otherwise than the tables say. */
async function foundWith(
  plan: RoofPlan,
  spoil: (cut: NonNullable<ReturnType<Cutter>>) => ReturnType<Cutter>,
): Promise<string[]> {
  const cutter = await toTheTables(plan);
  let spoilt = 0;
  const roof = assemble(shop, plan, (piece) => {
    if (piece.kind !== "jack" || piece.side !== "Main" || Math.abs(piece.offset - OFFSET) > 1e-6) return cutter(piece);
    spoilt += 1;
    return spoil(cutter(piece));
  });
  expect(spoilt).toBe(4);
  return faults(shop, roof);
}

describe("the proof finds what it is there to find", { timeout: 60_000 }, () => {
  it("nothing, in a roof cut to its tables", async () => {
    expect(await foundWith(regular, (cut) => cut)).toEqual([]);
  });

  it.each(["regular", "steeper ends", "hips on the ridge"] as const)("a jack 1/16 in long: %s", async (name) => {
    const found = await foundWith(roofCases[name]!, (cut) => ({ ...cut, longPoint: cut.longPoint + SIXTEENTH }));
    expect(
      found.filter(
        (words) => /jack Main 72 .* overlap/.test(words) || /^hip .* and jack Main 72 .* overlap/.test(words),
      ),
    ).toHaveLength(4);
    expect(found.filter((words) => words.includes("off its bearing"))).not.toEqual([]);
  });

  it.each(["regular", "steeper ends", "hips on the ridge"] as const)("a jack 1/16 in short: %s", async (name) => {
    const found = await foundWith(roofCases[name]!, (cut) => ({ ...cut, longPoint: cut.longPoint - SIXTEENTH }));
    expect(found.some((words) => words.includes("overlap"))).toBe(false);
    expect(found.filter((words) => /^jack Main 72 .* off its bearing/.test(words))).toHaveLength(8);
  });

  it("a jack of the wrong hand", async () => {
    const found = await foundWith(regular, (cut) => ({ ...cut, long: cut.long === "left" ? "right" : "left" }));
    expect(found.filter((words) => words.includes("overlap"))).toHaveLength(4);
    expect(found.filter((words) => words.includes("off its bearing"))).toHaveLength(8);
  });

  it("a jack with half the hip's thickness taken off where half of it along the jack is due", async () => {
    // Level shortening 3/4 in instead of 3/4 x root 2, up a slope of 6 in 12.
    const careless = ((Math.SQRT2 - 1) * 0.75 * Math.hypot(6, 12)) / 12;
    expect(await foundWith(regular, (cut) => ({ ...cut, longPoint: cut.longPoint + careless }))).not.toEqual([]);
  });

  it("a jack with nothing taken off for the hip: its line length", async () => {
    const line = await answered("JACKLINE", 6, OFFSET);
    expect(
      (await foundWith(regular, (cut) => ({ ...cut, longPoint: line }))).filter((words) => words.includes("overlap")),
    ).toHaveLength(4);
  });

  it("a jack with no thickness of its own: its long point where its center should be", async () => {
    expect(
      await foundWith(regular, (cut) => ({ ...cut, longPoint: cut.longPoint - (0.75 * Math.hypot(6, 12)) / 12 })),
    ).not.toEqual([]);
  });

  it("a saw tilt of 45 degrees at two pitches, and the tilt of the other side", async () => {
    const plan = roofCases["steeper ends"]!;
    expect(await foundWith(plan, (cut) => ({ ...cut, tilt: 45 }))).not.toEqual([]);
    expect(await foundWith(plan, (cut) => ({ ...cut, tilt: 90 - cut.tilt }))).not.toEqual([]);
  });

  it("a saw tilt that is a hundredth of a degree off", async () => {
    expect(await foundWith(regular, (cut) => ({ ...cut, tilt: cut.tilt + 0.01 }))).not.toEqual([]);
  });

  it("a common with nothing taken off for the ridge", async () => {
    const cutter = await toTheTables(regular);
    const whole = await answered("COMMONLEN", 6, 144, 0);
    const found = faults(
      shop,
      assemble(shop, regular, (piece) =>
        piece.kind === "common" ? { ...cutter(piece), longPoint: whole } : cutter(piece),
      ),
    );
    expect(found.filter((words) => /ridge and common|common .* and ridge/.test(words))).toHaveLength(10);
  });

  it("a square-topped hip that is not dropped", () => {
    const found = faults(shop, assemble(shop, { ...regular, hipTop: "level" }));
    expect(found.filter((words) => /^hip .* stands 0\.26/.test(words))).toHaveLength(8);
  });
});

describe("the comparison with the tables finds what it is there to find", { timeout: 60_000 }, () => {
  it("a roof framed with other wood, at another spacing, or from another end than its block says", async () => {
    for (const other of [
      { hip: { thickness: 3, depth: 7.25 } },
      { rafter: { thickness: 2, depth: 5.5 } },
      { ridge: { thickness: 2, depth: 7.25 } },
      { spacing: 20 },
      { pitch: { cell: 6.01, slope: 6.01 / 12 } },
    ] as const) {
      const { strays } = await membersCheck(shop, { ...assemble(shop, regular), plan: { ...regular, ...other } });
      expect(strays).not.toEqual([]);
    }
  });

  it("a heel, a seat and a notch that are not the block's", async () => {
    const { agreements } = await detailCheck(shop, { ...assemble(shop, regular), plan: { ...regular, heel: 4.41 } });
    const off = disagreements(agreements).join("\n");
    for (const heading of ["Heel", "Seat", "Notch", "Tape"]) expect(off).toContain(heading);
  });

  it("plates that are a sixteenth longer than the roof on them, and a plate without one of its commons", async () => {
    const roof = assemble(shop, { ...regular, length: 440 });
    expect(await plateCheck(shop, roof)).toEqual([]);
    expect(await plateCheck(shop, { ...roof, plan: { ...roof.plan, length: 440 + SIXTEENTH } })).not.toEqual([]);
    const [missing] = roof.members.filter(({ kind }) => kind === "common");
    expect(await plateCheck(shop, { ...roof, members: roof.members.filter((piece) => piece !== missing) })).not.toEqual(
      [],
    );
  });

  it("a row with a piece too many or too few", async () => {
    const roof = assemble(shop, regular);
    const { agreements, strays } = await membersCheck(shop, { ...roof, members: roof.members.slice(0, -1) });
    expect(strays).toEqual([]);
    expect(disagreements(agreements)).toHaveLength(1);
  });

  it("a difference of two millionths of an inch, and what is no number", () => {
    expect(disagreements([inches("a", 1, 1 + 5e-7)])).toEqual([]);
    expect(disagreements([inches("a", 1, 1 + 2e-6), inches("b", NaN, NaN)])).toHaveLength(2);
  });
});
