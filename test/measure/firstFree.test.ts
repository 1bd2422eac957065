import { expect, it } from "vitest";
import { firstFree } from "../../src/measure/firstFree.ts";

const nth = (n: number) => (n === 1 ? "Roof" : `Roof ${n}`);

it.each([
  [[], "Roof"],
  [["Jacks"], "Roof"],
  [["ROOF"], "Roof 2"],
  [["roof", "Roof 3"], "Roof 2"],
  [["Roof", "roof 2", "Roof 3"], "Roof 4"],
])("of %j the first free name is %s", (taken, free) => {
  expect(firstFree(taken, nth)).toBe(free);
});
