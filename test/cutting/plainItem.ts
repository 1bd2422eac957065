import type { Item } from "../../src/cutting/model/problem.ts";

/** A piece without hand, turn or slant, as a search has it. */
export const plainItem = (weight: number, demand: number, group: number, endsGroup = true): Item => ({
  weight,
  demand,
  group,
  key: -1,
  saves: 0,
  either: false,
  ends: [],
  endsGroup,
});
