import type { PrintedTable } from "./printed.ts";

export const buildersGuide: PrintedTable = {
  source: "Carpenters and Builders Guide, volume 3 (Audel), roof framing, p. 975",
  rows: [
    { what: "shortest jack, rise 10, 16 in o.c.", printed: "20.83", value: (ask) => ask("JACKLINE", 10, 16) },
    { what: "common difference, rise 10, 16 in o.c.", printed: "20.83", value: (ask) => ask("JACKSTEP", 10, 16) },
    // Printed without a fraction, so held to half an inch; it is rounded from 20.83 x 20 / 16.
    { what: "shortest jack, rise 10, 20 in o.c.", printed: "26", value: (ask) => ask("JACKLINE", 10, 20) },
    { what: "common difference, rise 10, 20 in o.c.", printed: "26", value: (ask) => ask("JACKSTEP", 10, 20) },
  ],
};
