import { expect, it } from "vitest";
import { isNominal } from "../../src/measure/isNominal.ts";
import { readSize, type ReadSize } from "../../src/measure/readSize.ts";

it.each([
  ["2x8", true],
  ["12 x 14", true],
  ["1.5 x 7.25", false],
  ["2.0 x 8.0", false],
  ["38 x 184", false],
])("%s is a nominal size: %s", (text, nominal) => {
  expect(isNominal(readSize(text) as ReadSize)).toBe(nominal);
});
