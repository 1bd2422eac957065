import type { BookSheet } from "../../xlsx/book.ts";
import type { ReadFile } from "../../xlsx/readBook.ts";
import type { ReadAsk, ReadPart } from "../../xlsx/readWorker.ts";

/** Reads a workbook's file beside the page, which goes on meanwhile. Rejects with the reason in words, or with the signal's. */
export function readFile(asked: ReadAsk, signal?: AbortSignal): Promise<ReadFile> {
  signal?.throwIfAborted();
  const worker = new Worker(new URL("../../xlsx/readWorker.ts", import.meta.url), { name: "reader" });
  return new Promise<ReadFile>((resolve, reject) => {
    signal?.addEventListener("abort", () => reject(signal.reason as Error));
    worker.addEventListener("error", () => reject(new Error("The page's own part that reads files did not load.")));
    let read: ReadFile | null = null;
    const rows: BookSheet["rows"][number][][] = [];
    worker.addEventListener("message", ({ data }: MessageEvent<ReadPart>) => {
      if ("fault" in data) reject(new Error(data.fault));
      else if ("book" in data) read = data;
      else if ("rows" in data) (rows[data.sheet] ??= []).push(...data.rows);
      else if (read)
        resolve({
          ...read,
          book: { ...read.book, sheets: read.book.sheets.map((sheet, i) => ({ ...sheet, rows: rows[i] ?? [] })) },
        });
    });
    worker.postMessage(asked);
  }).finally(() => worker.terminate());
}
