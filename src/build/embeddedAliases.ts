import { join } from "node:path";

/**
 * What a bundler must replace in a bundle that holds the embedded sheet: its reader of typed numbers (see numberTexts.ts), what its page
 * brings along and never uses, and what it needs later.
 */
export function embeddedAliases(root: string): Record<string, string> {
  const own = (name: string) => join(root, "src/hosts/embedded/replaced", name);
  return {
    numfmt: own("numberTexts.ts"),
    "numfmt-original": join(root, "node_modules/numfmt/lib/index.js"),
    "@univerjs/sheets-formula/locale/en-US": own("formulaWords.ts"),
    "formula-words-original": join(root, "node_modules/@univerjs/sheets-formula/lib/es/locale/en-US.js"),
    "cjk-regex": own("cjkRegex.ts"),
    "franc-min": own("franc.ts"),
    "opentype.js": own("opentype.ts"),
  };
}
