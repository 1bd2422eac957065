import { afterEach, describe, expect, it } from "vitest";
import { rise } from "../cases.ts";
import { Shop } from "../shop.ts";
import { main } from "./cases.ts";
import { layoutOf } from "./layout.ts";
import { measureRoof } from "./measureRoof.ts";
import type { BearerFigures, RoofFigures } from "./figures.ts";
import type { WingedPlan } from "./plan.ts";
import { frameWinged } from "./winged.ts";

const shop = new Shop();
afterEach(() => shop.sweep());

const known = new Map<WingedPlan, RoofFigures>();
/** A roof's figures, measured once. */
function measured(plan: WingedPlan): RoofFigures {
  const figures = known.get(plan) ?? measureRoof(shop, frameWinged(shop, plan));
  known.set(plan, figures);
  return figures;
}
const valleyOf = ({ bearers }: RoofFigures, role: string): BearerFigures =>
  bearers.find((one) => one.kind === "valley" && one.role === role)!;
/** A length as its level run. */
const level = (length: number, riseIn: number, runIn: number): number => (length * runIn) / Math.hypot(riseIn, runIn);
/** To half the last printed digit. */
const printed = (figure: number, text: string): void => {
  const digits = text.split(".")[1]?.length ?? 0;
  expect(Math.abs(figure - Number(text)), `${figure}, printed ${text}`).toBeLessThanOrEqual(0.5 * 10 ** -digits + 1e-9);
};

/** US Navy, Builder 3 & 2, Volume 2 (NAVEDTRA 14044), chapter 2, roof framing: additions and their valleys. */
describe("NAVEDTRA 14044", () => {
  /** An addition of 30 feet on a main roof of 40, unit rise 9; its middle stands on a rafter of the main roof, 16 in on center. */
  const addition: WingedPlan = {
    ...main,
    span: 480,
    length: 800,
    spacing: 16,
    pitch: rise(9),
    endPitch: rise(9),
    wings: [{ wall: "front", from: 240 + 10 * 16 - 180, out: 160, span: 360, end: "gable", longValley: "right" }],
  };

  it("p. 2-28: the shorter valley's run and length, both valleys' bridge measure, the shorter cut square", () => {
    const roof = measured(addition);
    const [long, short] = [valleyOf(roof, "supporting"), valleyOf(roof, "shortened")];
    printed(level(short.line, 9, 16.970562748477143) / 12, "21.21");
    printed(short.line / 12, "24.01");
    printed(short.line / 15, "19.21");
    printed(long.line / 20, "19.21");
    expect(short.headTilts).toHaveLength(1);
    printed(short.headTilts[0]!, "0.00");
  });

  it("p. 2-28: the shorter valley is shortened half the long one's thickness, level", () => {
    const short = valleyOf(measured(addition), "shortened");
    expect(level(short.line - short.center, 9, 16.970562748477143)).toBeCloseTo(1.5 / 2, 8);
  });

  it("p. 2-27: with level ridges both valleys are shortened half the 45-degree thickness of the ridge", () => {
    const roof = measured({ ...main, wings: [{ wall: "front", from: 96, out: 120, span: 288, end: "gable" }] });
    for (const valley of roof.bearers.filter(({ kind }) => kind === "valley"))
      // 16.97 in 12 is what the 45-degree thickness is worked out from.
      expect(Math.abs(level(valley.line - valley.center, 6, 16.970562748477143) - (0.75 * 16.97) / 12)).toBeLessThan(
        (0.75 * 0.005) / 12,
      );
  });

  it("p. 2-33: a valley jack one spacing from the meeting point is one common difference, cripples 2 and 4 of them", () => {
    // Unit rise 8 at 16 in: 19.23.
    const roof = measured({ ...addition, pitch: rise(8), endPitch: rise(8) });
    const meeting = 240 + 10 * 16;
    const line = (plane: string, kind: string, station: number): number =>
      roof.rafters.find((one) => one.plane === plane && one.kind === kind && Math.abs(one.station - station) < 1e-6)!
        .line;
    printed(line("Front", "valley cripple", meeting - 16) / 2, "19.23");
    printed(line("Front", "valley cripple", meeting - 32) / 4, "19.23");
    // The wing's own rafters stand at 16 in from its gable, 160 out: every 16 in from the meeting point too.
    const sides = roof.rafters.filter(({ plane, kind }) => plane === "Wing A left" && kind === "valley jack");
    const shortest = Math.min(...sides.map((one) => one.line));
    const next = Math.min(...sides.map((one) => one.line).filter((one) => one > shortest + 1));
    printed(next - shortest, "19.23");
  });

  it("p. 2-33: hip-valley cripples beside a hip and a valley at one pitch are alike", () => {
    const roof = measured({ ...main, wings: [{ wall: "front", from: 48, out: 120, span: 192, end: "gable" }] });
    const cripples = roof.rafters.filter(({ kind, overCorner }) => kind === "hip-valley cripple" && !overCorner);
    expect(cripples.length).toBeGreaterThan(1);
    for (const { line, long, short } of cripples) {
      expect(line).toBeCloseTo(cripples[0]!.line, 8);
      expect(long).toBeCloseTo(short, 8);
    }
  });

  it("p. 2-34: the addition's ridge is its length and half its span, less half the 45-degree thickness of the valley", () => {
    const ridge = measured(addition).bearers.find(({ kind, wing }) => kind === "ridge" && wing === "A")!;
    expect(Math.abs(160 + 180 - ridge.board - (0.75 * 16.97) / 12)).toBeLessThan((0.75 * 0.005) / 12);
  });
});

/** Griffith, Carpentry, uneven pitches, fig. 88: a minor roof of 6 feet run at 10 in 12 on a major one at 8 in 12. */
describe("Griffith, Carpentry, fig. 88", () => {
  const uneven: WingedPlan = {
    ...main,
    length: 600,
    pitch: rise(8),
    endPitch: rise(8),
    wings: [{ wall: "front", from: 264, out: 120, span: 144, end: "gable", pitch: rise(10), longValley: "left" }],
  };

  it("its run on the major roof is 7 1/2 feet, the valley's 9.60, 19.20 in for each foot of the minor run", () => {
    const [, y] = layoutOf(uneven).wings[0]!.crossing;
    expect(y / 12).toBeCloseTo(7.5, 8);
    const { line } = valleyOf(measured(uneven), "shortened");
    // Its rise is the minor roof's: 6 feet at 10 in 12.
    const run = Math.sqrt(line ** 2 - 60 ** 2);
    printed(run / 12, "9.60");
    // Twice the rounded 9.60.
    expect(Math.abs(run / 6 - 19.2)).toBeLessThanOrEqual(2 * 0.005);
  });

  it("the side cut is 6 to 7 1/2: 38 degrees 40 minutes", () => {
    const roof = measured(uneven);
    expect(Math.abs(valleyOf(roof, "supporting").headTilts[0]! - (38 + 40 / 60))).toBeLessThanOrEqual(0.5 / 60);
  });
});

/** Radford's Cyclopedia of Construction, vol. 3, dormer framing: a gable of 8 feet run on a main roof of 14 feet run, both 9 in 12. */
describe("Radford's Cyclopedia, vol. 3", () => {
  it("a run of 14 feet rises 10 feet 6, where the long valley ends; 8 feet rise 6 feet, where the ridge meets the roof", () => {
    const layout = layoutOf({
      ...main,
      span: 336,
      length: 720,
      pitch: rise(9),
      endPitch: rise(9),
      wings: [{ wall: "front", from: 240, out: 120, span: 192, end: "gable" }],
    });
    expect(layout.apex.left[2] - main.heel).toBeCloseTo(10 * 12 + 6, 8);
    expect(layout.wings[0]!.crossing[2] - main.heel).toBeCloseTo(6 * 12, 8);
  });
});
