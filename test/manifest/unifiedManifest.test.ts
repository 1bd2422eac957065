import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { expect, it } from "vitest";
import { SCHEMA_VERSION, unifiedManifest } from "../../src/build/unifiedManifest.ts";

const BASE = "https://example.org/longpoint";
const made = unifiedManifest(BASE, "1.2.3");

it("keeps to the vendor's schema, custom functions included, as its package brings it", () => {
  // The reader of manifests brings the schemas, and a validator for their draft.
  const manifests = createRequire(createRequire(import.meta.url).resolve("office-addin-manifest"));
  const require = createRequire(manifests.resolve("@microsoft/app-manifest"));
  const Ajv = require("ajv-draft-04") as new (options: object) => {
    compile(schema: object): ((data: unknown) => boolean) & { errors?: unknown };
  };
  const schema = require(`./json-schemas/teams/v${SCHEMA_VERSION}/MicrosoftTeams.schema.json`) as {
    definitions: Record<string, { properties: object }>;
  };
  expect(Object.keys(schema.definitions["extensionCustomFunctions"]!.properties)).toContain("metadataUrl");
  const valid = new Ajv({ strict: false, validateFormats: false }).compile(schema);
  expect([valid(made), valid.errors]).toEqual([true, null]);
  expect(
    valid({ ...made, extensions: [{ runtimes: [{ id: "x", code: {}, customFunctions: { functions: 5 } }] }] }),
  ).toBe(false);
});

it("says what the manifest in XML says", () => {
  const xml = readFileSync("manifest/manifest.xml", "utf8").replaceAll("https://localhost:3000", BASE);
  const text = JSON.stringify(made);
  const unescaped = (words: string) => words.replaceAll("&quot;", '"').replaceAll("&amp;", "&");
  // Every address, sentence, set and name of the one is in the other; sizes of icons that only one of the two knows aside.
  const said = [...xml.matchAll(/(?:DefaultValue|MinVersion|\bName)="([^"]*)"/g)].map(([, words]) => unescaped(words!));
  const missing = said.filter((words) => !text.includes(JSON.stringify(words).slice(1, -1)));
  expect(missing).toEqual([
    `${BASE}/assets/icon-64.png`,
    "Workbook",
    // One page runs both; the script is in it.
    `${BASE}/pane.js`,
  ]);
  expect(text).toContain(/<Id>(.*)<\/Id>/.exec(xml)![1]!);
});
