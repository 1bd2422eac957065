import { describe, expect, it } from "vitest";
import { answer } from "../../../src/hosts/terminal/answer.ts";

const given = async (formula: string) => {
  const result = await answer(formula, new Map());
  return "error" in result ? result.error : result.value;
};

// ROUND, ROUNDUP, ROUNDDOWN, MOD, INT and ATAN2: the worked examples of the vendor's own help pages for these functions, from memory.
describe("a sheet's own functions", () => {
  it.each<[string, unknown]>([
    ["ROUND(2.15, 1)", 2.2],
    ["ROUND(2.149, 1)", 2.1],
    ["ROUND(-1.475, 2)", -1.48],
    ["ROUND(21.5, -1)", 20],
    ["ROUND(626.3, -3)", 1000],
    ["ROUND(-50.55, -2)", -100],
    ["ROUND(1.005, 2)", 1.01],
    ["ROUND(1E-9, 2)", 0],
    ["ROUND(1E+21, 2)", 1e21],
    ["ROUNDUP(3.2, 0)", 4],
    ["ROUNDUP(-3.14159, 1)", -3.2],
    ["ROUNDUP(31415.92654, -2)", 31500],
    ["ROUNDDOWN(-3.14159, 1)", -3.1],
    ["MOD(3, 2)", 1],
    ["MOD(-3, 2)", 1],
    ["MOD(3, -2)", -1],
    ["MOD(-3, -2)", -1],
    ["INT(-8.9)", -9],
    ["ROUND(ATAN2(-1, -1), 8)", -2.35619449],
    ["SUM(1, {2,3;4,5})", 15],
    ['SUM({1,"2",TRUE})', 1],
    ['SUM("2", TRUE)', 3],
    ['SUM("two")', "#VALUE!"],
    ["SUM({1,#N/A})", "#N/A"],
    ["PRODUCT({2,3}, 4)", 24],
    ['COUNT({1,"a";TRUE,4})', 2],
    ["AVERAGE({1,2,3})", 2],
    ['AVERAGE({"a"})', "#DIV/0!"],
    ["MIN({3,1,2}, 4)", 1],
    ["MAX({-3,-1})", -1],
    ["ABS({-1,2})", [[1, 2]]],
    ["SQRT(-1)", "#NUM!"],
    ["ROUND(DEGREES(ATAN(6/12)), 2)", 26.57],
    ["ROUND(TAN(RADIANS(45)), 12)", 1],
    ["ROUND(SIN(PI()/6)+COS(PI()/3), 12)", 1],
    ["ROUND(DEGREES(ASIN(1)-ACOS(1)), 9)", 90],
    ["POWER(2, 10)", 1024],
    ["POWER(0, 0)", "#NUM!"],
    ['IF(2>1, "yes", 1/0)', "yes"],
    ["IF(2<1, 1)", false],
    ["IF(2<1, 1,)", 0],
    ["IF({1,0}, 5, 6)", [[5, 6]]],
    ["IFERROR(1/0, 9)", 9],
    ["IFERROR({1,#N/A}, 0)", [[1, 0]]],
    ["ISERROR(A1)", true],
    ["AND(1, TRUE, {1,0})", false],
    ["OR(FALSE, 2>1)", true],
    ['NOT("x")', "#VALUE!"],
    ["ROWS({1,2;3,4;5,6})", 3],
    ["COLUMNS({1,2;3,4;5,6})", 2],
    ["COLUMNS(1/0)", "#DIV/0!"],
    ["INDEX({1,2;3,4}, 2, 1)", 3],
    ["INDEX({1,2;3,4}, 0, 2)", [[2], [4]]],
    ["INDEX({1,2;3,4}, 2)", [[3, 4]]],
    ["INDEX({7,8,9}, 3)", 9],
    ["INDEX({1,2;3,4}, 3, 1)", "#REF!"],
    [
      "HSTACK({1;2}, {3;4})",
      [
        [1, 3],
        [2, 4],
      ],
    ],
    [
      "HSTACK({1;2}, 3)",
      [
        [1, 3],
        [2, "#N/A"],
      ],
    ],
    [
      "VSTACK({1,2}, {3,4})",
      [
        [1, 2],
        [3, 4],
      ],
    ],
    [
      "VSTACK({1,2}, 3)",
      [
        [1, 2],
        [3, "#N/A"],
      ],
    ],
  ])("%s", async (formula, expected) => {
    expect(await given(formula)).toEqual(expected);
  });
});
