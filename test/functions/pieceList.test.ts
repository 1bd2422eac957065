import { expect, it } from "vitest";
import { wingedCases } from "../solids/wings/cases.ts";
import { blockOf } from "../solids/wings/plan.ts";
import { rows } from "./asked.ts";

// 8 in 12 meets 6 in 12: as high at 6 along one plate as at 8 along the other, so the valley lies at atan(3/4) to the main plate and atan(4/3) to the wing's.
const [toMain, toWing] = [3 / 4, 4 / 3].map((tan) => (Math.atan(tan) * 180) / Math.PI) as [number, number];

it("PIECELIST has the tilt at every low end that a valley cuts, a tail's too, with no minus where the long point is on the face of the hand", () => {
  const listed = rows("PIECELIST", blockOf(wingedCases["a T at two pitches, long valley right"]!));
  const tilts = (stem: RegExp) =>
    listed.filter((row) => stem.test(String(row["Piece"]))).map((row) => row["Foot tilt"]);
  for (const [stem, count, tilt] of [
    [/^VJM/, 9, toMain],
    [/^VJW/, 8, toWing],
    [/^VV/, 4, toMain],
    [/^KV/, 2, toMain],
  ] as const)
    expect(tilts(stem), String(stem)).toEqual(Array(count).fill(expect.closeTo(tilt, 9)));
  expect(tilts(/^[CJKHR]\d?$/).every((tilt) => tilt === "")).toBe(true);
});
