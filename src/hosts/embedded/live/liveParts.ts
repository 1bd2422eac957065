import type { Book } from "../../../xlsx/book.ts";
import type { EmbeddedSheet } from "../runningSheet.ts";
import type { LiveParts } from "./livePart.ts";

const running = new WeakMap<EmbeddedSheet, LiveParts>();

/** The parts of a sheet that were started because a file has them. */
export function liveParts(sheet: EmbeddedSheet): Readonly<LiveParts> {
  return running.get(sheet) ?? {};
}

/**
 * Starts what a book has and the sheet cannot do by itself. It is loaded when a file first needs it, for most have none.
 *
 * What cannot be loaded does not live here and stays in the file as it is.
 */
export async function startLiveParts(sheet: EmbeddedSheet, { sheets }: Book): Promise<void> {
  if (!sheet.onPage) return;
  const parts = running.get(sheet) ?? {};
  running.set(sheet, parts);
  if (!parts.inputRules && sheets.some(({ inputRules }) => inputRules?.length)) {
    const part = await import("./inputRules.ts").then((one) => one.startInputRules(sheet)).catch(() => null);
    if (part) parts.inputRules = part;
  }
  if (!parts.valueRules && sheets.some(({ valueRules }) => valueRules?.length)) {
    const part = await import("./valueRules.ts").then((one) => one.startValueRules(sheet)).catch(() => null);
    if (part) parts.valueRules = part;
  }
}

/** Gives an opened sheet what its book has, in the parts that were started. */
export function fillLiveParts(
  sheet: EmbeddedSheet,
  subUnitId: string,
  { inputRules, valueRules }: Book["sheets"][number],
): void {
  const unitId = sheet.workbook.getId();
  const parts = liveParts(sheet);
  if (inputRules) parts.inputRules?.put(unitId, subUnitId, inputRules);
  if (valueRules) parts.valueRules?.put(unitId, subUnitId, valueRules);
}
