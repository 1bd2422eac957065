import { level, tangent, type Ask, type PrintedTable } from "./printed.ts";

const HIP = 1.5;
const VALLEY = 2;
/** The run of a cripple between the center lines of hip and valley: half of each, seen at 45 degrees, is added to its length. */
const crippleRun = (ask: Ask, plate: string): number =>
  (level(ask, 6, ask("CRIPPLELEN", 6, plate, `${HIP}"`, `${VALLEY}"`)) + ((HIP + VALLEY) / 2) * Math.SQRT2) / 12;

export const radford: PrintedTable = {
  source: "Radford's Cyclopedia of Construction, volume 3, Roof Framing Simplified (about 1909)",
  rows: [
    {
      what: "plumb and seat cut of common and jack, rise 6: the 6 that goes with 12",
      printed: "6",
      value: (ask) => 12 * tangent(ask("PITCHDEG", 6)),
    },
    {
      what: "plumb and seat cut of hip and valley, rise 6: the 17 that goes with 6",
      printed: "17",
      value: (ask) => 6 / tangent(ask("HIPDEG", 6)),
    },
    { what: "hip, length per foot of common run, rise 6", printed: "18", value: (ask) => ask("HIPLEN", 6, 12) },
    // One scan of the page reads 8 for the 6; the triangle of hip length and rise gives 6.
    {
      what: "backing of the hip, rise 6: the 6 on the blade that goes with 18 on the tongue",
      printed: "6",
      value: (ask) => 18 * tangent(ask("HIPBACK", 6)),
    },
    { what: "run of the cripple in feet, plate of 6 ft", printed: "6", value: (ask) => crippleRun(ask, `6'`) },
    { what: "run of the cripple in feet, plate of 10 ft", printed: "10", value: (ask) => crippleRun(ask, `10'`) },
  ],
};
