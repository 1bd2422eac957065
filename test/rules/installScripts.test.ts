import { readFileSync } from "node:fs";
import { expect, it } from "vitest";

const read = (file: string) => JSON.parse(readFileSync(file, "utf8"));

/** A script of a package runs with all that its user may do: each is looked at, then allowed or refused in package.json, with the reason in DEVELOPERS.md. */
it("every package with an install script is allowed or refused by name, and the reason is written down", () => {
  const packages: Record<string, { hasInstallScript?: true }> = read("package-lock.json").packages;
  const withScript = Object.keys(packages)
    .filter((path) => packages[path]!.hasInstallScript)
    .map((path) => path.replace(/.*node_modules\//, ""));
  expect(Object.keys(read("package.json").allowScripts).sort()).toEqual([...new Set(withScript)].sort());
  const note = readFileSync("DEVELOPERS.md", "utf8");
  for (const name of withScript) expect(note).toContain(`${name} (`);
});
