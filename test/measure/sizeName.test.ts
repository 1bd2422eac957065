import { describe, expect, it } from "vitest";
import { sizeName } from "../../src/measure/sizeName.ts";

describe("sizeName", () => {
  it.each([
    [2, 8, "nominal", "2x8"],
    [1.5, 7.25, "in", "1.5 x 7.25 in"],
    [2, 8, "in", "2.0 x 8.0 in"],
    [1.5, 8, "in", "1.5 x 8 in"],
    [38, 184, "mm", "38 x 184 mm"],
    [1 / 3, 7, "in", "0.333333 x 7 in"],
    [0.1 + 0.2, 7, "in", "0.3 x 7 in"],
  ] as const)("%d, %d, %s -> %s", (thickness, depth, kind, name) => {
    expect(sizeName(thickness, depth, kind)).toBe(name);
  });
});
