/** Asks a worksheet function, as a cell would, for a number. */
export type Ask = (name: string, ...cells: readonly unknown[]) => number;

/** One figure as it stands in print, and the worksheet function that must give it. */
export interface PrintedRow {
  readonly what: string;
  /** The figure as printed, "13.89" or "111 1/8": its last digit, or its fraction, says how exact it is. */
  readonly printed: string;
  readonly value: (ask: Ask) => number;
  /** Where the figure was worked out in print from rounded ones, and so is less exact than its digits: how exact it is, and why. */
  readonly within?: { readonly tolerance: number; readonly why: string };
}

/** A publication and what is checked of it. */
export interface PrintedTable {
  readonly source: string;
  readonly rows: readonly PrintedRow[];
}

/** Lengths along a slope as their level runs, through the worksheet's own slope of a unit run; the slope itself is held by the tables. */
export const level = (ask: Ask, pitch: number | string, along: number): number => along / ask("SLOPELEN", pitch, 1);
/** The tangent of an angle in degrees. */
export const tangent = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);
