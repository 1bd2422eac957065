import { bundled } from "../hosts/embedded/bundled.ts";
import type { Row } from "./row.ts";

const CELLS = 3_000;
const ROUNDS = 5;
// Equal pitches, square corner, as short as the sheet's own functions allow: the hardest thing to be compared with.
const OWN = (row: number) => `=(B${row}-1.5/2*SQRT(2)+1.5/2)*SQRT(1+($A$1/12)^2)`;
const OURS = (row: number) => `=RAFTER.JACKLEN($A$1,B${row},1.5,1.5)`;

/** Some thousand cells of RAFTER.JACKLEN (the sheet takes minutes over many more, either way) against the same formula in the sheet's own functions: the ratio of their recalculation, at most 1.2. */
export async function bench(): Promise<Row[]> {
  const { headless, real } = await bundled();
  const sheets = [OURS, OWN].map((formula) => {
    const t = headless(real, CELLS + 10);
    t.type("A1", 6);
    t.worksheet()
      .getRange(0, 1, CELLS, 1)
      .setValues(Array.from({ length: CELLS }, (_, i) => [{ v: 10 + i / 100 }]));
    t.worksheet()
      .getRange(0, 2, CELLS, 1)
      .setValues(Array.from({ length: CELLS }, (_, i) => [{ f: formula(i + 1) }]));
    return t;
  });
  const times: [number[], number[]] = [[], []];
  let pitch = 6;
  for (let round = 0; round < ROUNDS; round++) {
    pitch = pitch === 6 ? 7 : 6;
    // Turn and turn about, so that a busy moment of the machine hits both.
    for (const which of [0, 1] as const) {
      const t = sheets[which]!;
      await t.sheet.calculation.settled();
      t.type("A1", pitch);
      times[which].push(await t.calculated());
    }
  }
  const [a, b] = await Promise.all(sheets.map((t) => t.values(`C1:C${CELLS}`)));
  const worst = Math.max(...a!.map(([v], i) => Math.abs(Number(v) - Number(b![i]![0]))));
  if (!(worst < 1e-9)) throw new Error(`The two formulas do not agree: ${worst} apart.`);
  for (const t of sheets) t.dispose();
  const [ours, own] = times.map(median) as [number, number];
  return [
    {
      name: "RAFTER.JACKLEN in the embedded sheet",
      ratio: ours / own,
      most: 1.2,
      what: `recalculation of ${CELLS} cells, ${ours.toFixed(0)} ms, over the same formula in the sheet's own functions, ${own.toFixed(0)} ms`,
    },
  ];
}

function median(times: readonly number[]): number {
  return [...times].sort((a, b) => a - b)[times.length >> 1]!;
}
