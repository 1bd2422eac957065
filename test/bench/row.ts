/** One measured ratio: below 1 is better than what it is measured against. */
export interface Row {
  readonly name: string;
  readonly ratio: number;
  /** What the ratio is of, with the figures behind it. */
  readonly what: string;
  /** The most that the ratio should be. */
  readonly most: number;
}
