import { describe, expect, it } from "vitest";
import type { Headless } from "../headless.ts";
import { useHeadless } from "../useHeadless.ts";

let t: Headless;
useHeadless((fresh) => (t = fresh));

const FORMULAS = [
  'RAFTER.JACKLEN(6,"48""",1.5,1.5)',
  'IF(1,"a""",2)',
  '"a"""&A1',
  'IF(1,"a""b",2)',
  '""""',
  'IF(1,"""",A1)',
  'IF(A1="","x","")',
  '""',
  '"a"""',
  'F("""",A1:B2,"x""y""",-A1)',
  '-A1&"""q"""&B2:C3',
  '{"a""",1}',
  'SUM({1,2},"""")',
  `A1<="9'4 5/8"""`,
  '\'a b\'!A1&""""',
  '1+"a"""+"b"',
  'IF(1,"a""" ,2)',
  ' "a"""',
  `RAFTER.X("12'-6 1/2""","a,b(")`,
];

describe("a formula with a quote inside a text", () => {
  // What a formula is cut into is the formula: the sheet writes it anew from there.
  it.each(FORMULAS)("%s is cut into its parts, and every part stands where it says", (formula) => {
    const parts = t.lexer.sequenceNodesBuilder(formula)!;
    expect(parts.map((part) => (typeof part === "string" ? part : part.token)).join("")).toBe(formula);
    for (const part of parts)
      if (typeof part !== "string") expect(formula.slice(part.startIndex, part.endIndex + 1)).toBe(part.token);
  });

  it("is cut rightly at every key of it", () => {
    for (const formula of FORMULAS.slice(0, 12))
      for (let end = 1; end <= formula.length; end++) {
        const typed = formula.slice(0, end);
        const parts = t.lexer.sequenceNodesBuilder(typed) ?? [];
        // A blank at the start is not one of them, as in any formula.
        if (typed.trim() !== "")
          expect(parts.map((part) => (typeof part === "string" ? part : part.token)).join("")).toBe(typed);
      }
  });

  it("stays whole when a row is inserted above", async () => {
    t.type("A41", 5);
    t.type("B41", "x");
    t.type("C50", '=IF(1,"a""",A41)&B41');
    expect(await t.values("C50")).toEqual([['a"x']]);
    t.worksheet().insertRowBefore(10);
    expect(t.range("C51").getFormula()).toBe('=IF(1,"a""",A42)&B42');
    expect(await t.values("C51")).toEqual([['a"x']]);
    t.undo();
    expect(t.range("C50").getFormula()).toBe('=IF(1,"a""",A41)&B41');
  });

  it("stays whole when it is filled or copied", () => {
    expect(t.lexer.moveFormulaRefOffset('=RAFTER.NEED("9""",A1,"1 1/2""",B2)', 1, 2)).toBe(
      '=RAFTER.NEED("9""",B3,"1 1/2""",C4)',
    );
  });

  it("may hold a name", async () => {
    t.type("A1", 5);
    t.sheet.workbook.insertDefinedName("Span", "Sheet1!$A$1");
    t.type("B1", '="a"""&Span&"b"');
    expect(await t.values("B1")).toEqual([['a"5b']]);
  });
});
