import { mergeLocales } from "@univerjs/core";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import enUS from "@univerjs/preset-sheets-core/locales/en-US";
import type { Parts } from "./embeddedSheet.ts";

/** The sheet with its whole page: grid, formula bar, menus. It draws itself into the container. */
export function pageParts(container: HTMLElement): Parts {
  return {
    locale: mergeLocales(enUS),
    plugins: (functions, infos) => UniverSheetsCorePreset({ container, formula: { function: [...functions], description: [...infos] } }).plugins as ReturnType<Parts["plugins"]>,
  };
}
