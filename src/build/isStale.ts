import { readdir, stat } from "node:fs/promises";
import { join } from "node:path";
import { ROOT } from "./root.ts";

// What the pages are made of.
const SOURCES = ["src", "functions", "samples", "manifest", "package-lock.json"];

/** Whether a built file is missing, or older than anything the pages are made of. */
export async function isStale(file: string): Promise<boolean> {
  const built = await stat(file).then(
    ({ mtimeMs }) => mtimeMs,
    () => 0,
  );
  return built === 0 || built < (await newest(SOURCES.map((name) => join(ROOT, name))));
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
