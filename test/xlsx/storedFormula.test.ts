import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { functions } from "../../functions/index.ts";
import { formulaText } from "../../src/registry/formulaText.ts";
import { storedFormula, typedFormula } from "../../src/xlsx/storedFormula.ts";

describe("a formula in a file", () => {
  it.each([
    ["=RAFTER.JACKLEN(6,48,1.5,1.5)", "_xldudf_RAFTER_JACKLEN(6,48,1.5,1.5)"],
    ["=SUM(A1:A3)*2", "SUM(A1:A3)*2"],
    ['=RAFTER.TAPE(IFS(A1>0,A1))&"RAFTER.TAPE("', '_xldudf_RAFTER_TAPE(_xlfn.IFS(A1>0,A1))&"RAFTER.TAPE("'],
    ["='RAFTER.X('!A1+RAFTER.PITCHDEG(6)", "'RAFTER.X('!A1+_xldudf_RAFTER_PITCHDEG(6)"],
    [`=RAFTER.INCHES("9' 4 5/8""")`, `_xldudf_RAFTER_INCHES("9' 4 5/8""")`],
    ["=SORT(FILTER(A1:A9,A1:A9>0))", "_xlfn._xlws.SORT(_xlfn._xlws.FILTER(A1:A9,A1:A9>0))"],
    ["=CEILING.MATH(A1)", "_xlfn.CEILING.MATH(A1)"],
  ])("%s is stored as %s and read back", (typed, stored) => {
    expect(storedFormula(typed)).toBe(stored);
    expect(typedFormula(stored)).toBe(typed);
  });

  it("reads names however they are spelled", () => {
    expect(typedFormula("_XLDUDF_RAFTER_jacklen(6)+_xlfn.CONCAT(A1)")).toBe("=RAFTER.JACKLEN(6)+CONCAT(A1)");
    expect(storedFormula("=rafter.jacklen(6)")).toBe("_xldudf_RAFTER_JACKLEN(6)");
  });

  it("comes back from a file as it was, for every example of every function", () => {
    for (const definition of functions)
      for (const example of definition.examples)
        expect(typedFormula(storedFormula(formulaText(definition, example)))).toBe(formulaText(definition, example));
  });

  it("comes back as it was whatever texts and sheet names are in it", () => {
    const text = fc.string({ maxLength: 12 }).map((letters) => `"${letters.replaceAll('"', '""')}"`);
    const sheet = fc.string({ minLength: 1, maxLength: 8 }).map((letters) => `'${letters.replaceAll("'", "''")}'!A1`);
    const part = fc.oneof(text, sheet, fc.constantFrom("RAFTER.TAPE(A1)", "IFS(A1,B1)", "SUM(A1)", "{1,2;3,4}"));
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 5 }), (parts) => {
        const typed = `=${parts.join("&")}`;
        expect(typedFormula(storedFormula(typed))).toBe(typed);
      }),
    );
  });
});
