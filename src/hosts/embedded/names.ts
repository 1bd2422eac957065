import type { ISetDefinedNameMutationParam } from "@univerjs/engine-formula";
import { IDefinedNamesService } from "@univerjs/engine-formula";
import { generateRandomId } from "@univerjs/core";
import { SCOPE_WORKBOOK_VALUE_DEFINED_NAME } from "@univerjs/sheets";
import type { BookName } from "../../xlsx/book.ts";
import type { EmbeddedSheet } from "./runningSheet.ts";

// The sheet keeps a plain place without "=", and any other formula with it.
const PLACE = /^=((?:'(?:[^']|'')+'|[\p{L}_][\p{L}\w.]*)!\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?)$/u;

/** A book's name as the embedded sheet keeps it. */
export function nameParams(unitId: string, { name, formula }: BookName): ISetDefinedNameMutationParam {
  return {
    unitId,
    id: generateRandomId(),
    name,
    formulaOrRefString: PLACE.exec(formula)?.[1] ?? formula,
    localSheetId: SCOPE_WORKBOOK_VALUE_DEFINED_NAME,
  };
}

/** The names that the sheet knows: of the whole workbook, and of one sheet each. */
export function knownNames({ univer, workbook }: EmbeddedSheet): {
  readonly all: readonly ISetDefinedNameMutationParam[];
  readonly ofBook: readonly BookName[];
} {
  const unitId = workbook.getId();
  const all = Object.values(univer.__getInjector().get(IDefinedNamesService).getDefinedNameMap(unitId) ?? {}).map(
    (one) => ({ ...one, unitId }),
  );
  const ofBook = all.filter(({ localSheetId }) => !localSheetId || localSheetId === SCOPE_WORKBOOK_VALUE_DEFINED_NAME);
  return {
    all,
    ofBook: ofBook.map(({ name, formulaOrRefString }) => ({
      name,
      formula: `=${formulaOrRefString.replace(/^=/, "")}`,
    })),
  };
}
