import { mergeLocales } from "@univerjs/core";
import "@univerjs/preset-sheets-core/lib/index.css";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import enUS from "@univerjs/preset-sheets-core/locales/en-US";
import type { Parts } from "./embeddedSheet.ts";
import { pageMends } from "./mends/pageMends.ts";

// The sheet marks texts such as 24' and 6/12 as numbers gone wrong, and offers to turn them into dates. Here they are right.
const NO_ADVICE = {
  disableTextFormatAlert: true,
  disableTextFormatMark: true,
  sheets: { disableForceStringAlert: true, disableForceStringMark: true },
};

/** The sheet with its whole page: grid, formula bar, menus. It draws itself into the container. */
export function pageParts(container: HTMLElement): Parts {
  return {
    locale: mergeLocales(enUS),
    plugins: (functions, infos) =>
      UniverSheetsCorePreset({
        container,
        ...NO_ADVICE,
        formula: { function: [...functions], description: [...infos] },
      }).plugins as ReturnType<Parts["plugins"]>,
    onPage: true,
    mend: pageMends,
  };
}
