import type { PrintedTable } from "./printed.ts";

export const commonPractice: PrintedTable = {
  source: "common practice, no source",
  rows: [
    {
      what: "a regular jack's head is cut with the saw tilted 45 degrees, whatever the pitch",
      printed: "45",
      value: (ask) => Math.max(ask("JACKTILT", 4), ask("JACKTILT", 6), ask("JACKTILT", 12)),
      within: { tolerance: 1e-12, why: "a fact of the corner, not a reading" },
    },
    {
      what: "jacks on the two sides of a regular hip have equal length",
      printed: "0",
      value: (ask) => ask("JACKLEN", 7, 48, 1.5, 1.5, 7) - ask("JACKLEN", 7, 48, 1.5, 1.5),
      within: { tolerance: 1e-12, why: "one length, asked for in two ways" },
    },
    // Measured from the plate's outer top corner, which is one heel plumb below the top edge, to the long point.
    {
      what: "a jack is measured with a straight tape: 4 in 12, the long point a run of 48 and a rise of 16 + 4 away",
      printed: "52",
      value: (ask) => ask("JACKTAPE", 4, 48 + 0.75 * Math.SQRT2 - 0.75, 1.5, 1.5, 4),
      within: { tolerance: 1e-9, why: "the triangle 48, 20, 52 is exact" },
    },
  ],
};
