import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import "@univerjs/engine-formula/facade";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import "@univerjs/sheets-formula/facade";
import type { Parts } from "./embeddedSheet.ts";

/** The sheet without a page: it calculates, and that is all. */
export const engineParts: Parts = {
  locale: {},
  onPage: false,
  plugins: (functions, infos) => [
    [UniverFormulaEnginePlugin, { function: [...functions] }],
    UniverSheetsPlugin,
    [UniverSheetsFormulaPlugin, { description: [...infos] }],
  ],
};
