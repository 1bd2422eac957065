import { describe, expect, it } from "vitest";
import { drawCorner } from "../../src/drawing/views/drawCorner.ts";
import { drawFrame3d } from "../../src/drawing/views/drawFrame3d.ts";
import { plateStrips } from "../../functions/plateStrips.ts";
import { drawPlates } from "../../src/drawing/views/drawPlates.ts";
import { drawPlan } from "../../src/drawing/views/drawPlan.ts";
import { drawValley } from "../../src/drawing/views/drawValley.ts";
import { roofRing } from "../../src/drawing/views/roofRing.ts";
import { polygonArea } from "../../src/geometry/polygon.ts";
import { lengthText } from "../../src/measure/lengthText.ts";
import type { RoofSpec } from "../../src/roof/frame/roofSpec.ts";
import { placedBoards } from "../../src/roof/frame/placedBoards.ts";
import { framed, handsOf } from "../roof/outlineSpecs.ts";
import { faults } from "./faults.ts";
import { drawnBoards, drawnTexts, measured } from "./readDrawing.ts";
import { struckTexts } from "./struckTexts.ts";
import { WINGED_ROOFS } from "./wingedRoofs.ts";

const roofs = Object.entries(WINGED_ROOFS).map(([name, spec]) => ({ name, spec, ...framed(spec) }));
/** Every drawing of a roof with wings, by name. */
function wingedDrawings(spec: RoofSpec, { width }: { width: number }): [string, string][] {
  const { frame, pieces } = framed(spec);
  const options = { width, length: lengthOf(spec.unit) };
  return [
    ["plan", drawPlan(frame, pieces, options)],
    ["plan in small room", drawPlan(frame, pieces, { ...options, brief: true })],
    ["frame", drawFrame3d(frame, pieces, options)],
    ["corner", drawCorner(frame, pieces, options)],
    ["plates", drawPlates(plateStrips(frame), options)],
    ...spec.wings
      .filter(({ framing }) => framing === "framed in")
      .map(({ letter }): [string, string] => [`valleys ${letter}`, drawValley(frame, pieces, letter, options)]),
  ];
}

const lengthOf = (unit: "in" | "mm") => (value: number) => lengthText(value, unit);

describe("drawings of a roof with wings", () => {
  it.each(roofs.flatMap((roof) => [320, 360, 640, 900].map((width) => ({ ...roof, width }))))(
    "let no two texts touch, and break off what would run through one: $name at $width px",
    ({ spec, width }) => {
      for (const [name, svg] of wingedDrawings(spec, { width })) {
        expect([name, faults(svg)]).toEqual([name, []]);
        expect([name, struckTexts(svg).filter(({ backed }) => !backed)]).toEqual([name, []]);
        expect(svg).not.toMatch(/NaN|undefined|Infinity|null/);
      }
    },
  );

  it.each(roofs)("show every board in 3-D, some side of each: $name", ({ frame, pieces }) => {
    const drawn = drawnBoards(drawFrame3d(frame, pieces, { width: 640, length: String }));
    for (const piece of pieces)
      for (const hand of handsOf(piece))
        expect([piece.mark, drawn.some((board) => board.piece === piece.mark && board.hand === hand)]).toEqual([
          piece.mark,
          true,
        ]);
  });

  it("paint a valley over the rafters that stand on it where they are behind, and under those before it", () => {
    // Seen from the front right: of a T in front the right valley hides the feet of wing rafters behind it.
    const { frame, pieces } = roofs[1]!;
    const order = drawnBoards(drawFrame3d(frame, pieces, { width: 640, length: String })).map(({ piece }) => piece);
    const valley = order.indexOf(pieces.find(({ mark }) => mark.startsWith("VL-"))!.mark);
    const ridge = order.indexOf("R-A");
    const main = order.indexOf("R");
    expect(main).toBeLessThan(valley);
    expect(main).toBeLessThan(ridge);
  });
});

describe("the plates and ridges of a roof with wings", () => {
  it("each have their hook and the running marks of PLATEMARKS", () => {
    const { frame } = roofs.find(({ name }) => name === "T")!;
    const svg = drawPlates(plateStrips(frame), { width: 900, length: lengthOf("in") });
    const texts = drawnTexts(svg).map(({ text }) => text);
    expect(texts).toContain("Front, left of wing A: hook at the left corner, seen from outside");
    expect(texts).toContain("Front, right of wing A: hook at the right corner, seen from outside");
    expect(texts).toContain("Wing A ridge: hook at the outer end");
    for (const { name, marks } of plateStrips(frame))
      for (const mark of marks)
        expect([
          name,
          texts.filter((text) => text.includes(mark.name) && text.endsWith(`  ${lengthOf("in")(mark.from)}`)).length,
        ]).not.toEqual([name, 0]);
  });
});

describe("the plan of a roof with wings", () => {
  it.each(roofs)(
    "writes every mark somewhere, each wing's name and its three figures: $name",
    ({ frame, pieces, spec }) => {
      const length = lengthOf(spec.unit);
      const texts = drawnTexts(drawPlan(frame, pieces, { width: 900, length })).map(({ text }) => text);
      const marks = new Set(texts.map((text) => text.split(" ")[0]));
      expect(pieces.map(({ mark }) => mark).filter((mark) => !marks.has(mark))).toEqual([]);
      for (const { letter, span, out, from } of spec.wings)
        for (const text of [
          `Wing ${letter} ${length(span)}`,
          `Wing ${letter} ${length(out)}`,
          ...(typeof from === "number" ? [length(from)] : []),
        ])
          expect(texts).toContain(text);
    },
  );

  it.each(roofs)("draws every board where it stands, to scale: $name", ({ frame, pieces }) => {
    const drawn = drawnBoards(drawPlan(frame, pieces, { width: 640, length: String }));
    const boards = placedBoards(frame, pieces);
    expect(drawn).toHaveLength(boards.length);
    for (const [i, board] of drawn.entries()) {
      expect(board.piece).toBe(boards[i]!.piece.mark);
      for (const [k, point] of board.points.entries()) {
        const { x, y } = measured(board, point);
        expect(Math.hypot(x - boards[i]!.plan[k]!.x, y - boards[i]!.plan[k]!.y) * board.view.scale).toBeLessThan(
          0.0011,
        );
      }
    }
  });

  it("has the front at the bottom, and the plate line round main roof and wings", () => {
    const { frame } = roofs[1]!;
    // 40 by 24 feet, and a wing of 16 by 10 in front: counted by hand.
    const ring = roofRing(frame, "plates");
    expect(polygonArea(ring.slice(0, -1))).toBeCloseTo(480 * 288 + 192 * 120, 9);
    expect(Math.min(...ring.map(({ y }) => y))).toBe(-120);
    const eaves = roofRing(frame, "eaves");
    expect(polygonArea(eaves.slice(0, -1))).toBeCloseTo((480 + 32) * (288 + 32) + (192 + 32) * 120, 9);
  });
});
