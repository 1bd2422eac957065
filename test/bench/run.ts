import { spawn } from "node:child_process";
import { readdirSync } from "node:fs";
import { text } from "node:stream/consumers";
import type { Row } from "./row.ts";

// `npm run bench`: every *.bench.ts beside this file, or those whose name holds a word of the command line. Each exports `bench(): Promise<Row[]>`.
const wanted = process.argv.slice(2);
const files = readdirSync(import.meta.dirname)
  .filter((file) => file.endsWith(".bench.ts") && (wanted.length === 0 || wanted.some((word) => file.includes(word))))
  .sort();

/** What the whole run may take. */
const SECONDS = 300;
/** The second has a process of its own beside the first, which counts but its own processor time: bytes are the same on a busy machine. */
const [FIRST, BESIDE] = ["cutting.bench.ts", "memory.bench.ts"];

let missed = files.length === 0 ? 1 : 0;
const print = ({ name, ratio, what, most }: Row): void => {
  if (ratio > most) missed++;
  const target = ratio <= most ? `ahead of ${most}` : `BEHIND ${most}`;
  console.log(`  ${ratio.toFixed(3).padStart(8)}  ${name}, ${target}: ${what}`);
};
const run = async (file: string): Promise<void> => {
  const before = performance.now();
  const { bench } = (await import(`./${file}`)) as { bench: () => Promise<Row[]> };
  const rows = await bench();
  console.log(`\n${file}, ${((performance.now() - before) / 1000).toFixed(0)} s`);
  rows.forEach(print);
};
const runBeside = async (file: string): Promise<void> => {
  const child = spawn(process.execPath, [...process.execArgv, import.meta.filename, file], {
    stdio: ["ignore", "pipe", "inherit"],
  });
  const ended = new Promise<number | null>((resolve) => child.on("close", resolve));
  process.stdout.write(await text(child.stdout));
  if ((await ended) !== 0) missed++;
};
const together = files.includes(FIRST) && files.includes(BESIDE);
for (const file of files)
  if (together && file === FIRST) await Promise.all([runBeside(BESIDE), run(FIRST)]);
  else if (!together || file !== BESIDE) await run(file);
const seconds = performance.now() / 1000;
if (wanted.length === 0) {
  console.log("\nall");
  print({ name: "whole run", ratio: seconds / SECONDS, most: 1, what: `over 5 minutes; ${seconds.toFixed(0)} s` });
}
process.exitCode = missed === 0 ? 0 : 1;
