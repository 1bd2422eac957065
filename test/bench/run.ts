import { readdirSync } from "node:fs";
import type { Row } from "./row.ts";

// `npm run bench`: every *.bench.ts beside this file, or those whose name holds a word of the command line. Each exports `bench(): Promise<Row[]>`.
const wanted = process.argv.slice(2);
const files = readdirSync(import.meta.dirname)
  .filter((file) => file.endsWith(".bench.ts") && (wanted.length === 0 || wanted.some((word) => file.includes(word))))
  .sort();

/** What the whole run may take. */
const SECONDS = 300;

let missed = files.length === 0 ? 1 : 0;
const print = ({ name, ratio, what, most }: Row): void => {
  if (ratio > most) missed++;
  const target = ratio <= most ? `ahead of ${most}` : `BEHIND ${most}`;
  console.log(`  ${ratio.toFixed(3).padStart(8)}  ${name}, ${target}: ${what}`);
};
for (const file of files) {
  const before = performance.now();
  const { bench } = (await import(`./${file}`)) as { bench: () => Promise<Row[]> };
  const rows = await bench();
  console.log(`\n${file}, ${((performance.now() - before) / 1000).toFixed(0)} s`);
  rows.forEach(print);
}
const seconds = performance.now() / 1000;
if (wanted.length === 0) {
  console.log("\nall");
  print({ name: "whole run", ratio: seconds / SECONDS, most: 1, what: `over 5 minutes; ${seconds.toFixed(0)} s` });
}
process.exitCode = missed === 0 ? 0 : 1;
