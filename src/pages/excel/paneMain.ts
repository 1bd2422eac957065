import { functions } from "../../../functions/index.ts";
import { mountPane } from "../../pane/pane.tsx";
import { excelHost } from "../../hosts/excel/excelHost.ts";
import { RefusalLog } from "../../hosts/excel/refusalLog.ts";
import { register } from "../../hosts/excel/register.ts";
import "./pane.css";

const refusals = new RefusalLog();

// At once and whether or not the pane is seen: Excel runs this page for the functions alone when a workbook with them opens.
if (typeof CustomFunctions !== "undefined") register(functions, refusals);

// Without Office.js, or outside Excel, the page's own words stay and say what to do.
if (typeof Office !== "undefined")
  void Office.onReady(({ host }) => {
    if (host !== Office.HostType.Excel) return;
    const place = document.getElementById("pane")!;
    place.replaceChildren();
    mountPane(place, excelHost(refusals));
  });
