/** Pixels of one unit of a column's width: a digit of the usual font. */
export const WIDTH_PIXELS = 7;

/** Pixels of a point, the unit of a row's height. */
export const POINT_PIXELS = 96 / 72;
