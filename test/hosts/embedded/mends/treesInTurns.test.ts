import { SetFormulaDataMutation } from "@univerjs/engine-formula";
import { beforeEach, describe, expect, it } from "vitest";
import type { Headless } from "../headless.ts";
import { useHeadless } from "../useHeadless.ts";

let t: Headless;
useHeadless((fresh) => (t = fresh));

const COUNT = 40;
let read: string[] = [];
let worked = 0;
/** What comes at the page's next turn after so many formulas have been read. */
let meanwhile: { after: number; act: () => void } | null = null;

beforeEach(async () => {
  await t.values("A1");
  read = [];
  const build = t.lexer.treeBuilder.bind(t.lexer);
  t.lexer.treeBuilder = (formula, ...rest) => {
    // As slow as many.
    for (let i = 0; i < 3_000_000; i++) worked += Math.sqrt(i);
    read.push(formula);
    if (meanwhile && read.length === meanwhile.after) {
      setTimeout(meanwhile.act);
      meanwhile = null;
    }
    return build(formula, ...rest);
  };
});

function typeAll(): void {
  t.type("A1", 2);
  t.worksheet()
    .getRange(0, 1, COUNT, 1)
    .setValues(Array.from({ length: COUNT }, (_, i) => [{ f: `=$A$1*${i}` }]));
}

const times = (value: number): (number | string)[][] => Array.from({ length: COUNT }, (_, i) => [value * i]);

it("what is to be calculated is found out in turns with the page", async () => {
  let turns = 0;
  const turning = setInterval(() => void turns++);
  const seen = new Set<number>();
  const build = t.lexer.treeBuilder.bind(t.lexer);
  t.lexer.treeBuilder = (...of) => {
    seen.add(turns);
    return build(...of);
  };
  typeAll();
  expect(await t.values(`B1:B${COUNT}`)).toEqual(times(2));
  clearInterval(turning);
  expect(worked).toBeGreaterThan(0);
  // The engine by itself reads all of them in one piece.
  expect(seen.size).toBeGreaterThan(3);
});

it("what formulas read is known once, however often they are calculated", async () => {
  t.type("B1", "=SUM(A1:A3)");
  t.type("B2", "=SUM(A2:A4)+SUM(C1:D2)");
  for (const value of [1, 2, 3]) {
    t.type("A2", value);
    expect(await t.values("B1:B2")).toEqual([[value], [value]]);
    expect(t.areasRead()).toBe(3);
  }
});

describe("while that is found out", () => {
  const halfWay = (act: () => void) => {
    let at = -1;
    meanwhile = { after: COUNT / 2, act: () => ((at = read.length), act()) };
    typeAll();
    return () => {
      expect(at).toBeGreaterThan(0);
      expect(at).toBeLessThan(COUNT);
    };
  };

  it("an edit counts, and nothing of what was to be calculated is lost", async () => {
    const held = halfWay(() => t.type("A1", 3));
    await t.values("A1");
    expect(await t.values(`B1:B${COUNT}`)).toEqual(times(3));
    held();
    t.type("A1", 4);
    expect(await t.values(`B1:B${COUNT}`)).toEqual(times(4));
  });

  it("a row that comes in above moves the formulas, and each is calculated where it is then", async () => {
    const held = halfWay(() => void t.worksheet().insertRowBefore(0));
    await t.values("A1");
    expect(await t.values(`B1:B${COUNT + 1}`)).toEqual([[""], ...times(2)]);
    held();
    t.type("A2", 5);
    expect(await t.values(`B1:B${COUNT + 1}`)).toEqual([[""], ...times(5)]);
  });

  it("a formula that goes is not calculated any more", async () => {
    const held = halfWay(() => t.type("B5", ""));
    await t.values("A1");
    const without = times(2).with(4, [""]);
    expect(await t.values(`B1:B${COUNT}`)).toEqual(without);
    held();
    t.type("A1", 1);
    expect(await t.values(`B1:B${COUNT}`)).toEqual(times(1).with(4, [""]));
  });

  it("a change that stops nothing has it found out anew", async () => {
    const formulaData = { book: { s1: { 3: { 1: { f: "=$A$1*3" } } } } };
    const held = halfWay(() =>
      t.commands.syncExecuteCommand(SetFormulaDataMutation.id, { formulaData }, { onlyLocal: true }),
    );
    await t.values("A1");
    expect(await t.values(`B1:B${COUNT}`)).toEqual(times(2));
    held();
    t.type("A1", 7);
    expect(await t.values(`B1:B${COUNT}`)).toEqual(times(7));
  });
});
