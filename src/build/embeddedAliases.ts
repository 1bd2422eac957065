import { join } from "node:path";

/** What a bundler must replace in a bundle that holds the embedded sheet: its reader of typed numbers (see numberTexts.ts). */
export function embeddedAliases(root: string): Record<string, string> {
  return {
    numfmt: join(root, "src/hosts/embedded/numberTexts.ts"),
    "numfmt-original": join(root, "node_modules/numfmt/lib/index.js"),
  };
}
