import type { ReadSize } from "./readSize.ts";

/**
 * Whether a size was written by its nominal name, 2x8, which holds in any unit: no other name is one word.
 *
 * @example
 * isNominal({ thickness: 1.5, depth: 7.25, unit: "in", name: "2x8" }) // => true
 * isNominal({ thickness: 1.5, depth: 7.25, unit: "in", name: "1.5 x 7.25 in" }) // => false
 */
export function isNominal({ name }: Pick<ReadSize, "name">): boolean {
  return !name.includes(" ");
}
