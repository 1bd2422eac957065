import { functions } from "../../../functions/index.ts";
import { mountPane } from "../../pane/pane.tsx";
import "./bench.css";
import type { BenchHandle } from "./benchHandle.ts";
import { embeddedHost } from "../../hosts/embedded/embeddedHost.ts";
import { embeddedSheet } from "../../hosts/embedded/embeddedSheet.ts";
import { commitEdit } from "../../hosts/embedded/editing.ts";
import { findCells } from "../../hosts/embedded/findCells.ts";
import { fileBar } from "./fileBar.ts";
import { grip } from "./grip.ts";
import { findBar } from "./findBar.ts";
import { keptOffline } from "./offline.ts";
import { phoneTabs } from "./phoneTabs.ts";
import { typingKeys } from "./typingKeys.ts";
import { focusSheet, pageKeys } from "./pageKeys.ts";
import { releaseTabDrag } from "../../hosts/embedded/releaseTabDrag.ts";
import { pageParts } from "../../hosts/embedded/pageParts.ts";
import { whenCalculated as settledSheet } from "../../hosts/embedded/whenCalculated.ts";
import { roofNews } from "./roofNews.ts";
import { startBook } from "./startBook.ts";
import { workbookData } from "../../hosts/embedded/workbookData.ts";

const container = document.getElementById("sheet")!;
const start = await startBook(location.search);
const sheet = embeddedSheet(pageParts(container), functions, workbookData(start.book));
const host = embeddedHost(sheet);
const { api, workbook } = sheet;

releaseTabDrag(container);

const dark = matchMedia("(prefers-color-scheme: dark)");
api.toggleDarkMode(dark.matches);
dark.addEventListener("change", () => api.toggleDarkMode(dark.matches));

const settled = () => settledSheet(sheet);
const shown = new Promise<void>((resolve) => {
  const listening = api.addEvent(api.Event.LifeCycleChanged, ({ stage }) => {
    if (stage < api.Enum.LifecycleStages.Rendered) return;
    listening.dispose();
    resolve();
  });
});
const handle: BenchHandle = {
  host,
  ready: shown.then(settled).then(() => void (handle.readyAfter = performance.now())),
  readyAfter: Number.NaN,
  settled,
  undo: () => void workbook.undo(),
  redo: () => void workbook.redo(),
  insertRows: (name, before, count) => void workbook.getSheetByName(name)?.insertRowsBefore(before, count),
  rect(row, column) {
    const { x, y, width, height } = workbook.getActiveSheet().getRange(row, column).getCellRect();
    // The sheet counts from its grid, the largest of its canvases; the others are its editors.
    const [canvas] = [...container.querySelectorAll("canvas")]
      .map((c) => c.getBoundingClientRect())
      .sort((a, b) => b.width * b.height - a.width * a.height) as [DOMRect];
    return { x: canvas.x + x, y: canvas.y + y, width, height };
  },
};
window.longpoint = handle;

const files = document.getElementById("files")!;
const actions = fileBar(files, sheet, start);
host.onOtherWorkbook(actions.other);
const news = roofNews();
mountPane(document.getElementById("pane")!, {
  ...host,
  openPage(address) {
    news.opened(address);
    open(address, "_blank", "noopener");
  },
  sawPage: "saw.html",
  // What is typed in the pane is a part of the job.
  remember(key, text) {
    news.changed(text);
    return host.remember(key, text).then(actions.changed);
  },
});
const search = findBar(files, {
  find: (text) => findCells(sheet, text),
  selected: () => host.selection(),
  show: (area) => host.show(area),
  leave: focusSheet,
});
grip(document.getElementById("grip")!, document.getElementById("pane")!);
typingKeys(document.getElementById("pane")!);
phoneTabs();
// Nothing of the first view waits for it.
void handle.ready.then(() => keptOffline(actions.flush));
pageKeys({ ...actions, find: search.open, commit: () => commitEdit(sheet) });
