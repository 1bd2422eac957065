import { existsSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { projectFiles } from "./projectFiles.ts";

const core = ["src/measure", "src/geometry", "src/roof", "src/drawing", "src/cutting", "src/registry", "functions"];

const paneParts = ["src/pane/words", "src/pane/state", "src/pane/controls", "src/pane/writing"];

/** Which rooms each room may import from, beside itself. The longest matching path is a file's room. */
const mayImport: Record<string, readonly string[]> = {
  "src/measure": [],
  "src/geometry": ["src/measure"],
  "src/roof": ["src/measure", "src/geometry"],
  "src/drawing": ["src/measure", "src/geometry", "src/roof"],
  "src/cutting": ["src/measure"],
  "src/registry": ["src/measure"],
  // Workbooks in a file: of the core it knows the namespace only.
  "src/xlsx": ["src/measure", "src/registry"],
  functions: ["src/measure", "src/geometry", "src/roof", "src/drawing", "src/cutting", "src/registry"],
  // The port itself and what both adapters share.
  "src/hosts": core,
  "src/hosts/embedded": [...core, "src/hosts", "src/xlsx"],
  "src/hosts/excel": [...core, "src/hosts"],
  "src/hosts/terminal": [...core, "src/hosts"],
  "src/pane/words": core,
  "src/pane/state": [...core, "src/hosts", "src/pane/words"],
  "src/pane/controls": [...core, "src/pane/words", "src/pane/state"],
  "src/pane/writing": [...core, "src/hosts", "src/pane/words", "src/pane/state"],
  "src/pane/sections": [...core, "src/hosts", ...paneParts],
  "src/pane": [...core, "src/hosts", ...paneParts, "src/pane/sections"],
  // A page puts an adapter and the pane together; the pane knows the port only.
  "src/pages/bench": [...core, "src/hosts", "src/hosts/embedded", "src/pane", "src/xlsx", "samples"],
  "src/pages/excel": [...core, "src/hosts", "src/hosts/excel", "src/pane", "src/pane/writing"],
  // Runs beside the pages, in no page.
  "src/pages/offline": [],
  // Pages for paper and for the saw: the roof is in their address.
  "src/pages/packet": [...core, "src/hosts", "src/pane", ...paneParts, "src/pages/bench"],
  "src/pages/saw": [...core, "src/hosts", "src/pane", ...paneParts, "src/pages/bench", "src/pages/packet"],
  "src/build": [...core, "src/hosts", "src/hosts/embedded", "src/hosts/excel", "src/pane", "src/xlsx", "samples"],
  // Cells look as those do that a host writes; the pane knows how a table's columns look.
  samples: [...core, "src/hosts", "src/xlsx", "src/pane/writing"],
};

/** Packages that are named in one place only, so that they can be replaced there. */
const vendors: readonly (readonly [RegExp, string])[] = [
  [/^fraction\.js/, "src/measure"],
  [/^(@univerjs|react|react-dom|rxjs)(\/|$)/, "src/hosts/embedded"],
  [/^(hucre|fflate)(\/|$)/, "src/xlsx"],
  [/^@borgar\/fx/, "src/hosts/terminal"],
  [/^(webpack|esbuild|terser|html-webpack|copy-webpack|mini-css|office-addin|sirv)/, "src/build"],
];

/** Names that only one room may speak. A host's name in another room would tie that room to it. */
const identifiers: readonly (readonly [RegExp, ...string[]])[] = [
  [/^(Office|Excel|CustomFunctions|OfficeExtension|OfficeRuntime)$/, "src/hosts/excel"],
  [/univer/i, "src/hosts/embedded"],
];

/** Node's own modules outside src/build, which alone may touch files. */
const nodeModules: Record<string, readonly string[]> = {
  "src/hosts/terminal": ["node:readline", "node:util", "node:process", "node:stream"],
};

const files = ["src", "functions", "samples"]
  .filter((top) => existsSync(top))
  .flatMap((top) => projectFiles(top))
  .filter((file) => /\.(ts|tsx|js|mjs|cjs)$/.test(file));
const roomOf = (file: string) =>
  Object.keys(mayImport)
    .filter((room) => file.startsWith(`${room}/`))
    .sort((a, b) => b.length - a.length)[0];

function importsOf(text: string): string[] {
  return ts.preProcessFile(text, true, true).importedFiles.map(({ fileName }) => fileName);
}

/** Identifiers of the code; comments and texts do not count. */
function identifiersOf(text: string): Set<string> {
  const found = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) found.add(node.text);
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile("file.tsx", text, ts.ScriptTarget.Latest, false, ts.ScriptKind.TSX));
  return found;
}

/** What is against the rules in a file, in words; empty when nothing is. */
function broken(file: string, text: string): string[] {
  const room = roomOf(file);
  if (room === undefined) return [`${file} stands in no room`];
  const imports = importsOf(text);
  const names = identifiersOf(text);
  return [
    ...imports
      .filter((path) => path.startsWith("."))
      .map((path) => normalize(join(dirname(file), path)).replaceAll("\\", "/"))
      .filter((target) => {
        const other = roomOf(target);
        return other !== room && !(other !== undefined && mayImport[room]!.includes(other));
      })
      .map((target) => `${room} imports ${target}`),
    ...vendors.flatMap(([vendor, only]) => imports.filter((path) => vendor.test(path) && room !== only)),
    ...identifiers.flatMap(([name, ...only]) => [...names].filter((one) => name.test(one) && !only.includes(room))),
    ...imports.filter((path) => path.startsWith("node:") && room !== "src/build" && !nodeModules[room]?.includes(path)),
    ...imports
      .filter((path) => /^(fs|path|os|child_process|http|https|net|url|util)(\/|$)/.test(path))
      .map((path) => `${path} without node:`),
    ...(core.includes(room)
      ? ["document", "window", "fetch", "XMLHttpRequest", "process"].filter((name) => names.has(name))
      : []),
  ];
}

/** Files that import themselves by way of others, types included. */
function circular(imported: Readonly<Record<string, readonly string[]>>): string[] {
  return Object.keys(imported).filter((file) => {
    const seen = new Set<string>();
    const visit = (from: string): void =>
      imported[from]?.forEach((next) => {
        if (!seen.has(next)) visit((seen.add(next), next));
      });
    visit(file);
    return seen.has(file);
  });
}

describe("imports", () => {
  it("run in no circle", () => {
    const here = (file: string, path: string) => join(dirname(file), path).replaceAll("\\", "/");
    const imported = files.map((file) => [file, importsOf(readFileSync(file, "utf8")).map((path) => here(file, path))]);
    expect(circular(Object.fromEntries(imported))).toEqual([]);
    expect(circular({ a: ["b"], b: ["c"], c: ["d", "b"], d: [] })).toEqual(["b", "c"]);
  });
  it.each(files)("%s keeps to the arrows", (file) => {
    expect(broken(file, readFileSync(file, "utf8"))).toEqual([]);
  });

  it.each([
    ["src/measure/a.ts", 'import type { X } from "../geometry/x.ts";'],
    ["src/measure/a.ts", 'export * from "../registry/x.ts";'],
    ["src/geometry/a.ts", 'const x = await import("../roof/x.ts");'],
    ["src/cutting/a.ts", 'import { x } from "../roof/x.ts";'],
    ["src/registry/a.ts", 'import { functions } from "../../functions/index.ts";'],
    ["src/pane/a.ts", 'import { x } from "../hosts/embedded/x.ts";'],
    ["src/hosts/excel/a.ts", 'import { x } from "../embedded/x.ts";'],
    ["functions/a.ts", 'import { x } from "../src/pane/x.ts";'],
    ["src/measure/a.ts", 'import { x } from "../../test/x.ts";'],
    ["src/roof/a.ts", 'import Fraction from "fraction.js";'],
    ["src/pane/a.ts", 'import { createRoot } from "react-dom/client";'],
    ["src/pane/a.ts", "Excel.run(() => 1);"],
    ["src/hosts/host.ts", "const n: Office.Settings = 1;"],
    ["src/pane/a.ts", "const univerApi = 1;"],
    ["src/hosts/terminal/a.ts", 'import { writeFileSync } from "node:fs";'],
    ["src/drawing/a.ts", "document.createElement('svg');"],
    ["src/elsewhere/a.ts", ""],
  ])("%s may not hold %s", (file, text) => {
    expect(broken(file, text)).toHaveLength(1);
  });

  it("does not take a comment or a text for code", () => {
    expect(
      broken("src/pane/a.ts", '// Excel.run and import "react"\nconst name = "Excel"; /** {@link Office} */'),
    ).toEqual([]);
  });
});
