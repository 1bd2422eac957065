import { readdirSync } from "node:fs";
import type { Row } from "./row.ts";

// `npm run bench`: every *.bench.ts beside this file, or those whose name holds a word of the command line. Each exports `bench(): Promise<Row[]>`.
const wanted = process.argv.slice(2);
const files = readdirSync(import.meta.dirname)
  .filter((file) => file.endsWith(".bench.ts") && (wanted.length === 0 || wanted.some((word) => file.includes(word))))
  .sort();

let missed = files.length === 0 ? 1 : 0;
for (const file of files) {
  console.log(`\n${file}`);
  const { bench } = (await import(`./${file}`)) as { bench: () => Promise<Row[]> };
  for (const { name, ratio, what, most } of await bench()) {
    const held = most === undefined || ratio <= most;
    if (!held) missed++;
    const target = most === undefined ? "" : held ? `, ahead of ${most}` : `, BEHIND ${most}`;
    console.log(`  ${ratio.toFixed(3).padStart(8)}  ${name}${target}: ${what}`);
  }
}
process.exitCode = missed === 0 ? 0 : 1;
