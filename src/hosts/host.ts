/**
 * The port: what a sheet can do for the pane. The embedded sheet and Excel each have one adapter; one conformance suite holds both.
 *
 * Rows and columns count from 0. Nothing here names a vendor.
 */
export interface Host {
  /** The selected area of the active sheet. */
  selection(): Promise<Area>;
  /** Calls back after every change of selection. Returns a function that stops it. */
  onSelection(listener: (area: Area) => void): () => void;
  /** Calls back after cells were edited or recalculated. Returns a function that stops it. */
  onChange(listener: () => void): () => void;

  /** Names of the sheets, in order. */
  sheets(): Promise<readonly string[]>;
  /** What stands in the cells, by rows. Cells outside the sheet read as empty. */
  read(area: Area): Promise<readonly (readonly HostCell[])[]>;
  /** The part of the active sheet that the user sees as one block of filled cells around a cell. */
  blockAround(area: Area): Promise<Area>;

  /**
   * Writes everything of a step, as one undo step where the sheet can; all of it or nothing.
   *
   * It never asks: the caller has looked at `occupied` first. `signal` stops it half-way with nothing left behind.
   */
  write(
    step: WriteStep,
    options?: { signal?: AbortSignal; progress?: (done: number, of: number) => void },
  ): Promise<Written>;
  /** Addresses of filled cells that the step would write over, spill areas included ("Jacks!B4"). Empty when nothing is in the way. */
  occupied(step: WriteStep): Promise<readonly string[]>;
  /** Puts back what stood there before, unless a written cell was edited since: then nothing is changed and those addresses come back. */
  takeBack(written: Written): Promise<readonly string[]>;

  /** Why a cell shows an error: the refusal's message, or null. */
  messageAt(sheet: string, row: number, column: number): Promise<string | null>;
  /** Selects an area and brings it into view. */
  show(area: Area): Promise<void>;

  /** The names of the workbook, each with the area it stands for now, for the sheet moves a name with its cells; null where that is none, or its cells are gone. */
  namedAreas(): Promise<ReadonlyMap<string, Area | null>>;
  /** Gives an area a name that formulas on any sheet may use, or moves that name to it. */
  nameArea(name: string, area: Area): Promise<void>;

  /** Small texts kept inside the workbook, by key. */
  remember(key: string, text: string): Promise<void>;
  recall(key: string): Promise<string | null>;

  /** Calls back when the sheets and kept texts of another workbook have come in the place of these, or these are back. Returns a function that stops it. */
  onOtherWorkbook(listener: () => void): () => void;

  /** Copies a sheet under a new name, looks too, with values in the place of formulas; all of it or nothing. Only where the sheet can. */
  copyPlain?(sheet: string, name: string): Promise<Written>;

  /** Opens a page that was built beside this one: in a tab of its own, or in the system's browser. */
  openPage?(address: string): void;
  /** Shows a page that was built beside this one in a large window, in the place of the one before; whether it could. Only where the pane cannot fill the window itself. */
  openLarge?(address: string): Promise<boolean>;
  /** The page for the saw, where it was built beside this one. */
  readonly sawPage?: string;

  /** Puts a picture (SVG text, size in pixels) with its corner at a cell. Only where the sheet takes pictures. */
  picture?(
    sheet: string,
    row: number,
    column: number,
    svg: string,
    size: { width: number; height: number },
  ): Promise<void>;
}

export interface Area {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

export interface HostCell {
  /** The formula with its "=", or null. */
  readonly formula: string | null;
  /** Full precision; "" when empty, an error as its text ("#VALUE!"). */
  readonly value: number | string | boolean;
  /** The number format, "General" when none. */
  readonly format: string;
}

/** What is written into one cell. A formula starts with "="; text that starts with "=" is not written as data. */
export interface CellLayout {
  readonly content: string | number;
  readonly format?: string;
  readonly style?: "heading" | "label" | "input" | "title" | "note";
}

/** A block of cells to write at one place. */
export interface BlockLayout {
  readonly sheet: string;
  /** The sheet does not exist yet and is made for this. */
  readonly newSheet?: boolean;
  readonly row: number;
  readonly column: number;
  readonly cells: readonly (readonly (CellLayout | null)[])[];
  /** Rows and columns that a spilling formula in this block will fill, counted from the block's corner; nothing may stand there. */
  readonly spill?: {
    readonly row: number;
    readonly column: number;
    readonly rows: number;
    readonly columns: number;
    readonly formats?: readonly (string | null)[];
  };
  /** Widths in pixels by column of the block. */
  readonly widths?: readonly (number | null)[];
  /** Rows of the sheet that stay in view. Only on a new sheet. */
  readonly frozenRows?: number;
}

/** Everything that one press of a button writes. */
export interface WriteStep {
  readonly title: string;
  readonly blocks: readonly BlockLayout[];
}

/** What a write leaves behind so that it can be taken back. Opaque to the pane. */
export interface Written {
  readonly title: string;
  readonly areas: readonly Area[];
  /** What the user must know besides, in words. */
  readonly hint?: string;
}
