import { rangeNode, sheetNode } from "./excelFakeNodes.ts";
import { strict } from "./strictNode.ts";
import { FakeSheet, excelError, type FakeCell } from "./fakeSheet.ts";

/** Most cells that one property of one request may carry; near what Excel on the web takes. */
const MOST_CELLS = 20_000;
/** Most calls that one request may hold: Excel on the web takes 5 MB, and a call on an object of its own has some 200 bytes. */
const MOST_CALLS = 20_000;

/**
 * A small strict stand-in for the part of Excel's object model that the adapter uses.
 *
 * It throws on reads that were not loaded and synced, applies writes at sync and in order, checks shapes, reads text the way Excel does, leaves a half-done
 * request half done, and counts syncs. It does not calculate: a formula shows 0 unless `spill` or `showAt` says what it came to.
 */
export class ExcelFake {
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
  syncs = 0;
  /** Runs that ended with work not synced. */
  unsynced = 0;
  readonly handlers = {
    selection: new Set<() => Promise<void>>(),
    change: new Set<() => Promise<void>>(),
    calculated: new Set<() => Promise<void>>(),
  };

  /** Excel.run, with options before the job or without. */
  run = async <T>(
    ...given: [unknown, (context: FakeContext) => Promise<T>] | [(context: FakeContext) => Promise<T>]
  ): Promise<T> => {
    const context = new FakeContext(this);
    const result = await (given.length === 2 ? given[1] : given[0])(context);
    if (context.queue.length) {
      this.unsynced++;
      await context.sync();
    }
    return result;
  };

  sheet(key: string): FakeSheet | undefined {
    return this.sheets.find(({ id, name }) => id === key || name.toLowerCase() === key.toLowerCase());
  }

  /** As if the user typed; text other than a formula is kept as text. */
  type(sheet: string, row: number, column: number, content: string | number): void {
    this.sheet(sheet)!.enter(
      row,
      column,
      typeof content === "string" && content !== "" && !content.startsWith("=") ? `'${content}` : content,
    );
    this.fire("change");
  }

  /** What a formula comes to, as if Excel had calculated it. */
  showAt(sheet: string, row: number, column: number, value: FakeCell["value"]): void {
    this.sheet(sheet)!.cell(row, column).value = value;
    this.fire("calculated");
  }

  /** As if the formula at a cell spilled these rows. */
  spill(sheet: string, row: number, column: number, rows: readonly (readonly (number | string)[])[]): void {
    const data = this.sheet(sheet)!;
    rows.forEach((line, i) =>
      line.forEach((value, j) => Object.assign(data.cell(row + i, column + j), { value, anchor: { row, column } })),
    );
    this.fire("calculated");
  }

  select(row: number, column: number, rows: number, columns: number): void {
    this.selected = { row, column, rows, columns };
    this.fire("selection");
  }

  fire(event: keyof ExcelFake["handlers"]): void {
    for (const handler of this.handlers[event]) void Promise.resolve().then(handler);
  }

  /** Every cell, so that two states can be compared. */
  everything(): unknown {
    return this.sheets.map(({ name, cells, widths, visible }) => ({
      name,
      visible,
      cells: [...cells].filter(([, cell]) => !isBlank(cell)).sort(([a], [b]) => (a < b ? -1 : 1)),
      widths: [...widths].filter(([, width]) => width !== 48).sort(),
    }));
  }
}

function isBlank({ formula, format, bold, fill }: FakeCell): boolean {
  return formula === "" && format === "General" && !bold && !fill;
}

/** What a request queues, and the workbook it works on. */
export class FakeContext {
  queue: (() => void)[] = [];
  readonly workbook: unknown;
  readonly app: ExcelFake;

  constructor(app: ExcelFake) {
    this.app = app;
    this.workbook = workbookNode(this);
  }

  sync = async (): Promise<void> => {
    this.app.syncs++;
    const queue = this.queue;
    this.queue = [];
    await Promise.resolve();
    if (queue.length > MOST_CALLS)
      throw excelError("RequestPayloadSizeLimitExceeded", `${queue.length} calls in one request`);
    // As in Excel, what comes before a failure stays done.
    for (const act of queue) act();
  };

  /** Refuses a request that Excel on the web would find too large. */
  carry(rows: number, columns: number): void {
    if (rows * columns > MOST_CELLS)
      throw excelError("RequestPayloadSizeLimitExceeded", `${rows * columns} cells in one request`);
  }
}

function namesNode(context: FakeContext): unknown {
  const { app } = context;
  const key = (name: string) => [...app.names.keys()].find((one) => one.toLowerCase() === name.toLowerCase());
  const item = (name: string, orNull: boolean) => {
    const formula = () => app.names.get(key(name) ?? "") ?? "";
    return strict(context, "NamedItem", {
      ...(orNull ? { missing: () => key(name) === undefined } : {}),
      read: { name: () => key(name), formula },
      write: { formula: (text: string) => () => void app.names.set(key(name)!, text) },
      call: {
        getRangeOrNullObject: () => {
          const place = placeOf(formula());
          const sheet = place && app.sheet(place.sheet);
          return rangeNode(
            context,
            () => sheet!,
            () => place!,
            () => !sheet,
          );
        },
      },
    });
  };
  return strict(context, "NamedItemCollection", {
    read: { items: () => [...app.names.keys()].map((name) => item(name, false)) },
    call: {
      getItemOrNullObject: (name: string) => item(name, true),
      add: (name: string, formula: unknown) => {
        if (!/^[A-Za-z_\\][\w.]*$/.test(name) || /^[A-Za-z]{1,3}\d+$/.test(name))
          throw excelError("InvalidArgument", name);
        context.queue.push(() => {
          if (key(name) !== undefined) throw excelError("InvalidArgument", `${name} is there already`);
          app.names.set(name, String(formula));
        });
      },
    },
  });
}

/** "=Bid!$A$5:$B$9" as a place; undefined for any other formula. */
function placeOf(formula: string) {
  const found = /^=(?:'((?:[^']|'')+)'|(\w+))!\$([A-Z]+)\$(\d+)(?::\$([A-Z]+)\$(\d+))?$/.exec(formula);
  if (!found) return undefined;
  const [, quoted, plain, left, top, right = left, bottom = top] = found;
  const column = (letters: string) => [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  const [row, from] = [Number(top) - 1, column(left!)];
  return {
    sheet: quoted?.replaceAll("''", "'") ?? plain!,
    row,
    column: from,
    rows: Number(bottom) - row,
    columns: column(right!) - from + 1,
  };
}

function workbookNode(context: FakeContext): unknown {
  const { app } = context;
  const listening = (event: keyof ExcelFake["handlers"]) => ({
    add(handler: () => Promise<void>) {
      context.queue.push(() => app.handlers[event].add(handler));
      return { context, remove: () => context.queue.push(() => app.handlers[event].delete(handler)) };
    },
  });
  const selectedRange = (active: boolean) => {
    const { row, column, rows, columns } = app.selected;
    if (!active && app.chartSelected)
      context.queue.push(() => {
        throw excelError("InvalidSelection", "no cells are selected");
      });
    return (sheetNode(context, app.active.id, false) as any).getRangeByIndexes(
      row,
      column,
      active ? 1 : rows,
      active ? 1 : columns,
    );
  };
  const worksheets = strict(context, "Worksheets", {
    read: { items: () => app.sheets.map(({ id }) => sheetNode(context, id, false)) },
    call: {
      getItem: (key: string) => sheetNode(context, key, false),
      getItemOrNullObject: (key: string) => sheetNode(context, key, true),
      add(name: string) {
        const sheet = new FakeSheet(name);
        context.queue.push(() => {
          if (app.sheet(name)) throw excelError("ItemAlreadyExists", name);
          if (name.length > 31 || /[\\/?*[\]:]/.test(name)) throw excelError("InvalidArgument", name);
          app.sheets.push(sheet);
        });
        return sheetNode(context, sheet.id, false);
      },
      onChanged: listening("change"),
      onCalculated: listening("calculated"),
    },
  });
  const settings = {
    add: (key: string, value: unknown) => context.queue.push(() => app.settings.set(key, value)),
    getItemOrNullObject: (key: string) =>
      strict(context, "Setting", {
        read: { value: () => app.settings.get(key) },
        missing: () => !app.settings.has(key),
      }),
  };
  return {
    worksheets,
    settings,
    names: namesNode(context),
    onSelectionChanged: listening("selection"),
    getSelectedRange: () => selectedRange(false),
    getActiveCell: () => selectedRange(true),
  };
}
