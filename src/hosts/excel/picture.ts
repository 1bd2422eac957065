import { address } from "../address.ts";
import { inExcel } from "./inExcel.ts";
import { POINTS_PER_PIXEL } from "./pointsPerPixel.ts";
import { sheetNamed } from "./sheets.ts";

type Size = { width: number; height: number };

/**
 * Puts a picture with its corner at a cell; one put there before goes.
 *
 * Excel takes PNG and JPEG in base64 (typings, ShapeCollection.addImage), so the picture goes in as PNG.
 */
export async function picture(
  toPng: (svg: string, size: Size) => Promise<string>,
  sheet: string,
  row: number,
  column: number,
  svg: string,
  size: Size,
): Promise<void> {
  const png = await toPng(svg, size);
  await inExcel(async (context) => {
    const worksheet = await sheetNamed(context, sheet);
    const cell = worksheet.getRangeByIndexes(row, column, 1, 1).load("left,top");
    worksheet.shapes.load("items/name");
    await context.sync();
    const name = `Longpoint ${address(sheet, row, column)}`;
    for (const shape of worksheet.shapes.items) if (shape.name === name) shape.delete();
    const shape = worksheet.shapes.addImage(png);
    shape.name = name;
    shape.left = cell.left;
    shape.top = cell.top;
    shape.width = size.width * POINTS_PER_PIXEL;
    shape.height = size.height * POINTS_PER_PIXEL;
    await context.sync();
  });
}
