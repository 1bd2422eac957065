import { describe, expect, it } from "vitest";
import { drawPlan } from "../../src/drawing/views/drawPlan.ts";
import { planBoards } from "../../src/drawing/views/planBoards.ts";
import { roofRing } from "../../src/drawing/views/roofRing.ts";
import { polygonArea } from "../../src/geometry/polygon.ts";
import { lengthText } from "../../src/measure/lengthText.ts";
import { framed } from "../roof/outlineSpecs.ts";
import { faults } from "./faults.ts";
import { drawnBoards, drawnTexts, measured } from "./readDrawing.ts";
import { struckTexts } from "./struckTexts.ts";
import { WINGED_ROOFS } from "./wingedRoofs.ts";

const roofs = Object.entries(WINGED_ROOFS).map(([name, spec]) => ({ name, spec, ...framed(spec) }));
const lengthOf = (unit: "in" | "mm") => (value: number) => lengthText(value, unit);

describe("the plan of a roof with wings", () => {
  it.each(roofs.flatMap((roof) => [320, 360, 640, 900].map((width) => ({ ...roof, width }))))(
    "lets no two texts touch, and breaks off what would run through one: $name at $width px",
    ({ frame, pieces, spec, width }) => {
      const svg = drawPlan(frame, pieces, { width, length: lengthOf(spec.unit) });
      expect(faults(svg)).toEqual([]);
      expect(struckTexts(svg).filter(({ backed }) => !backed)).toEqual([]);
      expect(svg).not.toMatch(/NaN|undefined|Infinity|null/);
    },
  );

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
    const boards = planBoards(pieces);
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
