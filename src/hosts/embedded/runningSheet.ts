import type { Univer } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import type { FWorkbook } from "@univerjs/sheets/facade";
import type { Calculation } from "./calculation.ts";
import type { LateAnswers } from "./lateAnswers.ts";
import type { Messages } from "./messages.ts";

/** A running sheet with its workbook. */
export interface EmbeddedSheet {
  readonly univer: Univer;
  readonly api: FUniver;
  readonly workbook: FWorkbook;
  readonly calculation: Calculation;
  readonly messages: Messages;
  readonly late: LateAnswers;
  /** It draws itself on a page; without one it only calculates. */
  readonly onPage: boolean;
}
