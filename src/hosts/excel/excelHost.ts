import type { Area, Host } from "../host.ts";
import { Receipts } from "../receipts.ts";
import { inExcel } from "./inExcel.ts";
import { listen } from "./listen.ts";
import { namedAreas, nameArea } from "./namedAreas.ts";
import { occupied } from "./occupied.ts";
import { picture } from "./picture.ts";
import type { Undo } from "./putBack.ts";
import { readCells } from "./readCells.ts";
import type { RefusalLog } from "./refusalLog.ts";
import { sheetNamed, sheetNames } from "./sheets.ts";
import { svgToPng } from "./svgToPng.ts";
import { takeBack } from "./takeBack.ts";
import { write } from "./write.ts";

const PLACE = "rowIndex,columnIndex,rowCount,columnCount,worksheet/name";

/**
 * The port on a workbook in Excel.
 *
 * @param refusals what the functions that run beside the pane have refused.
 * @param toPng draws a picture; the page's own way unless a test brings another.
 */
export function excelHost(refusals: RefusalLog, toPng = svgToPng): Host {
  const receipts = new Receipts<Undo>();
  return {
    selection: () => inExcel(selection),
    onSelection(listener) {
      let latest = 0;
      return listen((context, heard) => [
        context.workbook.onSelectionChanged.add(async () => {
          const mine = ++latest;
          const area = await Excel.run(selection);
          // Two answers can overtake each other.
          if (mine === latest) await heard(() => listener(area));
        }),
      ]);
    },
    onChange: (listener) =>
      listen(({ workbook: { worksheets } }, heard) => [
        worksheets.onChanged.add(() => heard(listener)),
        worksheets.onCalculated.add(() => heard(listener)),
      ]),
    sheets: () => inExcel(sheetNames),
    read: (area) => inExcel((context) => readCells(context, area)),
    blockAround: (area) =>
      inExcel(async (context) => {
        const region = rangeOf(await sheetNamed(context, area.sheet), area)
          .getSurroundingRegion()
          .load(PLACE);
        await context.sync();
        return areaOf(region);
      }),
    async write(step, options) {
      const undo = await write(step, options);
      return receipts.keep({ title: step.title, areas: undo.blocks.map(({ area }) => area) }, undo);
    },
    occupied,
    takeBack: (written) => receipts.takeBack(written, takeBack),
    messageAt: (sheet, row, column) =>
      inExcel(async (context) => {
        const worksheet = context.workbook.worksheets.getItemOrNullObject(sheet);
        await context.sync();
        if (worksheet.isNullObject) return null;
        const cell = worksheet.getRangeByIndexes(row, column, 1, 1).load("values");
        await context.sync();
        return refusals.at(sheet, row, column, String(cell.values[0]![0]));
      }),
    show: (area) =>
      inExcel(async (context) => {
        const sheet = await sheetNamed(context, area.sheet);
        sheet.activate();
        rangeOf(sheet, area).select();
        await context.sync();
      }),
    namedAreas,
    nameArea,
    remember: (key, text) =>
      inExcel(async (context) => {
        context.workbook.settings.add(key, text);
        await context.sync();
      }),
    recall: (key) =>
      inExcel(async (context) => {
        const setting = context.workbook.settings.getItemOrNullObject(key).load("value");
        await context.sync();
        return setting.isNullObject ? null : String(setting.value);
      }),
    // In Excel every workbook has a pane of its own.
    onOtherWorkbook: () => () => undefined,
    picture: (sheet, row, column, svg, size) => picture(toPng, sheet, row, column, svg, size),
  };
}

async function selection(context: Excel.RequestContext): Promise<Area> {
  try {
    return await placeOf(context, context.workbook.getSelectedRange());
  } catch {
    // Several areas, a chart or a picture are selected: the cell that typing would go to stands for them.
    return placeOf(context, context.workbook.getActiveCell());
  }
}

async function placeOf(context: Excel.RequestContext, range: Excel.Range): Promise<Area> {
  range.load(PLACE);
  await context.sync();
  return areaOf(range);
}

function areaOf({ worksheet, rowIndex, columnIndex, rowCount, columnCount }: Excel.Range): Area {
  return { sheet: worksheet.name, row: rowIndex, column: columnIndex, rows: rowCount, columns: columnCount };
}

function rangeOf(sheet: Excel.Worksheet, { row, column, rows, columns }: Area): Excel.Range {
  return sheet.getRangeByIndexes(row, column, rows, columns);
}
