import { describe, expect, it } from "vitest";
import { readRoof } from "../../../functions/arguments/roofModel.ts";
import { Failure } from "../../../src/measure/result.ts";
import { cardsOf } from "../../../src/pane/writing/cards.ts";

function cards(...more: readonly (readonly unknown[])[]) {
  const model = readRoof("roof", [["Span", "24'"], ["Length", "36'"], ["Pitch", 6], ["Overhang", 18], ...more]);
  if (model instanceof Failure) throw new Error(JSON.stringify(model.problem));
  const packet = { job: "", date: "", stamp: "" };
  const all = cardsOf(model, { packet });
  return (mark: string) => all.find((card) => card.mark === mark)!;
}

/** Tail along the top edge: 18 x 1.1180 = 20.1246, 1' 8 1/8". Level: (6.1492 - 3.5) x 2 = 5.2984, 5 5/16". The hip hangs 17/64 lower: 3.5 - 0.2652 = 3.2348. */
describe("tails on the cards", () => {
  it("plumb, square and level", () => {
    const tail = (...more: readonly (readonly unknown[])[]) => cards(...more)("C, K, KE").steps[4];
    expect(tail()).toBe(`Go on 1' 8 1/8" down the top edge (1' 6" level). Cut the tail plumb there.`);
    expect(tail(["Tail cut", "square"])).toBe(
      `Go on 1' 8 1/8" down the top edge (1' 6" level). Cut the tail square there.`,
    );
    expect(tail(["Tail cut", "level"], ["Fascia", "2x4"])).toBe(
      `Go on 1' 8 1/8" down the top edge (1' 6" level). Cut 3 1/2" plumb there, then 5 5/16" level.`,
    );
  });

  it("a wing's hip is drawn with its own figures and jacks, not the main roof's", () => {
    const block = [
      ["Span", 288, 192],
      ["Length", 480],
      ["Pitch", 6],
      ["Overhang", 16],
      ["Wall", "", "front"],
      ["From left corner", "", 120],
      ["Out from wall", "", 120],
      ["Ends", "", "hip"],
    ];
    const model = readRoof("roof", block);
    if (model instanceof Failure) throw new Error(JSON.stringify(model.problem));
    const all = cardsOf(model, { packet: { job: "", date: "", stamp: "" } });
    const own = all
      .filter(({ mark }) => mark === "H-A")
      .map((card) => card.drawing(500, false).replace(/\u00a0/g, " "));
    // By hand: (96 - 3/4) x 1.414214 x 1.060660 = 142.875.
    expect(own[0]).toContain("11' 10 7/8");
    expect(own[0]).not.toContain("17' 10 7/8");
    expect(own[1]).toMatch(/J\w*1-A, Left face/);
    expect(own[1]).not.toMatch(/J\d+, (Left|Right) face/);
  });

  it("a hip's card says one thing: the tail is left long, or level too", () => {
    const square = cards(["Tail cut", "square"])("H");
    expect(square.steps.join(" ")).toContain(`Leave the tail at least 2' 3" long`);
    expect(square.steps.join(" ")).not.toContain("to a point");
    const level = cards(["Tail cut", "level"], ["Fascia", "2x4"])("H");
    expect(level.steps.join(" ")).toContain(`There 3 1/4" plumb, then level for the soffit.`);
  });
});
