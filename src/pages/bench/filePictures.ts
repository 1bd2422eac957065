import type { EmbeddedSheet } from "../../hosts/embedded/runningSheet.ts";
import type { Original } from "../../xlsx/book.ts";
import type { Picture } from "../../xlsx/carry/pictures.ts";

type OfFile = ReadonlyMap<string, readonly Picture[]>;

/** The pictures of a file that is kept with its job; none where their parts are broken. */
export async function picturesOf({ bytes }: Original): Promise<OfFile> {
  const [{ picturesIn }, { Parts }] = await Promise.all([
    import("../../xlsx/carry/pictures.ts"),
    import("../../xlsx/carry/parts.ts"),
  ]);
  try {
    return picturesIn(new Parts(bytes)).sheets;
  } catch {
    return new Map();
  }
}

/** Shows a file's pictures on its sheets; a file without any loads nothing for it. */
export async function showPictures(sheet: EmbeddedSheet, file: string, pictures: OfFile): Promise<void> {
  if (pictures.size === 0) return;
  const live = await import("../../hosts/embedded/live/pictures.ts");
  live.showPictures(sheet, file, pictures);
}
