import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { gunzipSync, gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import type { Answers, Block } from "./answers.ts";

/** Set LONGPOINT_SNAPSHOT=write where texts, drawings or the search of orders were changed on purpose. */
export const writing = process.env["LONGPOINT_SNAPSHOT"] === "write";
const AT_ONCE = 25;

/** Twelve signs that tell one text from another. */
export const hashOf = (text: string): string => createHash("sha256").update(text).digest("hex").slice(0, 12);

/** Roofs that must answer as they did when the file of that name was written. */
export function answerAsTheyDid(
  file: string,
  all: readonly Block[],
  answersOf: (block: Block, index: number) => Promise<Answers>,
): void {
  const place = join(import.meta.dirname, `${file}.json.gz`);
  describe(`${all.length} ${file} roofs answer as they did`, () => {
    if (writing) {
      it("and are written", async () => {
        const answers: Answers[] = [];
        for (const [i, block] of all.entries()) answers.push(await answersOf(block, i));
        writeFileSync(place, gzipSync(JSON.stringify(answers, shorter), { level: 9 }));
      }, 600_000);
      return;
    }
    const kept: Answers[] = existsSync(place) ? JSON.parse(gunzipSync(readFileSync(place)).toString()) : [];
    it("are all kept", () => expect(kept).toHaveLength(all.length));
    for (let from = 0; from < all.length; from += AT_ONCE) {
      it(`${from + 1} to ${from + AT_ONCE}`, async () => {
        const differing: string[] = [];
        for (const [n, block] of all.slice(from, from + AT_ONCE).entries())
          differing.push(...differences(await answersOf(block, from + n), kept[from + n]!, from + n));
        expect(differing.slice(0, 12)).toEqual([]);
      });
    }
  });
}

/** A number to what is compared of it, and a little more. */
const shorter = (_: string, value: unknown) => (typeof value === "number" ? Number(value.toPrecision(12)) : value);

/** Equal, a number to 1e-9 of its size. */
function same(a: unknown, b: unknown, most = 1e-9): boolean {
  if (typeof a === "number" && typeof b === "number") return Math.abs(a - b) <= most * Math.max(1, Math.abs(b));
  if (Array.isArray(a) && Array.isArray(b)) return a.length === b.length && a.every((x, i) => same(x, b[i], most));
  return a === b;
}

function differences(now: Answers, then: Answers, index: number): string[] {
  const found: string[] = [];
  const names = new Set([...Object.keys(now.tables), ...Object.keys(then.tables)]);
  for (const name of names) {
    const [a, b] = [now.tables[name], then.tables[name]];
    if (Array.isArray(a) && Array.isArray(b) && a.length === b.length) {
      a.forEach((row, i) => {
        if (!same(row, b[i]))
          found.push(`roof ${index + 1}, ${name} row ${i}: ${JSON.stringify(row)} was ${JSON.stringify(b[i])}`);
      });
    } else if (!same(a, b))
      found.push(`roof ${index + 1}, ${name}: ${JSON.stringify(a)} was ${JSON.stringify(b)}`.slice(0, 400));
  }
  const drawings = new Set([...Object.keys(now.drawings), ...Object.keys(then.drawings)]);
  for (const name of drawings) {
    const [a, b] = [now.drawings[name], then.drawings[name]];
    const close =
      a !== undefined &&
      b !== undefined &&
      a.shape === b.shape &&
      Math.abs(a.sum - b.sum) <= 0.01 * a.numbers &&
      Math.abs(a.weighted - b.weighted) <= 0.5 * a.numbers;
    if (!close) found.push(`roof ${index + 1}, drawing ${name}: ${JSON.stringify(a)} was ${JSON.stringify(b)}`);
  }
  return found;
}
