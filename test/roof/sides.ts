import type { Frame } from "../../src/roof/frame/frame.ts";
import { headRuns, type JackRow } from "../../src/roof/frame/rafterLines.ts";

/** What a test asks of one side of a roof's first corner. */
function sideOf(row: JackRow, thickness: number) {
  const { run, overhang, seat } = row.plane;
  const jacks = row.jacks.map((jack) => ({ offset: jack.offset, runs: headRuns(jack, thickness) }));
  return { run, overhang, seat, king: row.king, jacks, dropped: row.dropped };
}

/** Both sides at a roof's first corner: along the main plate and along the end's. */
export function sidesOf({ rows, spec }: Frame) {
  const [main, end] = rows;
  return { main: sideOf(main!, spec.rafter.thickness), end: sideOf(end!, spec.rafter.thickness) };
}
