import { OfficeHost } from "../hosts/office/officeHost.ts";

// Runs in the page before office.js: what that finds behind `window.external` in Excel's own webview on Windows.
const excel = new OfficeHost();
Object.defineProperty(window, "external", { value: excel, configurable: true });

/** Works out the one formula of a sheet that is a call on an area of another sheet, through the vendor's runtime, and spills it. */
async function calculate(sheet: string, row: number, column: number): Promise<number> {
  const { formula } = excel.sheet(sheet)!.peek(row, column);
  const [, name, from, top, bottom] = /^=RAFTER\.(\w+)\((\w+)!\$A\$(\d+):\$B\$(\d+)\)$/.exec(String(formula))!;
  const area = Array.from({ length: Number(bottom) - Number(top) + 1 }, (_, i) =>
    // As Excel on the desktop hands an empty cell over: 0.
    [0, 1].map((j) => excel.sheet(from!)!.peek(Number(top) - 1 + i, j).value || 0),
  );
  const { ok, value } = await excel.call(name!, [area], `${sheet}!A1`);
  if (!ok) throw new Error(String(value));
  excel.spill(sheet, row, column, value as (string | number)[][]);
  return (value as unknown[]).length;
}

Object.assign(window, { excel, calculate });
export type { OfficeHost };
export type Calculate = typeof calculate;
