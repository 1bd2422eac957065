import type { WorksheetFunction } from "../../registry/worksheetFunction.ts";
import type { Host } from "../host.ts";
import { excelFunction } from "./excelFunction.ts";
import { excelHost } from "./excelHost.ts";
import { RefusalLog } from "./refusalLog.ts";

/**
 * Hands the functions to Excel, and the page its host once there is a workbook.
 *
 * Without Office.js, or outside Excel, nothing is called: the page's own words stay and say what to do.
 */
export function startExcel(functions: readonly WorksheetFunction[], open: (host: Host) => void): void {
  const refusals = new RefusalLog();
  // At once and whether or not the pane is seen: Excel runs this page for the functions alone when a workbook with them opens.
  if (typeof CustomFunctions !== "undefined")
    // A function's id in functions.json is its name.
    for (const definition of functions) CustomFunctions.associate(definition.name, excelFunction(definition, refusals));
  if (typeof Office !== "undefined")
    void Office.onReady(({ host }) => {
      if (host === Office.HostType.Excel) open(excelHost(refusals));
    });
}
