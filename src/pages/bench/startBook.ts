import { ferry } from "../../../samples/ferry.ts";
import type { Book } from "../../xlsx/book.ts";
import { fileWords } from "./fileWords.ts";
import { readFile } from "./readFile.ts";
import { isSample, sampleFile, SAMPLES } from "./sampleFiles.ts";

/** The workbook that the page starts with, and what there is to say about it. */
export interface Start {
  readonly book: Book;
  readonly says: string;
}

/** The sample that the page's address asks for (?sample=bid), else the job that has no file. */
export async function startBook(search: string): Promise<Start> {
  const name = new URLSearchParams(search).get("sample");
  const own = (says: string): Start => ({ book: ferry.book, says });
  if (name === null) return own("");
  if (!isSample(name)) return own(fileWords.noSample(name.slice(0, 40), Object.keys(SAMPLES)));
  try {
    const { book, left } = await readFile([await sampleFile(name), name]);
    return { book, says: fileWords.started(book.title, left) };
  } catch (error) {
    return own(fileWords.notOpened(name, (error as Error).message));
  }
}
