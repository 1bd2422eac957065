import { namedPlace } from "../hosts/namedPlace.ts";
import { OfficeHost } from "../hosts/office/officeHost.ts";

// Runs in the page before office.js: what that finds behind `window.external` in Excel's own webview on Windows.
const excel = new OfficeHost();
Object.defineProperty(window, "external", { value: excel, configurable: true });

/** Works out the one formula of a sheet that is a call on a named area, through the vendor's runtime, and spills it. */
async function calculate(sheet: string, row: number, column: number): Promise<number> {
  const { formula } = excel.sheet(sheet)!.peek(row, column);
  const [, name, block] = /^=RAFTER\.(\w+)\((\w+)\)$/.exec(String(formula))!;
  const from = namedPlace(excel.names.get(block!)!)!;
  const area = Array.from({ length: from.rows }, (_, i) =>
    // As Excel on the desktop hands an empty cell over: 0.
    Array.from(
      { length: from.columns },
      (__, j) => excel.sheet(from.sheet)!.peek(from.row + i, from.column + j).value || 0,
    ),
  );
  const { ok, value } = await excel.call(name!, [area], `${sheet}!A1`);
  if (!ok) throw new Error(String(value));
  excel.spill(sheet, row, column, value as (string | number)[][]);
  return (value as unknown[]).length;
}

Object.assign(window, { excel, calculate });
export type { OfficeHost };
export type Calculate = typeof calculate;
