import { FakeSheet, type FakeCell } from "./fakeSheet.ts";

/** What happens in a workbook that a program can listen to. */
export type BookEvent = "selection" | "change" | "calculated";

/** A workbook of plain data with the hands of a user, under both stand-ins for Excel. It does not calculate: `spill` and `showAt` say what a formula came to. */
export abstract class FakeBook {
  sheets: FakeSheet[] = [new FakeSheet("Sheet1")];
  active = this.sheets[0]!;
  selected = { row: 0, column: 0, rows: 1, columns: 1 };
  /** What is selected is no area of cells. */
  chartSelected = false;
  /** Whether a write to a sheet fails just now, for reasons that nobody could have seen coming. */
  broken: (sheet: string) => boolean = () => false;
  /** What `formulas` gives in a cell that another cell's formula spilled into: documents leave it open. */
  spilledFormulas: "value" | "parent" = "value";
  settings = new Map<string, unknown>();
  /** Names of the workbook, with the formula that each stands for. */
  names = new Map<string, string>();
  calculationMode = "Automatic";

  /** Tells whoever listens. */
  abstract fire(event: BookEvent, sheet?: FakeSheet): void;

  sheet(key: string): FakeSheet | undefined {
    return this.sheets.find(({ id, name }) => id === key || name.toLowerCase() === key.toLowerCase());
  }

  /** Copies a sheet beside itself, under the name that Excel gives. */
  copySheet(sheet: FakeSheet): FakeSheet {
    let number = 2;
    while (this.sheet(`${sheet.name} (${number})`)) number++;
    const copy = sheet.copy(`${sheet.name} (${number})`);
    this.sheets.splice(this.sheets.indexOf(sheet) + 1, 0, copy);
    return copy;
  }

  /** As if the user typed; text other than a formula is kept as text. */
  type(sheet: string, row: number, column: number, content: string | number): void {
    this.sheet(sheet)!.enter(
      row,
      column,
      typeof content === "string" && content !== "" && !content.startsWith("=") ? `'${content}` : content,
    );
    this.fire("change", this.sheet(sheet)!);
  }

  /** What a formula comes to, as if Excel had calculated it. */
  showAt(sheet: string, row: number, column: number, value: FakeCell["value"]): void {
    this.sheet(sheet)!.cell(row, column).value = value;
    this.fire("calculated", this.sheet(sheet)!);
  }

  /** As if the formula at a cell spilled these rows. */
  spill(sheet: string, row: number, column: number, rows: readonly (readonly (number | string)[])[]): void {
    const data = this.sheet(sheet)!;
    rows.forEach((line, i) =>
      line.forEach((value, j) => Object.assign(data.cell(row + i, column + j), { value, anchor: { row, column } })),
    );
    this.fire("calculated", this.sheet(sheet)!);
  }

  select(row: number, column: number, rows: number, columns: number): void {
    this.selected = { row, column, rows, columns };
    this.fire("selection");
  }

  /** Every cell, so that two states can be compared. */
  everything(): unknown {
    return this.sheets.map(({ name, cells, widths, visible }) => ({
      name,
      visible,
      // Copies: a state that is kept must not follow the workbook.
      cells: [...cells]
        .filter(([, cell]) => !isBlank(cell))
        .map(([at, cell]) => [at, { ...cell }] as const)
        .sort(([a], [b]) => (a < b ? -1 : 1)),
      widths: [...widths].filter(([, width]) => width !== 48).sort(),
    }));
  }
}

function isBlank({ formula, format, bold, fill }: FakeCell): boolean {
  return formula === "" && format === "General" && !bold && !fill;
}
