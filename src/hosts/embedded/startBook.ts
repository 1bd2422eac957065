import type { IWorkbookData } from "@univerjs/core";
import { fileWords } from "./fileWords.ts";
import { isSample, sampleFile, SAMPLES } from "./sampleFiles.ts";
import { sampleJob } from "./sampleJob.ts";
import { workbookData } from "./workbookData.ts";

/** The workbook that the page starts with, and what there is to say about it. */
export interface Start {
  readonly data: Partial<IWorkbookData>;
  readonly title: string;
  readonly says: string;
}

/** The sample that the page's address asks for (?sample=bid), else the bench's own job. */
export async function startBook(search: string): Promise<Start> {
  const name = new URLSearchParams(search).get("sample");
  const own = (says: string): Start => ({ data: workbookData(sampleJob), title: sampleJob.title, says });
  if (name === null) return own("");
  if (!isSample(name)) return own(fileWords.noSample(name.slice(0, 40), Object.keys(SAMPLES)));
  try {
    const { readBook } = await import("../../xlsx/readBook.ts");
    const { book, left } = await readBook(await sampleFile(name), name);
    return { data: workbookData(book), title: book.title, says: fileWords.started(book.title, left) };
  } catch (error) {
    return own(fileWords.notOpened(name, (error as Error).message));
  }
}
