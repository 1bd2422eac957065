/** The errors a Longpoint cell can show; Excel carries a message with these two only. */
export type RefusalCode = "#VALUE!" | "#N/A";

/**
 * Why a cell shows an error instead of a value.
 *
 * It is returned, never thrown: nothing in the core throws into a sheet.
 */
export class Refusal {
  readonly error: RefusalCode;
  readonly message: string;
  constructor(error: RefusalCode, message: string) {
    this.error = error;
    this.message = message;
  }
}

/** An error that came in with an input cell, such as #DIV/0!; it passes through a call unchanged. */
export class CellError {
  readonly error: string;
  constructor(error: string) {
    this.error = error;
  }
}
