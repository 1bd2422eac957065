/** What a cell can show. */
export type Cell = number | string | boolean;

/** Rows of cells that spill, headings first. Never an empty array. */
export type Table = readonly (readonly Cell[])[];

/** What a column holds; how it is shown follows from that. */
export type ColumnKind = "length" | "angle" | "count" | "money" | "area" | "amount" | "text";

/** The number format of each kind (null: the sheet's own), and its usual width in pixels. Lengths keep three decimals: a sixteenth is 0.0625. */
const SHOWN: Readonly<Record<ColumnKind, { readonly format: string | null; readonly width: number }>> = {
  length: { format: "0.000", width: 92 },
  angle: { format: "0.00", width: 84 },
  count: { format: "0", width: 56 },
  money: { format: "0.00", width: 92 },
  area: { format: "0.00", width: 92 },
  amount: { format: "0.00", width: 92 },
  text: { format: null, width: 84 },
};

/** A column of a table. What `cell` gives may depend on something that all rows share, such as their unit. */
export interface Column<Row = any, Shared = any> {
  readonly heading: Cell;
  readonly kind: ColumnKind;
  readonly format: string | null;
  /** Pixels, for text of 11 points. */
  readonly width: number;
  cell(row: Row, shared: Shared): Cell;
}

/** Pixels that a bold heading of 11 points takes in the widest of the usual fonts, with its cell's edges. */
export const headingWidth = (heading: Cell): number => 10 * String(heading).length + 8;

/** Everything that is known of one column, in one place. It has its kind's width unless its texts need another; its heading fits. */
export function column<Row, Shared>(
  heading: Cell,
  kind: ColumnKind,
  cell: (row: Row, shared: Shared) => Cell,
  width = SHOWN[kind].width,
): Column<Row, Shared> {
  return { heading, kind, format: SHOWN[kind].format, width: Math.max(width, headingWidth(heading)), cell };
}

/** The first row of a table. */
export function headings(columns: readonly Column[]): Cell[] {
  return columns.map(({ heading }) => heading);
}

/** Which of these columns stands under a heading, counted from 0. */
export function columnAt(columns: readonly Column[], wanted: string): number {
  const at = columns.findIndex(({ heading }) => heading === wanted);
  if (at < 0) throw new Error(`No column is called ${wanted}.`);
  return at;
}

/** The table that these columns make of these rows, headings first. */
export function tableOf<Row, Shared>(
  columns: readonly Column<Row, Shared>[],
  rows: readonly Row[],
  shared: Shared,
): Table {
  return [headings(columns), ...rows.map((row) => columns.map(({ cell }) => cell(row, shared)))];
}
