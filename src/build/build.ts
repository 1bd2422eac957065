import { copyFileSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
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

/** Most bytes of the pane's script and style after gzip at first view, Office.js aside. */
export const BUDGET = 140_000;

/** Most bytes after gzip of all that the pane loads on demand. */
export const LATER_BUDGET = 60_000;

/** The pane's bytes after gzip: at first view, and what is loaded on demand. */
export interface PaneSize {
  readonly first: number;
  readonly later: number;
}

/** Where the built add-in is; the bench is beside it, for it is not published with it. */
export const EXCEL = "dist/excel";

/** How it is built: see excelMetadata for `sync`; `maps` says beside each script what it is made of. */
export interface BuildOptions {
  readonly sync?: boolean;
  readonly maps?: boolean;
}

/** Builds the add-in for an address into a folder: what stands there can be put on any web server as it is. Gives the size of its pane. */
export async function build(
  base: string,
  folder = EXCEL,
  { sync = false, maps = false }: BuildOptions = {},
): Promise<PaneSize> {
  rmSync(folder, { recursive: true, force: true });
  writeParts(base, folder, sync);
  await bundle(excelWebpack(folder, maps ? "maps" : "production"));
  const size = paneSize(folder);
  if (size.first > BUDGET)
    throw new Error(`The pane has grown to ${size.first} bytes after gzip at first view; ${BUDGET} at most.`);
  if (size.later > LATER_BUDGET)
    throw new Error(
      `What the pane loads on demand has grown to ${size.later} bytes after gzip; ${LATER_BUDGET} at most.`,
    );
  return size;
}

function paneSize(folder: string): PaneSize {
  const sum = (files: readonly string[]) =>
    files.reduce((total, file) => total + gzipSync(readFileSync(join(folder, file)), { level: 9 }).length, 0);
  const later = readdirSync(folder).filter((file) => /^pane\..+\.(js|css)$/.test(file));
  return { first: sum(["pane.js", "pane.css"]), later: sum(later) };
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
  for (const page of ["excel/pane.html", "excel/drawing.html", "packet/print.html"])
    copyFileSync(join("src/pages", page), join(folder, basename(page)));
  writeFileSync(join(folder, "functions.json"), `${JSON.stringify(excelMetadata(functions, base, sync), null, 1)}\n`);
  writeHelp(folder, functions);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  try {
    const args = process.argv.slice(2);
    const base = excelAddress(args);
    // A preview of Excel's: see excelMetadata.
    const size = await build(base, EXCEL, { sync: args.includes("sync") });
    const kB = (bytes: number) => (bytes / 1000).toFixed(1);
    console.log(
      `The Excel add-in for ${base} is in ${EXCEL}/: ${functions.length} functions, pane ${kB(size.first)} kB after gzip (at most ${BUDGET / 1000}) and ${kB(size.later)} on demand (at most ${LATER_BUDGET / 1000}).`,
    );
  } catch (error) {
    console.error((error as Error).message);
    process.exitCode = 1;
  }
}
