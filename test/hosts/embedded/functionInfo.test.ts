import { beforeAll, describe, expect, it } from "vitest";
import { functions } from "../../../functions/index.ts";
import { bundled } from "./bundled.ts";

let functionInfo: typeof import("../../../src/hosts/embedded/functionInfo.ts").functionInfo;
beforeAll(async () => {
  ({ functionInfo } = await bundled());
});

describe("functionInfo", () => {
  it("is made for every function, with a text, an example and every parameter", () => {
    for (const definition of functions) {
      const info = functionInfo(definition);
      expect(info.functionName).toBe(`RAFTER.${definition.name}`);
      expect(info.description).toContain(definition.summary);
      expect(info.description).toContain(`=RAFTER.${definition.name}(`);
      expect(info.functionParameter.map(({ name, require }) => [name, require])).toEqual(
        definition.parameters.map(({ name, optional }) => [name, optional ? 0 : 1]),
      );
      expect(info.functionParameter.every(({ detail }) => detail.length > 5)).toBe(true);
    }
  });
  it("writes the example as it is typed in a cell, and tells defaults", () => {
    const info = functionInfo(functions.find(({ name }) => name === "JACKLEN")!);
    expect(info.description).toContain("=RAFTER.JACKLEN(6, 48, 1.5, 1.5)");
    expect(info.functionParameter.at(-1)!.detail).toMatch(/Left out: 90\./);
    expect(functionInfo(functions.find(({ name }) => name === "JACKTABLE")!).description).toMatch(
      /=RAFTER\.JACKTABLE\(\{"Span",/,
    );
  });
});
