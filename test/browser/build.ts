import { build, EXCEL } from "../../src/build/build.ts";
import { buildBenchIfStale } from "../../src/build/buildBench.ts";
import { DEV_ADDRESS } from "../../src/build/excelAddress.ts";
import { isStale } from "../../src/build/isStale.ts";
import { findBrowser } from "./findBrowser.ts";

/** Gets the browser, once for all files that run side by side, and builds what it opens, if that is not there or older than its sources. */
export default async function prepare(): Promise<void> {
  await findBrowser();
  await buildBenchIfStale();
  // Its last file: a build that failed half-way is no build.
  if (await isStale(`${EXCEL}/pane.js`)) await build(DEV_ADDRESS);
}
