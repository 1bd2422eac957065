import { build } from "esbuild";
import { join } from "node:path";
import type { Opened } from "./open.ts";
import { open } from "./open.ts";

const OFFICE = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";

/** Opens the pane of the Excel build as it is built, with a strict stand-in for Excel in the place of Office.js. */
export async function openExcelPane(): Promise<Opened> {
  const { outputFiles } = await build({
    entryPoints: [join(import.meta.dirname, "officeStandIn.ts")],
    bundle: true,
    write: false,
    format: "iife",
    target: "es2022",
    logLevel: "error",
  });
  const opened = await open(
    "",
    "pane.html",
    { viewport: { width: 360, height: 900 } },
    { [OFFICE]: outputFiles[0]!.text },
  );
  await opened.page.locator("#pane .lp").waitFor();
  return opened;
}
