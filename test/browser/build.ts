import { buildBenchIfStale } from "../../src/build/buildBench.ts";
import { findBrowser } from "./findBrowser.ts";

/** Gets the browser, once for all files that run side by side, and builds what it opens, if that is not there or older than its sources. */
export default async function build(): Promise<void> {
  await findBrowser();
  await buildBenchIfStale();
}
