/** One thing measured on wood and the number a function gives for it. */
export interface Agreement {
  readonly what: string;
  readonly measured: number;
  readonly answered: number;
  readonly within: number;
}

/** Lengths agree to a millionth of an inch. */
export const inches = (what: string, measured: number, answered: number): Agreement => ({
  what,
  measured,
  answered,
  within: 1e-6,
});

/** Angles agree to a ten-millionth of a degree. */
export const degrees = (what: string, measured: number, answered: number): Agreement => ({
  what,
  measured,
  answered,
  within: 1e-7,
});

/** Those that do not agree, in words; not-a-number never agrees. */
export const disagreements = (all: readonly Agreement[]): string[] =>
  all
    .filter(({ measured, answered, within }) => !(Math.abs(measured - answered) <= within))
    .map(({ what, measured, answered }) => `${what}: the solid measures ${measured}, the function says ${answered}`);
