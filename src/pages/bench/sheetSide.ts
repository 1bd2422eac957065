import { functions } from "../../../functions/index.ts";
import { commitEdit } from "../../hosts/embedded/editing.ts";
import { embeddedHost } from "../../hosts/embedded/embeddedHost.ts";
import { embeddedSheet } from "../../hosts/embedded/embeddedSheet.ts";
import { findCells } from "../../hosts/embedded/findCells.ts";
import { replaceCells } from "../../hosts/embedded/replaceCells.ts";
import { loadFunctionWords } from "../../hosts/embedded/functionWords.ts";
import { pageParts } from "../../hosts/embedded/pageParts.ts";
import { releaseTabDrag } from "../../hosts/embedded/releaseTabDrag.ts";
import { whenCalculated } from "../../hosts/embedded/whenCalculated.ts";
import { workbookData } from "../../hosts/embedded/workbookData.ts";
import type { Host } from "../../hosts/host.ts";
import type { BenchHandle } from "./benchHandle.ts";
import { fileBar } from "./fileBar.ts";
import { findBar } from "./findBar.ts";
import { keptOffline } from "./offline.ts";
import { focusSheet, pageKeys } from "./pageKeys.ts";
import type { Start } from "./startBook.ts";

/** The sheet for the pane, and what the page tells the job in it. */
export interface SheetSide {
  readonly host: Host;
  /** The pane has put something new into the workbook's kept texts. */
  changed(): void;
}

/** Puts the sheet onto the page with the bars above it, and the keys that go through the whole page. */
export function sheetSide(start: Start): SheetSide {
  const container = document.getElementById("sheet")!;
  const sheet = embeddedSheet(pageParts(container), functions, workbookData(start.book));
  const host = embeddedHost(sheet);
  const { api, workbook } = sheet;

  releaseTabDrag(container);

  const dark = matchMedia("(prefers-color-scheme: dark)");
  if (dark.matches) api.toggleDarkMode(true);
  dark.addEventListener("change", () => api.toggleDarkMode(dark.matches));

  const settled = () => whenCalculated(sheet);
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
  const search = findBar(files, {
    find: (text) => findCells(sheet, text),
    replace: (areas, text, by) => replaceCells(sheet, areas, text, by),
    selected: () => host.selection(),
    show: (area) => host.show(area),
    leave: focusSheet,
  });
  // Nothing of the first view waits for these. Without a network there are fewer words, and that is all.
  void handle.ready.then(() => Promise.allSettled([keptOffline(actions.flush), loadFunctionWords(sheet)]));
  pageKeys({ ...actions, find: search.open, commit: () => commitEdit(sheet) });
  return { host, changed: actions.changed };
}
