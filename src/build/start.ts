import { BENCH, buildBenchIfStale } from "./buildBench.ts";
import { openBrowser } from "./openBrowser.ts";
import { serve } from "./serve.ts";

const START = performance.now();
console.log("Longpoint: looking whether the page is built ...");
if (await buildBenchIfStale()) console.log(`Built it in ${Math.round((performance.now() - START) / 1000)} s.`);

const { url, close } = await serve(BENCH);
console.log(`Longpoint is at ${url}  (Ctrl+C stops it)`);
if (!process.env["CI"] && !process.argv.includes("--no-open")) openBrowser(url);

for (const signal of ["SIGINT", "SIGTERM"] as const)
  process.once(signal, () => {
    void close().then(() => process.exit(0));
  });
