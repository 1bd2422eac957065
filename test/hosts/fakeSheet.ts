/** One cell of the stand-in. */
export interface FakeCell {
  /** What `formulas` shows: a formula, or the value itself. */
  formula: string | number | boolean;
  value: string | number | boolean;
  format: string;
  isError: boolean;
  /** A linked data type, an entity or a picture in the cell, and the type that Excel gives for it. */
  rich: "" | "Error" | "RichValue";
  bold: boolean;
  italic: boolean;
  size: number;
  color: string;
  fill: string;
  /** The cell whose formula spilled this value. */
  anchor?: { row: number; column: number };
}

let ids = 0;

/** An error with Excel's code in it. */
export function excelError(code: string, message: string): Error {
  return Object.assign(new Error(`${code}: ${message}`), { code });
}

/** A sheet of the stand-in: its cells by "row,column". */
export class FakeSheet {
  readonly id = `{sheet-${++ids}}`;
  readonly cells = new Map<string, FakeCell>();
  /** Column widths in Excel's points; 48 where none is set. */
  readonly widths = new Map<number, number>();
  readonly shapes: Record<string, unknown>[] = [];
  frozenRows = 0;
  /** Rows and columns that are not seen, and cells that are merged, by "row,column". */
  readonly hidden = { rows: new Set<number>(), columns: new Set<number>() };
  readonly merged = new Set<string>();
  visible = "Visible";
  isProtected = false;
  name: string;

  constructor(name: string) {
    this.name = name;
  }

  /** As Excel copies a sheet: everything in it, formulas with what they spilled. */
  copy(name: string): FakeSheet {
    const copy = new FakeSheet(name);
    for (const [at, cell] of this.cells) copy.cells.set(at, { ...cell });
    for (const [column, width] of this.widths) copy.widths.set(column, width);
    copy.frozenRows = this.frozenRows;
    return copy;
  }

  /** Pastes what another sheet shows in an area, formulas gone. */
  pasteValues(from: FakeSheet, rows: readonly number[], columns: readonly number[]): void {
    for (const row of rows)
      for (const column of columns) {
        const { value } = from.peek(row, column);
        const isError = typeof value === "string" && value.startsWith("#");
        Object.assign(this.cell(row, column), { formula: value, value, isError, anchor: undefined });
      }
  }

  cell(row: number, column: number): FakeCell {
    const key = `${row},${column}`;
    let cell = this.cells.get(key);
    if (!cell) this.cells.set(key, (cell = blankCell()));
    return cell;
  }

  peek(row: number, column: number): FakeCell {
    return this.cells.get(`${row},${column}`) ?? blankCell();
  }

  /** Takes an entry as Excel does: a formula, a number, text behind an apostrophe; other text is read and often turned into something else. */
  enter(row: number, column: number, entry: string | number | boolean): void {
    const cell = this.cell(row, column);
    const { anchor } = cell;
    // A formula that is overwritten takes its spilled values with it.
    if (anchor?.row === row && anchor.column === column)
      for (const other of this.cells.values())
        if (other.anchor?.row === row && other.anchor.column === column && other !== cell)
          Object.assign(other, { value: "", formula: "", anchor: undefined });
    Object.assign(cell, { isError: false, rich: "", anchor: undefined }, this.#read(cell, entry));
  }

  #read(cell: FakeCell, entry: string | number | boolean): Partial<FakeCell> {
    if (typeof entry !== "string" || entry === "") return { formula: entry, value: entry };
    if (entry.startsWith("'")) return { formula: entry.slice(1), value: entry.slice(1) };
    if (cell.format === "@") return { formula: entry, value: entry };
    if (entry.startsWith("=")) return { formula: entry, value: 0 };
    if (/^#(VALUE!|N\/A|DIV\/0!|REF!|NAME\?|NUM!|NULL!)$/.test(entry))
      return { formula: entry, value: entry, isError: true };
    if (/^(true|false)$/i.test(entry)) return { formula: /^true$/i.test(entry), value: /^true$/i.test(entry) };
    // Dates, times, fractions, signs and powers become numbers; which number does not matter here.
    if (/^[\s\d+$@(-]/.test(entry)) return { formula: 45_822, value: 45_822, format: "m/d/yyyy" };
    return { formula: entry, value: entry };
  }
}

function blankCell(): FakeCell {
  return {
    formula: "",
    value: "",
    format: "General",
    isError: false,
    rich: "",
    bold: false,
    italic: false,
    size: 11,
    color: "#000000",
    fill: "",
  };
}
