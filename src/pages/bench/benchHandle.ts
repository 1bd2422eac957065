import type { Host } from "../../hosts/host.ts";

/** What the bench page offers to its tests, and to anyone at the browser's console, as `window.longpoint`. */
export interface BenchHandle {
  readonly host: Host;
  /** The sheet is on the screen and every cell of the sample job has its value. */
  readonly ready: Promise<void>;
  /** Milliseconds from the start of the page to `ready`; NaN before it. */
  readyAfter: number;
  /** Waits until every edit is calculated, late answers included. */
  settled(): Promise<void>;
  undo(): void;
  redo(): void;
  /** Puts empty rows above one, as the sheet's own menu does. */
  insertRows(sheet: string, before: number, count: number): void;
  /** Where a cell of the active sheet is on the page, in pixels, so that a test can click it. */
  rect(row: number, column: number): { x: number; y: number; width: number; height: number };
}

declare global {
  interface Window {
    longpoint: BenchHandle;
  }
}
