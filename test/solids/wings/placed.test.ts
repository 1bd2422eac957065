import { afterEach, describe, expect, it } from "vitest";
import { outlineFace } from "../../../src/roof/frame/outlineFace.ts";
import { inSpace, placedBoards, type PlacedBoard } from "../../../src/roof/frame/placedBoards.ts";
import { Shop } from "../shop.ts";
import type { Vec } from "../vector.ts";
import { wingedCases } from "./cases.ts";
import { modelOf } from "./frameOf.ts";
import type { WingedPlan } from "./plan.ts";
import { frameWinged } from "./winged.ts";

const shop = new Shop();
afterEach(() => shop.sweep());

interface Box {
  readonly name: string;
  readonly min: Vec;
  readonly max: Vec;
}

/** How far a drawn board reaches in space, from its plumb sections through the corners of its plan. */
function boxOf(board: PlacedBoard): Box {
  const { outline, piece } = board;
  const sections = outline.shape.plan.map(({ y }) => outlineFace(outline.shape, y));
  const corners = sections.flatMap((face) => face.polygon.map((point) => inSpace(board, point, face.across)));
  const of = (most: (...all: number[]) => number): Vec => [
    most(...corners.map(({ x }) => x)),
    most(...corners.map(({ y }) => y)),
    most(...corners.map(({ z }) => z)),
  ];
  return { name: piece.mark, min: of(Math.min), max: of(Math.max) };
}

const apart = (one: Box, other: Box): number =>
  Math.max(...[0, 1, 2].flatMap((i) => [Math.abs(one.min[i]! - other.min[i]!), Math.abs(one.max[i]! - other.max[i]!)]));

/** Solids that no drawn board fills, and boards that no solid is. */
function differing(plan: WingedPlan): string[] {
  const roof = frameWinged(shop, plan);
  const solids = [...roof.bearers.all, ...roof.rafters].map(({ name, solid }): Box => ({
    name,
    ...solid.boundingBox(),
  }));
  const { frame, pieces } = modelOf(plan);
  const boards = placedBoards(frame, pieces).map(boxOf);
  const found: string[] = [];
  for (const solid of solids) {
    const near = boards.map((board) => apart(solid, board));
    const least = Math.min(...near);
    if (least > 1e-5) found.push(`${solid.name}: ${least} off ${boards[near.indexOf(least)]?.name}`);
    else boards.splice(near.indexOf(least), 1);
  }
  return [...found, ...boards.map(({ name }) => `${name}: no solid`)];
}

describe("every board as drawn fills the box of its solid", { timeout: 60_000 }, () => {
  it.each(Object.entries(wingedCases))("%s", (_, plan) => expect(differing(plan)).toEqual([]));
});
