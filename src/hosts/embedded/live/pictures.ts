import { ICommandService } from "@univerjs/core";
import {
  DRAWING_OBJECT_LAYER_INDEX,
  Image,
  IRenderManagerService,
  SheetSkeletonManagerService,
} from "@univerjs/preset-sheets-core";
import { Lines, MOST } from "../../../xlsx/carry/moved.ts";
import type { Corner, Picture } from "../../../xlsx/carry/pictures.ts";
import { originOf } from "../followedLines.ts";
import type { EmbeddedSheet } from "../runningSheet.ts";

type OfFile = ReadonlyMap<string, readonly Picture[]>;

const files = new WeakMap<EmbeddedSheet, Map<string, OfFile>>();

/**
 * Shows a file's pictures on the sheets that come from it, each at its cells wherever these have gone. They cannot be moved here, and the file
 * keeps them as they are.
 *
 * The sheet's own plug-in for drawings is three times as much code as all else that lives here, and would let a user change what is not written.
 */
export function showPictures(sheet: EmbeddedSheet, file: string, pictures: OfFile): void {
  if (!sheet.onPage) return;
  let known = files.get(sheet);
  if (!known) {
    files.set(sheet, (known = new Map()));
    drawWhenChanged(sheet, known);
  }
  known.set(file, pictures);
  draw(sheet, known);
}

const shown = new WeakMap<EmbeddedSheet, { key: string; images: Image[] }>();

/** Draws anew after everything that may have moved a cell or turned to another sheet; what only fills cells moves none. */
function drawWhenChanged(sheet: EmbeddedSheet, known: ReadonlyMap<string, OfFile>): void {
  let asked = false;
  sheet.univer
    .__getInjector()
    .get(ICommandService)
    .onCommandExecuted(({ id }) => {
      if (asked || !/sheet/.test(id) || /set-range-values|selection|scroll/.test(id)) return;
      asked = true;
      // The sheet lays out its cells first.
      requestAnimationFrame(() => {
        asked = false;
        draw(sheet, known);
      });
    });
}

function draw(sheet: EmbeddedSheet, known: ReadonlyMap<string, OfFile>): void {
  const render = sheet.univer.__getInjector().get(IRenderManagerService).getRenderById(sheet.workbook.getId());
  const skeleton = render?.with(SheetSkeletonManagerService).getCurrentSkeleton();
  if (!render || !skeleton) return;
  const worksheet = sheet.workbook.getActiveSheet().getSheet();
  const origin = originOf(worksheet);
  const pictures = (origin && known.get(origin.file)?.get(origin.sheet)) ?? [];
  const rows = new Lines(origin?.rows ?? null, origin?.marked?.rows ?? 0, MOST.rows);
  const columns = new Lines(origin?.columns ?? null, origin?.marked?.columns ?? 0, MOST.columns);
  const corner = ({ row, column, right, down }: Corner) => {
    const cell = skeleton.getNoMergeCellWithCoordByIndex(
      Math.min(rows.near(row), worksheet.getRowCount() - 1),
      Math.min(columns.near(column), worksheet.getColumnCount() - 1),
    );
    return { left: Math.min(cell.startX + right, cell.endX), top: Math.min(cell.startY + down, cell.endY) };
  };
  const places = pictures.map(({ from, to }) => {
    const { left, top } = corner(from);
    const end = "row" in to ? corner(to) : { left: left + to.width, top: top + to.height };
    return { left, top, width: Math.max(1, end.left - left), height: Math.max(1, end.top - top) };
  });
  const key = JSON.stringify([worksheet.getSheetId(), places]);
  const before = shown.get(sheet);
  if (before?.key === key) return;
  before?.images.forEach((image) => image.dispose());
  const images = pictures.map(({ data }, i) => {
    const image = new Image(`longpoint-picture-${i}`, {
      ...places[i]!,
      url: data,
      evented: false,
      success: () => render.scene.makeDirty(),
    });
    render.scene.addObject(image, DRAWING_OBJECT_LAYER_INDEX);
    return image;
  });
  shown.set(sheet, { key, images });
  render.scene.makeDirty();
}
