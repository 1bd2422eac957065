import { build } from "esbuild";
import { rm } from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { embeddedAliases } from "./embeddedAliases.ts";
import { ROOT } from "./root.ts";

/** Loads a module that holds the embedded sheet: its parts do not load in Node one by one, so all of it is bundled first. */
export async function loadBundled<Module>(entry: string): Promise<Module> {
  // Under node_modules, so that a test runner loads it as it is.
  const outfile = join(ROOT, "node_modules/.cache/longpoint", `bundled-${process.pid}-${Date.now()}.mjs`);
  await build({
    entryPoints: [join(ROOT, entry)],
    outfile,
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    logLevel: "error",
    loader: { ".css": "empty" },
    alias: embeddedAliases(ROOT),
    banner: { js: 'import { createRequire } from "node:module"; const require = createRequire(import.meta.url);' },
  });
  try {
    return (await import(/* @vite-ignore */ pathToFileURL(outfile).href)) as Module;
  } finally {
    await rm(outfile);
  }
}
