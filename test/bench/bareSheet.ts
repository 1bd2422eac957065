import { LocaleType, LogLevel, mergeLocales, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import "@univerjs/preset-sheets-core/lib/index.css";
import enUS from "@univerjs/preset-sheets-core/locales/en-US";
import "@univerjs/sheets/facade";

declare global {
  interface Window {
    bare: {
      /** Its maker says that the sheet is there. */
      readonly ready: Promise<void>;
      /** What stands in its first cell. */
      cell(): unknown;
    };
  }
}

// The embedded sheet as its maker's guide starts it, with nothing of ours.
const univer = new Univer({
  locale: LocaleType.EN_US,
  locales: { [LocaleType.EN_US]: mergeLocales(enUS) },
  logLevel: LogLevel.WARN,
});
for (const part of UniverSheetsCorePreset({ container: "app" }).plugins)
  if (Array.isArray(part)) univer.registerPlugin(part[0], part[1]);
  else univer.registerPlugin(part as never);
const api = FUniver.newAPI(univer);
const ready = new Promise<void>((resolve) => {
  api.addEvent(api.Event.LifeCycleChanged, ({ stage }) => {
    if (stage >= api.Enum.LifecycleStages.Rendered) resolve();
  });
});
const book = api.createWorkbook({});
window.bare = { ready, cell: () => book.getActiveSheet().getRange(0, 0).getValue() };
