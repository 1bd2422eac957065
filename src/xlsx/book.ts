/** A workbook as it is read from a file or written into one: what this program can show and keep, and nothing else. Rows and columns count from 0. */
export interface Book {
  readonly title: string;
  readonly sheets: readonly BookSheet[];
  readonly names?: readonly BookName[];
  /** Small texts that the pane keeps in the workbook, by key. */
  readonly kept?: Readonly<Record<string, string>>;
}

/** A name that formulas on any sheet may use. */
export interface BookName {
  readonly name: string;
  /** As typed: "=Bid!$B$7", or any other formula. */
  readonly formula: string;
}

export interface BookSheet {
  readonly name: string;
  readonly rows: readonly (readonly (BookCell | null)[])[];
  readonly columns?: readonly (Line | null)[];
  /** By row: only those that are not as usual. */
  readonly heights?: ReadonlyMap<number, Line>;
  readonly merges?: readonly Rectangle[];
  readonly frozenRows?: number;
  readonly frozenColumns?: number;
  readonly hidden?: boolean;
  /** The color of its tab, #rrggbb. */
  readonly tab?: string;
  readonly print?: Print;
  /** What may be typed into cells, in a sheet of a file that is kept whole. */
  readonly inputRules?: readonly InputRule[];
  /** How cells with certain values look, in a sheet of a file that is kept whole: shown only. */
  readonly valueRules?: readonly ValueRule[];
  /** Texts beside cells, in a sheet of a file that is kept whole. */
  readonly notes?: readonly Note[];
  /** Where texts of cells lead, in a sheet of a file that is kept whole. */
  readonly links?: readonly Link[];
  /** At most one, in a sheet of a file that is kept whole. The rows that it hides are hidden ones of `heights`. */
  readonly filters?: readonly Filter[];
  /** The sheet of a file that this one was opened from, which is kept whole beside it. */
  readonly from?: Origin;
}

/** A text beside a cell (ECMA-376, 18.7.3). */
export interface Note {
  readonly row: number;
  readonly column: number;
  readonly text: string;
  /** It is seen always, not only while its cell is pointed at. */
  readonly shown?: true;
}

/** A cell's text that leads to a page or to mail (ECMA-376, 18.3.1.47). */
export interface Link {
  readonly row: number;
  readonly column: number;
  readonly to: string;
}

/** Rows that are shown by what stands in their cells (ECMA-376, 18.3.1.2); the first of the area has the headings. */
export interface Filter {
  readonly area: Rectangle;
  readonly columns: readonly FilterColumn[];
}

/** What a filter lets through by one column, counted in the sheet: some values as they are seen, or one or two conditions. */
export interface FilterColumn {
  readonly column: number;
  readonly values?: readonly string[];
  readonly blank?: true;
  /** Without an operator a text with * and ?, or an equal number. */
  readonly conditions?: readonly { readonly operator?: string; readonly value: string }[];
  readonly and?: true;
}

/** What may be typed into some cells (ECMA-376, 18.3.1.32). Formulas with their "=", and as they read at the first of the cells. */
export interface InputRule {
  readonly areas: readonly Rectangle[];
  readonly kind: (typeof INPUT_KINDS)[number];
  readonly operator?: string;
  readonly first?: string;
  readonly second?: string;
  readonly blank?: boolean;
  /** A list without an arrow to choose from it. */
  readonly noArrow?: boolean;
  readonly error?: {
    readonly style: "stop" | "warning" | "information";
    readonly title?: string;
    readonly text?: string;
  };
  readonly hint?: { readonly title?: string; readonly text?: string };
}

/** Rules that live in the sheet; those about days and times stay in the file. */
export const INPUT_KINDS = ["list", "whole", "decimal", "textLength", "custom"] as const;

/** How cells look that hold certain values (ECMA-376, 18.3.1.18): shown here, and kept in the file as it is. The first of a sheet's rules wins. */
export interface ValueRule {
  readonly areas: readonly Rectangle[];
  readonly shows: Shows;
  /** Rules after it do not count for cells that it holds for. */
  readonly last?: boolean;
}

/** A place on a scale: the least or the most of the values, or a number, a percentage of the way or a rank in percent. */
export interface ScalePoint {
  readonly at: "min" | "max" | "num" | "percent" | "percentile";
  readonly value?: number;
}

export type Shows =
  | { readonly kind: "number"; readonly operator: string; readonly values: readonly number[]; readonly look: Look }
  | { readonly kind: "formula"; readonly formula: string; readonly look: Look }
  | { readonly kind: "text"; readonly operator: string; readonly text?: string; readonly look: Look }
  | { readonly kind: "duplicates" | "uniques"; readonly look: Look }
  | { readonly kind: "scale"; readonly points: readonly (ScalePoint & { readonly color: string })[] }
  | { readonly kind: "bar"; readonly from: ScalePoint; readonly to: ScalePoint; readonly color: string };

/** Where a sheet and its lines come from. */
export interface Origin {
  /** The file, by the name that the page gave it. */
  readonly file: string;
  /** The sheet's name in it. */
  readonly sheet: string;
  /** How many rows and columns are followed, once the sheet has been shown. */
  readonly marked?: { readonly rows: number; readonly columns: number };
  /** For each row up to the last that is left of the file its number there, or -1 for a new one; left out where none has moved. */
  readonly rows?: readonly number[];
  readonly columns?: readonly number[];
}

/** A file as it was opened: its bytes, and its book as the sheet showed it at first. What was changed since is known by that. */
export interface Original {
  readonly bytes: Uint8Array;
  readonly as: Book;
  /** How many of its cells have functions that are not known here, and a value in the file. */
  readonly unknown: number;
}

export interface BookCell {
  /** What the cell shows; for a formula its result when the book was made. An error as its text ("#VALUE!"). */
  readonly value: number | string | boolean | null;
  /** With its "=", as a person types it. */
  readonly formula?: string;
  /** Rows and columns that the formula spills over, itself included. */
  readonly spill?: { readonly rows: number; readonly columns: number };
  /** The value comes from another cell's formula, which spills over this one. */
  readonly spilled?: true;
  /** The formula is that of another cell, moved here: `id` names it, and the cell with that id and a formula holds it. */
  readonly shared?: string;
  readonly look?: Look;
}

/** A column's width or a row's height, in pixels. */
export interface Line {
  readonly size?: number;
  readonly hidden?: boolean;
}

export interface Rectangle {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** How a cell looks. Colors as #rrggbb, sizes in points. */
export interface Look {
  readonly format?: string;
  readonly font?: string;
  readonly size?: number;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly underline?: boolean;
  readonly strike?: boolean;
  readonly color?: string;
  readonly fill?: string;
  readonly borders?: Readonly<Partial<Record<Edge, Border>>>;
  readonly across?: "left" | "center" | "right" | "justify";
  readonly upright?: "top" | "center" | "bottom";
  readonly wrap?: boolean;
}

export const EDGES = ["top", "right", "bottom", "left"] as const;
export type Edge = (typeof EDGES)[number];

/** The lines that the file format (ECMA-376, 18.18.3) and sheets know. */
export const LINES = [
  "thin",
  "hair",
  "dotted",
  "dashed",
  "dashDot",
  "dashDotDot",
  "double",
  "medium",
  "mediumDashed",
  "mediumDashDot",
  "mediumDashDotDot",
  "slantDashDot",
  "thick",
] as const;

export interface Border {
  readonly line: (typeof LINES)[number];
  readonly color: string;
}

/** How a sheet goes to paper. */
export interface Print {
  readonly landscape?: boolean;
  readonly paper?: string;
  /** Pages across and down that all is made to fit in; 0: as many as it takes. */
  readonly fit?: { readonly across: number; readonly down: number };
  /** As "$A$1:$D$20" and "$1:$1". */
  readonly area?: string;
  readonly titleRows?: string;
  readonly header?: string;
  readonly footer?: string;
}
