import { describe, expect, it } from "vitest";
import type { Headless } from "../headless.ts";
import { useHeadless } from "../useHeadless.ts";

let t: Headless;
useHeadless((fresh) => (t = fresh));

const nested = (n: number) => `=${"IF(1,".repeat(n)}1${")".repeat(n)}`;
const terms = (n: number) => `=${Array(n).fill("1").join("+")}`;
const brackets = (n: number) => `=${"(".repeat(n)}1${")".repeat(n)}`;

describe("a long formula", () => {
  it.each([
    ["1,000 terms", terms(1_000), 1_000],
    ["2,400 terms", terms(2_400), 2_400],
    ["500 nested IF", nested(500), 1],
    ["1,000 nested IF", nested(1_000), 1],
    ["1,000 brackets", brackets(1_000), 1],
  ])("of %s is calculated", async (_, formula, value) => {
    t.type("A1", formula);
    expect(await t.values("A1")).toEqual([[value]]);
  });

  it.each([
    ["4,000 terms", terms(4_000)],
    ["20,000 terms", terms(20_000)],
    ["2,000 nested IF", nested(2_000)],
    ["20,000 nested IF", nested(20_000)],
    ["4,000 signs", `=${"-".repeat(4_000)}1`],
  ])("of %s is an error in its own cell, and the rest goes on", async (_, formula) => {
    t.type("A1", formula);
    t.type("A2", "=1+1");
    t.type("A3", "=A1+1");
    expect(await t.values("A1:A3")).toEqual([["#VALUE!"], [2], ["#VALUE!"]]);
    expect(await t.host.messageAt("Sheet1", 0, 0)).toMatch(/^This formula is too long/);
    t.type("A4", "=2+2");
    expect(await t.values("A4")).toEqual([[4]]);
    t.type("A1", "=5");
    expect(await t.values("A1:A3")).toEqual([[5], [2], [6]]);
  });
});
