import { loadBundled } from "../../../src/build/loadBundled.ts";

type Headless = typeof import("./headless.ts");

let loaded: Promise<Headless> | undefined;

/** The headless sheet as one module, made once for all the files of a worker. Everything they share must come out of this bundle. */
export function bundled(): Promise<Headless> {
  return (loaded ??= loadBundled<Headless>("test/hosts/embedded/headless.ts"));
}
