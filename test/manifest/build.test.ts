import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { runInNewContext } from "node:vm";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { functions } from "../../functions/index.ts";
import { BUDGET, build, LATER_BUDGET, type PaneSize } from "../../src/build/build.ts";
import { excelWebpack } from "../../src/build/excelWebpack.ts";
import type { ExcelMetadata } from "../../src/registry/excelMetadata.ts";
import { FakeError } from "../hosts/customFunctionsFake.ts";

const BASE = "https://example.org/longpoint";
const folder = mkdtempSync(join(tmpdir(), "longpoint-"));
const file = (name: string) => readFileSync(join(folder, name), "utf8");
let size: PaneSize;

describe("the Excel build", () => {
  beforeAll(async () => {
    size = await build(BASE, folder, { maps: true });
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  it("has every file that the manifest, the page and functions.json point to", () => {
    const page = file("pane.html");
    const addresses = [
      ...[...file("manifest.xml").matchAll(/DefaultValue="(https:[^"]*)"/g)].map(([, address]) => address!),
      ...(JSON.parse(file("functions.json")) as ExcelMetadata).functions.map(({ helpUrl }) => helpUrl),
      ...[...page.matchAll(/(?:src|href)="(?!https:)([^"]*)"/g)].map(([, path]) => `${BASE}/${path}`),
    ];
    expect(addresses.length).toBeGreaterThan(functions.length + 8);
    for (const address of addresses)
      expect(existsSync(join(folder, address.replace(`${BASE}/`, ""))), address).toBe(true);
  });
  it("has pages about privacy, terms and support, which the manifest and the list of functions lead to", () => {
    const list = file("help/index.html");
    for (const page of ["support", "privacy", "terms", "first-steps"]) {
      expect(list).toContain(`href="${page}.html"`);
      expect(file(`help/${page}.html`)).toContain("<h1");
    }
    expect(file("manifest.xml")).toContain(`<SupportUrl DefaultValue="${BASE}/help/support.html"/>`);
    expect(file("help/first-steps.html").match(/<li>/g)).toHaveLength(20);
  });
  it("has one version, the package's", () => {
    const { version } = JSON.parse(readFileSync("package.json", "utf8")) as { version: string };
    expect(file("manifest.xml")).toContain(`<Version>${version}.0</Version>`);
  });
  it("is what is published: no bench, and no script that asks for its source map", () => {
    const all = readdirSync(folder, { recursive: true }) as string[];
    expect(all.filter((name) => /bench|univer/i.test(name))).toEqual([]);
    const maps = all.filter((name) => name.endsWith(".map"));
    const configured = [excelWebpack("x").devtool, excelWebpack("x", "maps").devtool];
    // This build has maps for the test below, and its scripts weigh as much as those that are published, which have none.
    expect([maps.length > 0, ...configured]).toEqual([true, false, "hidden-source-map"]);
  });
  it("loads nothing from elsewhere but Office.js from its vendor", () => {
    const addresses = (text: string) => [...text.matchAll(/https?:[^"; ]*/g)].map(([address]) => address);
    const [policy, ...others] = file("pane.html").match(/<meta http-equiv="Content-Security-Policy"[^>]*>/g)!;
    expect(others).toEqual([]);
    expect(addresses(policy!)).toEqual(["https://appsforoffice.microsoft.com"]);
    expect(addresses(file("pane.html").replace(policy!, ""))).toEqual([
      "https://appsforoffice.microsoft.com/lib/1/hosted/office.js",
    ]);
    expect(`${file("manifest.xml")}${file("functions.json")}`).not.toContain("localhost");
  });
  it("stays small: nothing of the embedded sheet or the workbook writer is in it", () => {
    expect(size.first).toBeLessThanOrEqual(BUDGET);
    expect(size.later).toBeLessThanOrEqual(LATER_BUDGET);
    const later = ["pane.parts.js", "pane.search.js"];
    expect(readdirSync(folder).filter((name) => /^pane\..*js$/.test(name))).toEqual(["pane.js", ...later]);
    const sourcesOf = (name: string) => (JSON.parse(file(`${name}.map`)) as { sources: string[] }).sources;
    const first = sourcesOf("pane.js");
    expect(first.some((source) => source.includes("src/hosts/excel/excelHost.ts"))).toBe(true);
    expect(first.filter((source) => /src\/cutting\/search\/|orderSection|drawFrame3d/.test(source))).toEqual([]);
    expect(
      [...first, ...later.flatMap(sourcesOf)].filter((source) =>
        /node_modules\/(@univerjs|hucre|react|react-dom|rxjs)\/|src\/(xlsx|build|hosts\/(embedded|terminal))\//.test(
          source,
        ),
      ),
    ).toEqual([]);
  });
  it("registers in the built script every function of functions.json, and they calculate", () => {
    const associated = new Map<string, (...cells: unknown[]) => unknown>();
    const CustomFunctions = {
      Error: FakeError,
      ErrorCode: { invalidValue: "#VALUE!" },
      associate: (id: string, run: (...cells: unknown[]) => unknown) => associated.set(id, run),
    };
    const Office = { onReady: () => new Promise(() => undefined), HostType: { Excel: "Excel" } };
    // What every page has and the bundle may use as it loads.
    const page = {
      document: { getElementById: () => ({}) },
      console,
      setTimeout,
      clearTimeout,
      queueMicrotask,
      performance,
      MessageChannel,
    };
    runInNewContext(file("pane.js"), { CustomFunctions, Office, ...page });
    expect([...associated.keys()].sort()).toEqual(
      (JSON.parse(file("functions.json")) as ExcelMetadata).functions.map(({ id }) => id).sort(),
    );
    // NAVEDTRA 14044, chapter 2: common difference for 16 in centers at 8 in 12 is 19.23 in.
    expect(associated.get("JACKSTEP")!("8/12", 16, null, null, { address: "Sheet1!A1" })).toBeCloseTo(19.23, 2);
    expect(() => associated.get("JACKSTEP")!("", 16, null, null, { address: "Sheet1!A1" })).toThrow(FakeError);
  });
});
