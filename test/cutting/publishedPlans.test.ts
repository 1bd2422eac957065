import { describe, expect, it } from "vitest";
import { planCutsNow } from "./planCutsNow.ts";
import { checkPlan, planOf } from "./checkPlan.ts";
import { perfect, triplets } from "./classics.ts";
import type { Instance } from "./instances.ts";

const counted = (lengths: readonly number[]): [number, number][] =>
  [...new Set(lengths)].map((length) => [length, lengths.filter((other) => other === length).length]);

// prettier-ignore
const T60_00 = [495, 474, 473, 472, 466, 450, 445, 444, 439, 430, 419, 414, 410, 395, 372, 370, 366, 366, 366, 363, 361, 357, 355, 351, 350, 350, 347, 320, 315, 307,
  303, 299, 298, 298, 292, 288, 287, 283, 275, 275, 274, 273, 273, 272, 272, 271, 269, 269, 268, 263, 262, 261, 259, 258, 255, 254, 252, 252, 252, 251];
// prettier-ignore
const N1C1W1_A = [99, 99, 96, 96, 92, 92, 91, 88, 87, 86, 85, 76, 74, 72, 69, 67, 67, 62, 61, 56, 52, 51, 49, 46, 44, 42, 40, 40, 33, 33, 30, 30, 29, 28, 28, 27, 25, 24,
  23, 22, 21, 20, 17, 14, 13, 11, 10, 7, 7, 3];

describe("published cutting-stock instances", () => {
  it.each<[string, number, [number, number][], number]>([
    // V. Chvátal, Linear Programming (1983), ch. 13: raws of 100 in, four finals; the data also as model "cutstock" of the GAMS library. 453 raws (from memory).
    [
      "Chvátal 1983",
      100,
      [
        [45, 97],
        [36, 610],
        [31, 395],
        [14, 211],
      ],
      453,
    ],
    // "Cutting stock problem", Wikipedia, section "Illustration": rolls of 5600 mm; "The optimal answer requires 73 master rolls".
    [
      "paper machine, 13 widths",
      5600,
      [
        [1380, 22],
        [1520, 25],
        [1560, 12],
        [1710, 14],
        [1820, 18],
        [1880, 18],
        [1930, 20],
        [2000, 10],
        [2050, 12],
        [2100, 14],
        [2140, 16],
        [2150, 18],
        [2200, 20],
      ],
      73,
    ],
    // E. Falkenauer, A hybrid grouping genetic algorithm for bin packing (1996): triplets t60_00 of the OR-Library, made so that 20 bins of 1000 are filled to the
    // brim. Sizes from memory; they add up to 20000.
    ["Falkenauer t60_00", 1000, counted(T60_00), 20],
    // A. Scholl, R. Klein, C. Jürgens, BISON (1997): data set 1, N1C1W1_A, 50 items in bins of 100, 25 bins. Sizes from memory.
    ["Scholl, Klein, Jürgens N1C1W1_A", 100, counted(N1C1W1_A), 25],
  ])("%s", (_, length, list, rolls) => {
    const pieces = list.map(([width, count]) => ({ name: `${width}`, size: "roll", length: width, count }));
    const boards = [{ size: "roll", length, price: 1 }];
    const plan = planOf(planCutsNow(pieces, boards, { kerf: 0 }));
    expect(plan).toMatchObject({ cost: rolls, bound: rolls, proved: true });
    checkPlan(plan, { pieces, boards, kerf: 0 });
  });

  // The optimum is known by the way they are made: see classics.ts.
  it.each<[string, Instance, number]>([
    ["triplets, 60", triplets(1, 60), 20],
    ["triplets, 120", triplets(2, 120), 40],
    ["perfect packing, 30 bins of 3", perfect(1, 30, 3), 30],
  ])("%s, by a published generator", (_, list, bins) => {
    const plan = planOf(planCutsNow(list.pieces, list.boards, list));
    expect(plan).toMatchObject({ cost: bins, bound: bins, proved: true });
    checkPlan(plan, list);
  });
});
