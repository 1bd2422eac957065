/** A nominal size in inches with its dressed size in inches. */
export interface DressedSize {
  readonly nominalThickness: number;
  readonly nominalDepth: number;
  readonly thickness: number;
  readonly depth: number;
}

// Nominal to dressed, the same for thickness and depth but for boards (1 in nominal is 3/4 in).
const DRESSED: readonly (readonly [nominal: number, dressed: number])[] = [
  [1, 0.75],
  [2, 1.5],
  [3, 2.5],
  [4, 3.5],
  [5, 4.5],
  [6, 5.5],
  [8, 7.25],
  [10, 9.25],
  [12, 11.25],
  [14, 13.25],
  [16, 15.25],
];

/** Boards and dimension lumber come in every depth; timbers (thicker than this) up to 14 in only, for 16 in is dressed differently there. */
const THICKEST_DIMENSION = 4;

function exists(thickness: number, depth: number): boolean {
  if (depth < Math.max(2, thickness)) return false;
  return thickness <= THICKEST_DIMENSION || (thickness >= 6 && depth <= 14);
}

/**
 * Every nominal size that is dressed to a standard size, by thickness and then by depth, never wider than deep, in inches.
 *
 * The dry sizes of the American Softwood Lumber Standard, Voluntary Product Standard PS 20: all values from memory of it. Timbers are
 * often sold green, 1/2 in under nominal (a green 6x8 is 7 1/2 in deep): those are typed as actual sizes.
 *
 * @example
 * dressedSizes.find((size) => size.nominalThickness === 2 && size.nominalDepth === 8) // => { nominalThickness: 2, nominalDepth: 8, thickness: 1.5, depth: 7.25 }
 */
export const dressedSizes: readonly DressedSize[] = DRESSED.flatMap(([nominalThickness, thickness]) =>
  DRESSED.filter(([nominalDepth]) => exists(nominalThickness, nominalDepth)).map(([nominalDepth, depth]) => ({
    nominalThickness,
    nominalDepth,
    thickness,
    depth,
  })),
);
