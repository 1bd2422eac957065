/** Excel measures column widths and pictures in points: 72 to the inch, where the port's pixels are 96 (column widths too: office-js issues 187 and 3036). */
export const POINTS_PER_PIXEL = 72 / 96;
