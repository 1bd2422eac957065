import type { Worksheet } from "@univerjs/core";
import type { InputRule, ValueRule } from "../../../xlsx/book.ts";

/** Rules for what may be typed, in a running sheet. */
export interface LiveInputRules {
  /** Gives a sheet the rules that its book has. */
  put(unitId: string, subUnitId: string, rules: readonly InputRule[]): void;
  /** The rules of a sheet as they are now; what a book has no place for is named in `left`. */
  of(worksheet: Worksheet, left: Set<string>): readonly InputRule[];
}

/** Formats that depend on values, in a running sheet. */
export interface LiveValueRules {
  put(unitId: string, subUnitId: string, rules: readonly ValueRule[]): void;
  of(worksheet: Worksheet): readonly ValueRule[];
}

/** The parts of a running sheet that were started because a file has them. */
export interface LiveParts {
  inputRules?: LiveInputRules;
  valueRules?: LiveValueRules;
}
