import type { Origin } from "../book.ts";
import { columnOf, lettersOf } from "../../registry/columnLetters.ts";
import { sheetPrefix } from "../sheetPrefix.ts";

/** Most rows and columns of a sheet in the format. */
export const MOST = { rows: 1_048_576, columns: 16_384 } as const;

/** Where the rows, or the columns, of a file's sheet have gone. All counts start at 0. */
export class Lines {
  readonly #now: readonly number[] | null;
  readonly #marked: number;
  readonly #to = new Map<number, number>();
  readonly #most: number;
  /** Those that are left are in the order of the file. */
  readonly inOrder: boolean;

  /**
   * @param now for each line up to the last one of the file, its number in the file, or -1 for a new one; null where none has moved.
   * @param marked how many lines of the file were followed; those after them go with the last.
   */
  constructor(now: readonly number[] | null, marked: number, most: number) {
    this.#now = now;
    this.#marked = marked;
    this.#most = most;
    now?.forEach((from, i) => from >= 0 && this.#to.set(from, i));
    const left = now?.filter((from) => from >= 0) ?? [];
    this.inOrder = left.every((from, i) => i === 0 || from > left[i - 1]!);
  }

  get still(): boolean {
    return this.#now === null;
  }

  /** The number in the file of a line that is here now; null for a new one. */
  from(index: number): number | null {
    if (!this.#now) return index;
    if (index >= this.#now.length) return index - this.#now.length + this.#marked;
    const from = this.#now[index]!;
    return from < 0 ? null : from;
  }

  /** Where a line of the file is now; null where it was deleted. */
  to(index: number): number | null {
    if (!this.#now) return index;
    if (index >= this.#marked) return Math.min(index - this.#marked + this.#now.length, this.#most - 1);
    return this.#to.get(index) ?? null;
  }

  /** Where a stretch of the file's lines is now: with lines put into it, without lines deleted from it; null where nothing of it is left together. */
  stretch(first: number, last: number): readonly [number, number] | null {
    if (!this.#now) return [first, last];
    if (first === 0 && last >= this.#most - 1) return [first, last];
    if (!this.inOrder) {
      const [a, b] = [this.to(first), this.to(last)];
      if (a === null || b === null || b - a !== last - first) return null;
      for (let i = first; i <= Math.min(last, this.#marked); i++) if (this.to(i) !== a + i - first) return null;
      return [a, b];
    }
    let [from, until] = [first, last];
    while (from <= last && this.to(from) === null) from++;
    while (until >= from && this.to(until) === null) until--;
    return from > until ? null : [this.to(from)!, this.to(until)!];
  }

  /** The place of a line, or of the one after it where it was deleted. */
  near(index: number): number {
    for (let i = index; i <= this.#marked; i++) {
      const to = this.to(i);
      if (to !== null) return to;
    }
    return this.#now?.length ?? index;
  }
}

/** What has become of a file's sheet; a sheet that is gone has none. */
export interface MovedSheet {
  /** As the file names it, and as it is named now. */
  readonly was: string;
  readonly name: string;
  readonly rows: Lines;
  readonly columns: Lines;
}

/** Lines of which none has moved. */
export const STILL = { rows: new Lines(null, 0, MOST.rows), columns: new Lines(null, 0, MOST.columns) };

export function movedSheet(origin: Origin, name: string): MovedSheet {
  return {
    was: origin.sheet,
    name,
    rows: new Lines(origin.rows ?? null, origin.marked?.rows ?? 0, MOST.rows),
    columns: new Lines(origin.columns ?? null, origin.marked?.columns ?? 0, MOST.columns),
  };
}

export const isStill = ({ was, name, rows, columns }: MovedSheet) => was === name && rows.still && columns.still;

// Texts and what stands in brackets are stepped over: columns of tables, other workbooks.
const REFERENCE =
  /"(?:[^"]|"")*"|\[[^[\]]*\]|(?<![\p{L}\p{N}_.$!'\]:])((?:'(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)?(\$?[A-Z]{1,3}\$?\d{1,7}(?::\$?[A-Z]{1,3}\$?\d{1,7})?|\$?[A-Z]{1,3}:\$?[A-Z]{1,3}|\$?\d{1,7}:\$?\d{1,7}|#REF!)(?![\p{L}\p{N}_(.!])/giu;

/**
 * A formula of the file with its references where the cells are now; what was deleted is #REF!.
 *
 * @param sheets by their names in the file, in small letters; null for one that is gone.
 * @param here the file's name of the sheet that the formula stands on; null where there is none.
 */
export function movedFormula(
  formula: string,
  sheets: ReadonlyMap<string, MovedSheet | null>,
  here: string | null,
): string {
  return formula.replace(REFERENCE, (whole, prefix: string | undefined, reference: string | undefined) => {
    if (reference === undefined || reference.startsWith("#")) return whole;
    const named = prefix?.slice(0, -1).replace(/^'|'$/g, "").replaceAll("''", "'");
    const its = sheets.get((named ?? here ?? "").toLowerCase());
    if (its === undefined) return whole;
    if (its === null) return "#REF!";
    const moved = movedReference(reference, its);
    return `${prefix === undefined ? "" : its.name === its.was ? prefix : sheetPrefix(its.name)}${moved ?? "#REF!"}`;
  });
}

/** A reference such as $A$1:B3, C:C or 4:5 where its cells are now; null where they are gone. */
export function movedReference(
  reference: string,
  { rows, columns }: Pick<MovedSheet, "rows" | "columns">,
): string | null {
  if (rows.still && columns.still) return reference;
  const ends = reference.split(":").map((end) => /^(\$?)([A-Z]*)(\$?)(\d*)$/i.exec(end)!);
  const [a, b = a] = ends as [RegExpExecArray, RegExpExecArray?];
  const across = a[2] ? columns.stretch(columnOf(a[2]), columnOf(b[2]!)) : null;
  const down = a[4] ? rows.stretch(Number(a[4]) - 1, Number(b[4]) - 1) : null;
  if ((a[2] && !across) || (a[4] && !down)) return null;
  return ends
    .map(([, mark, letters, second, digits], i) => {
      // In 4:5 the one mark there is stands before the letters that are not there.
      const column = letters ? `${mark}${lettersOf(across![i]!)}${second}` : `${mark}${second}`;
      return column + (digits ? String(down![i]! + 1) : "");
    })
    .join(":");
}

/** Several references with blanks between, such as a rule names its cells by; null where all are gone. */
export function movedPlaces(places: string, sheet: MovedSheet): string | null {
  const moved = places
    .trim()
    .split(/\s+/)
    .flatMap((one) => movedReference(one, sheet) ?? []);
  return moved.length > 0 ? moved.join(" ") : null;
}
