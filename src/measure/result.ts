/** One problem, or note, for each kind in a table of kinds and the figures that their words need. */
export type Kinds<Table, K extends keyof Table = keyof Table> = {
  [N in K]: { readonly kind: N } & Readonly<Table[N]>;
}[K];

/** A problem of any room. */
export interface AnyProblem {
  readonly kind: string;
}

/**
 * In the place of a value that cannot be given: what is wrong, as data.
 *
 * The core words nothing for people; functions/words does.
 */
export class Failure<const out P extends AnyProblem = AnyProblem> {
  readonly problem: P;
  constructor(problem: P) {
    this.problem = problem;
  }
}

/** A value, or what keeps it from being given. Nothing in the core throws. */
export type Result<T, P extends AnyProblem = AnyProblem> = T | Failure<P>;
