/** Excel measures column widths and pictures in points: 72 to the inch, where the port's pixels are 96. That column widths are so too is unverified in Excel. */
export const POINTS_PER_PIXEL = 72 / 96;
