import type { Area, Host } from "../host.ts";
import { PartlyWritten } from "../partlyWritten.ts";
import { Receipts } from "../receipts.ts";
import { NotPutBack } from "./allOrNothing.ts";
import { copyPlain } from "./copyPlain.ts";
import { inExcel } from "./inExcel.ts";
import { listen } from "./listen.ts";
import { namedAreas, nameArea } from "./namedAreas.ts";
import { occupied } from "./occupied.ts";
import { openLarge, openPage } from "./openPage.ts";
import { picture } from "./picture.ts";
import type { Undo } from "./putBack.ts";
import { areaOf, PLACE_IN_SHEET } from "./rangeArea.ts";
import { readCells } from "./readCells.ts";
import type { RefusalLog } from "./refusalLog.ts";
import { sheetNamed, sheetNames } from "./sheets.ts";
import { svgToPng } from "./svgToPng.ts";
import { takeBack } from "./takeBack.ts";
import { write } from "./write.ts";

const MANUAL =
  "Calculation is set to manual in this workbook: press F9 to work the cells out, now and after each change.";
const SPILL =
  "Something stands where this table must go. Clear the cells below and to the right of the formula, or move it to a free place.";

/**
 * The port on a workbook in Excel.
 *
 * @param refusals what the functions that run beside the pane have refused.
 * @param toPng draws a picture; the page's own way unless a test brings another.
 */
export function excelHost(refusals: RefusalLog, toPng = svgToPng): Host {
  const receipts = new Receipts<Undo>();
  /** Writes, and keeps what undoes it: also of what was left where it failed. */
  const keeping = async (title: string, writes: () => Promise<Undo>) => {
    const kept = (undo: Undo) =>
      receipts.keep(
        { title, areas: undo.blocks.map(({ area }) => area), ...(undo.manual ? { hint: MANUAL } : {}) },
        undo,
      );
    try {
      return kept(await writes());
    } catch (error) {
      if (!(error instanceof NotPutBack)) throw error;
      const places = [...new Set(error.undo.blocks.map(({ area }) => area.sheet))].join(", ");
      const why = (error.cause as Error).message;
      throw new PartlyWritten(
        `${why} What was written by then could not all be put back: look at ${places}.`,
        kept(error.undo),
        { cause: error },
      );
    }
  };
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
          .load(PLACE_IN_SHEET);
        await context.sync();
        return areaOf(region);
      }),
    write: (step, options) => keeping(step.title, () => write(step, options)),
    copyPlain: (sheet, name) => keeping(name, () => copyPlain(sheet, name)),
    occupied,
    takeBack: (written) => receipts.takeBack(written, takeBack),
    messageAt: (sheet, row, column) =>
      inExcel(async (context) => {
        const worksheet = context.workbook.worksheets.getItemOrNullObject(sheet);
        await context.sync();
        if (worksheet.isNullObject) return null;
        const cell = worksheet.getRangeByIndexes(row, column, 1, 1).load("values");
        await context.sync();
        const shows = String(cell.values[0]![0]);
        return shows === "#SPILL!" ? SPILL : refusals.at(sheet, row, column, shows);
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
    openPage,
    openLarge,
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
  range.load(PLACE_IN_SHEET);
  await context.sync();
  return areaOf(range);
}

function rangeOf(sheet: Excel.Worksheet, { row, column, rows, columns }: Area): Excel.Range {
  return sheet.getRangeByIndexes(row, column, rows, columns);
}
