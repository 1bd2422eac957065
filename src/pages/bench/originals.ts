import type { Book, Original } from "../../xlsx/book.ts";

/** The files that sheets were opened from, each by the name that it got here. */
export class Originals {
  readonly #kept = new Map<string, Original>();
  readonly #files = new Map<string, File>();

  get(file: string): Original | null {
    return this.#kept.get(file) ?? null;
  }

  /** @param disk the file as the browser handed it over, to see later whether it was changed there. */
  keep(file: string, original: Original, disk?: File): void {
    this.#kept.set(file, original);
    if (disk) this.#files.set(file, disk);
  }

  /** The name of a file that was changed on the disk since it was opened, or moved away; null where it is as it was. */
  async changedOnDisk(file: string): Promise<string | null> {
    const disk = this.#files.get(file);
    if (!disk) return null;
    try {
      await disk.slice(0, 1).arrayBuffer();
      return null;
    } catch {
      return disk.name;
    }
  }
}

/** The file that a book's sheets were opened from, by the name that it got here; null for a book that was made here. */
export function fileOf({ sheets }: Book): string | null {
  return sheets.find(({ from }) => from)?.from?.file ?? null;
}
