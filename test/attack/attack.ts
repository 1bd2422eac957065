/** One way to attack the program. It goes on with new cases until `more` says no. */
export interface Attack {
  readonly name: string;
  /** @param seed the same seed gives the same cases. */
  run(seed: number, more: () => boolean): Promise<{ readonly tried: number; readonly found: readonly string[] }>;
}

/** Random whole numbers below `most`, from a seed (mulberry32, public domain). */
export function random(seed: number): (most: number) => number {
  let state = seed >>> 0;
  return (most) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let x = Math.imul(state ^ (state >>> 15), 1 | state);
    x = (x + Math.imul(x ^ (x >>> 7), 61 | x)) ^ x;
    return ((x ^ (x >>> 14)) >>> 0) % most;
  };
}
