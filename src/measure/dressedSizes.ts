/**
 * Dressed sizes of softwood lumber: what is left of a nominal size after drying and planing, in inches.
 *
 * American Softwood Lumber Standard, Voluntary Product Standard PS 20 (boards and dimension lumber: dry; timbers, 5 in nominal and thicker:
 * green, 1/2 in less than nominal). All values from memory of that standard.
 */
const THICKNESSES: ReadonlyMap<number, number> = new Map([[1, 0.75], [2, 1.5], [3, 2.5], [4, 3.5]]);

const DEPTHS: ReadonlyMap<number, number> = new Map([
  [2, 1.5], [3, 2.5], [4, 3.5], [5, 4.5], [6, 5.5], [8, 7.25], [10, 9.25], [12, 11.25], [14, 13.25], [16, 15.25],
]);

/** Nominal timbers, in both directions. */
const TIMBERS = [6, 8, 10, 12, 14, 16] as const;

/** A nominal size in inches with its dressed size in inches. */
export interface DressedSize {
  readonly nominalThickness: number;
  readonly nominalDepth: number;
  readonly thickness: number;
  readonly depth: number;
}

/**
 * Every nominal size that is dressed to a standard size, by thickness and then by depth, never wider than deep.
 *
 * @example
 * dressedSizes.find((size) => size.nominalThickness === 2 && size.nominalDepth === 8) // => { nominalThickness: 2, nominalDepth: 8, thickness: 1.5, depth: 7.25 }
 */
export const dressedSizes: readonly DressedSize[] = [
  ...[...THICKNESSES].flatMap(([nominalThickness, thickness]) =>
    [...DEPTHS].filter(([nominalDepth]) => nominalDepth >= nominalThickness).map(([nominalDepth, depth]) => ({ nominalThickness, nominalDepth, thickness, depth })),
  ),
  ...TIMBERS.flatMap((nominalThickness) =>
    TIMBERS.filter((nominalDepth) => nominalDepth >= nominalThickness).map((nominalDepth) => ({
      nominalThickness, nominalDepth, thickness: nominalThickness - 0.5, depth: nominalDepth - 0.5,
    })),
  ),
];
