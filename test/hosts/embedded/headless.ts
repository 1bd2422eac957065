import type { IWorkbookData, IWorksheetData } from "@univerjs/core";
import { CellValueType, ICommandService } from "@univerjs/core";
import {
  FormulaDataModel,
  IDependencyManagerService,
  IFormulaRuntimeService,
  LexerTreeBuilder,
  SetFormulaCalculationResultMutation,
  SetFormulaCalculationStartMutation,
} from "@univerjs/engine-formula";
import type { FRange, FWorksheet } from "@univerjs/sheets/facade";
import { functions } from "../../../functions/index.ts";
import { embeddedHost } from "../../../src/hosts/embedded/embeddedHost.ts";
import type { EmbeddedSheet } from "../../../src/hosts/embedded/runningSheet.ts";
import { embeddedSheet } from "../../../src/hosts/embedded/embeddedSheet.ts";
import { engineParts } from "../../../src/hosts/embedded/engineParts.ts";
import { bookOf } from "../../../src/hosts/embedded/bookOf.ts";
import { findCells } from "../../../src/hosts/embedded/findCells.ts";
import { openBook } from "../../../src/hosts/embedded/openBook.ts";
import { replaceCells } from "../../../src/hosts/embedded/replaceCells.ts";
import type { Host } from "../../../src/hosts/host.ts";
import type { WorksheetFunction } from "../../../src/registry/worksheetFunction.ts";
import { startFilters, type HeadlessFilters } from "./headlessFilters.ts";
import { testFunctions } from "./testFunctions.ts";

/** The embedded sheet without a page, and the hands of a user on it. */
export interface Headless {
  readonly sheet: EmbeddedSheet;
  readonly host: Host;
  readonly commands: ICommandService;
  /** What cuts formulas into their parts. */
  readonly lexer: LexerTreeBuilder;
  /** What gathers formulas. */
  readonly formulas: FormulaDataModel;
  /** What takes in results. */
  readonly runtime: IFormulaRuntimeService;
  /** As if typed: "=" begins a formula, other text stays text, "" empties the cell. */
  type(a1: string, content: string | number): void;
  typeAt(range: FRange, content: string | number): void;
  range(a1: string): FRange;
  worksheet(name?: string): FWorksheet;
  /** What stands in the cells once everything is calculated. */
  values(a1: string): Promise<(string | number | boolean)[][]>;
  /** Milliseconds that the next calculation takes, from its start until its results stand in the cells. */
  calculated(): Promise<number>;
  /** How many areas of more than a cell the engine knows that formulas read. */
  areasRead(): number;
  /** Starts the plug-in for filters. */
  filters(): Promise<HeadlessFilters>;
  readonly bookOf: typeof bookOf;
  readonly openBook: typeof openBook;
  readonly findCells: typeof findCells;
  readonly replaceCells: typeof replaceCells;
  undo(): void;
  redo(): void;
  dispose(): void;
}

export { functionInfo } from "../../../src/hosts/embedded/functionInfo.ts";

/** The functions that users have. */
export const real = functions;

/** The same engine, functions and host as on the page, in plain Node. */
export function headless(
  definitions: readonly WorksheetFunction[] = testFunctions,
  rowCount = 1000,
  cellData: IWorksheetData["cellData"] = {},
  onPage = false,
): Headless {
  const snapshot: Partial<IWorkbookData> = {
    id: "book",
    name: "Book",
    sheetOrder: ["s1"],
    sheets: { s1: { id: "s1", name: "Sheet1", rowCount, columnCount: 26, cellData } },
  };
  const sheet = embeddedSheet({ ...engineParts, onPage }, definitions, snapshot);
  const { univer, workbook } = sheet;
  const host = embeddedHost(sheet);
  const commands = univer.__getInjector().get(ICommandService);
  const worksheet = (name = "Sheet1") => workbook.getSheetByName(name)!;
  const range = (a1: string) =>
    a1.includes("!")
      ? worksheet(a1.slice(0, a1.indexOf("!"))).getRange(a1.slice(a1.indexOf("!") + 1))
      : worksheet().getRange(a1);
  const typeAt = (at: FRange, content: string | number) => {
    if (content === "") at.setValue({ v: null, f: null, si: null, p: null, t: null });
    else if (typeof content === "number") at.setValue({ v: content, t: CellValueType.NUMBER, f: null });
    else
      at.setValue(content.startsWith("=") ? { f: content, v: null } : { v: content, t: CellValueType.STRING, f: null });
  };
  return {
    sheet,
    host,
    commands,
    lexer: univer.__getInjector().get(LexerTreeBuilder),
    formulas: univer.__getInjector().get(FormulaDataModel),
    runtime: univer.__getInjector().get(IFormulaRuntimeService),
    worksheet,
    range,
    typeAt,
    type: (a1, content) => typeAt(range(a1), content),
    async values(a1) {
      const { startRow, endRow, startColumn, endColumn } = range(a1).getRange();
      const rows = await host.read({
        sheet: range(a1).getSheetName(),
        row: startRow,
        column: startColumn,
        rows: endRow - startRow + 1,
        columns: endColumn - startColumn + 1,
      });
      return rows.map((row) => row.map(({ value }) => value));
    },
    calculated: () =>
      new Promise((resolve) => {
        let start = Number.NaN;
        const listening = commands.onCommandExecuted((command) => {
          if (command.id === SetFormulaCalculationStartMutation.id) start = performance.now();
          if (command.id !== SetFormulaCalculationResultMutation.id) return;
          listening.dispose();
          void sheet.calculation.settled().then(() => resolve(performance.now() - start));
        });
      }),
    areasRead() {
      const manager = univer.__getInjector().get(IDependencyManagerService) as unknown as {
        _dependencyRTreeCache: { _tree: Map<string, Map<string, { all(): unknown[] }>> };
      };
      const trees = [...manager._dependencyRTreeCache._tree.values()].flatMap((sheets) => [...sheets.values()]);
      return trees.reduce((sum, tree) => sum + tree.all().length, 0);
    },
    filters: () => startFilters(sheet),
    bookOf,
    openBook,
    findCells,
    replaceCells,
    undo: () => void workbook.undo(),
    redo: () => void workbook.redo(),
    dispose: () => univer.dispose(),
  };
}
