import type { Injector, IWorkbookData, Plugin, PluginCtor } from "@univerjs/core";
import { ICommandService, LocaleType, LogLevel, Univer } from "@univerjs/core";
import type { ILocales } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import type { IFunctionInfo } from "@univerjs/engine-formula";
import "@univerjs/sheets/facade";
import type { WorksheetFunction } from "../../registry/worksheetFunction.ts";
import { Calculation } from "./calculation.ts";
import type { EngineFunction } from "./engineFunction.ts";
import { engineFunction } from "./engineFunction.ts";
import { askNoProtection, endQuietly, watchResults, watchSpills } from "./engineHooks.ts";
import { engineMends } from "./mends/engineMends.ts";
import { namedCircles } from "./mends/namedCircles.ts";
import { functionInfo } from "./functionInfo.ts";
import { ReplaceKeptMutation } from "./workbookTexts.ts";
import { LateAnswers } from "./lateAnswers.ts";
import { Messages } from "./messages.ts";
import type { EmbeddedSheet } from "./runningSheet.ts";
import { watchUndo } from "./undoStep.ts";

type Registration = PluginCtor<Plugin> | readonly [PluginCtor<Plugin>, unknown];

/** Which parts of the sheet's maker run: with a page, or the engine alone for tests. */
export interface Parts {
  plugins(functions: readonly EngineFunction[], infos: readonly IFunctionInfo[]): readonly Registration[];
  readonly locale: ILocales[LocaleType];
  readonly onPage: boolean;
  /** What goes wrong in these parts and is put right here, once they run. */
  mend?(injector: Injector): void;
}

/** Starts a sheet that knows the given functions, with a workbook in it. */
export function embeddedSheet(
  parts: Parts,
  definitions: readonly WorksheetFunction[],
  snapshot: Partial<IWorkbookData>,
): EmbeddedSheet {
  const messages = new Messages();
  const late = new LateAnswers((places) =>
    calculation.recalculate(
      places.map(({ unit, sheet, row, column }) => ({
        unitId: unit,
        sheetId: sheet,
        range: { startRow: row, endRow: row, startColumn: column, endColumn: column },
      })),
    ),
  );
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: parts.locale },
    logLevel: LogLevel.WARN,
  });
  const functions = definitions.map((definition) => engineFunction(definition, { messages, late }));
  for (const part of parts.plugins(functions, definitions.map(functionInfo))) {
    if (Array.isArray(part)) univer.registerPlugin(part[0], part[1]);
    else univer.registerPlugin(part as PluginCtor<Plugin>);
  }
  const api = FUniver.newAPI(univer);
  const injector = univer.__getInjector();
  const workbook = api.createWorkbook(snapshot);
  // The parts run once there is a workbook; the first formula is read later.
  engineMends(injector, messages, parts.onPage);
  parts.mend?.(injector);
  const calculation = new Calculation(injector);
  watchResults(injector, messages);
  watchSpills(injector, calculation);
  namedCircles(injector, calculation, messages);
  watchUndo(injector);
  askNoProtection(injector);
  endQuietly(injector);
  injector.get(ICommandService).registerCommand(ReplaceKeptMutation);
  return { univer, api, workbook, calculation, messages, late, onPage: parts.onPage };
}
