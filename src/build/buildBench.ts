import { readdir, stat } from "node:fs/promises";
import { dirname, join } from "node:path";
import { argv } from "node:process";
import { fileURLToPath } from "node:url";
import { functions } from "../../functions/index.ts";
import { benchConfig } from "./benchConfig.ts";
import { bundle } from "./bundle.ts";
import { writeHelp } from "./writeHelp.ts";

const ROOT = join(dirname(fileURLToPath(import.meta.url)), "../..");
/** Where the built bench page is. */
export const BENCH = join(ROOT, "dist/bench");

// What the page is made of: changed since the last build, it is built again.
const SOURCES = ["src", "functions", "samples", "package-lock.json"];

/** Builds the bench page into dist/bench, and the help pages beside it. */
export async function buildBench(): Promise<void> {
  await bundle(benchConfig(ROOT, BENCH));
  // After the bundle, which empties the folder.
  writeHelp(BENCH, functions);
}

/** Builds the bench page unless it is there and newer than everything it is made of. Says whether it built. */
export async function buildBenchIfStale(): Promise<boolean> {
  const built = await stat(join(BENCH, "index.html")).then(({ mtimeMs }) => mtimeMs, () => 0);
  if (built && built >= (await newest(SOURCES.map((name) => join(ROOT, name))))) return false;
  await buildBench();
  return true;
}

async function newest(paths: readonly string[]): Promise<number> {
  const times = await Promise.all(
    paths.map(async (path) => {
      const found = await stat(path);
      if (!found.isDirectory()) return found.mtimeMs;
      return newest((await readdir(path)).map((name) => join(path, name)));
    }),
  );
  return Math.max(0, ...times);
}

if (argv[1] === fileURLToPath(import.meta.url)) {
  const start = performance.now();
  await buildBench();
  console.log(`Built the bench page into dist/bench in ${Math.round((performance.now() - start) / 100) / 10} s.`);
}
