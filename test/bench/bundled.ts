import { build } from "esbuild";
import { runInThisContext } from "node:vm";
import { ROOT } from "../../src/build/root.ts";

interface Bundled {
  readonly functions: typeof import("../../functions/index.ts").functions;
  readonly call: typeof import("../../src/registry/call.ts").call;
}

/** The worksheet functions as the built pages have them: bundled and minified. What runs a bench from its sources hangs a name on every function that is made, which costs up to a third more. */
export async function bundled(): Promise<Bundled> {
  const { outputFiles } = await build({
    stdin: {
      contents: `export { functions } from "./functions/index.ts"; export { call } from "./src/registry/call.ts";`,
      resolveDir: ROOT,
    },
    bundle: true,
    minify: true,
    write: false,
    format: "iife",
    globalName: "bundled",
    target: "es2022",
    logLevel: "error",
  });
  return runInThisContext(`${outputFiles[0]!.text};bundled`) as Bundled;
}
