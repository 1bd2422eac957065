import { functions } from "../../functions/index.ts";
import { samples } from "../../samples/index.ts";
import { withPlainSheets } from "../../samples/sample.ts";
import { calculated } from "../hosts/embedded/calculated.ts";
import { writeBook } from "../xlsx/writeBook.ts";

/** The files of all samples by name: every formula with its result, and each sheet once more as plain values. Must be bundled to run in Node. */
export async function sampleBytes(): Promise<ReadonlyMap<string, Uint8Array>> {
  const files = new Map<string, Uint8Array>();
  for (const { name, book } of samples)
    files.set(name, await writeBook(withPlainSheets(await calculated(book, functions))));
  return files;
}
