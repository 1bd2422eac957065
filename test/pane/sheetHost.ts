import type { Area, Host, HostCell, WriteStep } from "../../src/hosts/host.ts";
import { cellsOf } from "./cellsOf.ts";

const EMPTY: HostCell = { formula: null, value: "", format: "General" };

/** The rows of a sheet with a small roof block under a title. */
export const roofRows = (): (string | number)[][] => [
  ["Title", ""],
  ["Span", "24'"],
  ["Length", "40'"],
  ["Pitch", 6],
];

/** One sheet that is a list of rows, and what the port needs of it. */
export function sheetHost(rows: (string | number)[][], more: Partial<Host> = {}) {
  const names = new Map<string, Area | null>();
  const kept = new Map<string, string>();
  const [changes, others]: [(() => void)[], (() => void)[]] = [[], []];
  const host: Host = {
    selection: async () => ({ sheet: "Bid", row: 0, column: 0, rows: 1, columns: 1 }),
    onSelection: () => () => undefined,
    onChange: (listener) => (changes.push(listener), () => void changes.splice(0)),
    sheets: async () => ["Bid"],
    read: async ({ row, column, rows: count, columns }: Area) =>
      Array.from({ length: count }, (_, i) =>
        Array.from({ length: columns }, (__, j) => cellsOf(rows)[row + i]?.[column + j] ?? EMPTY),
      ),
    blockAround: async () => ({ sheet: "Bid", row: 0, column: 0, rows: rows.length, columns: 2 }),
    write: async (step: WriteStep) => {
      for (const { row, column, cells } of step.blocks) rows[row]![column] = cells[0]![0]!.content;
      return { title: step.title, areas: [{ sheet: "Bid", row: 0, column: 0, rows: 1, columns: 1 }] };
    },
    occupied: async () => [],
    takeBack: async () => [],
    messageAt: async () => null,
    show: async () => undefined,
    namedAreas: async () => new Map(names),
    nameArea: async (name, area) => void names.set(name, area),
    remember: async (key, text) => void kept.set(key, text),
    recall: async (key) => kept.get(key) ?? null,
    onOtherWorkbook: (listener) => (others.push(listener), () => void others.splice(0)),
    ...more,
  };
  return {
    host,
    kept,
    names,
    change: () => changes.forEach((listener) => listener()),
    replace: () => others.forEach((listener) => listener()),
  };
}
