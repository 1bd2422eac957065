import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutCards, type CutCard } from "../../src/drawing/cards/cutCard.ts";
import { drawRidge } from "../../src/drawing/views/drawRidge.ts";
import { WORDS } from "../../src/drawing/canvas/words.ts";
import { outline, rafterOutline } from "../../src/roof/frame/outline.ts";
import { placedBoards } from "../../src/roof/frame/placedBoards.ts";
import type { RoofSpec } from "../../src/roof/frame/roofSpec.ts";
import { anyRoof, framed, HALL, SHAPES } from "../roof/outlineSpecs.ts";
import { inches } from "./allDrawings.ts";
import { drawnBoards, drawnTexts } from "./readDrawing.ts";

function cardsOf(spec = HALL): readonly CutCard[] {
  const { frame, pieces } = framed(spec);
  return cutCards(frame, pieces, { length: inches, notes: ({ notes }) => notes.map(({ kind }) => kind) });
}

/** The tilts that a step sets, but for those that are the same cut from elsewhere. */
const tiltsOf = (step: string) =>
  new Set(
    step.replace(/\(or [^)]*\)|Side cut across the top, to check.*?°\.|NOT IN ONE PASS.*? past/g, "").match(/[\d.]+°/g),
  );

const card = (mark: string, spec = HALL) => cardsOf(spec).find((one) => one.mark === mark)!;

describe("cutCards", () => {
  it("is one card for each distinct board, and a second for the hip with its jacks' marks", () => {
    expect(cardsOf().map(({ mark }) => mark)).toEqual(["R", "C, K, KE", "H", "H", "J1", "J2", "J3", "J4", "J5"]);
    // King commons of another pitch are no common: 24' by 36' at 6 and 9 in 12.
    expect(cardsOf(SHAPES["unequal pitches"]).map(({ mark }) => mark)).toContain("KE");
    expect(card("C, K, KE").counts).toEqual([
      { name: "C", count: 10 },
      { name: "K", count: 4 },
      { name: "KE", count: 2 },
    ]);
  });

  it("lays a jack out in order: board, head, length, seat, tail, place; all from the piece", () => {
    const jack = framed(HALL).pieces.find(({ mark }) => mark === "J1")!;
    const { counts, figures, steps } = card("J1");
    expect(counts).toEqual([
      { name: "left", count: 4 },
      { name: "right", count: 4 },
    ]);
    expect(figures).toEqual([
      { name: "Long point", value: inches(jack.longPoint) },
      { name: "Tape check, seat to long point", value: inches(jack.tape!) },
    ]);
    // By hand: offset 144 - 24 = 120, less half a jack; up the hip 120 root 2 less 3/4, along a slope of 4.24 in 12: 179.2045.
    expect(steps).toEqual([
      `Use a 2x6 at least 12' 10 1/2" long, crown up.`,
      "Head, on the long-point face: square on 6 and 12 (26.57°), plumb line on the 6 side. Left jack, left face; right jack, right face, facing uphill. Saw from that face at tilt 45°; the far face is shorter. Side cut across the top, to check: 48.19°.",
      `Hook the long point. Mark 11' 1 13/16" down the top edge; the plumb line there is the building line.`,
      `Set the saw back to 0°. Mark the bird's-mouth corner 4 3/8" down that line. Cut the seat level from there, uphill, 3 1/2".`,
      `Go on 1' 5 7/8" down the top edge (1' 4" level). Cut the tail plumb there.`,
      `Set its near edge at 9' 11 1/4" on the plate, its center at 14' 11 3/16" up the hip.`,
    ]);
  });

  it("names the boards of a cutting plan, and without one only what the piece needs", () => {
    const { frame, pieces } = framed(HALL);
    const piece = (name: string) => ({
      name,
      hand: "plain" as const,
      start: 0,
      end: 1,
      flipped: false,
      lean: 0,
      slants: [0, 0] as const,
    });
    const board = { size: "2x6", length: 192, depth: 5.5, leftOver: 0 };
    const sticks = [
      { ...board, number: 1, times: 3, pieces: [piece("C"), piece("J5")] },
      { ...board, number: 4, times: 1, pieces: [piece("J5"), piece("KE")] },
      { ...board, number: 5, times: 2, size: "2x8", pieces: [piece("R 1 of 2")] },
    ];
    const steps = (mark: string) =>
      cutCards(frame, pieces, { length: inches, sticks }).find((one) => one.mark === mark)!.steps[0];
    expect(steps("C, K, KE")).toBe(
      `Cut from the plan's boards 1 to 3 (16' 0"), piece 1; board 4 (16' 0"), piece 2. Count the pieces from the left end. Use a 2x6 at least 15' 0 13/16" long, crown up.`,
    );
    expect(steps("R")).toContain(`boards 5 to 6 (16' 0"), piece 1.`);
    expect(card("R").steps[0]).toContain("join it over a rafter");
    expect(
      cardsOf()
        .flatMap((one) => one.steps)
        .join(),
    ).not.toMatch(/on hand|plan's/);
  });

  it("tells the hands apart by the face that has the long point, as the outline of each has it", () => {
    const jack = framed(HALL).pieces.find(({ mark }) => mark === "J1")!;
    for (const hand of ["left", "right"] as const) expect(rafterOutline(jack, hand).longFace).toBe(hand);
    expect(card("J1").steps[1]).toContain("Left jack, left face; right jack, right face");
    expect(card("C, K, KE").steps.join()).not.toMatch(/hand|long point/);
    expect(card("C, K, KE").figures[0]!.name).toBe("To the head");
  });

  it("sets the square for a hip to the rise and 17, and to its own rise and 12", () => {
    // Square on the rise and 17 for a regular hip: common practice, no source. Its own rise is 6 / 16.97 x 12 = 4.24.
    // Side cut: tan 45 over the cosine of the hip's 19.47 degrees.
    expect(card("H").steps[1]).toBe(
      `Head: square on 6 and 17 (16.97) (or 4.24 and 12, 19.47°), plumb line on the 6 side. Cheeks: mark a plumb line on each face, 13/16" back along the top from the point. Saw both at tilt 45°; the middle comes out longer. Side cut across the top, to check: 46.69°.`,
    );
    // Pitches 6 and 9: tan f = 9 / 6 on the main side, so the hip runs 12 / sin f = 14.42 over 12 of the main run.
    expect(card("H", SHAPES["unequal pitches"]).steps[1]).toContain(
      `Head: square on 6 and 14.42 (or 4.99 and 12, 22.59°), plumb line on the 6 side. Cheeks: mark a plumb line on each face, back along the top from the point. Main side's face 1 9/16", tilt 56.31°. End side's face 3/8", tilt 33.69°. NOT IN ONE PASS: `,
    );
    expect(card("H", SHAPES["hips on the ridge"]).steps[1]).toContain(
      "Saw one cheek from the main side's face, tilt 45°. The far face comes out shorter.",
    );
  });

  it("cuts each tail and cheek of a hip by the tilt that its plan has there, from square across", () => {
    // From the plan of the hip alone: how far each end's edge is turned from square across it.
    const turned = (spec: RoofSpec) => {
      const { frame, pieces } = framed(spec);
      const { plan } = outline(
        frame,
        pieces.find(({ member }) => member === "hip")!,
        "right",
      ).shape;
      return plan
        .map((b, i) => ({ a: plan.at(i - 1)!, b }))
        .filter(({ a, b }) => Math.abs(a.y - b.y) > 1e-6)
        .map(({ a, b }) => ({
          tail: a.x + b.x < 0,
          angle: `${Number(((Math.atan2(Math.abs(a.x - b.x), Math.abs(a.y - b.y)) * 180) / Math.PI).toFixed(2))}°`,
        }));
    };
    for (const [name, spec] of Object.entries(SHAPES)) {
      const { steps } = card("H", spec);
      const ends = turned(spec);
      if (spec.overhang > 0)
        expect([name, tiltsOf(steps[4]!)]).toEqual([
          name,
          new Set(ends.filter(({ tail }) => tail).map(({ angle }) => angle)),
        ]);
      expect([name, tiltsOf(steps[1]!)]).toEqual([
        name,
        new Set(ends.filter(({ tail }) => !tail).map(({ angle }) => angle)),
      ]);
    }
  });

  it("says in the line of every cut that the saw does not reach through, and in no other, that it takes more than one pass", () => {
    fc.assert(
      fc.property(anyRoof, (spec) => {
        const { frame, pieces } = framed(spec);
        for (const { mark, steps } of cutCards(frame, pieces, { length: inches })) {
          for (const step of steps) {
            const thickness = mark === "H" ? spec.hip.thickness : spec.rafter.thickness;
            const tilts = [
              ...step.matchAll(/tilt ([\d.]+)°|([\d.]+)° from (?:each|the main|the end)|face, ([\d.]+)°/g),
            ];
            const past = tilts
              .map(([, ...found]) => Number(found.find((one) => one !== undefined)))
              // The saw that is meant goes through 1 3/4 in at 45 degrees: common practice, no source.
              .filter((tilt) => tilt > 45 || thickness / Math.cos((tilt * Math.PI) / 180) > 1.75 * Math.SQRT2);
            if (step.includes("NOT IN ONE PASS")) continue;
            expect([mark, step, past]).toEqual([mark, step, []]);
          }
          const text = steps.join(" ");
          for (const [, listed] of text.matchAll(/ONE PASS: (.*?) is past/g))
            for (const [, tilt] of listed!.matchAll(/([\d.]+)°/g))
              expect(
                Number(tilt) > 44.99 || spec.rafter.thickness > 1.2 || spec.hip.thickness > 1.2,
                `${mark} ${tilt}`,
              ).toBe(true);
        }
      }),
      { seed: 6, numRuns: 200 },
    );
    expect(
      cardsOf()
        .flatMap((one) => one.steps)
        .join(),
    ).not.toContain("NOT IN ONE PASS");
    // A jack past the saw is never told to be sawn at that tilt.
    expect(card("JM1", SHAPES["unequal pitches"]).steps[1]).toMatch(
      /NOT IN ONE PASS: 56\.31° is past.*Side cut across the top/,
    );
    expect(card("JM1", SHAPES["unequal pitches"]).steps[1]).not.toContain("Saw from that face");
    expect(card("JE1", SHAPES["unequal pitches"]).steps[1]).toContain("Saw from that face at tilt 33.69°;");
  });

  it("says on every card which roof it is for, and with a packet the job, the day and the stamp", () => {
    for (const [i, { job, cautions }] of cardsOf().entries()) {
      expect(job).toBe(`Roof 24' 0" by 36' 0", 6 in 12. Card ${i + 1} of 9.`);
      expect(cautions).toMatch(/Brace hip and commons straight/);
    }
    expect(card("H", SHAPES["unequal pitches"]).job).toContain(`6 in 12, ends 9 in 12.`);
    const { frame, pieces } = framed(HALL);
    const packet = { job: "Reading room", date: "May 4, 2026", stamp: "K7Q2M" };
    expect(cutCards(frame, pieces, { length: inches, packet })[0]!.job).toBe(
      `Reading room. May 4, 2026. Stamp K7Q2M. Roof 24' 0" by 36' 0", 6 in 12. Card 1 of 9.`,
    );
  });

  it("shows in black where a piece goes: as many boards as are cut", () => {
    const black = (mark: string) =>
      card(mark)
        .keyPlan(90)
        .match(/fill:#000/g)!.length;
    expect([black("J1"), black("H"), black("C, K, KE"), black("R")]).toEqual([8, 4, 16, 1]);
  });

  it("checks a hip by the tape from the plate's corner, as its outline has it", () => {
    const { frame, pieces } = framed(HALL);
    const { middle } = outline(
      frame,
      pieces.find(({ member }) => member === "hip")!,
      "plain",
    );
    const { head, "seat corner": corner } = middle.points;
    expect(card("H").figures[1]!.value).toBe(inches(Math.hypot(head!.x - corner!.x, head!.y - corner!.y)));
  });

  it("says which fascia a tail meets where the two are not level", () => {
    expect(card("H").steps[4]).toBe(
      `Go on 2' 0" down the middle of the top (1' 10 5/8" level) to the tail's end. Cut the tail to a point, 45° from each face, so both fascias lie flat.`,
    );
    expect(card("H", SHAPES["unequal pitches"]).steps[4]).toContain(
      "Cut the tail to a point, so both fascias lie flat: 33.69° from the main side's face, 56.31° from the end side's. NOT IN ONE PASS",
    );
    // 16 in on both sides at 6 and 8 in 12: the fascias meet 16 (0.8 - 0.6) = 3.2 in to the end side of the hip's line, past its 3/4 in.
    expect(card("H", SHAPES["a fascia that is not level"]).steps[4]).toContain(
      "Cut the tail along the main side's fascia, the only one it meets: tilt 36.87° from the end side's face.",
    );
  });

  it("marks on the ridge what the cheeks of hips on it cover, as their plans touch it", () => {
    for (const spec of [
      SHAPES["hips on the ridge"]!,
      { ...SHAPES["hips on the ridge"]!, endPitch: 8 / 12, hipTop: "shifted" as const },
    ]) {
      const { frame, pieces } = framed(spec);
      const placed = placedBoards(frame, pieces);
      const ridge = placed.find(({ piece }) => piece.member === "ridge")!;
      const [start, end] = [Math.min(...ridge.plan.map(({ x }) => x)), Math.max(...ridge.plan.map(({ x }) => x))];
      const face = Math.min(...ridge.plan.map(({ y }) => y));
      const touching = placed
        .filter(({ piece }) => piece.member === "hip")
        .flatMap(({ plan }) => plan.filter(({ y }) => Math.abs(y - face) < 1e-6))
        .map(({ x }) => x)
        .sort((a, b) => a - b);
      expect(touching).toHaveLength(4);
      expect([touching[0], touching[3]].map((x) => x!.toFixed(6))).toEqual([start, end].map((x) => x.toFixed(6)));
      const texts = drawnTexts(drawRidge(frame, ridge.piece, { width: 640, length: inches }))
        .map(({ text }) => text)
        .filter((text) => text.startsWith("H"));
      expect(texts).toEqual([`H  0"`, `H  ${inches(touching[2]! - start)}`]);
      expect(card("R", spec).steps.at(-1)).toBe(WORDS.card.ridgeHips);
    }
    expect(card("R").steps.at(-1)).toBe(WORDS.card.ridgeSides);
  });

  it("says where there is no tail", () => {
    expect(card("J1", SHAPES["no ridge, no overhang"]).steps[4]).toBe(
      "No tail: the plumb line over the plate is the end cut.",
    );
  });

  it("draws both hands of a jack, and any piece in black and white", () => {
    const hands = drawnBoards(card("J1").drawing(345, true)).map(({ hand }) => hand);
    expect(new Set(hands)).toEqual(new Set(["left", "right"]));
    for (const { drawing } of cardsOf())
      for (const brief of [true, false]) expect(drawing(345, brief)).not.toContain("var(--");
  });
});
