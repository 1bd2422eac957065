import type { Worksheet } from "@univerjs/core";
import type { BookSheet, Filter, InputRule, Link, Note, ValueRule } from "../../../xlsx/book.ts";

/** Something of a file that lives in a running sheet: one list of it for every sheet. */
export interface LivePart<One> {
  /** Gives a sheet what its book has. */
  put(unitId: string, subUnitId: string, all: readonly One[], sheet: BookSheet): void;
  /** What a sheet has now; what a book has no place for is named in `left`. */
  of(worksheet: Worksheet, left: Set<string>): readonly One[];
}

/** What may live in a sheet, by its name in a book's sheet. */
export interface Kinds {
  inputRules: InputRule;
  valueRules: ValueRule;
  notes: Note;
  links: Link;
  filters: Filter;
}

/** The parts of a running sheet that were started because a file has them, or may come to have them. */
export type LiveParts = { [Name in keyof Kinds]?: LivePart<Kinds[Name]> };
