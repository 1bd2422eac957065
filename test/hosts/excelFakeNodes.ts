import type { FakeContext } from "./excelFake.ts";
import { excelError, type FakeCell, type FakeSheet } from "./fakeSheet.ts";
import { strict } from "./strictNode.ts";

type Place = { row: number; column: number; rows: number; columns: number };

/** A worksheet of the stand-in, by name or id. */
export function sheetNode(context: FakeContext, key: string, orNull: boolean): unknown {
  const { app } = context;
  const data = () => {
    const sheet = app.sheet(key);
    if (!sheet) throw excelError("ItemNotFound", key);
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
    ...(orNull ? { missing: () => !app.sheet(key) } : {}),
    call: {
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
  const each = <T>(visit: (row: number, column: number) => T): T[][] => {
    const { row, column, rows, columns } = place();
    context.carry(rows, columns);
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
    context.carry(rows, columns);
    const copy = values.map((line) => [...line]);
    return () => {
      refuseLocked(context, data());
      copy.forEach((line, i) => line.forEach((value, j) => value !== null && put(row + i, column + j, value)));
      context.app.fire("change");
    };
  };
  const at = ({ row, column, rows, columns }: Place) =>
    `${data().name}!${a1(row, column)}${rows * columns > 1 ? `:${a1(row + rows - 1, column + columns - 1)}` : ""}`;
  const sub = (row: number, column: number, rows = 1, columns = 1) =>
    rangeNode(context, data, () => ({ row: place().row + row, column: place().column + column, rows, columns }));
  const anchorOf = () => data().peek(place().row, place().column).anchor;
  return strict(context, "Range", {
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
      formulas: () => each((row, column) => formulaOf(context, data(), row, column)),
      values: () => each((row, column) => valueOf(data().peek(row, column))),
      valueTypes: () => each((row, column) => typeOf(data().peek(row, column))),
      numberFormat: () => each((row, column) => data().peek(row, column).format),
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
      getCellProperties: () => {
        const result: { value?: unknown } = {};
        context.queue.push(() => void (result.value = each((row, column) => looksOf(data().peek(row, column)))));
        return {
          get value() {
            if (!result.value) throw new Error("PropertyNotLoaded: ClientResult.value");
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
}

function formatNode(context: FakeContext, data: () => FakeSheet, place: () => Place): unknown {
  const set = (key: keyof FakeCell) => (value: unknown) => {
    if (value === null || value === undefined) throw excelError("InvalidArgument", `${key} ${String(value)}`);
    return () => {
      refuseLocked(context, data());
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

function refuseLocked(context: FakeContext, sheet: FakeSheet): void {
  if (sheet.isProtected || context.app.broken(sheet.name)) throw excelError("AccessDenied", sheet.name);
}

/** No fill reads as white with the pattern None. */
function looksOf({ bold, italic, size, color, fill }: FakeCell): unknown {
  return {
    format: {
      font: { bold, italic, size, color },
      fill: fill ? { color: fill, pattern: "Solid" } : { color: "#FFFFFF", pattern: "None" },
    },
  };
}

/** An entity reads as an error that nobody typed (`basicType` and `basicValue` of Excel.EntityCellValue and its like). */
function valueOf({ value, rich }: FakeCell): FakeCell["value"] {
  return rich === "Error" ? "#VALUE!" : value;
}

/** A cell without a formula gives its value instead. */
function formulaOf({ app }: FakeContext, sheet: FakeSheet, row: number, column: number): FakeCell["formula"] {
  const cell = sheet.peek(row, column);
  const { anchor } = cell;
  if (!anchor || (anchor.row === row && anchor.column === column)) return cell.rich ? valueOf(cell) : cell.formula;
  return app.spilledFormulas === "parent" ? sheet.peek(anchor.row, anchor.column).formula : cell.value;
}

function typeOf({ value, isError, rich }: FakeCell): string {
  if (rich) return rich;
  if (isError) return "Error";
  return value === ""
    ? "Empty"
    : { number: "Double", boolean: "Boolean", string: "String" }[typeof value as "number" | "boolean" | "string"];
}

function used(sheet: FakeSheet, valuesOnly: boolean): Place | null {
  const keys = [...sheet.cells]
    .filter(([, cell]) => cell.formula !== "" || cell.value !== "" || (!valuesOnly && cell.format !== "General"))
    .map(([key]) => key.split(",").map(Number) as [number, number]);
  if (!keys.length) return null;
  const top = keys.reduce((least, [row]) => Math.min(least, row), Infinity);
  const left = keys.reduce((least, [, column]) => Math.min(least, column), Infinity);
  return {
    row: top,
    column: left,
    rows: keys.reduce((most, [row]) => Math.max(most, row), 0) - top + 1,
    columns: keys.reduce((most, [, column]) => Math.max(most, column), 0) - left + 1,
  };
}

/** Grows until a blank row or column, or the sheet's edge, is all around. */
function region(sheet: FakeSheet, { row, column, rows, columns }: Place): Place {
  let [top, left, bottom, right] = [row, column, row + rows - 1, column + columns - 1];
  const filled = (r: number, c: number) => sheet.peek(r, c).formula !== "" || sheet.peek(r, c).value !== "";
  const any = (r0: number, r1: number, c0: number, c1: number) => {
    for (let r = Math.max(0, r0); r <= r1; r++)
      for (let c = Math.max(0, c0); c <= c1; c++) if (filled(r, c)) return true;
    return false;
  };
  for (;;) {
    if (top > 0 && any(top - 1, top - 1, left - 1, right + 1)) top--;
    else if (left > 0 && any(top - 1, bottom + 1, left - 1, left - 1)) left--;
    else if (any(bottom + 1, bottom + 1, left - 1, right + 1)) bottom++;
    else if (any(top - 1, bottom + 1, right + 1, right + 1)) right++;
    else return { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
  }
}

function a1(row: number, column: number): string {
  let letters = "";
  for (let c = column; c >= 0; c = Math.floor(c / 26) - 1) letters = String.fromCharCode(65 + (c % 26)) + letters;
  return letters + (row + 1);
}
