import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const passedOver = new Set([
  ".git",
  ...readFileSync(".gitignore", "utf8")
    .split("\n")
    .map((line) => line.trim().replace(/\/$/, ""))
    .filter(Boolean),
]);

/** The project's own files below a folder, as paths from the project's root with "/" between; what git ignores is left out. */
export function projectFiles(folder = ".", ending = ""): string[] {
  return readdirSync(folder, { withFileTypes: true })
    .flatMap((entry) => {
      const path = join(folder, entry.name).replaceAll("\\", "/");
      if (passedOver.has(entry.name)) return [];
      if (entry.isDirectory()) return projectFiles(path, ending);
      return path.endsWith(ending) ? [path] : [];
    })
    .sort();
}
