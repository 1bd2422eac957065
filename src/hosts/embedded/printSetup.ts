import type { Worksheet } from "@univerjs/core";
import { generateRandomId } from "@univerjs/core";
import type { ISetDefinedNameMutationParam } from "@univerjs/engine-formula";
import type { Print } from "../../xlsx/book.ts";
import { sheetPrefix } from "../../xlsx/sheetPrefix.ts";
import { knownNames } from "./names.ts";
import type { EmbeddedSheet } from "./runningSheet.ts";
import { PRINT_KEY } from "./sheetData.ts";

/** Names that a sheet has for itself, so that its print area and its title rows go with their cells. */
const NAMES = { area: "Print_Area", titleRows: "Print_Titles" } as const;

/** The names of a sheet's print set-up. */
export function printNames(
  unitId: string,
  { id, name }: { readonly id: string; readonly name: string },
  print: Print | undefined,
): ISetDefinedNameMutationParam[] {
  const there = sheetPrefix(name);
  return (["area", "titleRows"] as const).flatMap((part) => {
    // Of several areas a name stands for one at most.
    const place = print?.[part]?.split(",")[0];
    return place
      ? [{ unitId, id: generateRandomId(), name: NAMES[part], formulaOrRefString: there + place, localSheetId: id }]
      : [];
  });
}

/** How a sheet goes to paper, its area and title rows where their cells are now. */
export function printOf(sheet: EmbeddedSheet, worksheet: Worksheet): Print | undefined {
  const print = worksheet.getConfig().custom?.[PRINT_KEY] as Print | undefined;
  if (!print) return undefined;
  const { area, titleRows, ...others } = print;
  const now = {
    ...others,
    ...(area && placeNow(sheet, worksheet, "area")),
    ...(titleRows && placeNow(sheet, worksheet, "titleRows")),
  };
  return Object.keys(now).length > 0 ? now : undefined;
}

function placeNow(sheet: EmbeddedSheet, worksheet: Worksheet, part: keyof typeof NAMES): Partial<Print> {
  const its = knownNames(sheet).all.find(
    ({ name, localSheetId }) => name === NAMES[part] && localSheetId === worksheet.getSheetId(),
  );
  const place = its?.formulaOrRefString.replace(/^.*!/, "");
  // Where all its cells are gone there is none.
  return place && !place.includes("#REF") ? { [part]: place } : {};
}

/** Whether a sheet has a name for itself that is none of its print set-up. */
export function isOwnName({ name }: { readonly name: string }): boolean {
  return name !== NAMES.area && name !== NAMES.titleRows;
}
