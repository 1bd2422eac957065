import { loadBundled } from "../../../src/build/loadBundled.ts";

/** The headless sheet as one module. Everything they share must come out of this bundle. */
export async function bundled(): Promise<typeof import("./headless.ts")> {
  return loadBundled<typeof import("./headless.ts")>("test/hosts/embedded/headless.ts");
}
