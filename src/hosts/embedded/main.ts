import "@univerjs/preset-sheets-core/lib/index.css";
import { functions } from "../../../functions/index.ts";
import { mountPane } from "../../pane/pane.tsx";
import "./bench.css";
import type { BenchHandle } from "./benchHandle.ts";
import { embeddedHost } from "./embeddedHost.ts";
import { embeddedSheet } from "./embeddedSheet.ts";
import { pageParts } from "./pageParts.ts";
import { sampleJob } from "./sampleJob.ts";

const container = document.getElementById("sheet")!;
const sheet = embeddedSheet(pageParts(container), functions, sampleJob());
const host = embeddedHost(sheet);
const { api, workbook, calculation, late } = sheet;

const dark = matchMedia("(prefers-color-scheme: dark)");
api.toggleDarkMode(dark.matches);
dark.addEventListener("change", () => api.toggleDarkMode(dark.matches));

const settled = async () => {
  do await calculation.settled();
  while (late.pending && (await new Promise((resolve) => setTimeout(resolve, 20, true))));
};
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
  rect(row, column) {
    const { x, y, width, height } = workbook.getActiveSheet().getRange(row, column).getCellRect();
    // The sheet counts from its grid, the largest of its canvases; the others are its editors.
    const [canvas] = [...container.querySelectorAll("canvas")].map((c) => c.getBoundingClientRect()).sort((a, b) => b.width * b.height - a.width * a.height) as [DOMRect];
    return { x: canvas.x + x, y: canvas.y + y, width, height };
  },
};
window.longpoint = handle;

mountPane(document.getElementById("pane")!, host);
