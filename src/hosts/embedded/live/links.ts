import type { ICellData, Nullable } from "@univerjs/core";
import {
  CustomCommandExecutionError,
  CustomRangeType,
  ICommandService,
  LocaleService,
  LocaleType,
  mergeLocales,
} from "@univerjs/core";
import { IMessageService, MessageType } from "@univerjs/preset-sheets-core";
import { AFTER_CELL_EDIT, SheetInterceptorService } from "@univerjs/sheets";
import {
  AddHyperLinkCommand,
  type IAddHyperLinkCommandParams,
  UniverSheetsHyperLinkPlugin,
} from "@univerjs/sheets-hyper-link";
import words from "@univerjs/sheets-hyper-link/locale/en-US";
import { InsertHyperLinkOperation, UniverSheetsHyperLinkUIPlugin } from "@univerjs/sheets-hyper-link-ui";
import "@univerjs/sheets-hyper-link-ui/lib/index.css";
import panelWords from "@univerjs/sheets-hyper-link-ui/locale/en-US";
import type { Link } from "../../../xlsx/book.ts";
import { isOutside } from "../../../xlsx/carry/links.ts";
import type { EmbeddedSheet } from "../runningSheet.ts";
import type { LivePart } from "./livePart.ts";
import { startPlugins } from "./startPlugins.ts";

/**
 * Puts links into a running sheet: a cell's text leads to a page or to mail, and its address is shown where the cell is pointed at.
 *
 * Nothing is asked for at that address. A browser window opens there when the user presses it, and only for a page or mail.
 */
export async function startLinks(sheet: EmbeddedSheet): Promise<LivePart<Link>> {
  const injector = sheet.univer.__getInjector();
  injector.get(LocaleService).load({ [LocaleType.EN_US]: mergeLocales(words, panelWords) });
  const options = { urlHandler: { navigateToOtherWebsite: follow } };
  const plugins = [[UniverSheetsHyperLinkPlugin], [UniverSheetsHyperLinkUIPlugin, options]] as const;
  await startPlugins(sheet, plugins, InsertHyperLinkOperation.id);
  typedStaysText(injector.get(SheetInterceptorService));
  // The plug-in would make a text of a number, and what is calculated from it would leave it out.
  injector.get(ICommandService).beforeCommandExecuted(({ id, params }) => {
    if (id !== AddHyperLinkCommand.id) return;
    const { subUnitId, link } = params as IAddHyperLinkCommandParams;
    const worksheet = sheet.workbook.getWorkbook().getSheetBySheetId(subUnitId ?? "");
    const old = worksheet?.getCellRaw(link.row, link.column)?.v ?? "";
    if (typeof old === "string") return;
    injector.get(IMessageService).show({ type: MessageType.Warning, content: NUMBER });
    throw new CustomCommandExecutionError(NUMBER);
  });
  return {
    // They stand in the cells, which have them from the start: see sheetData.ts.
    put: () => {},
    of(worksheet, left) {
      const links: Link[] = [];
      worksheet.getCellMatrix().forValue((row, column, cell) => {
        const to = linkOf(cell);
        if (to === null) return;
        if (isOutside(to)) links.push({ row, column, to });
        else left.add(`links to other things than pages and mail on ${worksheet.getName()}`);
      });
      return links;
    },
  };
}

const NUMBER = "This cell holds a number, which a link would make a text. Put the link on a cell with a text.";

/** Opens what a link leads to, at the user's press. */
function follow(address: string): void {
  const to = wellFormed(address);
  if (isOutside(to)) open(to, "_blank", "noopener,noreferrer");
}

/** Where a cell leads, or null. */
function linkOf(cell: Nullable<ICellData>): string | null {
  const its = cell?.p?.body?.customRanges?.find(({ rangeType }) => rangeType === CustomRangeType.HYPERLINK);
  const url: unknown = its?.properties?.["url"];
  return typeof url === "string" && url !== "" ? wellFormed(url) : null;
}

// The sheet's own panel makes "mailto://" of an address.
const wellFormed = (address: string) => address.replace(/^mailto:\/\//i, "mailto:");

/**
 * Keeps what is typed as it is.
 *
 * The plug-in makes a link of all that could be one, "8.in" too. Here links are made on purpose.
 */
function typedStaysText({ writeCellInterceptor }: SheetInterceptorService): void {
  const plain = new WeakSet<object>();
  writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: 10_000,
    handler(cell, context, next) {
      if (!cell?.p) plain.add(context);
      return next(cell);
    },
  });
  writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    // Behind the plug-in, and before the sheet itself, which ends the row.
    priority: -0.5,
    handler: (cell, context, next) => next(cell?.p && plain.has(context) ? { ...cell, p: null } : cell),
  });
}
