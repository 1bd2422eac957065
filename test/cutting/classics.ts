import { chance } from "../solids/chance.ts";
import type { Instance } from "./instances.ts";

// Bin packing made by published generators, in boards that cost 1 each, with no kerf.

function bins(sizes: readonly number[], length: number): Instance {
  const lengths = [...new Set(sizes)];
  const pieces = lengths.map((width) => ({
    name: `${width}`,
    size: "bin",
    length: width,
    count: sizes.filter((other) => other === width).length,
  }));
  return { pieces, boards: [{ size: "bin", length, price: 1 }], kerf: 0 };
}

/**
 * Triplets, of E. Falkenauer, A hybrid grouping genetic algorithm for bin packing (1996): bins of 1000; of every bin one size is drawn from 380 to 490, the next from 250 to
 * half of the rest, and the third fills it to the brim. So the optimum is a third of the number of pieces.
 */
export function triplets(seed: number, count: number): Instance {
  const random = chance(seed);
  const between = (low: number, high: number): number => low + Math.floor(random() * (high - low + 1));
  const sizes: number[] = [];
  while (sizes.length < count) {
    const first = between(380, 490);
    const second = between(250, Math.floor((1000 - first) / 2));
    sizes.push(first, second, 1000 - first - second);
  }
  return bins(sizes, 1000);
}

/**
 * A perfect packing: so many bins of 1000, each cut at random into `parts` pieces, none shorter than 50, with nothing left over: the optimum is the number of bins, for that is what the
 * material takes. (The way in which the triplets are made, for more pieces a bin.)
 */
export function perfect(seed: number, count: number, parts: number): Instance {
  const random = chance(seed);
  const sizes: number[] = [];
  for (let bin = 0; bin < count; bin++) {
    const cuts = Array.from({ length: parts - 1 }, () => Math.floor(random() * (1001 - 50 * parts))).sort(
      (a, b) => a - b,
    );
    [...cuts, 1000 - 50 * parts].forEach((cut, n) => sizes.push(50 + cut - (cuts[n - 1] ?? 0)));
  }
  return bins(sizes, 1000);
}

/** Uniform sizes: Scholl, Klein and Jürgens, BISON (1997). Set 1: n of 50 to 500, bins of 100 to 150, sizes from 1, 20 or 30 to 100. Set 3: n 200, bins of 100,000, sizes of 20,000 to 35,000. */
export function uniform(seed: number, count: number, length: number, low: number, high: number): Instance {
  const random = chance(seed);
  return bins(
    Array.from({ length: count }, () => low + Math.floor(random() * (high - low + 1))),
    length,
  );
}
