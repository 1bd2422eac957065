import { expect, it } from "vitest";
import { Failure } from "../../src/measure/result.ts";

// Tests compare failures with failures: were the problem lost in both, all would pass.
it("a failure carries its problem", () => {
  expect(new Failure({ kind: "not a pitch" }).problem).toEqual({ kind: "not a pitch" });
});
