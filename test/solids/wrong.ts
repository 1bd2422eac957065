import { disagreements } from "./agreement.ts";
import type { Agreement } from "./agreement.ts";
import { turned, worded } from "./cases.ts";
import type { CornerCase } from "./cases.ts";
import type { Shop } from "./shop.ts";

/** What a check finds over a list of cases, each seen from both of its sides: how many were looked at, and what did not agree. */
export async function wrong(
  shop: Shop,
  cases: readonly CornerCase[],
  check: (one: CornerCase) => Promise<Agreement[] | null>,
): Promise<{ looked: number; found: string[] }> {
  const found: string[] = [];
  let looked = 0;
  for (const one of cases.flatMap((c) => [c, turned(c)])) {
    const agreements = await check(one);
    shop.sweep();
    if (!agreements) continue;
    looked += 1;
    found.push(...disagreements(agreements).map((words) => `${worded(one)}: ${words}`));
  }
  return { looked, found };
}
