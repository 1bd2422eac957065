import { describe, expect, it } from "vitest";
import { grownFormula, grownFormulas } from "../../../src/pane/writing/grownFormulas.ts";
import { sheetHost } from "../sheetHost.ts";

const from = { sheet: "The roof", row: 1, column: 0, rows: 20, columns: 2 };
const to = { ...from, rows: 23, columns: 3 };

describe("a formula on a block that grew", () => {
  it.each([
    ["on its sheet", "The roof", "=RAFTER.MEMBERS($A$2:$B$21)", "=RAFTER.MEMBERS($A$2:$C$24)"],
    ["on another", "Jacks", "=RAFTER.MEMBERS('The roof'!$A$2:$B$21)", "=RAFTER.MEMBERS('The roof'!$A$2:$C$24)"],
    ["typed without dollars", "The roof", "=SUM(RAFTER.JACKTABLE(a2:b21))", "=SUM(RAFTER.JACKTABLE(A2:C24))"],
    ["twice", "The roof", "=RAFTER.CHANGES(A2:B21,A2:B$21)", "=RAFTER.CHANGES(A2:C24,A2:C$24)"],
  ])("reads the whole of it, %s", (_, sheet, formula, grown) =>
    expect(grownFormula(formula, sheet, from, to)).toBe(grown),
  );

  it.each([
    ["an area of another sheet", "Jacks", "=RAFTER.MEMBERS($A$2:$B$21)"],
    ["an area named of another sheet", "The roof", "=RAFTER.MEMBERS(Jacks!$A$2:$B$21)"],
    ["a larger area", "The roof", "=RAFTER.MEMBERS($A$2:$B$210)"],
    ["an area whose letters go on", "The roof", "=RAFTER.MEMBERS($AA$2:$B$21)"],
    ["one cell of it", "The roof", `=RAFTER.TAPE($B$21)`],
    ["a text", "The roof", `=RAFTER.JACKLEN(6,"A2:B21",1,1)`],
    ["a formula of the sheet's own", "The roof", "=SUM($A$2:$B$21)"],
  ])("leaves %s alone", (_, sheet, formula) => expect(grownFormula(formula, sheet, from, to)).toBe(formula));

  it.each([
    ["quoted with an apostrophe", "Al's", "='x'&RAFTER.TAPE('Al''s'!A2:B21)", "='x'&RAFTER.TAPE('Al''s'!A2:C24)"],
    ["in other letters", "Roof", "=rafter.members(ROOF!$A$2:$B$21)", "=rafter.members(ROOF!$A$2:$C$24)"],
    ["in letters beyond ASCII", "Dächer_1", "=RAFTER.TAPE(dächer_1!A2:B21)", "=RAFTER.TAPE(dächer_1!A2:C24)"],
    ["after a text with quotes", "Roof", `=RAFTER.A("""A2:B21",Roof!A2:B21)`, `=RAFTER.A("""A2:B21",Roof!A2:C24)`],
  ])("knows the sheet's name %s", (_, sheet, formula, grown) =>
    expect(grownFormula(formula, "Jacks", { ...from, sheet }, { ...to, sheet })).toBe(grown),
  );

  it("is looked for on every sheet, and only where the block grew", async () => {
    const { host } = sheetHost([
      ["", "=RAFTER.TAKEOFF(A2:B4)"],
      ["", "=SUM(A2:B4)"],
    ]);
    const area = { sheet: "Bid", row: 1, column: 0, rows: 3, columns: 2 };
    expect(await grownFormulas(host, area, area)).toEqual([]);
    expect(await grownFormulas(host, area, { ...area, rows: 5 })).toEqual([
      { sheet: "Bid", row: 0, column: 1, cells: [[{ content: "=RAFTER.TAKEOFF(A2:B6)" }]] },
    ]);
    expect(await grownFormulas(host, area, { ...area, columns: 4 })).toEqual([
      { sheet: "Bid", row: 0, column: 1, cells: [[{ content: "=RAFTER.TAKEOFF(A2:D4)" }]] },
    ]);
  });
});
