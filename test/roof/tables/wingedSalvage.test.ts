import { describe, expect, it } from "vitest";
import { refusal, rows } from "../../functions/asked.ts";
import { main, wingedCases } from "../../solids/wings/cases.ts";
import { blockOf, type WingedPlan } from "../../solids/wings/plan.ts";

/** What a cut piece can become: mark and hand, what is lost, how. */
const found = (plan: WingedPlan, mark: string, hand: string, longPoint: number) =>
  rows("SALVAGE", blockOf(plan), "Both", hand, longPoint, mark).map((row) => [
    `${row["Piece"]} ${row["Hand"]}`,
    Number(Number(row["Cut off"]).toFixed(4)),
    row["How"],
  ]);

const T = wingedCases["a T with a lower ridge"]!;
const along = Math.sqrt(1.25);

// At 6 in 12 and 45 degrees: a bevel takes 1.5 x sqrt(1.25) = 1.6771 of the other face, and jacks step by 24 x sqrt(1.25) = 26.8328.
describe("a piece of a wing that was cut wrong", () => {
  it("a valley jack becomes a shorter one of its hand, or of the other with its foot turned", () => {
    // Read off solid models: 139.6864 for the valley jack at 18 in of the main plane.
    const members = rows("MEMBERS", blockOf(T));
    const at18 = members.find(
      ({ Member, ["Long point"]: long }) => Member === "valley jack" && Math.abs(Number(long) - 139.6864) < 1e-3,
    )!;
    const all = found(T, String(at18["Piece"]), "left", 139.6864);
    expect(all[0]).toEqual([`${at18["Piece"]} left`, 0, "as it is"]);
    const next = all.filter(([, lost]) => Math.abs(Number(lost) - 24 * along) < 1e-3);
    expect(next.map(([, , how]) => how)).toContainEqual(
      expect.stringMatching(/^re-cut the foot to the other hand: 1 11\/16" lost by that/),
    );
    // Never a jack with its bevel at the head, nor a cripple with two.
    expect(all.every(([name]) => String(name).startsWith("VJ"))).toBe(true);
  });

  it("a valley cripple loses both of its bevels twice when it is turned", () => {
    // Each bevel takes 1.6771 of the other face, and both make the same face shorter.
    const long = Number(rows("MEMBERS", blockOf(T)).find(({ Piece }) => Piece === "VV1-A")!["Long point"]);
    const all = found(T, "VV1-A", "left", long + 2 * 1.5 * along);
    expect(all.find(([name]) => name === "VV1-A right")).toEqual([
      "VV1-A right",
      3.3541,
      `re-cut both ends to the other hand: 3 3/8" lost by that`,
    ]);
    expect(all.some(([name]) => name === "VV2-A left")).toBe(
      rows("MEMBERS", blockOf(T)).some(({ Piece }) => Piece === "VV2-A"),
    );
  });

  it("a hip-valley cripple between a hip and a valley that are parallel loses both slants when it is turned", () => {
    const plan: WingedPlan = { ...main, wings: [{ wall: "front", from: 60, out: 120, span: 144, end: "gable" }] };
    const cripple = rows("MEMBERS", blockOf(plan)).find(({ Member }) => Member === "hip-valley cripple")!;
    const long = Number(cripple["Long point"]);
    expect(long).toBeCloseTo(Number(cripple["Short point"]), 9);
    const hand = cripple["Left"] ? "left" : "right";
    const other = hand === "left" ? "right" : "left";
    const mark = String(cripple["Piece"]);
    // Each end turns on its own: twice 1.6771.
    const all = found(plan, mark, hand, long + 2 * 1.5 * along);
    expect(all).toContainEqual([`${mark} ${other}`, 3.3541, `re-cut both ends to the other hand: 3 3/8" lost by that`]);
    expect(found(plan, mark, hand, long + 2 * 1.5 * along - 0.3).some(([name]) => name === `${mark} ${other}`)).toBe(
      false,
    );
  });

  it("a hip jack of a wing becomes one of the main roof too, where pitch and tail are the same", () => {
    const L = wingedCases["an L, flush left, lower ridge"]!;
    const all = found(L, "J1-A", "left", 1000);
    expect(new Set(all.map(([name]) => String(name).slice(0, 1)))).toEqual(new Set(["J"]));
    expect(all.some(([name]) => /^J\d /.test(String(name)))).toBe(true);
    expect(all.some(([name]) => /^J\d-A/.test(String(name)))).toBe(true);
    // Another pitch has other plumb cuts.
    const unequal = wingedCases["a T at two pitches, long valley right"]!;
    const own = found(unequal, "JE1-A", "left", 1000);
    expect(own.length).toBeGreaterThan(0);
    expect(own.every(([name]) => String(name).startsWith("JE"))).toBe(true);
  });

  it("a jack on a valley board keeps its seat's tilt", () => {
    const laid: WingedPlan = { ...T, wings: T.wings.map((wing) => ({ ...wing, framing: "laid over" })) };
    // 75.4984 long, 73.8214 on the other face.
    expect(found(laid, "VJ1-A", "right", 75.4985).map(([name, lost]) => [name, lost])).toEqual([
      ["VJ1-A right", 0.0001],
      ["VJ2-A right", 26.8329],
      ["VJ2-A left", 26.8329],
      ["VJ3-A right", 53.6657],
      ["VJ3-A left", 53.6657],
    ]);
  });

  it("is refused by its mark where the roof has no such piece", () => {
    expect(refusal("SALVAGE", blockOf(T), "Both", "left", 80, "VJ99")).toMatch(
      /^piece: .*no jack or cripple .*VJ99.*Type one of VJ1-A, VJ2-A, J1, /,
    );
  });
});
