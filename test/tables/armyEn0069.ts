import type { PrintedTable } from "./printed.ts";

export const armyEn0069: PrintedTable = {
  source: "US Army Engineer School, Frame Structures (subcourse EN0069), lesson 2",
  rows: [
    { what: "common, length per foot of run, unit rise 16", printed: "20.00", value: (ask) => ask("SLOPELEN", 16, 12) },
    { what: "common, length per foot of run, unit rise 13", printed: "17.69", value: (ask) => ask("SLOPELEN", 13, 12) },
  ],
};
