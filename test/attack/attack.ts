import { chance } from "../solids/chance.ts";

/** One way to attack the program. It goes on with new cases until `more` says no. */
export interface Attack {
  readonly name: string;
  /** @param seed the same seed gives the same cases. */
  run(seed: number, more: () => boolean): Promise<{ readonly tried: number; readonly found: readonly string[] }>;
}

/** Random whole numbers below `most`, from a seed. */
export function random(seed: number): (most: number) => number {
  const next = chance(seed);
  return (most) => Math.floor(next() * most);
}
