import { describe, expect, it } from "vitest";
import { DEV_ADDRESS, excelAddress } from "../../src/build/excelAddress.ts";

describe("excelAddress", () => {
  it.each<[string[], string]>([
    [[], DEV_ADDRESS],
    [["--env", "base=https://example.org/longpoint"], "https://example.org/longpoint"],
    [["--env=base=https://example.org"], "https://example.org"],
    [["--base", "https://example.org/"], "https://example.org"],
    [["--base=https://example.org:8443/a//"], "https://example.org:8443/a"],
    [["--env", "mode=x", "--base=https://a.example", "--base=https://b.example"], "https://b.example"],
  ])("%j is %s", (args, base) => {
    expect(excelAddress(args)).toBe(base);
  });
  it.each([
    "http://example.org",
    "example.org",
    "",
    "https://example.org/?a=1",
    "https://example.org/#a",
    "file:///tmp",
  ])("refuses %j, which Excel would not load", (base) => {
    expect(() => excelAddress(["--env", `base=${base}`])).toThrow(`base: "${base}"`);
  });
});
