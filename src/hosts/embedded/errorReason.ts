import type { Worksheet } from "@univerjs/core";
import type { ISequenceNode } from "@univerjs/engine-formula";
import {
  deserializeRangeWithSheet,
  ERROR_TYPE_SET,
  IDefinedNamesService,
  IFunctionService,
  LexerTreeBuilder,
  sequenceNodeType,
} from "@univerjs/engine-formula";
import { fetching } from "../../xlsx/fetching.ts";
import { withoutTexts } from "../../xlsx/withoutTexts.ts";
import { address } from "../address.ts";
import { cells } from "./cells.ts";
import type { EmbeddedSheet } from "./runningSheet.ts";
import { findSheet } from "./findSheet.ts";

// Enough to find where an error comes from; a range may be the whole sheet.
const MOST_CELLS = 20_000;

/** Why a formula's cell shows an error, in words; null where it shows none or nothing is known. */
export function errorReason(sheet: EmbeddedSheet, worksheet: Worksheet, row: number, column: number): string | null {
  const { formula, value } = cells(sheet, worksheet).at(row, column);
  if (formula === null || !ERROR_TYPE_SET.has(value as never)) return null;
  const told = sheet.messages.at({ unit: sheet.workbook.getId(), sheet: worksheet.getSheetId(), row, column });
  if (told !== null) return told;
  if (sheet.messages.wasTooDeep(formula))
    return "This formula is too long or too deeply nested to calculate. Split it over several cells.";
  const parts = sheet.univer.__getInjector().get(LexerTreeBuilder).sequenceNodesBuilder(formula.slice(1)) ?? [];
  return (
    (value === "#NAME?" && nameReason(sheet, formula, parts)) ||
    (value === "#REF!" && referenceReason(sheet, formula, parts)) ||
    sourceReason(sheet, worksheet, parts, String(value), [row, column])
  );
}

type Parts = readonly (string | ISequenceNode)[];

function nameReason({ univer, workbook }: EmbeddedSheet, formula: string, parts: Parts): string | null {
  const outside = fetching(formula);
  if (outside) return `${outside} asks for something from elsewhere, and nothing leaves this page. Remove it.`;
  const injector = univer.__getInjector();
  const functions = injector.get(IFunctionService);
  const names = injector.get(IDefinedNamesService);
  for (const [i, part] of parts.entries()) {
    if (typeof part === "string" || part.nodeType !== sequenceNodeType.FUNCTION) continue;
    const name = part.token.trim();
    if (parts[i + 1] === "(") {
      if (!functions.hasExecutor(name.toUpperCase()))
        return `There is no function ${name} here. Look at its spelling in the list that opens while you type.`;
    } else if (!/^(true|false)$/i.test(name) && !names.getValueByName(workbook.getId(), name.split("!").at(-1)!))
      return `There is no name ${name} in this workbook. Type a text in quotes: "${name}".`;
  }
  return null;
}

function referenceReason({ workbook }: EmbeddedSheet, formula: string, parts: Parts): string | null {
  if (withoutTexts(formula).includes("#REF!"))
    return "The formula points at cells that were deleted. Point it at others.";
  for (const { sheetName } of rangesOf(parts))
    if (sheetName && !findSheet(workbook, sheetName)) return `There is no sheet named ${sheetName}.`;
  return null;
}

/** The first cell of those that the formula names which shows the same error. */
function sourceReason(
  sheet: EmbeddedSheet,
  worksheet: Worksheet,
  parts: Parts,
  error: string,
  [ownRow, ownColumn]: readonly [number, number],
): string | null {
  let left = MOST_CELLS;
  for (const { sheetName, range } of rangesOf(parts)) {
    const from = sheetName ? findSheet(sheet.workbook, sheetName) : worksheet;
    if (!from) continue;
    const at = cells(sheet, from);
    const right = Math.min(range.endColumn || 0, from.getColumnCount() - 1);
    const bottom = Math.min(range.endRow || 0, from.getRowCount() - 1);
    for (let row = range.startRow || 0; row <= bottom; row++)
      for (let column = range.startColumn || 0; column <= right; column++) {
        if (left-- <= 0) return null;
        if (from === worksheet && row === ownRow && column === ownColumn) continue;
        if (at.at(row, column).value === error) return `The error comes from ${address(from.getName(), row, column)}.`;
      }
  }
  return null;
}

function rangesOf(parts: Parts) {
  return parts.flatMap((part) =>
    typeof part !== "string" && part.nodeType === sequenceNodeType.REFERENCE
      ? [deserializeRangeWithSheet(part.token.trim())]
      : [],
  );
}
