import { functions } from "../../functions/index.ts";
import { call } from "../../src/registry/call.ts";
import type { Row } from "./row.ts";

const CALLS = 1_000_000;

/** Registry calls of JACKLEN with numbers, as a sheet makes them on every recalculation: the time of one call over 1 µs. */
export async function bench(): Promise<Row[]> {
  const jackLen = functions.find(({ name }) => name === "JACKLEN")!;
  const seconds = () => {
    const cells: [number, number, number, number] = [6, 0, 1.5, 1.5];
    let sum = 0;
    const start = performance.now();
    for (let i = 0; i < CALLS; i++) {
      cells[1] = 24 + (i % 200);
      sum += call(jackLen, cells) as number;
    }
    const time = (performance.now() - start) / 1000;
    if (!(sum > 0)) throw new Error("JACKLEN gave no number.");
    return time;
  };
  // The first rounds are the compiler's; the best of the others is the least disturbed by what else the machine does.
  seconds();
  const best = Math.min(...Array.from({ length: 5 }, seconds));
  return [{ name: "registry call of JACKLEN", ratio: best * 1e6 / CALLS, what: `time of one call over 1 µs; ${Math.round(CALLS / best).toLocaleString("en")} calls a second`, most: 1 }];
}
