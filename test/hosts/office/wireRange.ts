import type { FakeBook } from "../fakeBook.ts";
import {
  a1,
  formulaOf,
  hiddenIn,
  looksOf,
  refuseLocked,
  region,
  spillRange,
  typeOf,
  valueOf,
  type Place,
} from "../fakeCells.ts";
import { excelError, type FakeCell, type FakeSheet } from "../fakeSheet.ts";
import { NOTHING } from "./richApi.ts";
import { WireSheet } from "./wireBook.ts";

type Entry = string | number | boolean;

/** A range under the names that the wire has. What the adapter does not use is not here, and fails. */
export class WireRange {
  static #ids = 0;
  _ReferenceId: string | undefined;
  readonly #book: FakeBook;
  readonly #sheet: FakeSheet;
  readonly #place: Place;
  readonly #references: Map<string, object>;

  constructor(book: FakeBook, references: Map<string, object>, sheet: FakeSheet, place: Place) {
    [this.#book, this.#references, this.#sheet, this.#place] = [book, references, sheet, place];
    const { row, column, rows, columns } = place;
    if (
      ![row, column, rows, columns].every(Number.isInteger) ||
      row < 0 ||
      column < 0 ||
      rows < 1 ||
      columns < 1 ||
      row + rows > 1_048_576 ||
      column + columns > 16_384
    )
      throw excelError("InvalidArgument", `range ${row},${column} ${rows}x${columns}`);
  }

  /** A tracked object: kept until the client lets it go. */
  _KeepReference(): void {
    this._ReferenceId ??= `range-${++WireRange.#ids}`;
    this.#references.set(this._ReferenceId, this);
  }
  _ValidateArraySize(rows: number, columns: number): void {
    if (rows !== this.#place.rows || columns !== this.#place.columns) throw excelError("InvalidArgument", "array size");
  }

  get Address(): string {
    const { row, column, rows, columns } = this.#place;
    const last = rows * columns > 1 ? `:${a1(row + rows - 1, column + columns - 1)}` : "";
    return `${this.#sheet.name}!${a1(row, column)}${last}`;
  }
  get RowIndex(): number {
    return this.#place.row;
  }
  get ColumnIndex(): number {
    return this.#place.column;
  }
  get RowCount(): number {
    return this.#place.rows;
  }
  get ColumnCount(): number {
    return this.#place.columns;
  }
  get Left(): number {
    return this.#place.column * 48;
  }
  get Top(): number {
    return this.#place.row * 15;
  }
  get Worksheet(): WireSheet {
    return new WireSheet(this.#book, this.#references, this.#sheet);
  }

  get Values(): Entry[][] {
    return this.#grid(valueOf);
  }
  set Values(given: unknown) {
    this.Formulas = given;
  }
  get Formulas(): Entry[][] {
    return this.#grid((_, row, column) => formulaOf(this.#book, this.#sheet, row, column));
  }
  set Formulas(given: unknown) {
    this.#write("formulas", given, (row, column, entry) => this.#sheet.enter(row, column, entry));
    this.#book.fire("change", this.#sheet);
  }
  get ValueTypes(): string[][] {
    return this.#grid(typeOf);
  }
  get NumberFormat(): string[][] {
    return this.#grid(({ format }) => format);
  }
  set NumberFormat(given: unknown) {
    this.#write("numberFormat", given, (row, column, entry) => {
      this.#sheet.cell(row, column).format = String(entry) || "General";
    });
  }
  get RowHidden(): boolean | null {
    return hiddenIn(this.#sheet.hidden.rows, this.#place.row, this.#place.rows);
  }
  get ColumnHidden(): boolean | null {
    return hiddenIn(this.#sheet.hidden.columns, this.#place.column, this.#place.columns);
  }
  get HasSpill(): boolean | null {
    const all = this.#grid(({ anchor }) => anchor !== undefined).flat();
    return all.every((one) => one === all[0]) ? all[0]! : null;
  }
  get Format(): object {
    const set = (key: keyof FakeCell, type: string) => ({
      set: (value: unknown) => {
        if (typeof value !== type) throw excelError("InvalidArgument", `${key} ${String(value)}`);
        this.#each((cell) => Object.assign(cell, { [key]: value }));
      },
    });
    const font = Object.defineProperties(
      {},
      {
        Bold: set("bold", "boolean"),
        Italic: set("italic", "boolean"),
        Size: set("size", "number"),
        Color: set("color", "string"),
      },
    );
    const fill = Object.defineProperties(
      { Clear: () => this.#each((cell) => (cell.fill = "")) },
      { Color: set("fill", "string") },
    );
    return new Columns(font, fill, this.#book, this.#sheet, this.#place);
  }

  GetCell(row: number, column: number): WireRange {
    return this.#sub(row, column, 1, 1);
  }
  /** The client cuts large grids in pieces with these two. */
  GetRow(row: number): WireRange {
    return this.#sub(row, 0, 1, this.#place.columns);
  }
  GetBoundingRect(other: WireRange): WireRange {
    const [a, b] = [this.#place, other.#place];
    const [row, column] = [Math.min(a.row, b.row), Math.min(a.column, b.column)];
    const rows = Math.max(a.row + a.rows, b.row + b.rows) - row;
    return this.#at({ row, column, rows, columns: Math.max(a.column + a.columns, b.column + b.columns) - column });
  }
  GetResizedRange(rows: number, columns: number): WireRange {
    return this.#sub(0, 0, this.#place.rows + rows, this.#place.columns + columns);
  }
  GetEntireColumn(): WireRange {
    return this.#at({ ...this.#place, row: 0, rows: 1_048_576 });
  }
  GetSurroundingRegion(): WireRange {
    return this.#at(region(this.#sheet, { ...this.#place, rows: 1, columns: 1 }));
  }
  GetSpillParentOrNullObject(): unknown {
    const { anchor } = this.#sheet.peek(this.#place.row, this.#place.column);
    return anchor && this.#isOneCell ? this.#at({ ...anchor, rows: 1, columns: 1 }) : NOTHING;
  }
  GetSpillingToRangeOrNullObject(): unknown {
    const spill = this.#isOneCell && spillRange(this.#sheet, this.#place);
    return spill ? this.#at(spill) : NOTHING;
  }
  GetCellProperties(): unknown {
    return this.#grid((cell) => looksOf(cell));
  }
  CopyFrom(source: WireRange, what: string): void {
    refuseLocked(this.#book, this.#sheet);
    if (what !== "Values") throw excelError("NotImplemented", what);
    const { row, column, rows, columns } = this.#place;
    const line = (from: number, count: number) => Array.from({ length: count }, (_, i) => from + i);
    this.#sheet.pasteValues(source.#sheet, line(row, rows), line(column, columns));
  }
  Select(): void {
    if (this.#sheet !== this.#book.active) throw excelError("InvalidOperation", "select on a sheet that is not active");
    const { row, column, rows, columns } = this.#place;
    this.#book.select(row, column, rows, columns);
  }
  Clear(): void {
    refuseLocked(this.#book, this.#sheet);
    this.#sheet.cells.clear();
  }

  get #isOneCell(): boolean {
    return this.#place.rows * this.#place.columns === 1;
  }
  #at(place: Place): WireRange {
    return new WireRange(this.#book, this.#references, this.#sheet, place);
  }
  #sub(row: number, column: number, rows: number, columns: number): WireRange {
    return this.#at({ row: this.#place.row + row, column: this.#place.column + column, rows, columns });
  }
  #grid<T>(of: (cell: FakeCell, row: number, column: number) => T): T[][] {
    const { row, column, rows, columns } = this.#place;
    if (rows * columns > 5_000_000) throw excelError("ResponsePayloadSizeLimitExceeded", `${rows * columns} cells`);
    return Array.from({ length: rows }, (_, i) =>
      Array.from({ length: columns }, (__, j) => of(this.#sheet.peek(row + i, column + j), row + i, column + j)),
    );
  }
  #each(act: (cell: FakeCell) => void): void {
    refuseLocked(this.#book, this.#sheet);
    const { row, column, rows, columns } = this.#place;
    for (let i = 0; i < rows; i++) for (let j = 0; j < columns; j++) act(this.#sheet.cell(row + i, column + j));
  }
  /** A grid of the range's shape, or one value for all; null leaves a cell alone. */
  #write(what: string, given: unknown, put: (row: number, column: number, entry: Entry) => void): void {
    refuseLocked(this.#book, this.#sheet);
    const { row, column, rows, columns } = this.#place;
    if (Array.isArray(given) && (given.length !== rows || given.some((line: unknown[]) => line.length !== columns)))
      throw excelError("InvalidArgument", `${what}: the input array doesn't match the size of the range`);
    for (let i = 0; i < rows; i++)
      for (let j = 0; j < columns; j++) {
        const entry: unknown = Array.isArray(given) ? given[i][j] : given;
        if (entry === null || entry === undefined) continue;
        if (!["string", "number", "boolean"].includes(typeof entry))
          throw excelError("InvalidArgument", `${what}: ${typeof entry}`);
        put(row + i, column + j, entry as Entry);
      }
  }
}

/** The looks of a range. Excel keeps whole pixels of a width. */
class Columns {
  readonly Font: object;
  readonly Fill: object;
  readonly #book: FakeBook;
  readonly #sheet: FakeSheet;
  readonly #place: Place;
  constructor(font: object, fill: object, book: FakeBook, sheet: FakeSheet, place: Place) {
    [this.Font, this.Fill, this.#book, this.#sheet, this.#place] = [font, fill, book, sheet, place];
  }
  get ColumnWidth(): number | null {
    const { column, columns } = this.#place;
    const all = Array.from({ length: columns }, (_, j) => this.#sheet.widths.get(column + j) ?? 48);
    return all.every((width) => width === all[0]) ? all[0]! : null;
  }
  set ColumnWidth(points) {
    refuseLocked(this.#book, this.#sheet);
    if (typeof points !== "number" || points < 0) throw excelError("InvalidArgument", "columnWidth");
    const { column, columns } = this.#place;
    for (let j = 0; j < columns; j++) this.#sheet.widths.set(column + j, Math.round(points / 0.75) * 0.75);
  }
}
