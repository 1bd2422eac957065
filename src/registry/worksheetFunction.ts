import type { Reason } from "../measure/reason.ts";
import type { Unit } from "../measure/unit.ts";
import type { CellError, Refusal } from "./refusal.ts";

/** What a cell can show. */
export type Cell = number | string | boolean;

/** What a call can give: one cell, or rows of cells that spill. Never an empty array. */
export type Output = Cell | readonly (readonly Cell[])[];

/** What a host hands over for one argument: a raw cell (null, undefined or "" when blank), or a range as rows of raw cells. */
export type Input = unknown;

/** What one call has learnt from its arguments so far: the unit its texts are in, if any said so. */
export interface Reading {
  unit: Unit | null;
  /** The argument whose text decided the unit, to name in a refusal. */
  unitFrom: string;
}

/** Words for what a parameter measures; shown in help texts. */
export type Quantity =
  "pitch" | "length" | "angle" | "number" | "size" | "text" | "roof" | "pieces" | "boards" | "list";

/** One parameter: what people read about it, how a host declares it, and how a raw cell becomes a value. */
export interface Parameter<T = unknown> {
  readonly name: string;
  readonly description: string;
  readonly quantity: Quantity;
  /** A block of cells is expected, not one cell. */
  readonly block?: boolean;
  /** May be left out; `read` is then called with undefined and gives the default. */
  readonly optional?: boolean;
  /** How the default reads in help, such as "90". */
  readonly defaultText?: string;
  /** Turns a raw cell (or, for a block, rows of raw cells) into a value, or says why not. */
  read(cell: Input, reading: Reading): T | Refusal | CellError;
}

/** A worked call: shown in the reference and run by the tests. Cells are written as in a formula; a block is rows of cells. */
export interface Example {
  readonly cells: readonly (Cell | readonly (readonly (Cell | null)[])[])[];
  /** A number is held to half a unit of its last printed decimal, a whole one to 1e-9 of itself, unless `tolerance` says otherwise. */
  readonly result: Output;
  readonly tolerance?: number;
  /** Where the result comes from outside this program: a publication and its printed figure, or a derivation shown in a named test. */
  readonly source?: string;
}

/** One thing a function refuses: the core's tag for it, when it comes up (for the reference), and the message for people. */
export interface Refuses {
  readonly tag: string;
  readonly when: string;
  say(figures: Reason["figures"]): string;
}

// The values that a list of parameters reads to.
export type ValuesOf<P extends readonly Parameter<any>[]> = {
  [K in keyof P]: P[K] extends Parameter<infer T> ? T : never;
};

type Computed = Output | Reason | Refusal | CellError;

/** Everything about one worksheet function. Hosts, help, metadata and tests are all made from it. */
export interface WorksheetFunction<P extends readonly Parameter<any>[] = readonly Parameter<any>[]> {
  /** Without the namespace: "JACKLEN". */
  readonly name: string;
  readonly family: string;
  /** One sentence. */
  readonly summary: string;
  readonly parameters: P;
  /** Completes "Returns ...", with the unit. */
  readonly returns: string;
  readonly examples: readonly [Example, Example, ...Example[]];
  readonly refuses?: readonly Refuses[];
  /** Gives its answer as a promise, so that a long search does not stop typing. */
  readonly asynchronous?: boolean;
  compute(...values: [...ValuesOf<P>, Reading]): Computed | Promise<Computed>;
}

/** The namespace in a sheet: cells hold =RAFTER.JACKLEN(...). */
export const NAMESPACE = "RAFTER";

/** Lets the compiler check `compute` against the parameters; the object itself is the single source for every host and page. */
export function worksheetFunction<const P extends readonly Parameter<any>[]>(
  definition: WorksheetFunction<P>,
): WorksheetFunction<P> {
  return definition;
}
