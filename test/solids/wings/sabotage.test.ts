import { afterEach, describe, expect, it } from "vitest";
import { moved } from "../frame.ts";
import { Shop } from "../shop.ts";
import { scale } from "../vector.ts";
import type { Vec } from "../vector.ts";
import { wingedCases } from "./cases.ts";
import { faults } from "./proof.ts";
import type { Rafter } from "./rafters.ts";
import { frameWinged } from "./winged.ts";
import type { WingedRoof } from "./winged.ts";

const shop = new Shop();
afterEach(() => shop.sweep());

const SIXTEENTH = 1 / 16;

/** A roof in which the first rafter of a kind lies a little aside of its place. */
function shifted(roof: WingedRoof, kind: string, way: (rafter: Rafter) => Vec): { roof: WingedRoof; name: string } {
  const spoilt = roof.rafters.find((rafter) => rafter.kind === kind && !rafter.overCorner)!;
  const by = scale(way(spoilt), SIXTEENTH);
  const put: Rafter = {
    ...spoilt,
    frame: moved(spoilt.frame, by),
    solid: spoilt.solid.translate(by as [number, number, number]),
  };
  return {
    roof: { ...roof, rafters: roof.rafters.map((rafter) => (rafter === spoilt ? put : rafter)) },
    name: spoilt.name,
  };
}

describe("the proof of a roof with wings finds what it is there to find", { timeout: 60_000 }, () => {
  it.each([
    ["a T with a lower ridge", "valley jack"],
    ["a T with a lower ridge", "valley cripple"],
    ["an L, flush left, lower ridge", "hip-valley cripple"],
    ["two gabled wings on one side", "king valley jack"],
  ])("%s: a %s 1/16 in too far up, too far down, or too high", (name, kind) => {
    const roof = frameWinged(shop, wingedCases[name]!);
    for (const way of [1, -1]) {
      const up = shifted(roof, kind, ({ frame }) => scale(frame.along, way));
      const found = faults(shop, up.roof);
      expect(found.filter((words) => words.includes(up.name) && words.includes("overlap"))).not.toEqual([]);
      expect(found.filter((words) => words.startsWith(up.name) && words.includes("off the"))).not.toEqual([]);
    }
    const high = shifted(roof, kind, () => [0, 0, 1]);
    expect(faults(shop, high.roof).some((words) => words.startsWith(high.name) && words.includes("its plane"))).toBe(
      true,
    );
  });

  it("a shortened valley that stops 1/16 in short of the long one, and one that runs into it", () => {
    const roof = frameWinged(shop, wingedCases["a T at two pitches, long valley right"]!);
    const short = roof.bearers.all.find(({ role }) => role === "shortened")!;
    for (const way of [1, -1]) {
      const by = scale(short.frame.along, way * SIXTEENTH);
      const put = { ...short, solid: short.solid.translate(by as [number, number, number]) };
      const all = roof.bearers.all.map((one) => (one === short ? put : one));
      const found = faults(shop, { ...roof, bearers: { ...roof.bearers, all } });
      expect(found.some((words) => words.includes(way > 0 ? "overlap" : "bears on nothing"))).toBe(true);
    }
  });
});
