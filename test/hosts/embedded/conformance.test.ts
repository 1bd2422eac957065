import { beforeAll } from "vitest";
import { conformance } from "../conformance.ts";
import { bundled } from "./bundled.ts";

let headless: typeof import("./headless.ts").headless;
beforeAll(async () => {
  ({ headless } = await bundled());
});

conformance("The embedded sheet", async () => {
  const t = headless();
  const { host, worksheet } = t;
  return {
    host,
    calculates: true,
    async type(sheet, row, column, content) {
      t.typeAt(worksheet(sheet).getRange(row, column), content);
    },
    async format(sheet, row, column, format) {
      worksheet(sheet)
        .getRange(row, column)
        .setValue({ s: { n: { pattern: format } } });
    },
    rename: async (sheet, name) => void worksheet(sheet).setName(name),
    async select(row, column, rows, columns) {
      t.sheet.workbook.getActiveSheet().getRange(row, column, rows, columns).activate();
    },
    async refuse(sheet, row, column) {
      worksheet(sheet).getRange(row, column).setValue({ f: '=RAFTER.NEED("steep")' });
      return 'number: "steep" was read; it must be one of 1.';
    },
    undo: async () => t.undo(),
    width: async (sheet, column) => worksheet(sheet).getColumnWidth(column),
    frozenRows: async (sheet) => worksheet(sheet).getFrozenRows(),
    bold: async (sheet, row, column) => worksheet(sheet).getRange(row, column).getCellStyleData()?.bl === 1,
    dispose: async () => t.dispose(),
  };
});
