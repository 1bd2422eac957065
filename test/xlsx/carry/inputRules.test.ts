import { expect, it } from "vitest";
import type { InputRule } from "../../../src/xlsx/book.ts";
import { inputRulesIn, inputRulesXml } from "../../../src/xlsx/carry/inputRules.ts";
import { elements, rootOf } from "../../../src/xlsx/carry/xml.ts";
import { writeBook } from "../../../src/xlsx/writeBook.ts";
import { partsOf } from "./otherPrograms.ts";

// After the examples of ECMA-376, 18.3.1.32 and 18.3.1.33; the rule about days stays in the file.
const XML = `<x:worksheet xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><x:sheetData/><x:dataValidations count="4"><x:dataValidation type="list" allowBlank="1" showInputMessage="1" showErrorMessage="1" errorTitle="Wood" error="Pine or fir &amp; no other" promptTitle="Wood" prompt="Choose" sqref="A1 C1:C3"><x:formula1>"pine,fir"</x:formula1></x:dataValidation><x:dataValidation type="date" sqref="D1"><x:formula1>45000</x:formula1></x:dataValidation><x:dataValidation type="whole" errorStyle="warning" operator="greaterThan" showErrorMessage="1" sqref="B2"><x:formula1>B1*2</x:formula1></x:dataValidation><x:dataValidation type="list" showDropDown="1" sqref="E:E"><x:formula1>Lists!$A$1:$A$4</x:formula1></x:dataValidation></x:dataValidations></x:worksheet>`;

const RULES: InputRule[] = [
  {
    areas: [
      { row: 0, column: 0, rows: 1, columns: 1 },
      { row: 0, column: 2, rows: 3, columns: 1 },
    ],
    kind: "list",
    first: "pine,fir",
    blank: true,
    error: { style: "stop", title: "Wood", text: "Pine or fir & no other" },
    hint: { title: "Wood", text: "Choose" },
  },
  {
    areas: [{ row: 1, column: 1, rows: 1, columns: 1 }],
    kind: "whole",
    operator: "greaterThan",
    first: "=B1*2",
    error: { style: "warning" },
  },
  {
    areas: [{ row: 0, column: 4, rows: 1_048_576, columns: 1 }],
    kind: "list",
    first: "=Lists!$A$1:$A$4",
    noArrow: true,
  },
];

const listIn = (xml: string) => elements(xml, rootOf(xml)).find(({ name }) => name === "dataValidations")!;

it("rules for what may be typed are read, and written so that they read the same; one that does not live here stays", () => {
  expect(inputRulesIn(XML)).toEqual(RULES);
  const list = inputRulesXml(XML, listIn(XML), RULES, "x:");
  const written = XML.replace(XML.slice(listIn(XML).start, listIn(XML).end), () => list);
  expect(inputRulesIn(written)).toEqual(RULES);
  expect(list).toContain('<x:dataValidation type="date" sqref="D1"><x:formula1>45000</x:formula1></x:dataValidation>');
  expect(list).toContain('count="4"');
  expect(inputRulesXml("<worksheet/>", undefined, [], "")).toBe("");
});

it("rules of a book that was made here are in its file", async () => {
  const bytes = await writeBook({
    title: "Test",
    sheets: [{ name: "Bid", rows: [[{ value: 1 }]], inputRules: RULES.slice(0, 2) }],
  });
  const read = inputRulesIn(partsOf(bytes)["xl/worksheets/sheet1.xml"]!);
  expect(read.map(({ kind, first }) => [kind, first])).toEqual([
    ["list", "pine,fir"],
    ["list", "pine,fir"],
    ["whole", "=B1*2"],
  ]);
});
