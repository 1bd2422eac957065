import { Failure, type AnyProblem } from "../measure/result.ts";
import type { Unit } from "../measure/unit.ts";

/** Where a problem lies: the argument, and within a block its row (a label, or its number from 1), its wing's letter, heading, or place in a list. */
export interface Place {
  readonly argument: string;
  readonly row?: string | number;
  readonly wing?: string;
  readonly heading?: string;
  readonly value?: number;
}

/**
 * Why a cell shows an error instead of a value: the problem as data, which functions/words puts into words.
 *
 * It is returned, never thrown: nothing in the core throws into a sheet.
 */
export class Refusal<out P extends AnyProblem = AnyProblem> extends Failure<P> {
  /** The one error of our own that a cell can show. */
  readonly error = "#VALUE!";
  /** null: the call as a whole. */
  readonly place: Place | null;
  /** What the problem's lengths are in. */
  readonly unit: Unit | null;
  constructor(problem: P, place: Place | null, unit: Unit | null) {
    super(problem);
    this.place = place;
    this.unit = unit;
  }
}

/** An error that came in with an input cell, such as #DIV/0!; it passes through a call unchanged. */
export class CellError extends Failure<{ readonly kind: "cell error"; readonly error: string }> {
  readonly error: string;
  constructor(error: string) {
    super({ kind: "cell error", error });
    this.error = error;
  }
}
