import { afterEach, describe, expect, it } from "vitest";
import { rise } from "../cases.ts";
import { Shop } from "../shop.ts";
import { main } from "./cases.ts";
import { measureRoof } from "./measureRoof.ts";
import type { BearerFigures, RafterFigures, RoofFigures } from "./figures.ts";
import type { WingedPlan, WingPlan } from "./plan.ts";
import { frameWinged } from "./winged.ts";

const shop = new Shop();
afterEach(() => shop.sweep());

const measured = (plan: WingedPlan): RoofFigures => measureRoof(shop, frameWinged(shop, plan));
const valleyOf = ({ bearers }: RoofFigures, role: string): BearerFigures =>
  bearers.find((one) => one.kind === "valley" && one.role === role)!;
const wingRidge = ({ bearers }: RoofFigures): BearerFigures =>
  bearers.find((one) => one.kind === "ridge" && one.wing === "A")!;
const onFront = ({ rafters }: RoofFigures, kind: string, station: number): RafterFigures =>
  rafters.find((one) => one.plane === "Front" && one.kind === kind && Math.abs(one.station - station) < 1e-6)!;

/** Figures worked out by hand, to four decimals, from the definitions that framers use: the wood has to show them. */
describe("the worked roofs", () => {
  it("a lower ridge at 6 in 12: 24 by 40 feet, a wing of 16 by 10 feet from 12 feet 6", () => {
    const wing: WingPlan = { wall: "front", from: 150, out: 120, span: 192, end: "gable", longValley: "left" };
    const roof = measured({ ...main, wings: [wing] });
    const [long, short] = [valleyOf(roof, "supporting"), valleyOf(roof, "shortened")];
    expect(long.line).toBeCloseTo(216, 8);
    expect(long.center).toBeCloseTo(214.875, 4);
    expect(short.line).toBeCloseTo(144, 8);
    expect(short.center).toBeCloseTo(143.2045, 4);
    expect(short.headTilts[0]).toBeCloseTo(0, 8);
    // Past the crossing both sides of the long valley are main plane: its upper corner stands 3/4 x 1/2 x cos 45 above it.
    expect(long.proud).toBeCloseTo(0.2652, 4);
    expect(wingRidge(roof).line).toBeCloseTo(216, 8);
    expect(wingRidge(roof).board).toBeCloseTo(214.9393, 4);
    // 18 from the left inner corner, at 168 on the plate.
    const jack = onFront(roof, "valley jack", 168);
    expect(jack.long).toBeCloseTo(139.6864, 4);
    expect(jack.short).toBeCloseTo(138.0094, 4);
    // 54 from the right inner corner.
    const cripple = onFront(roof, "valley cripple", 288);
    expect(cripple.long).toBeCloseTo(93.2202, 4);
    expect(cripple.short).toBeCloseTo(89.8661, 4);
    expect(roof.planes.find(({ plane }) => plane === "Front")!.plan).toBeCloseTo(56_320 - 12_544, 6);
    expect(roof.edges.valleys).toBeCloseTo(2 * 168, 8);
  });

  it("a lower ridge at 8 and 6 in 12: 25 by 45 feet, a wing of 18 feet, its end at 9, the long valley right", () => {
    const wing: WingPlan = {
      wall: "front",
      from: 168,
      out: 144,
      span: 216,
      end: "hip",
      pitch: rise(6),
      endPitch: rise(9),
      longValley: "right",
    };
    const roof = measured({ ...main, span: 300, length: 540, pitch: rise(8), endPitch: rise(8), wings: [wing] });
    const [long, short] = [valleyOf(roof, "supporting"), valleyOf(roof, "shortened")];
    expect(long.line).toBeCloseTo(269.2582, 4);
    expect(long.center).toBeCloseTo(267.9119, 4);
    // Looking up a right valley the wing lies on its left, the main plane on its right.
    expect(long.right).toBeCloseTo(266.8349, 4);
    expect(long.left).toBeCloseTo(268.989, 4);
    expect(long.headTilts[0]).toBeCloseTo(53.1301, 4);
    expect(short.line).toBeCloseTo(145.3994, 4);
    expect(short.center).toBeCloseTo(144.558, 4);
    // And on a left valley's right.
    expect(short.left).toBeCloseTo(144.3224, 4);
    expect(short.right).toBeCloseTo(144.7936, 4);
    expect(short.headTilts[0]).toBeCloseTo(16.2602, 4);
    // f on the main side: what a valley jack's foot is tilted by.
    expect(onFront(roof, "valley jack", 342).footTilt).toBeCloseTo(36.8699, 4);
  });
});
