import type { AnyProblem, Failure } from "../measure/result.ts";
import type { Cell, Column, Table } from "./columns.ts";
import type { Reading } from "./reading.ts";

export type { Cell, Table };

/** Which of the two a call gives. */
export type ResultKind = "value" | "table";
type OutputOf<R extends ResultKind> = { value: Cell; table: Table }[R];
export type Output = OutputOf<ResultKind>;

/** What a host hands over for one argument: a raw cell (null, undefined or "" when blank), or a range as rows of raw cells. */
export type Input = unknown;

/** Words for what a parameter measures; shown in help texts. */
export type Quantity =
  "pitch" | "length" | "angle" | "number" | "size" | "text" | "roof" | "pieces" | "boards" | "list";

/** One parameter: what people read about it, how a host declares it, and how a raw cell becomes a value. */
export interface Parameter<T = unknown, N extends string = string> {
  readonly name: N;
  readonly description: string;
  readonly quantity: Quantity;
  /** A block of cells is expected, not one cell. */
  readonly block?: boolean;
  /** May be left out; `read` is then called with undefined and gives the default. */
  readonly optional?: boolean;
  /** How the default reads in help, such as "90". */
  readonly defaultText?: string;
  /** Turns a raw cell (or, for a block, rows of raw cells) into a value, or says why not. */
  read(cell: Input, reading: Reading): T | Failure;
}

/** A worked call: shown in the reference and run by the tests. Cells are written as in a formula; a block is rows of cells. */
export interface Example<R extends ResultKind = ResultKind> {
  readonly cells: readonly (Cell | readonly (readonly (Cell | null)[])[])[];
  /** A number is held to half a unit of its last printed decimal, a whole one to 1e-9 of itself, unless `tolerance` says otherwise. */
  readonly result: OutputOf<R>;
  readonly tolerance?: number;
  /** Where the result comes from outside this program: a publication and its printed figure, or a derivation shown in a named test. */
  readonly source?: string;
}

/** What the parameters read to, each under its parameter's own name. */
export type Named<P extends readonly Parameter<any>[]> = {
  readonly [Q in P[number] as Q["name"]]: Q extends Parameter<infer T> ? T : never;
};

export type Computed<R extends ResultKind = ResultKind, F extends AnyProblem = any> = OutputOf<R> | Failure<F>;

type Answers<R extends ResultKind> = Computed<R> | Promise<Computed<R>>;
type ProblemIn<A> = A extends Failure<infer F> ? F : never;

/** Everything that is written down about one worksheet function. */
export interface Definition<
  P extends readonly Parameter<any>[] = readonly Parameter<any>[],
  R extends ResultKind = ResultKind,
  A extends Answers<R> = Answers<R>,
> {
  /** Without the namespace: "JACKLEN". */
  readonly name: string;
  readonly family: string;
  /** One sentence. */
  readonly summary: string;
  readonly parameters: P;
  readonly result: R;
  /** Of a table: its columns, where they are the same for every call. */
  readonly columns?: readonly Column[];
  /** Completes "Returns ...", with the unit. */
  readonly returns: string;
  readonly examples: readonly [Example<R>, Example<R>, ...Example<R>[]];
  /** The core's problems that it can come to, each with the argument at fault. */
  readonly refuses?: Readonly<Record<string, string>>;
  /** Gives its answer as a promise, so that a long search does not stop typing. */
  readonly asynchronous?: boolean;
  compute(named: Named<P>, reading: Reading): A;
}

/** A definition ready to be called, whose own problems are F. Hosts, help, metadata and tests are all made from it. */
export interface WorksheetFunction<F extends AnyProblem = any> extends Omit<Definition, "compute"> {
  /** Computes from what the parameters read, in their order. */
  run(values: readonly unknown[], reading: Reading): Computed<ResultKind, F> | Promise<Computed<ResultKind, F>>;
}

/** A function whose table has the same columns for every call. */
export type TableFunction = WorksheetFunction & { readonly columns: readonly Column[] };

/** The namespace in a sheet: cells hold =RAFTER.JACKLEN(...). */
export const NAMESPACE = "RAFTER";

type Made<A> = WorksheetFunction<ProblemIn<Awaited<A>>>;

/** Makes a worksheet function of its definition; the compiler checks `compute` against the parameters' names and the result. */
export function worksheetFunction<
  const P extends readonly Parameter<any>[],
  const R extends ResultKind,
  const C extends readonly Column[] | undefined,
  A extends Answers<R>,
>(definition: Definition<P, R, A> & { readonly columns?: C }): Made<A> & { readonly columns: C } {
  const { compute, ...described } = definition;
  const ByName = byName(definition.parameters);
  return {
    ...described,
    columns: definition.columns as C,
    run: (values, reading) => compute(new ByName(values) as unknown as Named<P>, reading) as ReturnType<Made<A>["run"]>,
  };
}

/**
 * A class whose objects give each value under its parameter's name.
 *
 * The names are on the prototype, once for each function: to write them into a new object at every call would take half as long again as the call.
 */
function byName(parameters: readonly Parameter[]): new (values: readonly unknown[]) => object {
  class ByName {
    readonly inOrder: readonly unknown[];
    constructor(inOrder: readonly unknown[]) {
      this.inOrder = inOrder;
    }
  }
  parameters.forEach(({ name }, i) => {
    Object.defineProperty(ByName.prototype, name, {
      get(this: ByName) {
        return this.inOrder[i];
      },
    });
  });
  return ByName;
}
