import { BENCH, buildBenchIfStale } from "./buildBench.ts";
import { openBrowser } from "./openBrowser.ts";
import type { Served } from "./serve.ts";
import { serve } from "./serve.ts";

// Always the same: a browser keeps the jobs of a page by its address.
const PORT = 4785;

const START = performance.now();
console.log("Longpoint: looking whether the page is built ...");
if (await buildBenchIfStale()) console.log(`Built it in ${Math.round((performance.now() - START) / 1000)} s.`);

const served = await start(portOf(process.argv.slice(2)));
if (served) {
  console.log(`Longpoint is at ${served.url}  (Ctrl+C stops it)`);
  if (!process.env["CI"] && !process.argv.includes("--no-open")) openBrowser(served.url);
  for (const signal of ["SIGINT", "SIGTERM"] as const)
    process.once(signal, () => {
      void served.close().then(() => process.exit(0));
    });
}

async function start(port: number): Promise<Served | null> {
  try {
    return await serve(BENCH, port);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "EADDRINUSE") throw error;
    console.error(`Port ${port} is taken, maybe by Longpoint itself: look at http://127.0.0.1:${port}/ first.
Else stop that program, or choose another port: npm start -- --port ${port + 1}
The browser keeps your jobs by the address: at another port it shows none of them.`);
    process.exitCode = 1;
    return null;
  }
}

/** The port of `--port 4786`, else the usual one. */
function portOf(args: readonly string[]): number {
  const port = Number(args[args.indexOf("--port") + 1]);
  return args.includes("--port") && Number.isInteger(port) && port > 0 && port < 65_536 ? port : PORT;
}
