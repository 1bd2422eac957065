import { describe, expect, it } from "vitest";
import { tapeText } from "../../src/measure/tapeText.ts";
import { number, refusal, rows } from "../functions/asked.ts";
import { block, expectSaid, jacks, member, notes, onSide, said } from "./carelessRoofs.ts";
import { atY, falls, jackInSpace, meet, space, sub } from "./inSpace.ts";

const degrees = (radians: number): number => (radians * 180) / Math.PI;

/** Where a careless program goes wrong: each sentence is one thing to get right, and to tell. */
describe("Unequal pitches: the step on side 1 uses m2 / m1, easily turned upside down; the saw tilts are f1 and f2, not 45 degrees.", () => {
  const [main, end] = [space(6, 12), space(12, 6)];
  it.each([
    ["main", main, 6, 12, "Main"],
    ["end", end, 12, 6, "End"],
  ] as const)("on the %s side", (_, at, pitch, other, side) => {
    const step = jackInSpace(at, 72, 1.5, 1.5).center - jackInSpace(at, 48, 1.5, 1.5).center;
    expect(number("JACKSTEP", pitch, 24, other)).toBeCloseTo(step, 10);
    // The saw follows the plumb line; its tilt is the angle in plan between the hip's face and the plane square to the jack.
    const tilt = degrees(Math.atan2(at.along[1], at.along[0]));
    expect(number("JACKTILT", pitch, other)).toBeCloseTo(tilt, 10);
    const table = onSide(jacks(["Pitch", 6], ["End pitch", 12]), side);
    expect(table.map((row) => row["Saw tilt"])).toEqual(table.map(() => expect.closeTo(tilt, 10)));
    const lengths = table.map((row) => Number(row["Long point"]));
    lengths.slice(1).forEach((length, i) => expect(lengths[i]! - length).toBeCloseTo(step, 10));
  });
});

describe("The jack's deduction is T / (2 cos f), not T / 2; long point and center differ by t tan f / (2 cos A).", () => {
  it.each([
    [6, 6, 90],
    [6, 12, 90],
    [9, 5, 120],
    [7, 8, 75],
  ])("pitches %s and %s at %s degrees", (pitch, other, corner) => {
    const [T, t] = [2.25, 1.75];
    const wood = jackInSpace(space(pitch, other, corner), 60, T, t);
    const [long, short] = [
      number("JACKLEN", pitch, 60, T, t, other, corner),
      number("JACKSHORT", pitch, 60, T, t, other, corner),
    ];
    expect(long).toBeCloseTo(wood.long, 10);
    expect(short).toBeCloseTo(wood.short, 10);
    // The center of the cut, halfway, is as far short of the hip's center line as a jack of no thickness would be.
    expect(number("JACKLINE", pitch, 60, other, corner) - (long + short) / 2).toBeCloseTo(
      jackInSpace(space(pitch, other, corner), 60, 0, t).center - wood.center,
      10,
    );
  });
});

describe("The edge angle is not the saw tilt (48.19 against 45 at 6/12).", () => {
  it.each([
    [6, 6, 90],
    [12, 12, 90],
    [6, 12, 90],
    [8, 4, 110],
  ])("pitches %s and %s at %s degrees", (pitch, other, corner) => {
    const { longPoint, shortPoint } = jackInSpace(space(pitch, other, corner), 60, 1.5, 1.5);
    const across = sub(longPoint, shortPoint);
    const edge = degrees(Math.acos(across[0] / Math.hypot(...across)));
    expect(number("JACKEDGE", pitch, other, corner)).toBeCloseTo(edge, 9);
    expect(Math.abs(edge - number("JACKTILT", pitch, other, corner))).toBeGreaterThan(1);
  });
  it("48.19 at 6/12, and in the schedule", () => {
    expect(number("JACKEDGE", 6).toFixed(2)).toBe("48.19");
    for (const jack of jacks(["Pitch", 6]))
      expect([jack["Saw tilt"], Number(jack["Edge angle"]).toFixed(2)]).toEqual([45, "48.19"]);
  });
});

describe("Saw tilts beyond what a saw can do: over 45 degrees (at most 60 on some) on the flatter side of unequal pitches and at corners over 90 degrees. Say so, and give the complement or the way to cut it.", () => {
  it.each([
    [8, 10, "saw tilt over 45°"],
    [6, 12, "saw tilt over 60°"],
  ])("%s and %s in 12: %s", (pitch, end, words) => {
    const tilt = degrees(Math.atan2(...(space(pitch, end).along.toReversed() as [number, number])));
    const table = jacks(["Pitch", pitch], ["End pitch", end]);
    for (const jack of onSide(table, "Main")) {
      expect(jack["Saw tilt"]).toBeCloseTo(tilt, 10);
      expect(jack["Note"]).toContain(words);
      expect(jack["Note"]).toMatch(/lay out both faces/);
    }
    for (const jack of onSide(table, "End")) expect(jack["Note"]).not.toContain("saw tilt");
    expect(notes(member("jack", ["Pitch", pitch], ["End pitch", end]))).toContain(words);
  });
  it("a hip's tail tilts more than its head where that is on the ridge", () => {
    const hip = (head: string, overhang: number) =>
      notes(member("hip", ["Pitch", 6], ["End pitch", 9], ["Overhang", overhang], ["Hip head", head]));
    // The hip stands off the main plate by atan(9 / 6) and its tail is cut along the end's fascia too: tilt 56.31 there.
    expect(hip("ridge", 16)).toContain("tail's saw tilt over 45°: lay out both faces");
    expect(hip("ridge", 0)).not.toContain("tail's");
    expect(hip("king commons", 16)).not.toContain("tail's");
  });
  it("45 degrees is what every saw does", () => expect(notes(jacks(["Pitch", 9]))).not.toContain("saw tilt"));
  it("corners over 90 degrees tilt over 45 too: half the corner at equal pitches", () =>
    expect(number("JACKTILT", 6, 6, 135)).toBeCloseTo(67.5, 10));
});

describe("The hip must be deep enough for the jack's whole cut: hip depth / cos(hip slope) >= D / cos A - (drop - drop_s), else the jack's toe hangs free. Warn.", () => {
  /** How far the lower end of the plumb cut on the hip's face hangs under the hip's lower edge, from heights over one plan point of that face. */
  function hangs(pitch: number, end: number, depth: number, hipDepth: number): number {
    const at = space(pitch, end);
    const { longPoint } = jackInSpace(at, 60, 1.5, 1.5);
    const s = longPoint[0] * at.along[0] + longPoint[1] * at.along[1];
    const { near, far } = falls(at, 1.5);
    const hipUnderside = at.rise * s - Math.max(near, far) - hipDepth * Math.hypot(1, at.rise);
    return hipUnderside - (longPoint[2] - depth * Math.hypot(1, pitch / 12));
  }
  it.each([
    [12, 12],
    [9, 9],
    [12, 10],
  ])("%s and %s in 12, the hip no deeper than the jacks", (pitch, end) => {
    const shallow = [
      ["Pitch", pitch],
      ["End pitch", end],
      ["Hip", "2x6"],
    ] as const;
    const table = jacks(...shallow);
    const [main, hip] = [table.filter((row) => row["Side"] !== "End"), member("hip", ...shallow)[0]!];
    const toe = hangs(pitch, end, 5.5, 5.5);
    expect(toe).toBeGreaterThan(0.1);
    for (const jack of main) expectSaid(jack, /toe of the cut hangs (.+?) below/, toe);
    const worst = Math.max(toe, hangs(end, pitch, 5.5, 5.5));
    const enough = 5.5 + worst / Math.hypot(1, space(pitch, end).rise);
    // Rounded up: a hip of what is said has to do.
    const { length } = said(hip, /a hip at least (.+?) deep/);
    expect([length >= enough, length < enough + 1 / 16]).toEqual([true, true]);
    // The note takes nothing from the number, and a hip just deep enough ends it.
    const deep = jacks(["Pitch", pitch], ["End pitch", end], ["Hip", `1.5 x ${enough + 1e-5}`]);
    expect(notes(deep)).not.toContain("toe of the cut");
    expect(deep.map((row) => row["Long point"])).toEqual(table.map((row) => row["Long point"]));
    expect(notes(jacks(["Pitch", pitch], ["End pitch", end], ["Hip", `1.5 x ${enough - 1e-4}`]))).toContain(
      "toe of the cut",
    );
  });
});

describe("A centered dropped hip at unequal pitches leaves the other side's jacks proud by drop - drop_s. Warn, and offer the backed or the shifted hip.", () => {
  const unequal = [
    ["Pitch", 6],
    ["End pitch", 9],
    ["Hip", "2x10"],
  ] as const;
  const fall = falls(space(6, 9), 1.5);
  const proud = Math.abs(fall.near - fall.far);
  it("says by how much on the flatter side, and on the hip", () => {
    const table = jacks(...unequal);
    // The side with the lesser fall is dropped below its own need.
    const [high, flush] = fall.near < fall.far ? ["Main", "End"] : ["End", "Main"];
    for (const jack of onSide(table, high!)) expectSaid(jack, /stands (.+?) proud of the hip/, proud);
    for (const jack of onSide(table, flush!)) expect(jack["Note"]).not.toContain("above the hip's top corner");
    const [hip] = member("hip", ...unequal);
    expectSaid(hip, /side stand (.+?) proud of the hip/, proud);
    expect(hip!["Note"]).toMatch(/back it .* shift it/);
    expect(number("HIPDROP", 6, 1.5, 9)).toBeCloseTo(Math.max(fall.near, fall.far), 10);
  });
  it.each(["backed", "shifted"])("a %s hip ends it", (top) => {
    const table = jacks(...unequal, ["Hip top", top]);
    expect(notes(table)).not.toContain("above the hip's top corner");
    expect(notes(member("hip", ...unequal, ["Hip top", top]))).toContain(top);
  });
});

describe("Equal heels can exceed the shallower rafter's plumb depth: no birdsmouth is left. Refuse with a message.", () => {
  // Plumb through a rafter of 5.5 in at 3 in 12; the heel of the 12 in 12 side: its own plumb depth, less a seat at 45 degrees.
  const most = 5.5 * Math.hypot(1, 3 / 12);
  const seatLeast = 5.5 * Math.SQRT2 - most;
  it("names the seat and both heights", () => {
    const message = refusal("JACKTABLE", block(["Pitch", 3], ["End pitch", 12], ["Seat", 1]));
    expect(message).toMatch(/^Seat: /);
    expect(message).toContain(tapeText(5.5 * Math.SQRT2 - 1));
    // Rounded down, as every limit that must stay under.
    expect(message).toContain(`plumb depth there is ${tapeText(Math.floor(most * 16) / 16)}`);
    expect(message).toContain(`a Seat of more than ${tapeText(Math.ceil(seatLeast * 16) / 16)}`);
  });
  it("answers just past the limit", () => {
    expect(jacks(["Pitch", 3], ["End pitch", 12], ["Seat", seatLeast + 1e-6], ["Hip", "2x12"])).not.toEqual([]);
    expect(
      refusal("JACKTABLE", block(["Pitch", 3], ["End pitch", 12], ["Seat", seatLeast - 1e-6], ["Hip", "2x12"])),
    ).toMatch(/^Seat: /);
  });
  it("a single cell refuses a heel of the plumb depth", () => {
    expect(refusal("JACKBOARD", 3, 48, 1.5, 1.5, 5.5, most, 12)).toMatch(/^heel: .*Type less than 5\.6692,/);
    expect(number("JACKBOARD", 3, 48, 1.5, 1.5, 5.5, most - 1e-9, 12)).toBeGreaterThan(48);
  });
});

describe("King commons and ridge can stand above the end planes by m2 t/2 - m1 R/2. Say it where a drawing shows the apex.", () => {
  const [main, end] = [6 / 12, 12 / 12];
  const [run, endRun] = [144, 72];
  /** Heights from the heel: the king common's top at its head, over its face away from the ridge; the end plane over the same point. */
  const above = main * (run - 1.5 / 2) - end * (endRun - 1.5 / 2);
  it("on the king commons and the ridge", () => {
    expect(above).toBeCloseTo(0.375, 12);
    const given = [
      ["Pitch", 6],
      ["End pitch", 12],
    ] as const;
    expectSaid(onSide(member("king common", ...given), "Main")[0], /stands (.+?) above the end slope/, above);
    expectSaid(member("ridge", ...given)[0], /stands (.+?) above the end slope/, above);
  });
  it("not where they are flush", () =>
    expect(notes(rows("MEMBERS", block(["Pitch", 6])))).not.toContain("above the end plane"));
});

describe("Hips straight onto the ridge: the ridge is longer, no king common fits, and the ridge must be at least as thick as the rafters.", () => {
  it.each([
    [6, 6],
    [6, 9],
  ])("%s and %s in 12", (pitch, end) => {
    const given = [
      ["Pitch", pitch],
      ["End pitch", end],
    ] as const;
    const [between, onto] = [member("ridge", ...given)[0]!, member("ridge", ...given, ["Hip head", "ridge"])[0]!];
    expect(member("king common", ...given, ["Hip head", "ridge"])).toEqual([]);
    // The ridge must reach as far as each hip's cheek runs along its face: to the hip's face on the end's side.
    const at = space(pitch, end);
    const reach = [1.5 / 2, -1.5 / 2].map((toMain) => meet(at.near, at.face(toMain), atY(144 - 1.5 / 2))[0]);
    expect(onto["Long point"]).toBeCloseTo(480 - 2 * Math.min(...reach), 9);
    expect(Number(onto["Long point"])).toBeGreaterThan(Number(between["Long point"]));
  });
  it("says when the ridge is too thin", () => {
    expect(notes(member("ridge", ["Pitch", 6], ["Hip head", "ridge"], ["Ridge", "1x8"]))).toMatch(
      /thinner than the rafters: hips .*ridge need 1 1\/2"/,
    );
    expect(notes(member("ridge", ["Pitch", 6], ["Hip head", "ridge"], ["Ridge", "2x8"]))).not.toContain("thinner");
  });
});
