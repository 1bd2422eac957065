import { bookOf } from "../../hosts/embedded/bookOf.ts";
import type { EmbeddedSheet } from "../../hosts/embedded/runningSheet.ts";
import { whenCalculated } from "../../hosts/embedded/whenCalculated.ts";
import type { Book } from "../../xlsx/book.ts";
import { fileOf, type Originals } from "./originals.ts";

/** A file ready to be saved, and what there is to say of it. */
export interface SavedFile {
  readonly bytes: Uint8Array;
  readonly name: string;
  readonly sheets: number;
  /** The opened file that it was written into, by the name that it got here. */
  readonly from: string | null;
  /** What it does not keep, in words. */
  readonly left: readonly string[];
  /** Cells that a program without this add-in shows as #NAME?. */
  readonly ours: number;
  /** Cells whose functions are not known here: the file has the values that they had when it was opened. */
  readonly unknown: number;
  /** The opened file's name, where it was changed on the disk since. */
  readonly changedOnDisk: string | null;
}

/**
 * The sheets as they stand, as a file: written into the one that they were opened from, or as a new one.
 *
 * @param plain every formula of ours as its value, tables as plain cells.
 */
export async function fileToSave(
  sheet: EmbeddedSheet,
  originals: Originals,
  title: string,
  plain = false,
): Promise<SavedFile> {
  const [{ writeBook }, { writeInto }, { cellsOfOurs, plainBook }] = await Promise.all([
    import("../../xlsx/writeBook.ts"),
    import("../../xlsx/carry/writeInto.ts"),
    import("../../xlsx/plainBook.ts"),
  ]);
  await whenCalculated(sheet);
  const { book: whole, left } = bookOf(sheet, title);
  const book = plain ? plainBook(whole) : whole;
  const file = fileOf(book);
  const original = file === null ? null : originals.get(file);
  const said = {
    sheets: book.sheets.length,
    from: original ? file : null,
    ours: cellsOfOurs(book),
    changedOnDisk: file === null ? null : await originals.changedOnDisk(file),
  };
  const name = (ending: string) => `${fileName(title)}${plain ? " (plain values)" : ""}.${ending}`;
  if (!original) {
    const gone = file === null ? [] : ["what its file had besides, for this browser does not keep that file any more"];
    return { ...said, bytes: await writeBook(book), name: name("xlsx"), left: [...left, ...gone], unknown: 0 };
  }
  const { bytes, lost, ending } = writeInto(original, book);
  return {
    ...said,
    bytes,
    name: name(ending),
    left: [...left, ...lost],
    unknown: bytes === original.bytes ? 0 : original.unknown,
  };
}

/** How many cells show an error here and have a value in the file: their functions are not known here. */
export function unknownCells(as: Book, { sheets }: Book): number {
  const failed = (value: unknown) => typeof value === "string" && value.startsWith("#");
  return sheets.reduce(
    (sum, { rows }, i) =>
      sum +
      rows.reduce(
        (cells, row, r) =>
          cells +
          row.filter((cell, c) => {
            const here = as.sheets[i]?.rows[r]?.[c];
            return (
              cell && cell.value !== null && here?.formula !== undefined && failed(here.value) && !failed(cell.value)
            );
          }).length,
        0,
      ),
    0,
  );
}

/** Hands a file over to the browser, which puts it where its user keeps what it loads. */
export function download({ bytes, name }: Pick<SavedFile, "bytes" | "name">, type: string): void {
  const address = URL.createObjectURL(new Blob([bytes.slice()], { type }));
  Object.assign(document.createElement("a"), { href: address, download: name }).click();
  // The browser has taken hold of it by then.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** A title as a file may be named on any system. */
function fileName(title: string): string {
  return (
    title
      .replace(/[\\/:*?"<>|\u0000-\u001f]+/g, " ")
      .replace(/\s+/g, " ")
      .trim()
      .slice(0, 80) || "Longpoint"
  );
}
