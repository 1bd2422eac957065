import { afterEach, describe, expect, it } from "vitest";
import { disagreements } from "./agreement.ts";
import { assemble } from "./assemble.ts";
import { seed } from "./chance.ts";
import { rise } from "./cases.ts";
import { detailCheck } from "./detailCheck.ts";
import { wrongNotes } from "./notesCheck.ts";
import { plateCheck } from "./plateCheck.ts";
import { faults } from "./proof.ts";
import { fuzzedRoofs, regular, roofCases } from "./roofCases.ts";
import { blockOf } from "./roofPlan.ts";
import { jackTableCheck, membersCheck, toTheTables } from "./schedule.ts";
import { cornersOf, place, seatOn } from "./settingOut.ts";
import { Shop } from "./shop.ts";
import type { RoofPlan } from "./roofPlan.ts";

const shop = new Shop();
afterEach(() => shop.sweep());

/** Everything that can be said against a roof: as framed in place, against its tables, and as cut to its tables and lifted. */
async function against(plan: RoofPlan): Promise<string[]> {
  const roof = assemble(shop, plan);
  const members = await membersCheck(shop, roof);
  const jacks = await jackTableCheck(shop, roof);
  const cut = assemble(shop, plan, await toTheTables(plan));
  const details = await detailCheck(shop, roof);
  const found = [
    ...faults(shop, roof),
    ...details.strays,
    ...disagreements(details.agreements),
    ...members.strays,
    ...disagreements(members.agreements),
    ...jacks.strays,
    ...disagreements(jacks.agreements),
    ...(await wrongNotes(shop, roof)),
    ...(await plateCheck(shop, roof)),
    ...faults(shop, cut).map((words) => `cut to the tables: ${words}`),
  ];
  shop.sweep();
  return found;
}

describe("a whole roof, set out by the test's own hand", { timeout: 60_000 }, () => {
  it.each(Object.entries(roofCases))(
    "%s: fits together, and agrees with MEMBERS and JACKTABLE piece by piece",
    async (_, plan) => {
      expect(await against(plan)).toEqual([]);
    },
  );

  it.each([
    [6, 6],
    [6, 9],
    [9, 6],
  ])("stands at the larger of the heels that its seat leaves at %s and %s in 12", async (main, end) => {
    const plan: RoofPlan = {
      ...regular,
      pitch: rise(main),
      endPitch: rise(end),
      length: 600,
      rafter: { thickness: 1.5, depth: 7.25 },
      seat: 3.5,
    };
    // Seats narrow evenly as a rafter is raised, so two trial heights tell the one that leaves this seat.
    const heelOn = (side: "Main" | "End"): number => {
      const [low, high] = [4, 5].map((heel) => seatOn(shop, place(cornersOf({ ...plan, heel }).all[0], side, 0), plan));
      return 4 + (3.5 - low!) / (high! - low!);
    };
    const heels = [heelOn("Main"), heelOn("End")];
    expect(await against({ ...plan, heel: Math.max(...heels) })).toEqual([]);
    if (main !== end) expect(await against({ ...plan, heel: Math.min(...heels) })).not.toEqual([]);
  });

  it(`fits together by chance too: LONGPOINT_SEED=${seed}`, async () => {
    const found: string[] = [];
    for (const plan of fuzzedRoofs(shop, 8, 10))
      found.push(...(await against(plan)).map((words) => `${JSON.stringify(blockOf(plan))}: ${words}`));
    expect(found).toEqual([]);
  });

  it("is counted by hand: 24 by 36 feet at 24 inches", async () => {
    const { members } = assemble(shop, regular);
    const count = (kind: string): number => members.filter((piece) => piece.kind === kind).length;
    // The ridge line is 12 feet: two pairs of king commons and five pairs of commons between them; five jacks on each of eight half sides.
    expect({
      ridge: count("ridge"),
      hips: count("hip"),
      kings: count("king common"),
      commons: count("common"),
      jacks: count("jack"),
    }).toEqual({ ridge: 1, hips: 4, kings: 6, commons: 10, jacks: 40 });
  });

  it("of more than 100 members is cut to its tables and proved", async () => {
    const plan: RoofPlan = { ...regular, length: 720, spacing: 16 };
    const cutter = await toTheTables(plan);
    const roof = assemble(shop, plan, cutter);
    expect(faults(shop, roof)).toEqual([]);
    expect(roof.members.length).toBeGreaterThan(100);
  });
});
