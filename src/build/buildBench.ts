import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { functions } from "../../functions/index.ts";
import { benchConfig } from "./benchConfig.ts";
import { bundle } from "./bundle.ts";
import { compress } from "./compress.ts";
import { isStale } from "./isStale.ts";
import { ROOT } from "./root.ts";
import { writeHelp } from "./writeHelp.ts";
import { writeWorker } from "./writeWorker.ts";

/** Where the built bench page is. */
export const BENCH = join(ROOT, "dist/bench");

/** Builds the bench page into dist/bench, and the help pages beside it. */
async function buildBench(): Promise<void> {
  await bundle(benchConfig(ROOT, BENCH));
  // After the bundle, which empties the folder.
  writeHelp(BENCH, functions);
  writeWorker(BENCH);
  await compress(BENCH);
}

/** Builds the bench page unless it is there and newer than everything it is made of. Says whether it built. */
export async function buildBenchIfStale(): Promise<boolean> {
  if (!(await isStale(join(BENCH, "index.html")))) return false;
  await buildBench();
  return true;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  const start = performance.now();
  await buildBench();
  console.log(`Built the bench page into dist/bench in ${Math.round((performance.now() - start) / 100) / 10} s.`);
}
