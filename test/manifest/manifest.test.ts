import { existsSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { describe, expect, it } from "vitest";
import { DEV_ADDRESS, manifestFor } from "../../src/build/excelAddress.ts";
import { NAMESPACE } from "../../src/registry/worksheetFunction.ts";

const require = createRequire(import.meta.url);
const { parseStringPromise } = require("xml2js") as {
  parseStringPromise(xml: string, options: object): Promise<Record<string, Node>>;
};
interface Node {
  readonly "#name": string;
  readonly $?: Readonly<Record<string, string>>;
  readonly $$?: readonly Node[];
  readonly _?: string;
}

/** Children of the elements we use, in the order that Microsoft's "Find the proper order of manifest elements" gives. */
const ORDER: Readonly<Record<string, readonly string[]>> = {
  OfficeApp: [
    "Id",
    "AlternateId",
    "Version",
    "ProviderName",
    "DefaultLocale",
    "DisplayName",
    "Description",
    "IconUrl",
    "HighResolutionIconUrl",
    "SupportUrl",
    "AppDomains",
    "Hosts",
    "Requirements",
    "DefaultSettings",
    "Permissions",
    "VersionOverrides",
  ],
  VersionOverrides: ["Description", "Requirements", "Hosts", "Resources"],
  Host: ["Runtimes", "AllFormFactors", "DesktopFormFactor"],
  DesktopFormFactor: ["GetStarted", "FunctionFile", "ExtensionPoint"],
  GetStarted: ["Title", "Description", "LearnMoreUrl"],
  ExtensionPoint: ["Script", "Page", "Metadata", "Namespace", "OfficeTab", "CustomTab"],
  Group: ["Label", "Icon", "Control"],
  Control: ["Label", "Supertip", "Icon", "Action", "Enabled"],
  Supertip: ["Title", "Description"],
  Resources: ["bt:Images", "bt:Urls", "bt:ShortStrings", "bt:LongStrings"],
};
const URLS = ["bt:Url", "bt:Image", "IconUrl", "HighResolutionIconUrl", "SupportUrl", "SourceLocation"];

const written = readFileSync("manifest/manifest.xml", "utf8");
async function nodes(xml: string): Promise<Node[]> {
  const document = await parseStringPromise(xml, { explicitChildren: true, preserveChildrenOrder: true });
  const walk = (node: Node): Node[] => [node, ...(node.$$ ?? []).flatMap(walk)];
  return walk(document["OfficeApp"]!);
}
const all = await nodes(written);
const named = (name: string) => all.filter((node) => node["#name"] === name);
const text = (name: string) => named(name)[0]!._;
const value = (name: string) => named(name)[0]!.$!["DefaultValue"];

describe("the manifest", () => {
  it("has only known children, in order, where order matters", () => {
    const seen = new Set<string>();
    for (const node of all) {
      const order = ORDER[node["#name"]];
      if (!order || !node.$$) continue;
      seen.add(node["#name"]);
      const places = node.$$.map((child) => order.indexOf(child["#name"]));
      expect(Math.min(...places), node["#name"]).toBeGreaterThanOrEqual(0);
      expect(
        [...places].sort((a, b) => a - b),
        node["#name"],
      ).toEqual(places);
    }
    expect([...seen].sort()).toEqual(Object.keys(ORDER).sort());
  });
  it("says who, what and where", () => {
    expect(text("Id")).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    expect(text("Version")).toMatch(/^\d{1,5}(\.\d{1,5}){3}$/);
    expect([text("ProviderName"), text("DefaultLocale"), text("Permissions"), value("DisplayName")]).toEqual([
      "Longpoint",
      "en-US",
      "ReadWriteDocument",
      "Longpoint",
    ]);
    expect(value("DisplayName")!.length).toBeLessThanOrEqual(125);
    expect(value("Description")!.length).toBeLessThanOrEqual(250);
    expect(named("Set").map(({ $ }) => [$!["Name"], $!["MinVersion"]])).toEqual([
      ["SharedRuntime", "1.1"],
      ["CustomFunctionsRuntime", "1.3"],
      ["ExcelApi", "1.12"],
    ]);
    expect(named("Host").map(({ $ }) => $!["Name"] ?? $!["xsi:type"])).toEqual(["Workbook", "Workbook"]);
  });
  it("uses every resource once defined, within the limits", () => {
    const resources = all.filter((node) => /^bt:(Image|Url|String)$/.test(node["#name"]) && node.$?.["id"]);
    const ids = resources.map(({ $ }) => $!["id"]!);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id.length).toBeLessThanOrEqual(32);
    const used = new Set(all.flatMap(({ $ }) => $?.["resid"] ?? []));
    expect([...used].sort()).toEqual([...ids].sort());
    const strings = (kind: string) =>
      named(kind)
        .flatMap(({ $$ }) => $$ ?? [])
        .map(({ $ }) => $!["DefaultValue"]!);
    for (const short of strings("bt:ShortStrings")) expect(short.length, short).toBeLessThanOrEqual(125);
    for (const long of strings("bt:LongStrings")) expect(long.length, long).toBeLessThanOrEqual(250);
  });
  it("runs pane and functions on one page in one runtime", () => {
    const [runtime] = named("Runtime");
    expect(runtime!.$!["lifetime"]).toBe("long");
    const source = (name: string) => named(name)[0]!.$$![0]!.$!["resid"];
    expect([source("Page"), source("Action"), named("FunctionFile")[0]!.$!["resid"]]).toEqual([
      runtime!.$!["resid"],
      runtime!.$!["resid"],
      runtime!.$!["resid"],
    ]);
    expect(named("TaskpaneId")).toEqual([]);
    const namespace = named("bt:String").find(({ $ }) => $!["id"] === named("Namespace")[0]!.$!["resid"]);
    expect(namespace!.$!["DefaultValue"]).toBe(NAMESPACE);
    expect(namespace!.$!["DefaultValue"]).toMatch(/^[A-Z][A-Z0-9.]{2,}$/);
  });
  it("has the icon sizes Excel asks for at each place", () => {
    for (const icon of named("Icon")) expect(icon.$$!.map(({ $ }) => $!["size"])).toEqual(["16", "32", "80"]);
    for (const image of named("bt:Image").filter(({ $ }) => $!["id"]))
      expect(image.$!["DefaultValue"]).toBe(`${DEV_ADDRESS}/assets/icon-${image.$!["id"]!.split(".")[1]}.png`);
    for (const { $ } of all) {
      const [icon] = /icon-\d+\.png$/.exec($?.["DefaultValue"] ?? "") ?? [];
      if (icon) expect(existsSync(`manifest/${icon}`), icon).toBe(true);
    }
    expect([value("IconUrl"), value("HighResolutionIconUrl")]).toEqual([
      `${DEV_ADDRESS}/assets/icon-32.png`,
      `${DEV_ADDRESS}/assets/icon-64.png`,
    ]);
  });
  it.each([DEV_ADDRESS, "https://example.org", "https://example.org:8443/tools/longpoint"])(
    "has https addresses only, all of them below %s",
    async (base) => {
      for (const node of await nodes(manifestFor(written, base, "1.2.3"))) {
        const address = node.$?.["DefaultValue"];
        if (URLS.includes(node["#name"]) && address) expect(address.startsWith(`${base}/`), address).toBe(true);
      }
    },
  );
  // Microsoft, "AppDomain element": listing the domain of SourceLocation has no effect and may mislead.
  it("trusts no domain but its own", () => expect(named("AppDomain")).toEqual([]));
  it("is read by Microsoft's own reader", async () => {
    const { OfficeAddinManifest } = require("office-addin-manifest") as {
      OfficeAddinManifest: { readManifestFile(path: string): Promise<unknown> };
    };
    expect(await OfficeAddinManifest.readManifestFile("manifest/manifest.xml")).toMatchObject({
      displayName: "Longpoint",
      providerName: "Longpoint",
      hosts: ["Workbook"],
      officeAppType: "TaskPaneApp",
    });
  });
});
