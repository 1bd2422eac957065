import { rangeNode, sheetNode } from "./excelFakeNodes.ts";
import { strict } from "./strictNode.ts";
import { FakeBook, type BookEvent } from "./fakeBook.ts";
import { namedPlace } from "./namedPlace.ts";
import { FakeSheet, excelError } from "./fakeSheet.ts";

/** Excel on the web refuses a request or an answer that weighs more ("Resource limits and performance optimization for Office Add-ins"). */
const MOST_BYTES = 5_000_000;
/** What a call on an object of its own weighs in a request, nearly. */
const CALL_BYTES = 200;

/**
 * A small strict stand-in for the part of Excel's object model that the adapter uses.
 *
 * It throws on reads that were not loaded and synced, applies writes at sync and in order, checks shapes, reads text the way Excel does, leaves a half-done
 * request half done, and counts syncs.
 */
export class ExcelFake extends FakeBook {
  syncs = 0;
  /** Fails so many syncs from that number on, counted from 1: before anything is done, half-way, or after everything is (the answer is lost). */
  fault: { readonly sync: number; readonly calls: number; readonly when: "before" | "half-way" | "after" } | null =
    null;
  /** Runs that ended with work not synced. */
  unsynced = 0;
  readonly handlers: Readonly<Record<BookEvent, Set<() => Promise<void>>>> = {
    selection: new Set(),
    change: new Set(),
    calculated: new Set(),
  };

  /** Excel.run, with options before the job or without. */
  run = async <T>(
    ...given: [unknown, (context: FakeContext) => Promise<T>] | [(context: FakeContext) => Promise<T>]
  ): Promise<T> => {
    const context = new FakeContext(this);
    const promise: unknown = (given.length === 2 ? given[1] : given[0])(context);
    if (!(promise instanceof Promise)) throw excelError("RunMustReturnPromise", "a run gives a promise");
    const result = (await promise) as T;
    if (context.queue.length) {
      this.unsynced++;
      await context.sync();
    }
    return result;
  };

  fire(event: BookEvent): void {
    for (const handler of this.handlers[event]) void Promise.resolve().then(handler);
  }
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
    const { app, queue, sent } = this;
    const number = ++app.syncs - (app.fault?.sync ?? Infinity);
    const fault = number >= 0 && number < app.fault!.calls ? app.fault!.when : null;
    this.queue = [];
    this.sent = this.answered = 0;
    await Promise.resolve();
    const lost = excelError("GeneralException", "There was an internal error while processing the request.");
    const calls = queue.length + this.tracked;
    if (sent + calls * CALL_BYTES > MOST_BYTES)
      throw excelError("RequestPayloadSizeLimitExceeded", `${sent} bytes and ${calls} calls in one request`);
    // As in Excel, what comes before a failure stays done.
    for (const act of fault === "before" ? [] : queue.slice(0, fault === "half-way" ? queue.length / 2 : undefined))
      act();
    if (fault) throw lost;
    if (this.answered > MOST_BYTES)
      throw excelError("ResponsePayloadSizeLimitExceeded", `${this.answered} bytes in one answer`);
  };

  /** Ranges that are made anew in every request of this run, for nobody let go of them. */
  tracked = 0;
  /** Weighs what a request carries there, or brings back. */
  sent = 0;
  answered = 0;
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
          const place = namedPlace(formula());
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

function workbookNode(context: FakeContext): unknown {
  const { app } = context;
  const listening = (event: BookEvent) => ({
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
  const application = strict(context, "Application", { read: { calculationMode: () => app.calculationMode } });
  return {
    worksheets,
    settings,
    application,
    names: namesNode(context),
    onSelectionChanged: listening("selection"),
    getSelectedRange: () => selectedRange(false),
    getActiveCell: () => selectedRange(true),
  };
}
