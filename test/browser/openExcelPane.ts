import { build } from "esbuild";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { ADDRESS, OFFICE } from "../hosts/office/loadOffice.ts";
import type { Opened } from "./open.ts";
import { open } from "./open.ts";

const VIEW = { viewport: { width: 360, height: 900 } };

/** Opens the pane of the Excel build as it is built, with a strict stand-in for Excel in the place of Office.js. */
export async function openExcelPane(): Promise<Opened> {
  const opened = await open("excel", "pane.html", VIEW, { [`${ADDRESS}office.js`]: await bundled("officeStandIn.ts") });
  await opened.page.locator("#pane .lp").waitFor();
  return opened;
}

/** Opens the same on the vendor's own office.js, with a small Excel beneath it, as in its webview on Windows. */
export async function openOfficePane(): Promise<Opened> {
  const part = (address: string) => {
    const file = join(OFFICE, new URL(address).pathname.replace(new URL(ADDRESS).pathname, ""));
    return existsSync(file) ? readFileSync(file, "utf8") : null;
  };
  const opened = await open("excel", "pane.html", VIEW, { [`${ADDRESS}**`]: part }, await bundled("officeBeneath.ts"));
  await opened.page.locator("#pane .lp").waitFor();
  return opened;
}

async function bundled(file: string): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [join(import.meta.dirname, file)],
    bundle: true,
    write: false,
    format: "iife",
    target: "es2022",
    logLevel: "error",
  });
  return outputFiles[0]!.text;
}
