import { gunzipSync } from "node:zlib";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { projectFiles } from "./projectFiles.ts";

/**
 * What may stand in no file of the project, and why. Each is put together from parts, so that this file does not hold it.
 */
const forbidden: readonly (readonly [RegExp, string])[] = [
  [
    new RegExp(`(^|[^\\w.])/(?:${["wo" + "rk", "fa" + "rm", "ho" + "me", "ro" + "ot"].join("|")})/`),
    "a path of one machine",
  ],
  [new RegExp(`${"\\.\\./"}${"sha"}red/`), "a path beside the project"],
  [
    new RegExp(`${"seed"} document|${"trans"}cript`, "i"),
    "a word of where an idea came from; the project explains itself",
  ],
  [new RegExp(`\\b(${"TO"}DO|${"FIX"}ME|${"XX"}X)\\b`), "work left undone"],
  [new RegExp(`\\b(it|test|describe)(\\.each)?\\.(${"on"}ly|${"sk"}ip|${"to"}do)\\b`), "a test switched off"],
  [new RegExp(`${"expect"}\\((true|1)\\)\\.toBe`), "a test that cannot fail"],
  [
    new RegExp(`${"regis"}try\\.(npm${"js"}|yarn${"pkg"})|npm${"mirror"}|npm\\.${"pkg"}|${"artifact"}ory`, "i"),
    "a registry's host name; the user's own setting decides",
  ],
  [new RegExp(`@${"ts-ig"}nore|@${"ts-no"}check`), "the compiler switched off"],
];

const binary = /\.(png|jpg|jpeg|ico|gif|woff2?|xlsx|pdf)$/;

function found(text: string): string[] {
  return text
    .split("\n")
    .flatMap((line, i) =>
      forbidden
        .filter(([word]) => word.test(line))
        .map(([, why]) => `line ${i + 1}: ${why}: ${line.trim().slice(0, 80)}`),
    );
}

describe("words that may not appear", () => {
  it.each(projectFiles().filter((file) => !binary.test(file)))("%s has none", (file) => {
    const bytes = readFileSync(file);
    expect(found((file.endsWith(".gz") ? gunzipSync(bytes) : bytes).toString())).toEqual([]);
  });

  it.each([
    "see /wo" + "rk/main",
    "// TO" + "DO later",
    "it.sk" + "ip('x')",
    "describe.on" + "ly('x')",
    "https://regis" + "try.npmjs.org/x",
    "the trans" + "cript says",
    "../sha" + "red/trade.md",
  ])("%s is found", (text) => {
    expect(found(text)).toHaveLength(1);
  });

  it.each(["const todoList = 1", "https://example.com/home/x", "framework/main", "a test.onlyOnce"])(
    "%s is not",
    (text) => {
      expect(found(text)).toEqual([]);
    },
  );
});
