import type { Place } from "./output.ts";

const MOST_DEEP = 1_000;

/**
 * Why cells show an error, by cell. The engine keeps an error's name and drops its message.
 *
 * A formula can hold several calls: the first refusal while it is calculated is its message, and it is kept only if the whole formula
 * ends in an error (IFERROR may have caught it).
 */
export class Messages {
  readonly #kept = new Map<string, string>();
  readonly #tooDeep = new Set<string>();
  #pending: { key: string; message: string; blocked?: true } | null = null;

  /** A call in this cell was refused. */
  refused(place: Place, message: string): void {
    const key = keyOf(place);
    if (this.#pending?.key !== key) this.#pending = { key, message };
  }

  /** This cell's formula has a result that finds no room, whatever the result is. */
  blocked(place: Place, message: string): void {
    this.#pending = { key: keyOf(place), message, blocked: true };
  }

  /** The engine was not given this formula. */
  tooDeep(formula: string): void {
    if (this.#tooDeep.size >= MOST_DEEP) this.#tooDeep.clear();
    this.#tooDeep.add(formula);
  }

  wasTooDeep(formula: string): boolean {
    return this.#tooDeep.has(formula);
  }

  /** The cell's whole formula has its result. */
  finished(place: Place, isError: boolean): void {
    if (this.#pending === null && this.#kept.size === 0) return;
    const key = keyOf(place);
    if (this.#pending?.key === key && (isError || this.#pending.blocked)) this.#kept.set(key, this.#pending.message);
    else this.#kept.delete(key);
    this.#pending = null;
  }

  at(place: Place): string | null {
    return this.#kept.get(keyOf(place)) ?? null;
  }
}

function keyOf({ unit, sheet, row, column }: Place): string {
  return `${unit}/${sheet}/${row}/${column}`;
}
