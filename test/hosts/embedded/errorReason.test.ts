import { describe, expect, it } from "vitest";
import type { Headless } from "./headless.ts";
import { useHeadless } from "./useHeadless.ts";

let t: Headless;
useHeadless((fresh) => (t = fresh));

const shown = async (formula: string) => {
  t.type("C3", formula);
  return [(await t.values("C3"))[0]![0], await t.host.messageAt("Sheet1", 2, 2)];
};

describe("why a cell shows an error", () => {
  it.each([
    ["=RAFTER.HIPLENN(6)", "There is no function RAFTER.HIPLENN here."],
    ["=1+FOO(2)", "There is no function FOO here."],
    ["=king*2", 'There is no name king in this workbook. Type a text in quotes: "king".'],
    ['=IMAGE("http://example.org/"&A1)', "IMAGE asks for something from elsewhere, and nothing leaves this page."],
  ])("%s: a name that is not there", async (formula, words) => {
    const [value, why] = await shown(formula);
    expect(value).toBe("#NAME?");
    expect(why).toContain(words);
  });

  it("a reference to nowhere", async () => {
    t.type("A9", 4);
    expect(await shown("=A9+1")).toEqual([5, null]);
    t.worksheet().deleteRow(8);
    const why = await t.host.messageAt("Sheet1", 2, 2);
    expect([(await t.values("C3"))[0]![0], why]).toEqual([
      "#REF!",
      "The formula points at cells that were deleted. Point it at others.",
    ]);
  });

  it("an error that another cell has", async () => {
    t.type("A1", "=1/0");
    t.type("A2", "=FOO(1)");
    expect(await shown("=SUM(B1:B9)+A1")).toEqual(["#DIV/0!", "The error comes from Sheet1!A1."]);
    expect(await shown("=A2&A5")).toEqual(["#NAME?", "The error comes from Sheet1!A2."]);
  });

  it("is not said of a cell without one, nor of a text that looks like one", async () => {
    expect(await shown("=1+1")).toEqual([2, null]);
    expect((await shown("#NAME?"))[1]).toBeNull();
  });
});
