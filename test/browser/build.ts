import { buildBenchIfStale } from "../../src/build/buildBench.ts";

/** Builds what the browser tests open, if it is not there or older than its sources. */
export default async function build(): Promise<void> {
  await buildBenchIfStale();
}
