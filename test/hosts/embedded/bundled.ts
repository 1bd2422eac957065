import { build } from "esbuild";
import { rm } from "node:fs/promises";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { embeddedAliases } from "../../../src/build/embeddedAliases.ts";

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, "../../..");

/** The headless sheet as one module: its parts do not load in Node one by one. Everything they share must come out of this bundle. */
export async function bundled(): Promise<typeof import("./headless.ts")> {
  // Under node_modules, so that the test runner loads it as it is.
  const outfile = join(root, "node_modules/.cache/longpoint", `headless-${process.pid}-${Date.now()}.mjs`);
  await build({
    entryPoints: [join(here, "headless.ts")],
    outfile,
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    logLevel: "error",
    loader: { ".css": "empty" },
    alias: embeddedAliases(root),
    banner: { js: 'import { createRequire } from "node:module"; const require = createRequire(import.meta.url);' },
  });
  try {
    return (await import(/* @vite-ignore */ pathToFileURL(outfile).href)) as typeof import("./headless.ts");
  } finally {
    await rm(outfile);
  }
}
