import type { ISheetDataValidationRule, Worksheet } from "@univerjs/core";
import {
  DataValidationErrorStyle,
  DataValidationRenderMode,
  generateRandomId,
  ICommandService,
  LocaleService,
  LocaleType,
  mergeLocales,
} from "@univerjs/core";
import { AddDataValidationMutation, DataValidationModel, UniverDataValidationPlugin } from "@univerjs/data-validation";
import { UniverSheetsDataValidationPlugin } from "@univerjs/sheets-data-validation";
import { UniverSheetsDataValidationUIPlugin } from "@univerjs/sheets-data-validation-ui";
import "@univerjs/sheets-data-validation-ui/lib/index.css";
import panelWords from "@univerjs/sheets-data-validation-ui/locale/en-US";
import words from "@univerjs/sheets-data-validation/locale/en-US";
import type { InputRule } from "../../../xlsx/book.ts";
import { INPUT_KINDS } from "../../../xlsx/book.ts";
import type { EmbeddedSheet } from "../runningSheet.ts";
import { areaOf, rangeOf } from "../areas.ts";
import type { LivePart } from "./livePart.ts";
import { startPlugins } from "./startPlugins.ts";

const STYLES = {
  stop: DataValidationErrorStyle.STOP,
  warning: DataValidationErrorStyle.WARNING,
  information: DataValidationErrorStyle.INFO,
} as const;

/** Puts the rules for what may be typed into a running sheet: with their lists to choose from, their warnings, and a panel to change them. */
export async function startInputRules(sheet: EmbeddedSheet): Promise<LivePart<InputRule>> {
  const injector = sheet.univer.__getInjector();
  injector.get(LocaleService).load({ [LocaleType.EN_US]: mergeLocales(words, panelWords) });
  const plugins = [
    [UniverDataValidationPlugin],
    [UniverSheetsDataValidationPlugin],
    [UniverSheetsDataValidationUIPlugin],
  ] as const;
  await startPlugins(sheet, plugins, AddDataValidationMutation.id);
  const commands = injector.get(ICommandService);
  // Whether a cell may be empty is asked when it is edited; the sheet would mark every empty cell, so it is told that all may.
  const mayNot = new Set<string>();
  return {
    put(unitId, subUnitId, rules) {
      const rule = rules.map(ruleData);
      rule.forEach(({ uid }, i) => rules[i]!.blank || mayNot.add(uid));
      // Opened with its sheet, and gone with it: no edit and no step of undo.
      commands.syncExecuteCommand(AddDataValidationMutation.id, { unitId, subUnitId, rule }, { onlyLocal: true });
    },
    of(worksheet, left) {
      return rulesOf(
        worksheet,
        injector.get(DataValidationModel).getRules(worksheet.getUnitId(), worksheet.getSheetId()),
        left,
        mayNot,
      );
    },
  };
}

function ruleData({ areas, kind, operator, first, second, noArrow, error, hint }: InputRule): ISheetDataValidationRule {
  return {
    uid: generateRandomId(),
    type: kind,
    ranges: areas.map(rangeOf),
    ...(operator && { operator: operator as NonNullable<ISheetDataValidationRule["operator"]> }),
    ...(first !== undefined && { formula1: first }),
    ...(second !== undefined && { formula2: second }),
    allowBlank: true,
    ...(kind === "list" && { renderMode: noArrow ? DataValidationRenderMode.TEXT : DataValidationRenderMode.ARROW }),
    showErrorMessage: error !== undefined,
    errorStyle: error ? STYLES[error.style] : DataValidationErrorStyle.INFO,
    ...(error?.title && { errorTitle: error.title }),
    ...(error?.text && { error: error.text }),
    showInputMessage: hint !== undefined,
    ...(hint?.title && { promptTitle: hint.title }),
    ...(hint?.text && { prompt: hint.text }),
  };
}

function rulesOf(
  worksheet: Worksheet,
  all: readonly ISheetDataValidationRule[],
  left: Set<string>,
  mayNot: ReadonlySet<string>,
): InputRule[] {
  return all.flatMap((rule): InputRule[] => {
    const kind = INPUT_KINDS.find((name) => name === rule.type);
    if (!kind) {
      left.add(`rules of the kind "${rule.type}" on ${worksheet.getName()}`);
      return [];
    }
    const style = (Object.keys(STYLES) as (keyof typeof STYLES)[]).find((name) => STYLES[name] === rule.errorStyle);
    return [
      {
        areas: rule.ranges.map(areaOf),
        kind,
        ...(kind !== "list" && kind !== "custom" && { operator: rule.operator ?? "between" }),
        ...(rule.formula1 && { first: rule.formula1 }),
        ...(rule.formula2 && { second: rule.formula2 }),
        ...(rule.allowBlank && !mayNot.has(rule.uid) && { blank: true }),
        ...(kind === "list" && rule.renderMode === DataValidationRenderMode.TEXT && { noArrow: true }),
        ...(rule.showErrorMessage && { error: { style: style ?? "stop", ...wordsOf(rule.errorTitle, rule.error) } }),
        ...(rule.showInputMessage && { hint: wordsOf(rule.promptTitle, rule.prompt) }),
      },
    ];
  });
}

const wordsOf = (title: string | undefined, text: string | undefined) => ({
  ...(title && { title }),
  ...(text && { text }),
});
