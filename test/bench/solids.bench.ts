import { assemble } from "../solids/assemble.ts";
import { faults } from "../solids/proof.ts";
import { regular } from "../solids/roofCases.ts";
import { toTheTables } from "../solids/schedule.ts";
import { Shop } from "../solids/shop.ts";
import type { Row } from "./row.ts";

/** A roof of more than a hundred members, cut to its tables, framed out of solids and proved. */
export async function bench(): Promise<Row[]> {
  const shop = new Shop();
  const plan = { ...regular, length: 720, spacing: 16 };
  const cutter = await toTheTables(plan);
  const times: number[] = [];
  let members = 0;
  for (let round = 0; round < 4; round++) {
    const start = performance.now();
    const roof = assemble(shop, plan, cutter);
    const found = faults(shop, roof);
    times.push(performance.now() - start);
    members = roof.members.length;
    shop.sweep();
    if (found.length > 0) throw new Error(found[0]);
  }
  const best = Math.min(...times);
  return [
    {
      name: "solid proof of a roof",
      ratio: best / 2_000,
      most: 1,
      what: `over 2 s; ${members} members, ${best.toFixed(0)} ms`,
    },
  ];
}
