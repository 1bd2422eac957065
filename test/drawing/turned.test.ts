import { describe, expect, it } from "vitest";
import { drawFrame3d } from "../../src/drawing/views/drawFrame3d.ts";
import { roofRing } from "../../src/drawing/views/roofRing.ts";
import { framed } from "../roof/outlineSpecs.ts";
import { inches, ROOFS } from "./allDrawings.ts";
import { drawnBoards, drawnSize } from "./readDrawing.ts";

const SIZE = { width: 700, height: 420 };
const drawn = (name: string, turn: number, down: number) => {
  const { frame, pieces } = framed(ROOFS[name]!);
  const svg = drawFrame3d(frame, pieces, { width: SIZE.width, length: inches }, { turn, down, height: SIZE.height });
  const boards = drawnBoards(svg);
  const points = boards.flatMap((board) => board.points);
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  const box = { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
  return { frame, svg, boards, box, scale: boards[0]!.view.scale };
};
const names = Object.keys(ROOFS).filter((name) => !/dense/.test(name));

describe("the frame, turned", () => {
  it.each(names)("stays on its canvas and keeps its scale however it is turned about the plumb line: %s", (name) => {
    const scales = new Set<string>();
    for (let turn = -180; turn < 180; turn += 45) {
      const { svg, box, scale } = drawn(name, turn, 32);
      expect(drawnSize(svg).height).toBe(SIZE.height);
      expect(box.left).toBeGreaterThanOrEqual(0);
      expect(box.right).toBeLessThanOrEqual(SIZE.width);
      expect(box.top).toBeGreaterThanOrEqual(0);
      expect(box.bottom).toBeLessThanOrEqual(SIZE.height);
      scales.add(scale.toFixed(6));
    }
    expect(scales.size).toBe(1);
  });

  it("shows from above the eaves of the plan, and from the front how long and how high the roof is", () => {
    const ring = roofRing(drawn(names[0]!, 0, 90).frame, "eaves");
    const [long, deep] = [ring.map(({ x }) => x), ring.map(({ y }) => y)].map(
      (all) => Math.max(...all) - Math.min(...all),
    );
    const above = drawn(names[0]!, 0, 90);
    expect((above.box.right - above.box.left) / above.scale).toBeCloseTo(long!, 0);
    // A hip's or rafter's plumb tail reaches no farther than the eaves; a degree off the plumb line shows a little of its height.
    expect(Math.abs((above.box.bottom - above.box.top) / above.scale - deep!)).toBeLessThan(3);
    const front = drawn(names[0]!, 0, 0);
    expect((front.box.right - front.box.left) / front.scale).toBeCloseTo(long!, 0);
    const end = drawn(names[0]!, 90, 0);
    expect((end.box.right - end.box.left) / end.scale).toBeCloseTo(deep!, 0);
    expect(end.box.bottom - end.box.top).toBeCloseTo(((front.box.bottom - front.box.top) / front.scale) * end.scale, 3);
  });

  it("turned half round it is seen from the other side: what was left is right, what was hidden is in view", () => {
    const [one, other] = [drawn(names[0]!, 0, 20), drawn(names[0]!, 180, 20)];
    expect(one.box.left + other.box.right).toBeCloseTo(SIZE.width, 0);
    expect(new Set(other.boards.map(({ piece }) => piece))).toEqual(new Set(one.boards.map(({ piece }) => piece)));
  });

  it("shades its sides by where they look, and as the guide shows it not at all", () => {
    expect(drawn(names[0]!, -28, 32).svg.match(/color-mix\(in srgb,[^%]+ (12|28)%/g)!.length).toBeGreaterThan(20);
    const { frame, pieces } = framed(ROOFS[names[0]!]!);
    expect(drawFrame3d(frame, pieces, { width: 600, length: inches, theme: "print" })).not.toContain("color-mix");
  });
});
