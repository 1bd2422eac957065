import { afterEach, describe, expect, it } from "vitest";
import { rise } from "../cases.ts";
import { Shop } from "../shop.ts";
import { main } from "./cases.ts";
import { layoutOf } from "./layout.ts";
import { overlayJack, overlayRidgeEnd, setBack } from "./overlay.ts";
import type { WingedPlan } from "./plan.ts";

const shop = new Shop();
afterEach(() => shop.sweep());

const between = { sheathing: 0.5, board: 1.5 };
const lower: WingedPlan = { ...main, wings: [{ wall: "front", from: 150, out: 120, span: 192, end: "gable" }] };
const unequal: WingedPlan = {
  ...lower,
  pitch: rise(8),
  endPitch: rise(8),
  wings: [{ ...lower.wings[0]!, pitch: rise(6) }],
};

/** A wing laid over the sheathed main roof (farmer's valley): common practice, no source. Worked by hand beside each figure. */
describe("an overlay's jack", () => {
  it("at 6 in 12, 24 in up the main plane", () => {
    const layout = layoutOf(lower);
    const jack = overlayJack(shop, layout, layout.wings[0]!, 24, between);
    // Plumb, sheathing and board are 2 x 1.1180340 = 2.2360680. The run is 96 - 0.75 - (12 + 2.2360680) / 0.5 = 66.7778640, 3/4 more at the toe nearer the
    // eave; up the slope 1.1180340 times that.
    expect(jack.long).toBeCloseTo(67.527864 * 1.118033989, 5);
    expect(jack.short).toBeCloseTo(66.027864 * 1.118033989, 5);
    expect(jack.longNearEave).toBe(true);
    // The seat is level on the side face: it makes the pitch's angle with the top edge, and 5.5 over its sine is its length. It leans by the main pitch.
    expect(jack.seatCut).toBeCloseTo(26.565051, 5);
    expect(jack.seat).toBeCloseTo(5.5 / Math.sin(Math.atan(0.5)), 6);
    expect(jack.seatTilt).toBeCloseTo(26.565051, 5);
  });

  it("at 8 and 6 in 12 steps by spacing x m / n up the slope, and leans by the main pitch", () => {
    const layout = layoutOf(unequal);
    const [one, two] = [24, 48].map((up) => overlayJack(shop, layout, layout.wings[0]!, up, between));
    expect(one!.long - two!.long).toBeCloseTo(((24 * 8) / 6) * 1.118033989, 5);
    expect(one!.long - one!.short).toBeCloseTo(((1.5 * 8) / 6) * 1.118033989, 6);
    expect(one!.seatTilt).toBeCloseTo(33.690068, 5);
    expect(one!.seatCut).toBeCloseTo(26.565051, 5);
  });

  it("without sheathing and valley board would be too long: the mistake shows", () => {
    const layout = layoutOf(lower);
    const [right, careless] = [between, { sheathing: 0, board: 0 }].map((it) =>
      overlayJack(shop, layout, layout.wings[0]!, 24, it),
    );
    // 2.2360680 / 0.5 level.
    expect(careless!.long - right!.long).toBeCloseTo(4.472136 * 1.118033989, 5);
  });

  it("stands on a valley board set back from the valley line, under a ridge that runs on to the sheathing", () => {
    const layout = layoutOf(lower);
    const wing = layout.wings[0]!;
    // The planes' normals are (0, -0.5, 1) and (-0.5, 0, 1) over 1.1180340: the cosine between them 1 / 1.25 = 0.8, the tangent 0.75.
    expect(setBack(wing, wing.left, between)).toBeCloseTo(1.5 / 0.75, 6);
    // (0.5 x 95.25 - 0.5 x 1.1180340) / 0.5.
    expect(overlayRidgeEnd(layout, wing, between)).toBeCloseTo(95.25 - 1.118033989, 6);
  });
});
