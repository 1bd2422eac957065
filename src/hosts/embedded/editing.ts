import { DeviceInputEventType, IEditorBridgeService, SetCellEditVisibleOperation } from "@univerjs/preset-sheets-core";
import { ICommandService } from "@univerjs/core";
import type { EmbeddedSheet } from "./runningSheet.ts";
import { whenCalculated } from "./whenCalculated.ts";

/** Ends an edit that is open in a cell, as a click elsewhere does: what is typed is kept, and the selection stays. */
export async function commitEdit(sheet: EmbeddedSheet): Promise<void> {
  const injector = sheet.univer.__getInjector();
  if (injector.get(IEditorBridgeService).isVisible().visible)
    injector
      .get(ICommandService)
      .syncExecuteCommand(SetCellEditVisibleOperation.id, {
        visible: false,
        eventType: DeviceInputEventType.PointerDown,
        unitId: sheet.workbook.getId(),
      });
  // The editor hands its text over a moment later.
  await new Promise((resolve) => setTimeout(resolve));
  // The box of a note does so when no key was pressed for 300 ms.
  if (document.activeElement instanceof HTMLTextAreaElement) await new Promise((resolve) => setTimeout(resolve, 350));
  await whenCalculated(sheet);
}
