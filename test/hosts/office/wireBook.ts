import type { FakeBook } from "../fakeBook.ts";
import { used } from "../fakeCells.ts";
import { excelError, FakeSheet } from "../fakeSheet.ts";
import { namedPlace } from "../namedPlace.ts";
import { NOTHING } from "./richApi.ts";
import { WireRange } from "./wireRange.ts";

/** The host's end of a workbook under the names that the wire has (PascalCase). What the adapter does not use is not here, and fails. */
export class WireBook {
  /** What clients keep for later, by its name. */
  readonly references = new Map<string, object>();
  readonly #book: FakeBook;
  constructor(book: FakeBook) {
    this.#book = book;
  }
  get Worksheets(): WireSheets {
    return new WireSheets(this.#book, this.references);
  }
  get Application(): object {
    return { CalculationMode: this.#book.calculationMode };
  }
  get Settings(): object {
    const { settings } = this.#book;
    const one = (key: string) => ({ Key: key, _Id: key, Value: settings.get(key) });
    return {
      Add: (key: string, value: unknown) => (settings.set(key, structuredClone(value)), one(key)),
      GetItemOrNullObject: (key: string) => (settings.has(key) ? one(key) : NOTHING),
    };
  }
  get Names(): WireNames {
    return new WireNames(this.#book, this.references);
  }
  GetSelectedRange(): WireRange {
    if (this.#book.chartSelected) throw excelError("InvalidSelection", "The current selection is invalid.");
    return new WireRange(this.#book, this.references, this.#book.active, this.#book.selected);
  }
  GetActiveCell(): WireRange {
    const cell = { ...this.#book.selected, rows: 1, columns: 1 };
    return new WireRange(this.#book, this.references, this.#book.active, cell);
  }
  _RemoveReference(id: string): void {
    this.references.delete(id);
  }
}

/** The names of the workbook. */
class WireNames {
  readonly #book: FakeBook;
  readonly #references: Map<string, object>;
  constructor(book: FakeBook, references: Map<string, object>) {
    [this.#book, this.#references] = [book, references];
  }
  get Items(): object[] {
    return [...this.#book.names.keys()].map((name) => this.#one(name));
  }
  GetItemOrNullObject(name: string): unknown {
    return this.#book.names.has(name) ? this.#one(name) : NOTHING;
  }
  GetItemAt(index: number): object {
    return this.Items[index]!;
  }
  Add(name: string, formula: string): object {
    if (this.#book.names.has(name)) throw excelError("InvalidArgument", `${name} is there already`);
    this.#book.names.set(name, formula);
    return this.#one(name);
  }
  #one(name: string): object {
    return new WireName(this.#book, this.#references, name);
  }
}

class WireName {
  readonly #book: FakeBook;
  readonly #references: Map<string, object>;
  readonly Name: string;
  constructor(book: FakeBook, references: Map<string, object>, name: string) {
    [this.#book, this.#references, this.Name] = [book, references, name];
  }
  get Formula(): string {
    return this.#book.names.get(this.Name)!;
  }
  set Formula(formula) {
    this.#book.names.set(this.Name, formula);
  }
  GetRangeOrNullObject(): unknown {
    const place = namedPlace(this.Formula);
    const sheet = place && this.#book.sheet(place.sheet);
    return sheet ? new WireRange(this.#book, this.#references, sheet, place) : NOTHING;
  }
}

class WireSheets {
  readonly #book: FakeBook;
  readonly #references: Map<string, object>;
  constructor(book: FakeBook, references: Map<string, object>) {
    [this.#book, this.#references] = [book, references];
  }
  get Items(): WireSheet[] {
    return this.#book.sheets.map((sheet) => this.#wire(sheet));
  }
  Item(key: string): WireSheet {
    const sheet = this.#book.sheet(key);
    if (!sheet) throw excelError("ItemNotFound", "The requested resource doesn't exist.");
    return this.#wire(sheet);
  }
  GetItemOrNullObject(key: string): unknown {
    const sheet = this.#book.sheet(key);
    return sheet ? this.#wire(sheet) : NOTHING;
  }
  Add(name: string): WireSheet {
    if (this.#book.sheet(name)) throw excelError("ItemAlreadyExists", name);
    if (!name || name.length > 31 || /[\\/?*[\]:]|^'|'$/.test(name)) throw excelError("InvalidArgument", name);
    const sheet = new FakeSheet(name);
    this.#book.sheets.push(sheet);
    return this.#wire(sheet);
  }
  _RegisterDataChangedEvent(): void {}
  _UnregisterDataChangedEvent(): void {}
  _RegisterCalculatedEvent(): void {}
  _UnregisterCalculatedEvent(): void {}
  #wire(sheet: FakeSheet): WireSheet {
    return new WireSheet(this.#book, this.#references, sheet);
  }
}

/** A sheet of the workbook. */
export class WireSheet {
  readonly #book: FakeBook;
  readonly #references: Map<string, object>;
  readonly #sheet: FakeSheet;
  constructor(book: FakeBook, references: Map<string, object>, sheet: FakeSheet) {
    [this.#book, this.#references, this.#sheet] = [book, references, sheet];
  }
  get Id(): string {
    return this.#sheet.id;
  }
  get Name(): string {
    return this.#sheet.name;
  }
  set Name(name) {
    if (this.#book.sheet(name)) throw excelError("ItemAlreadyExists", name);
    this.#sheet.name = name;
  }
  Copy(): WireSheet {
    return new WireSheet(this.#book, this.#references, this.#book.copySheet(this.#sheet));
  }
  get Visibility(): string {
    return this.#sheet.visible;
  }
  get Protection(): object {
    return { Protected: this.#sheet.isProtected };
  }
  get FreezePanes(): object {
    return { FreezeRows: (count: number) => void (this.#sheet.frozenRows = count) };
  }
  get Shapes(): WireShapes {
    return new WireShapes(this.#sheet);
  }
  GetRange(address: unknown): WireRange {
    if (address !== undefined && address !== null) throw excelError("NotImplemented", "a range by its address");
    return this.#range(0, 0, 1_048_576, 16_384);
  }
  GetRangeByIndexes(row: number, column: number, rows: number, columns: number): WireRange {
    return this.#range(row, column, rows, columns);
  }
  GetUsedRangeOrNullObject(valuesOnly = false): unknown {
    const place = used(this.#sheet, valuesOnly);
    return place ? this.#range(place.row, place.column, place.rows, place.columns) : NOTHING;
  }
  Activate(): void {
    if (this.#sheet.visible !== "Visible") throw excelError("InvalidOperation", "a hidden sheet");
    this.#book.active = this.#sheet;
  }
  Delete(): void {
    const book = this.#book;
    if (!book.sheets.some((other) => other !== this.#sheet && other.visible === "Visible"))
      throw excelError("InvalidOperation", "the last visible sheet");
    book.sheets = book.sheets.filter((sheet) => sheet !== this.#sheet);
    if (!book.sheets.includes(book.active)) book.active = book.sheets[0]!;
  }
  #range(row: number, column: number, rows: number, columns: number): WireRange {
    return new WireRange(this.#book, this.#references, this.#sheet, { row, column, rows, columns });
  }
}

/** Pictures: kept under the stand-in's names for them, shown under the wire's. */
class WireShapes {
  readonly #sheet: FakeSheet;
  constructor(sheet: FakeSheet) {
    this.#sheet = sheet;
  }
  get Items(): object[] {
    return this.#sheet.shapes.map((shape) => this.#wire(shape));
  }
  GetItem(id: string): object {
    return this.Item(id);
  }
  Item(id: string): object {
    const shape = this.#sheet.shapes[Number(id)];
    if (!shape) throw excelError("ItemNotFound", id);
    return this.#wire(shape);
  }
  AddImage(png: string): object {
    if (!/^[A-Za-z0-9+/]+=*$/.test(png)) throw excelError("InvalidArgument", "image");
    const shape = { png };
    this.#sheet.shapes.push(shape);
    return this.#wire(shape);
  }
  #wire(shape: Record<string, unknown>): object {
    const { shapes } = this.#sheet;
    const property = (key: string) => ({
      get: () => shape[key],
      set: (value: unknown) => void (shape[key] = value),
      enumerable: true,
    });
    return Object.defineProperties(
      { Id: String(shapes.indexOf(shape)), Delete: () => void shapes.splice(shapes.indexOf(shape), 1) },
      {
        Name: property("name"),
        Left: property("left"),
        Top: property("top"),
        Width: property("width"),
        Height: property("height"),
      },
    );
  }
}
