import { readdirSync, readFileSync } from "node:fs";
import { readBook } from "../../src/xlsx/readBook.ts";
import { UnreadableFile } from "../../src/xlsx/unreadableFile.ts";
import { random, type Attack } from "./attack.ts";

/** Sample workbooks with bytes changed, cut off or doubled: they open, or are refused in words. */
export const files: Attack = {
  name: "broken workbook files",
  async run(seed, more) {
    const samples = readdirSync("samples")
      .filter((name) => name.endsWith(".xlsx"))
      .map((name) => readFileSync(`samples/${name}`));
    const pick = random(seed);
    const found: string[] = [];
    let tried = 0;
    for (; more() && found.length < 5; tried++) {
      const bytes = broken(samples[pick(samples.length)]!, pick);
      try {
        await readBook(bytes, "attack");
      } catch (error) {
        if (!(error instanceof UnreadableFile)) found.push(`seed ${seed}, file ${tried}: ${String(error)}`);
      }
    }
    return { tried, found };
  },
};

function broken(file: Uint8Array, pick: (most: number) => number): Uint8Array {
  const bytes = new Uint8Array(file);
  const at = pick(bytes.length);
  switch (pick(4)) {
    case 0:
      return bytes.slice(0, at);
    case 1:
      return new Uint8Array([...bytes.slice(at), ...bytes.slice(0, at)]);
    default:
      for (let i = 0; i <= pick(20); i++) bytes[pick(bytes.length)] = pick(256);
      return bytes;
  }
}
