import { inExcel } from "./inExcel.ts";
import { putBack, type Undo } from "./putBack.ts";

/** A write that failed and could not all be put back: what it takes to try that again. */
export class NotPutBack extends Error {
  readonly undo: Undo;
  constructor(undo: Undo, options: ErrorOptions) {
    super("Not everything could be put back.", options);
    this.undo = undo;
  }
}

/**
 * Does the writing of a step, and puts all back where a part of it fails or is stopped. Gives what it takes to undo it.
 *
 * @param sought the sheets that it may have added by then without an answer.
 * @throws NotPutBack where something was left.
 */
export async function allOrNothing(
  undo: Undo,
  sought: Undo["sought"],
  writes: (context: Excel.RequestContext) => Promise<void>,
): Promise<Undo> {
  try {
    await inExcel(writes);
  } catch (error) {
    undo.begun = true;
    undo.sought = sought;
    await inExcel((context) => putBack(context, undo)).catch(() => {
      throw new NotPutBack(undo, { cause: error });
    });
    throw error;
  }
  return undo;
}
