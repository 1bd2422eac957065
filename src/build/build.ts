import { copyFileSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { gzipSync } from "node:zlib";
import { functions } from "../../functions/index.ts";
import { excelMetadata } from "../registry/excelMetadata.ts";
import { bundle } from "./bundle.ts";
import { excelAddress, manifestFor } from "./excelAddress.ts";
import { excelWebpack } from "./excelWebpack.ts";

import { writeHelp } from "./writeHelp.ts";

/** Most bytes of the pane's script and style after gzip, Office.js aside. */
export const BUDGET = 140_000;

/** Builds the add-in for an address into a folder: what stands there can be put on any web server as it is. Gives the pane's size after gzip. */
export async function build(base: string, folder = "dist"): Promise<number> {
  writeParts(base, folder);
  await bundle(excelWebpack(folder));
  const size = ["pane.js", "pane.css"].reduce(
    (sum, file) => sum + gzipSync(readFileSync(join(folder, file)), { level: 9 }).length,
    0,
  );
  if (size > BUDGET) throw new Error(`The pane has grown to ${size} bytes after gzip; ${BUDGET} at most.`);
  return size;
}

/** Everything that is not bundled: manifest, icons, page, functions.json, help. */
export function writeParts(base: string, folder: string): void {
  // The help page of a function that is gone must not stay.
  rmSync(join(folder, "help"), { recursive: true, force: true });
  mkdirSync(join(folder, "assets"), { recursive: true });
  writeFileSync(join(folder, "manifest.xml"), manifestFor(readFileSync("manifest/manifest.xml", "utf8"), base));
  for (const icon of readdirSync("manifest").filter((name) => name.endsWith(".png")))
    copyFileSync(join("manifest", icon), join(folder, "assets", icon));
  copyFileSync("src/pages/excel/pane.html", join(folder, "pane.html"));
  writeFileSync(join(folder, "functions.json"), `${JSON.stringify(excelMetadata(functions, base), null, 1)}\n`);
  writeHelp(folder, functions);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  try {
    const base = excelAddress(process.argv.slice(2));
    const size = await build(base);
    console.log(
      `The Excel add-in for ${base} is in dist/: ${functions.length} functions, pane ${(size / 1000).toFixed(1)} kB after gzip (at most ${BUDGET / 1000}).`,
    );
  } catch (error) {
    console.error((error as Error).message);
    process.exitCode = 1;
  }
}
