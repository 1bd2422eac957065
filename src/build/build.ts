import { copyFileSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { gzipSync } from "node:zlib";
import { functions } from "../../functions/index.ts";
import { excelMetadata } from "../registry/excelMetadata.ts";
import { bundle } from "./bundle.ts";
import { excelAddress, manifestFor } from "./excelAddress.ts";
import { excelWebpack } from "./excelWebpack.ts";

import { unifiedManifest } from "./unifiedManifest.ts";
import { writeHelp } from "./writeHelp.ts";

const VERSION = (JSON.parse(readFileSync("package.json", "utf8")) as { version: string }).version;

/** Most bytes of the pane's script and style after gzip, Office.js aside. */
export const BUDGET = 160_000;

/** Where the built add-in is; the bench is beside it, for it is not published with it. */
export const EXCEL = "dist/excel";

/** How it is built: see excelMetadata for `sync`; `maps` says beside each script what it is made of. */
export interface BuildOptions {
  readonly sync?: boolean;
  readonly maps?: boolean;
}

/** Builds the add-in for an address into a folder: what stands there can be put on any web server as it is. Gives the pane's size after gzip. */
export async function build(
  base: string,
  folder = EXCEL,
  { sync = false, maps = false }: BuildOptions = {},
): Promise<number> {
  rmSync(folder, { recursive: true, force: true });
  writeParts(base, folder, sync);
  await bundle(excelWebpack(folder, maps ? "maps" : "production"));
  const size = ["pane.js", "pane.css"].reduce(
    (sum, file) => sum + gzipSync(readFileSync(join(folder, file)), { level: 9 }).length,
    0,
  );
  if (size > BUDGET) throw new Error(`The pane has grown to ${size} bytes after gzip; ${BUDGET} at most.`);
  return size;
}

/** Everything that is not bundled: manifest, icons, page, functions.json, help. */
export function writeParts(base: string, folder: string, sync = false): void {
  mkdirSync(join(folder, "assets"), { recursive: true });
  writeFileSync(
    join(folder, "manifest.xml"),
    manifestFor(readFileSync("manifest/manifest.xml", "utf8"), base, VERSION),
  );
  writeFileSync(join(folder, "manifest.json"), `${JSON.stringify(unifiedManifest(base, VERSION), null, 1)}\n`);
  for (const icon of readdirSync("manifest").filter((name) => name.endsWith(".png")))
    copyFileSync(join("manifest", icon), join(folder, "assets", icon));
  for (const page of ["pane.html", "print.html"]) copyFileSync(join("src/pages/excel", page), join(folder, page));
  writeFileSync(join(folder, "functions.json"), `${JSON.stringify(excelMetadata(functions, base, sync), null, 1)}\n`);
  writeHelp(folder, functions);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  try {
    const args = process.argv.slice(2);
    const base = excelAddress(args);
    // A preview of Excel's: see excelMetadata.
    const size = await build(base, EXCEL, { sync: args.includes("sync") });
    console.log(
      `The Excel add-in for ${base} is in ${EXCEL}/: ${functions.length} functions, pane ${(size / 1000).toFixed(1)} kB after gzip (at most ${BUDGET / 1000}).`,
    );
  } catch (error) {
    console.error((error as Error).message);
    process.exitCode = 1;
  }
}
