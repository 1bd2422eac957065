import { describe, expect, it } from "vitest";
import { LimitedMap } from "../../src/measure/limitedMap.ts";

describe("LimitedMap", () => {
  const full = () => new LimitedMap<string, number>(2).set("a", 1).set("b", 2);

  it("lets the oldest go for a new one, when it is full", () => {
    expect([...full()]).toEqual([
      ["a", 1],
      ["b", 2],
    ]);
    expect([...full().set("c", 3).keys()]).toEqual(["b", "c"]);
  });

  it("lets none go for one that it has already", () => {
    expect([...full().set("b", 5)]).toEqual([
      ["a", 1],
      ["b", 5],
    ]);
  });
});
