/** The two units a call can be in: inches, or millimeters. */
export type Unit = "in" | "mm";

/** Millimeters in an inch, exactly (international yard and pound agreement, 1959). */
export const MM_PER_INCH = 25.4;
