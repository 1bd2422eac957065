import { createHash } from "node:crypto";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "./root.ts";

/** Files that no page needs to work. */
const ASIDE = /^(sw\.js|licenses\.json|.*\.(map|br|gz))$/;

/** Writes the service worker of a built folder, `sw.js`: the list of its files, and a version that differs where any of them does. */
export function writeWorker(folder: string): void {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(folder.length + 1)
        .replaceAll("\\", "/"),
    )
    .filter((file) => !ASIDE.test(file))
    .sort();
  const hash = createHash("sha256");
  const worker = readFileSync(join(ROOT, "src/pages/offline/serviceWorker.js"), "utf8");
  for (const file of files) hash.update(file).update(readFileSync(join(folder, file)));
  const version = hash.update(worker).digest("hex").slice(0, 12);
  writeFileSync(
    join(folder, "sw.js"),
    `const VERSION = ${JSON.stringify(version)};\nconst FILES = ${JSON.stringify(files)};\n${worker}`,
  );
}
