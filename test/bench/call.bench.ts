import { functions } from "../../functions/index.ts";
import { call } from "../../src/registry/call.ts";
import type { Row } from "./row.ts";

const CALLS = 1_000_000;

/** Registry calls of JACKLEN with numbers, as a sheet makes them on every recalculation: the time of one call over 1 µs; and refusals of text, short and far too long. */
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
  const refusal = (text: string) => {
    const start = performance.now();
    for (let i = 0; i < CALLS / 100; i++)
      if (typeof call(jackLen, [text, 48, 1.5, 1.5]) === "number") throw new Error("Nonsense was read.");
    return performance.now() - start;
  };
  const quickest = (text: string) => Math.min(...Array.from({ length: 5 }, () => refusal(text)));
  const [short, long] = [quickest("1/".repeat(20)), quickest("1/".repeat(5_000))];
  seconds();
  const best = Math.min(...Array.from({ length: 5 }, seconds));
  const texts = Array.from({ length: 200 }, (_, i) => `${2 + Math.floor(i / 12)}' ${i % 12}"`);
  const asText = () => {
    const start = performance.now();
    for (let i = 0; i < CALLS / 10; i++)
      if (typeof call(jackLen, ["6/12", texts[i % 200], `1 1/2"`, `1 1/2"`]) !== "number")
        throw new Error("JACKLEN gave no number.");
    return (performance.now() - start) / 100;
  };
  const text = Math.min(...Array.from({ length: 5 }, asText));
  return [
    {
      name: "registry call of JACKLEN",
      ratio: (best * 1e6) / CALLS,
      what: `time of one call over 1 µs; ${Math.round(CALLS / best).toLocaleString("en")} calls a second`,
      most: 1,
    },
    {
      name: "JACKLEN of texts / of numbers",
      ratio: text / best,
      what: `every argument typed as text, 200 offsets; ${((text * 1e6) / CALLS).toFixed(2)} µs a call`,
      most: 20,
    },
    {
      name: "refusal of 10,000 characters",
      ratio: long / short,
      what: `over that of 40 characters; ${((long * 1e5) / CALLS).toFixed(1)} µs a call`,
      most: 4,
    },
  ];
}
