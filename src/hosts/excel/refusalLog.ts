import { messageOf } from "../../../functions/words/problemText.ts";
import { LimitedMap } from "../../measure/limitedMap.ts";
import type { Refusal } from "../../registry/refusal.ts";
import { address } from "../address.ts";

/** Cells remembered at most; the oldest go first. */
const MOST = 20_000;

/**
 * Why cells were refused, by the address that Excel hands to a custom function.
 *
 * Excel shows the message in the cell's own error card, but gives a pane no way to read it back. A cell that calls one function twice keeps the message of
 * the call that came last. Excel writes an address as Sheet1!B4 or 'Hip jacks'!B4 ("Custom functions parameter options"); a workbook's name, $ and a whole
 * spill would be understood too.
 */
export class RefusalLog {
  readonly #refused = new LimitedMap<string, Map<string, Refusal>>(MOST);

  /** Notes what a call came to; a call that went well takes its earlier refusal away. */
  note(caller: string | undefined, functionName: string, refusal: Refusal | null): void {
    if (caller === undefined || (!refusal && !this.#refused.size)) return;
    const key = callerKey(caller);
    const calls = this.#refused.get(key);
    if (refusal) {
      this.#refused.delete(key);
      this.#refused.set(key, new Map([...(calls ?? []), [functionName, refusal]]));
    } else if (calls?.delete(functionName) && !calls.size) this.#refused.delete(key);
  }

  /** The message of the refusal that makes a cell show this error, or null. */
  at(sheet: string, row: number, column: number, error: string): string | null {
    const calls = [...(this.#refused.get(callerKey(address(sheet, row, column)))?.values() ?? [])];
    const refusal = calls.findLast((one) => one.error === error);
    return refusal ? messageOf(refusal) : null;
  }
}

/** Sheet1!B4, 'Sheet1'!$B$4, [Book]Sheet1!B4 and Sheet1!B4:D9 are one key. */
function callerKey(caller: string): string {
  const cut = caller.lastIndexOf("!");
  const sheet = caller
    .slice(0, cut)
    .replace(/^'(.*)'$/s, "$1")
    .replaceAll("''", "'")
    .replace(/^\[[^\]]*\]/, "");
  const cell = caller
    .slice(cut + 1)
    .replaceAll("$", "")
    .split(":")[0]!;
  return `${sheet.toLowerCase()}!${cell}`;
}
