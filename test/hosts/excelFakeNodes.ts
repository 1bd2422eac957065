import type { FakeContext } from "./excelFake.ts";
import {
  a1,
  hiddenIn,
  mergedIn,
  formulaOf,
  looksOf,
  refuseLocked,
  region,
  spillRange,
  typeOf,
  used,
  valueOf,
  type Place,
} from "./fakeCells.ts";
import { excelError, type FakeCell, type FakeSheet } from "./fakeSheet.ts";
import { strict } from "./strictNode.ts";

/** Most cells of a grid that the vendor's client sends at once. */
const PIECE = 1_500;

/** A worksheet of the stand-in, by name or id. */
export function sheetNode(context: FakeContext, key: string | (() => string), orNull: boolean): unknown {
  const { app } = context;
  const found = () => app.sheet(typeof key === "string" ? key : key());
  const data = () => {
    const sheet = found();
    if (!sheet) throw excelError("ItemNotFound", String(key));
    return sheet;
  };
  const range = (row: number, column: number, rows: number, columns: number) => {
    if (row < 0 || column < 0 || rows < 1 || columns < 1 || row + rows > 1_048_576 || column + columns > 16_384)
      throw excelError("InvalidArgument", `range ${row},${column} ${rows}x${columns}`);
    return rangeNode(context, data, () => ({ row, column, rows, columns }));
  };
  const shapes = strict(context, "Shapes", {
    read: {
      items: () =>
        data().shapes.map((shape) =>
          strict(context, "Shape", {
            read: { name: () => shape["name"] },
            call: { delete: () => context.queue.push(() => data().shapes.splice(data().shapes.indexOf(shape), 1)) },
          }),
        ),
    },
    call: {
      addImage(png: string) {
        if (png.startsWith("data:") || png === "") throw excelError("InvalidArgument", "image");
        const shape: Record<string, unknown> = { png };
        context.queue.push(() => data().shapes.push(shape));
        const set = (name: string) => (value: unknown) => () => void (shape[name] = value);
        return strict(context, "Shape", {
          write: { name: set("name"), left: set("left"), top: set("top"), width: set("width"), height: set("height") },
        });
      },
    },
  });
  return strict(context, "Worksheet", {
    read: { name: () => data().name, id: () => data().id, visibility: () => data().visible },
    ...(orNull ? { missing: () => !found() } : {}),
    write: { name: (name: string) => () => void (data().name = name) },
    call: {
      copy: () => {
        let copy: FakeSheet | undefined;
        context.queue.push(() => void (copy = app.copySheet(data())));
        return sheetNode(context, () => copy!.id, false);
      },
      shapes,
      protection: strict(context, "Protection", { read: { protected: () => data().isProtected } }),
      getRangeByIndexes: range,
      getRange: () => ({ clear: () => context.queue.push(() => data().cells.clear()) }),
      getUsedRangeOrNullObject: (valuesOnly: boolean) =>
        rangeNode(
          context,
          data,
          () => used(data(), valuesOnly)!,
          () => !used(data(), valuesOnly),
        ),
      activate: () => context.queue.push(() => void (app.active = data())),
      freezePanes: { freezeRows: (count: number) => context.queue.push(() => void (data().frozenRows = count)) },
      delete: () =>
        context.queue.push(() => {
          if (app.sheets.filter(({ visible }) => visible === "Visible").length === 1)
            throw excelError("InvalidOperation", "the last visible sheet");
          app.sheets = app.sheets.filter((sheet) => sheet !== data());
          if (!app.sheets.includes(app.active)) app.active = app.sheets[0]!;
        }),
    },
  });
}

export function rangeNode(
  context: FakeContext,
  data: () => FakeSheet,
  place: () => Place,
  missing?: () => boolean,
): any {
  let kept = 1;
  context.tracked += kept;
  const each = <T>(visit: (row: number, column: number) => T): T[][] => {
    const { row, column, rows, columns } = place();
    return Array.from({ length: rows }, (_, i) =>
      Array.from({ length: columns }, (_, j) => visit(row + i, column + j)),
    );
  };
  const grid = (what: string, put: (row: number, column: number, value: any) => void) => (values: unknown[][]) => {
    const { rows, columns, row, column } = place();
    if (!Array.isArray(values) || values.length !== rows || values.some((line) => line.length !== columns))
      throw excelError(
        "InvalidArgument",
        `${what} is ${values.length}x${values[0]?.length}, the range ${rows}x${columns}`,
      );
    context.sent += JSON.stringify(values).length;
    const copy = values.map((line) => [...line]);
    // The client sends a large grid in pieces, one after the other.
    const piece = Math.max(1, Math.floor(PIECE / columns));
    for (let from = 0; from + piece < rows; from += piece) context.queue.push(() => write(from, from + piece));
    const write = (from: number, to: number) => {
      refuseLocked(context.app, data());
      for (const [i, line] of copy.slice(from, to).entries())
        line.forEach((value, j) => value !== null && put(row + from + i, column + j, value));
      context.app.fire("change");
    };
    return () => write(Math.floor((rows - 1) / piece) * piece, rows);
  };
  const at = ({ row, column, rows, columns }: Place) =>
    `${data().name}!${a1(row, column)}${rows * columns > 1 ? `:${a1(row + rows - 1, column + columns - 1)}` : ""}`;
  const sub = (row: number, column: number, rows = 1, columns = 1) =>
    rangeNode(context, data, () => ({ row: place().row + row, column: place().column + column, rows, columns }));
  const anchorOf = () => data().peek(place().row, place().column).anchor;
  const range = strict(context, "Range", {
    ...(missing ? { missing } : {}),
    read: {
      address: () => at(place()),
      rowIndex: () => place().row,
      columnIndex: () => place().column,
      rowCount: () => place().rows,
      columnCount: () => place().columns,
      left: () => place().column * 48,
      top: () => place().row * 15,
      "worksheet/name": () => data().name,
      formulas: () => each((row, column) => formulaOf(context.app, data(), row, column)),
      values: () => each((row, column) => valueOf(data().peek(row, column))),
      valueTypes: () => each((row, column) => typeOf(data().peek(row, column))),
      numberFormat: () => each((row, column) => data().peek(row, column).format),
      rowHidden: () => hiddenIn(data().hidden.rows, place().row, place().rows),
      columnHidden: () => hiddenIn(data().hidden.columns, place().column, place().columns),
      hasSpill: () => {
        const all = each((row, column) => data().peek(row, column).anchor !== undefined).flat();
        return all.every((spills) => spills === all[0]) ? all[0] : null;
      },
    },
    write: {
      formulas: grid("formulas", (row, column, value) => data().enter(row, column, value)),
      numberFormat: grid(
        "numberFormat",
        (row, column, value) => void (data().cell(row, column).format = value || "General"),
      ),
    },
    call: {
      format: formatNode(context, data, place),
      getCell: (row: number, column: number) => sub(row, column),
      getResizedRange: (rows: number, columns: number) => sub(0, 0, place().rows + rows, place().columns + columns),
      getEntireColumn: () =>
        rangeNode(context, data, () => ({ row: 0, column: place().column, rows: 1_048_576, columns: 1 })),
      getSurroundingRegion: () => rangeNode(context, data, () => region(data(), { ...place(), rows: 1, columns: 1 })),
      getSpillParentOrNullObject: () =>
        rangeNode(
          context,
          data,
          () => ({ ...anchorOf()!, rows: 1, columns: 1 }),
          () => place().rows * place().columns > 1 || !anchorOf(),
        ),
      getSpillingToRangeOrNullObject: () =>
        rangeNode(
          context,
          data,
          () => spillRange(data(), place())!,
          () => place().rows * place().columns > 1 || !spillRange(data(), place()),
        ),
      untrack: () => {
        context.tracked -= kept;
        kept = 0;
        return range;
      },
      getMergedAreasOrNullObject: () =>
        strict(context, "RangeAreas", {
          read: {
            address: () =>
              mergedIn(data(), place())
                .map((at) => `${data().name}!${a1(...cellOf(at))}`)
                .join(","),
          },
          missing: () => mergedIn(data(), place()).length === 0,
        }),
      source: { data, place },
      copyFrom: ({ source }: { source: { data: () => FakeSheet } }, what: string) => {
        if (what !== "Values") throw excelError("NotImplemented", what);
        context.queue.push(() => {
          const { row, column, rows, columns } = place();
          const line = (from: number, count: number) => Array.from({ length: count }, (_, i) => from + i);
          data().pasteValues(source.data(), line(row, rows), line(column, columns));
        });
      },
      getCellProperties: () => {
        const result: { value?: unknown } = {};
        context.queue.push(() => {
          result.value = each((row, column) => looksOf(data().peek(row, column)));
          context.answered += JSON.stringify(result.value).length;
        });
        return {
          get value() {
            if (!result.value) throw excelError("ValueNotLoaded", "the result of getCellProperties");
            return result.value;
          },
        };
      },
      select: () =>
        context.queue.push(() => {
          if (data() !== context.app.active)
            throw excelError("InvalidOperation", "select on a sheet that is not active");
          Object.assign(context.app.selected, place());
          context.app.fire("selection");
        }),
    },
  });
  return range;
}

const cellOf = (at: string) => at.split(",").map(Number) as [number, number];

function formatNode(context: FakeContext, data: () => FakeSheet, place: () => Place): unknown {
  const set = (key: keyof FakeCell) => (value: unknown) => {
    if (value === null || value === undefined) throw excelError("InvalidArgument", `${key} ${String(value)}`);
    return () => {
      refuseLocked(context.app, data());
      const { row, column, rows, columns } = place();
      for (let i = 0; i < rows; i++)
        for (let j = 0; j < columns; j++) (data().cell(row + i, column + j) as any)[key] = value;
    };
  };
  return strict(context, "RangeFormat", {
    read: { columnWidth: () => data().widths.get(place().column) ?? 48 },
    write: { columnWidth: (value: number) => () => void data().widths.set(place().column, value) },
    call: {
      font: strict(context, "RangeFont", {
        write: { bold: set("bold"), italic: set("italic"), size: set("size"), color: set("color") },
      }),
      fill: strict(context, "RangeFill", {
        write: { color: set("fill") },
        call: { clear: () => context.queue.push(set("fill")("")) },
      }),
    },
  });
}
