import { expect, it } from "vitest";
import type { Order, OrderLine } from "../../../src/pane/state/orderNow.ts";
import { offCutList, planLists } from "../../../src/pane/writing/planLists.ts";
import { planTexts } from "../../../src/pane/words/planTexts.ts";

type Stick = Order["plan"]["sticks"][number];

const stick = (number: number, times: number, leftOver: number, size = "2x8"): Stick => ({
  number,
  times,
  size,
  length: 144,
  depth: null,
  leftOver,
  pieces: [],
});
const line = (count: number, size: string, board: number, waste: number): OrderLine => ({
  count,
  size,
  board,
  waste,
  leftOver: 0,
});
function orderOf(sticks: readonly Stick[], lines: readonly OrderLine[] = []): Order {
  return { lines, boards: 0, length: 0, proof: "", plan: { sticks, unit: "in", missing: [], notes: [] } };
}

it("lists what to buy, and then what is left of it", () => {
  const order = orderOf([stick(1, 1, 20)], [line(3, "2x8", 144, 1), line(2, "2x10", 192, 0)]);
  const lists = planLists(order, "in", 1 / 8);
  expect(lists[0]).toEqual({
    title: planTexts.shopping,
    headings: planTexts.shoppingColumns,
    rows: [
      ["3", "2x8", `12' 0"`, "1"],
      ["2", "2x10", `16' 0"`, ""],
    ],
    none: planTexts.nothing,
  });
  expect(lists.slice(1)).toEqual([offCutList(order, "in", 1 / 8)]);
});

it("lists off-cuts of a foot and more with the boards that they come off, less the saw cut that parts them", () => {
  const sticks = [stick(1, 2, 20.125), stick(3, 1, 12.125), stick(4, 1, 12.0625), stick(5, 1, 20.125)];
  expect(offCutList(orderOf(sticks), "in", 1 / 8)).toEqual({
    title: planTexts.offCuts,
    headings: planTexts.offCutColumns,
    rows: [
      ["3", "2x8", `1' 8"`, "1 to 2, 5"],
      ["1", "2x8", `1' 0"`, "3"],
    ],
    none: planTexts.noOffCuts(`1' 0"`),
  });
});

it("keeps 300 mm and more of metric boards, in whole millimeters", () => {
  const { rows, none } = offCutList(orderOf([stick(1, 1, 303.9), stick(2, 1, 302.9)]), "mm", 3);
  expect([rows, none]).toEqual([[["1", "2x8", "300 mm", "1"]], planTexts.noOffCuts("300 mm")]);
});
