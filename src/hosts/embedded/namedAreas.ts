import { ICommandService } from "@univerjs/core";
import { deserializeRangeWithSheet, isReferenceString, SetDefinedNameMutation } from "@univerjs/engine-formula";
import { areaReference } from "../areaReference.ts";
import type { Area } from "../host.ts";
import { areaOf } from "./areas.ts";
import { findSheet } from "./findSheet.ts";
import { knownNames, nameParams } from "./names.ts";
import type { EmbeddedSheet } from "./runningSheet.ts";

/** The names of the whole workbook, each with the area it stands for now; null where that is none, or its cells are gone. */
export function namedAreas(sheet: EmbeddedSheet): ReadonlyMap<string, Area | null> {
  return new Map(knownNames(sheet).ofBook.map(({ name, formula }) => [name, placeOf(sheet, formula.slice(1))]));
}

function placeOf({ workbook }: EmbeddedSheet, text: string): Area | null {
  if (!isReferenceString(text)) return null;
  const { sheetName, range } = deserializeRangeWithSheet(text);
  const worksheet = findSheet(workbook, sheetName);
  const { startRow, endRow, startColumn, endColumn } = range;
  if (!worksheet || ![startRow, endRow, startColumn, endColumn].every((edge) => edge >= 0)) return null;
  return { sheet: worksheet.getName(), ...areaOf(range) };
}

/** Gives an area a name of the whole workbook, or moves that name to it; no undo step and no edit, for nothing that is seen changes. */
export function nameArea(sheet: EmbeddedSheet, name: string, area: Area): void {
  const there = knownNames(sheet).all.find((one) => one.name.toLowerCase() === name.toLowerCase());
  const params = nameParams(sheet.workbook.getId(), { name, formula: `=${areaReference(area)}` });
  sheet.univer
    .__getInjector()
    .get(ICommandService)
    .syncExecuteCommand(SetDefinedNameMutation.id, { ...params, id: there?.id ?? params.id }, { onlyLocal: true });
}
