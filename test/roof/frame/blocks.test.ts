import { expect, it } from "vitest";
import { alongBlock, inBlock } from "../../../src/roof/frame/blocks.ts";

it("a point of the plan is as far along a block as it was laid out, wherever the block begins and whichever way it goes", () => {
  for (const along of [
    { x: 1, y: 0 },
    { x: 0, y: -1 },
    { x: 0.6, y: 0.8 },
  ]) {
    const block = { corner: { x: 30, y: 70 }, along, across: { x: -along.y, y: along.x } };
    const point = inBlock(block, 12, 5);
    expect(point).toEqual({ x: 30 + 12 * along.x - 5 * along.y, y: 70 + 12 * along.y + 5 * along.x });
    expect(alongBlock(block, point)).toBeCloseTo(12, 12);
  }
});
