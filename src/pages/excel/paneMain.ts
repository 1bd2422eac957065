import { functions } from "../../../functions/index.ts";
import { startExcel } from "../../hosts/excel/startExcel.ts";
import { mountPane } from "../../pane/pane.tsx";
import "./pane.css";

startExcel(functions, (host) => {
  const place = document.getElementById("pane")!;
  place.replaceChildren();
  mountPane(place, host);
});
