import { ICommandService, LocaleService, LocaleType, generateRandomId, mergeLocales } from "@univerjs/core";
import { SheetsNoteModel, UniverSheetsNotePlugin, UpdateNoteMutation } from "@univerjs/sheets-note";
import { UniverSheetsNoteUIPlugin } from "@univerjs/sheets-note-ui";
import "@univerjs/sheets-note-ui/lib/index.css";
import words from "@univerjs/sheets-note-ui/locale/en-US";
import type { Note } from "../../../xlsx/book.ts";
import type { EmbeddedSheet } from "../runningSheet.ts";
import type { LivePart } from "./livePart.ts";
import { startPlugins } from "./startPlugins.ts";

/** In pixels. */
const BOX = { width: 200, line: 20, letters: 28, most: 220 };

/** Puts notes into a running sheet: each is shown beside its cell when the cell is pointed at or chosen, and typed over there. */
export async function startNotes(sheet: EmbeddedSheet): Promise<LivePart<Note>> {
  const injector = sheet.univer.__getInjector();
  injector.get(LocaleService).load({ [LocaleType.EN_US]: mergeLocales(words) });
  await startPlugins(sheet, [[UniverSheetsNotePlugin], [UniverSheetsNoteUIPlugin]], UpdateNoteMutation.id);
  const commands = injector.get(ICommandService);
  const model = injector.get(SheetsNoteModel);
  keepTyped(model);
  return {
    put(unitId, sheetId, notes) {
      for (const { row, column, text, shown } of notes) {
        const lines = text.split("\n").reduce((sum, line) => sum + 1 + Math.floor(line.length / BOX.letters), 1);
        const height = Math.min(BOX.most, lines * BOX.line);
        const note = { id: generateRandomId(6), row, col: column, note: text, width: BOX.width, height, show: shown };
        commands.syncExecuteCommand(
          UpdateNoteMutation.id,
          { unitId, sheetId, row, col: column, note },
          { onlyLocal: true },
        );
      }
    },
    of(worksheet) {
      const all = model.getSheetNotes(worksheet.getUnitId(), worksheet.getSheetId())?.values() ?? [];
      return (
        [...all]
          // A box that was opened and left empty is none.
          .filter(({ note }) => note !== "")
          .map(({ row, col, note, show }) => ({ row, column: col, text: note, ...(show && { shown: true as const }) }))
          .sort((a, b) => a.row - b.row || a.column - b.column)
      );
    },
  };
}

/**
 * Keeps what was typed into a note where its row is deleted and the deletion undone.
 *
 * In 0.25.1 what follows a note's row holds on to the note as it was first, and undo puts that back.
 */
function keepTyped(model: SheetsNoteModel): void {
  const update = model.updateNote.bind(model);
  model.updateNote = (unitId, sheetId, row, col, note, silent) => {
    const first = model.getNote(unitId, sheetId, { noteId: note.id, row, col });
    update(unitId, sheetId, row, col, note, silent);
    const all = model.getSheetNotes(unitId, sheetId);
    const now = first && all?.get(first.id);
    if (now && first.row === row && first.col === col) all!.set(first.id, Object.assign(first, now));
  };
}
