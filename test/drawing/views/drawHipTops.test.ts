import { describe, expect, it } from "vitest";
import { drawHipTops } from "../../../src/drawing/views/drawHipTops.ts";
import type { RoofSpec } from "../../../src/roof/frame/roofSpec.ts";
import { framed, HALL } from "../../roof/outlineSpecs.ts";
import { inches } from "../allDrawings.ts";
import { drawnBoards, drawnTexts, measured } from "../readDrawing.ts";

const drawn = (spec: RoofSpec) => drawHipTops([{ title: "Top", ...framed(spec) }], { width: 320, length: inches });

/** How far each top corner lies under its plane, plumb, end side first. */
function under(spec: RoofSpec): number[] {
  const [board] = drawnBoards(drawn(spec));
  const points = board!.points.map((point) => measured(board!, point)).sort((a, b) => a.x - b.x);
  const top = (x: number) => Math.max(...points.filter((point) => Math.abs(point.x - x) < 1e-3).map(({ y }) => y));
  // A plane's height across the meeting line is its pitch over the run across its own plate: b cos f for the main side, b sin f for the end's.
  const [m1, m2] = [spec.pitch, spec.endPitch ?? spec.pitch];
  const f = Math.atan2(m2, m1);
  const [left, right] = [points[0]!.x, points.at(-1)!.x];
  return [left * Math.sin(f) * m2 - top(left), -right * Math.cos(f) * m1 - top(right)];
}
const close = (...values: number[]) => values.map((value) => expect.closeTo(value, 2));

describe("drawHipTops", () => {
  const unequal = { ...HALL, endPitch: 9 / 12 };
  it("puts both top corners in their planes, but for a dropped hip at two pitches", () => {
    expect(under(HALL)).toEqual(close(0, 0));
    expect(under({ ...HALL, hipTop: "backed" })).toEqual(close(0, 0));
    expect(under({ ...unequal, hipTop: "backed" })).toEqual(close(0, 0));
    expect(under({ ...unequal, hipTop: "shifted" })).toEqual(close(0, 0));
    const [steep, flat] = under(unequal);
    expect(steep).toBeCloseTo(0, 2);
    expect(flat).toBeGreaterThan(0.2);
  });

  it("says what was done to the top, and which jacks stand proud", () => {
    const texts = (spec: RoofSpec) => drawnTexts(drawn(spec)).map(({ text }) => text);
    expect(texts(HALL)).toEqual(["Top", "end side", "main side", `Dropped 1/4", plumb`]);
    expect(texts(unequal)).toContain(`Jacks of the main side stand 1/4" proud of the hip`);
    expect(texts({ ...HALL, hipTop: "backed" })).toContain("Backed 18.43° both ways");
  });
});
