import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cardPages } from "../../src/drawing/cards/cardPages.ts";
import { CARD, cardSize, cardStyles } from "../../src/drawing/cards/cardStyles.ts";
import { cutCards, type CutCard } from "../../src/drawing/cards/cutCard.ts";
import { drawRidge } from "../../src/drawing/views/drawRidge.ts";
import { WORDS } from "../../src/drawing/canvas/words.ts";
import { outline, rafterOutline } from "../../src/roof/frame/outline.ts";
import { placedBoards } from "../../src/roof/frame/placedBoards.ts";
import type { RoofSpec } from "../../src/roof/frame/roofSpec.ts";
import { anyRoof, framed, HALL, SHAPES } from "../roof/outlineSpecs.ts";
import { inches, ROOFS } from "./allDrawings.ts";
import { drawnBoards, drawnTexts } from "./readDrawing.ts";

function cardsOf(spec = HALL): readonly CutCard[] {
  const { frame, pieces } = framed(spec);
  return cutCards(frame, pieces, { length: inches, notes: ({ notes }) => notes.map(({ kind }) => kind) });
}

/** The tilts that a step sets, but for those that are the same cut from elsewhere. */
const tiltsOf = (step: string) => new Set(step.replace(/\(or [^)]*\)/g, "").match(/[\d.]+°/g));

const card = (mark: string, spec = HALL) => cardsOf(spec).find((one) => one.mark === mark)!;

describe("cutCards", () => {
  it("is one card for each distinct piece, and a second for the hip with its jacks' marks", () => {
    expect(cardsOf().map(({ mark }) => mark)).toEqual(["R", "C", "K", "KE", "H", "H", "J1", "J2", "J3", "J4", "J5"]);
  });

  it("lays a jack out in order: board, head, length, seat, tail; all from the piece", () => {
    const jack = framed(HALL).pieces.find(({ mark }) => mark === "J1")!;
    const { counts, figures, steps } = card("J1");
    expect(counts).toBe("4 left, 4 right");
    expect(figures).toEqual([
      { name: "Long point", value: inches(jack.longPoint) },
      { name: "Tape check, seat to long point", value: inches(jack.tape!) },
    ]);
    // 12' 10 7/16" of board: of those on hand 14' is the shortest that holds it.
    expect(steps).toEqual([
      `Take a 2x6 of 14' 0", crown up. The piece needs 12' 10 7/16".`,
      "Head, on the long-point face (left jack: left face; right jack: right face; facing uphill): square on 6 and 12, plumb line on the 6 side. Saw from that face, tilt 45°; the far face is shorter.",
      `Hook the long point. Mark 11' 1 13/16" down the top edge, plumb: the building line.`,
      `Set the saw back to 0°. Down that line 4 3/8" to the bird's-mouth corner; seat cut level from there, uphill, 3 1/2".`,
      `From the same line 1' 5 7/8" on down the top edge (1' 4" level): plumb tail cut.`,
    ]);
  });

  it("tells the hands apart by the face that has the long point, as the outline of each has it", () => {
    const jack = framed(HALL).pieces.find(({ mark }) => mark === "J1")!;
    for (const hand of ["left", "right"] as const) expect(rafterOutline(jack, hand).longFace).toBe(hand);
    expect(card("J1").steps[1]).toContain("left jack: left face; right jack: right face");
    expect(card("C").steps.join()).not.toMatch(/hand|long point/);
    expect(card("C").figures[0]!.name).toBe("To the head");
  });

  it("sets the square for a hip to the rise and 17, and to its own rise and 12", () => {
    // Square on the rise and 17 for a regular hip: common practice, no source. Its own rise is 6 / 16.97 x 12 = 4.24.
    expect(card("H").steps[1]).toBe(
      `Head: square on 6 and 17 (16.97) (or 4.24 and 12), plumb line on the 6 side. Cheeks: from a plumb line on each face, 13/16" back along the top from the point, tilt 45°: the middle comes out longer.`,
    );
    // Pitches 6 and 9: tan f = 9 / 6 on the main side, so the hip runs 12 / sin f = 14.42 over 12 of the main run.
    expect(card("H", SHAPES["unequal pitches"]).steps[1]).toBe(
      `Head: square on 6 and 14.42 (or 4.99 and 12), plumb line on the 6 side. Cheeks, from a plumb line on each face, so far back along the top from the point: main side's face 1 9/16", tilt 56.31° (past most saws: cut from both faces); end side's 3/8", tilt 33.69°. Main side: right face of a right hip, left face of a left hip, facing uphill.`,
    );
    expect(card("H", SHAPES["hips on the ridge"]).steps[1]).toContain(
      "One cheek, from the main side's face: tilt 45°, the far face comes out shorter.",
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

  it("says at every tilt over 45, and at no other, that most saws do not reach it", () => {
    fc.assert(
      fc.property(anyRoof, (spec) => {
        const { frame, pieces } = framed(spec);
        for (const { mark, steps } of cutCards(frame, pieces, { length: inches })) {
          for (const [, tilt, past] of steps
            .slice(1)
            .join(" ")
            .matchAll(/([\d.]+)°( \(past most saws: [^)]*\))?/g)) {
            expect([mark, tilt, past === undefined]).toEqual([mark, tilt, Number(tilt) <= 45]);
          }
        }
      }),
      { seed: 6, numRuns: 200 },
    );
  });

  it("says on every card which roof it is for", () => {
    for (const { cautions } of cardsOf())
      expect(cautions).toBe(`Roof 24' 0" by 36' 0", 6 in 12. ${WORDS.card.cautions}`);
    expect(card("H", SHAPES["unequal pitches"]).cautions).toContain(`6 in 12, ends 9 in 12.`);
  });

  it("says which fascia a tail meets where the two are not level", () => {
    expect(card("H").steps[4]).toBe(
      `On down the middle of the top 2' 0" (1' 10 5/8" level): the tail's end. Cut the tail to a point, 45° from each face, so both fascias lie flat.`,
    );
    expect(card("H", SHAPES["unequal pitches"]).steps[4]).toContain(
      "Cut the tail to a point, 33.69° from the main side's face and 56.31° (past most saws: cut from both faces) from the end side's, so both fascias lie flat.",
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

  it("says where no board on hand holds a piece, and where there is no tail", () => {
    expect(card("H").steps[0]).toBe(`No board on hand is long enough. The piece needs 20' 1 7/16" of 2x8.`);
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

describe("cardPages", () => {
  it.each([
    ["letter", 4, 3],
    ["letter", 2, 6],
    ["A4", 4, 3],
    ["A4", 2, 6],
  ] as const)("fills %s pages with %i cards each: %i pages", (paper, perPage, pages) => {
    const html = cardPages(cardsOf(), { paper, perPage });
    expect(html.match(/<section class="page">/g)).toHaveLength(pages);
    expect(html.match(/<article class="card"/g)).toHaveLength(11);
    expect(html).toContain(paper === "A4" ? "@page{size:8.26" : "@page{size:8.5in 11in");
  });

  it("carries the cautions on every card, the notes, and key figures of at least 24 points", () => {
    const html = cardPages(cardsOf(), { paper: "A4", perPage: 4 });
    expect(html.split(WORDS.card.cautions)).toHaveLength(12);
    expect(html).toContain("<ul><li>corner bay</li></ul>");
    for (const perPage of [2, 4] as const)
      expect(
        Number(/\.card dd\{[^}]*font-size:(\d+)pt/.exec(cardStyles({ paper: "letter", perPage }))![1]),
      ).toBeGreaterThanOrEqual(24);
  });

  it("keeps a length on one line: 3 1/2 in broken behind the 3 is read as 3 in", () => {
    const html = cardPages(cardsOf(), { paper: "letter", perPage: 2 });
    const lines = [...html.matchAll(/<li>(.*?)<\/li>/g)].map(([, text]) => text!);
    expect(lines.length).toBeGreaterThan(40);
    for (const line of lines) expect(line).not.toMatch(/\d['"]? \d/);
    expect(html).toContain("uphill, 3\u00a01/2");
  });

  it("writes steps as large as their room lets it, and smaller where there are many notes", () => {
    const sizes = (spec: RoofSpec, perPage: 2 | 4) =>
      [
        ...cardPages(cardsOf(spec), { paper: "letter", perPage }).matchAll(
          /data-piece="(\w+)".*?<div style="font-size:([\d.]+)px">/g,
        ),
      ].map(([, mark, size]) => [mark, Number(size)] as const);
    for (const perPage of [2, 4] as const) {
      const { most, least } = CARD[perPage].text;
      expect(Math.max(...sizes(HALL, perPage).map(([, size]) => size))).toBe(most);
      for (const spec of Object.values(ROOFS))
        for (const [mark, size] of sizes(spec, perPage)) expect([mark, size >= least]).toEqual([mark, true]);
    }
  });

  it("makes each drawing as wide as its place", () => {
    for (const perPage of [2, 4] as const) {
      const { drawing, width } = cardSize({ paper: "letter", perPage });
      expect(drawing).toBeLessThanOrEqual(width);
      expect(cardPages(cardsOf(), { paper: "letter", perPage })).toContain(`width="${drawing}"`);
    }
  });

  it("asks for nothing from elsewhere and lets no text become markup", () => {
    const { frame, pieces } = framed(HALL);
    const html = cardPages(cutCards(frame, pieces, { length: inches, notes: () => ["<script>"] }), {
      paper: "A4",
      perPage: 2,
    });
    expect(html).not.toContain("<script");
    expect(html.replaceAll("http://www.w3.org/2000/svg", "")).not.toMatch(/https?:|url\(|@import/);
  });
});
