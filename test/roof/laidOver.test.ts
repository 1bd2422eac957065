import { describe, expect, it } from "vitest";
import { cautions } from "../../src/roof/tables/cautions.ts";
import { plateMarks } from "../../src/roof/tables/plateMarks.ts";
import { sawSettings } from "../../src/roof/tables/sawSettings.ts";
import { stockPieces } from "../../src/roof/tables/stockPieces.ts";
import { takeOff } from "../../src/roof/tables/takeOff.ts";
import { main } from "../solids/wings/cases.ts";
import { modelOf } from "../solids/wings/frameOf.ts";
import type { WingedPlan, WingPlan } from "../solids/wings/plan.ts";

/** 24 by 40 feet at 6 in 12, a gabled wing of 16 by 10 feet from 12' 6", sheathing 1/2, valley boards 1 1/2 by 7 1/4: as the worked wing that is framed in. */
const T: WingPlan = { wall: "front", from: 150, out: 120, span: 192, end: "gable", framing: "laid over" };
const laid: WingedPlan = { ...main, wings: [T] };
const framedIn: WingedPlan = { ...main, wings: [{ wall: "front", from: 150, out: 120, span: 192, end: "gable" }] };

const slope = Math.hypot(1, 0.5);
const model = modelOf(laid);
const piece = (mark: string) => model.pieces.find((one) => one.mark === mark)!;

/** Farmer's valley: common practice, no source. Each figure is worked by hand from the definitions beside it. */
describe("a wing laid over the sheathed main roof", () => {
  it("has jacks from the valley board to the wing's ridge, seats sawn at the main pitch", () => {
    // Sheathing and board stand (0.5 + 1.5) x 1.1180340 = 2.2360680 plumb over the rafters. 24 up the main plane the run is
    // 96 - 0.75 - (12 + 2.2360680) / 0.5 = 66.7778640, and 3/4 more or less on its faces.
    const jack = piece("VJ1-A");
    expect(jack.longPoint).toBeCloseTo(67.527864 * slope, 6);
    expect(jack.shortPoint).toBeCloseTo(66.027864 * slope, 6);
    expect(jack.foot.tilts[0]).toBeCloseTo(26.565051, 6);
    expect(jack.head.tilts).toEqual([]);
    // The seat is level on the side face: depth over the sine of the pitch.
    expect(jack.seat).toBeCloseTo(5.5 / Math.sin(Math.atan(0.5)), 9);
    expect([jack.left, jack.right]).toEqual([1, 1]);
    // A spacing farther in is a spacing shorter, level.
    expect(jack.longPoint - piece("VJ2-A").longPoint).toBeCloseTo(24 * slope, 9);
    // Nothing is deducted at either end of the board: it starts at its feather edge.
    expect(jack.shortestBoard).toBeCloseTo(jack.longPoint, 9);
  });

  it("has valley boards set back from the valley's line, mitered to plate and ridge", () => {
    const board = piece("VB-A");
    // Between the two planes the cosine is 0.8, so the tangent of both backing angles together is 0.75.
    expect(board.notes).toMatchObject([{ kind: "valley board", setBack: 2, bevel: 90 - 36.86989764584402 }]);
    // Its outer edge rises with 1.5 x slope a unit; it ends at the ridge's face, 0.5 x 95.25 - 2.2360680 over the heel.
    expect(board.longPoint).toBeCloseTo(((0.5 * 95.25 - 2 * slope) / 0.5) * 1.5, 6);
    // The valley's own line is that of the wing framed in.
    expect(board.lineLength).toBeCloseTo(144, 9);
    expect(board.section.name).toBe("1.5 x 7.25 in");
    expect([board.left, board.right]).toEqual([1, 1]);
  });

  it("says how wide a valley board must be for a whole seat, and that this one is narrower", () => {
    // The seat is 5.5 x root 5 along the eave. The valley's line runs (1, 1, 1/2) on the main plane, at a sine of root 1.25 over 1.5 to it.
    const least = 5.5 * Math.sqrt(5) * (slope / 1.5);
    const of = ({ frame, pieces }: typeof model) =>
      cautions(frame, pieces).filter(({ kind }) => kind === "valley board width");
    expect(of(model)).toMatchObject([{ wing: "A", here: 7.25, limit: { kind: "least" }, outside: true }]);
    expect(of(model)[0]!.limit!.value).toBeCloseTo(least, 9);
    // 9.17 in: a board of 9 1/4 holds it.
    expect(of(modelOf({ ...laid, valley: { thickness: 1.5, depth: 9.25 } }))).toMatchObject([
      { here: 9.25, outside: false },
    ]);
    expect(of(modelOf(framedIn))).toEqual([]);
  });

  it("has a ridge that lies on the sheathing: its end cut to the main pitch", () => {
    // (0.5 x 95.25 - 0.5 x 1.1180340) / 0.5 in from the plate line, 120 out from it.
    expect(piece("R-A").longPoint).toBeCloseTo(120 + 95.25 - slope, 6);
    expect(piece("R-A").notes).toContainEqual({ kind: "ridge on sheathing", cut: 90 - 26.56505117707799 });
  });

  it("has no valley rafter, cripple or interrupted plate, and the main roof's rafters go through the mouth without tails", () => {
    const members = new Set(model.pieces.map(({ member }) => member));
    for (const none of ["valley", "valley cripple", "hip-valley cripple", "jack to the valley"])
      expect(members).not.toContain(none);
    const front = plateMarks(model.frame).find(({ place }) => place?.kind === "wall" && place.wall === "front")!;
    const whole = plateMarks(modelOf({ ...main }).frame)[0]!;
    // The same marks as on the roof without a wing: every 24 in from 24 on.
    expect(front.marks.map(({ mark }) => mark)).toEqual(whole.marks.map(({ mark }) => mark));
    // From 150 to 342 stand those at 168, 192 ... 336: seven commons and a king common.
    const through = model.pieces.filter(({ mouth }) => mouth === "A");
    expect(through.map(({ member, plain, tail }) => [member, plain, tail])).toEqual([
      ["common", 7, 0],
      ["king common", 1, 0],
    ]);
    // At 144 the tail is cut on the valley's line: 6 in from the corner, 3/4 more or less, up the slope.
    expect(piece("KV1-A").tail).toBeCloseTo(6.75 * slope, 9);
  });

  it("sheathes the main roof on under the wing, and roofs what is seen", () => {
    const [whole, other] = [laid, framedIn].map((plan) => {
      const { frame, pieces } = modelOf(plan);
      return takeOff(frame, pieces);
    });
    expect(whole!.sloped).toBeCloseTo(other!.sloped, 6);
    expect(whole!.valleys).toEqual(other!.valleys);
    expect(other!.sheathing).toBeCloseTo(other!.sloped, 6);
    // The triangle on the mouth: 192 wide, 96 deep in plan.
    expect(whole!.sheathing - whole!.sloped).toBeCloseTo(((192 * 96) / 2) * slope, 6);
    expect(whole!.courses.reduce((sum, { sheets }) => sum + sheets, 0) * 48 * 96).toBeGreaterThan(whole!.sheathing);
  });

  it("sets the saw for its cuts, orders its boards flat and warns of what carries it", () => {
    const settings = sawSettings(model.pieces).map(({ plumb, tilt, pieces }) => [plumb, tilt, pieces] as const);
    const near = (a: number, b: number) => Math.abs(a - b) < 1e-6;
    const seat = settings.find(([plumb, tilt]) => near(plumb, 63.43494882) && near(tilt, 26.56505118))!;
    expect(seat[2].foot).toEqual(["VJ1-A", "VJ2-A", "VJ3-A"]);
    // Across the flat, plate line and ridge are square to each other: the two miters add up to 90.
    const [low, high] = ["foot", "head"].map((at) =>
      settings.find(([, , own]) => own[at as "foot"]?.includes("VB-A"))!,
    );
    expect(low![0] + high![0]).toBeCloseTo(90, 9);
    expect(Math.tan((high![0] * Math.PI) / 180)).toBeCloseTo(slope, 9);
    const board = stockPieces(model.frame, model.pieces, () => [], 0).pieces.find(({ name }) => name === "VB-A")!;
    expect(board).toMatchObject({ lean: 0, toe: 0, slants: [0, 0], length: piece("VB-A").longPoint });
    expect(cautions(model.frame, model.pieces).filter(({ kind }) => kind === "laid over")).toMatchObject([
      { wing: "A", outside: true },
    ]);
  });
});
