import { functions } from "../../../functions/index.ts";
import { mountPane } from "../../pane/pane.tsx";
import { excelHost } from "./excelHost.ts";
import { RefusalLog } from "./refusalLog.ts";
import { register } from "./register.ts";
import "./pane.css";

const refusals = new RefusalLog();
const place = document.getElementById("pane")!;

// At once and whether or not the pane is seen: Excel runs this page for the functions alone when a workbook with them opens.
if (typeof CustomFunctions !== "undefined") register(functions, refusals);

if (typeof Office === "undefined") say("Office.js could not be loaded, so this pane cannot reach a workbook. Connect to the internet and open the pane again.");
else
  void Office.onReady(({ host }) => {
    if (host === Office.HostType.Excel) mountPane(place, excelHost(refusals));
    else say("This page is Longpoint's pane inside Excel. Open it from the Home tab of Excel.");
  });

function say(words: string): void {
  const paragraph = document.createElement("p");
  paragraph.textContent = words;
  place.replaceChildren(paragraph);
}
