import { describe, expect, it } from "vitest";
import type { Headless } from "./headless.ts";
import { useHeadless } from "./useHeadless.ts";

let t: Headless;
const make = useHeadless((fresh) => (t = fresh));

async function shows(formula: string, cells: Record<string, string | number> = {}): Promise<string | number | boolean> {
  t = make();
  for (const [a1, content] of Object.entries(cells)) t.type(a1, content);
  t.type("F1", formula);
  return (await t.values("F1"))[0]![0]!;
}

describe("arguments", () => {
  it.each([
    ["=RAFTER.SEEN()", "none none none"],
    ['=RAFTER.SEEN("6/12",6/12,TRUE)', "string:6/12 number:0.5 boolean:true"],
    ["=RAFTER.SEEN(1,,2)", "number:1 blank number:2"],
    ["=RAFTER.SEEN(,)", "blank blank none"],
    ['=RAFTER.SEEN("",-3,50%)', "string: number:-3 number:0.5"],
    ['=rafter.seen("a""b", "12", 1e-9)', 'string:a"b string:12 number:1e-9'],
  ])("%s sees %s", async (formula, seen) => {
    expect(await shows(formula)).toBe(seen);
  });
  it("reads cells raw: text stays text, blank is blank, numbers are whole", async () => {
    expect(await shows("=RAFTER.SEEN(A1,A2,A3)", { A1: "6/12", A2: 0.1 + 0.2 })).toBe(
      "string:6/12 number:0.30000000000000004 blank",
    );
    expect(await shows("=RAFTER.SEEN(A1,A2+1,A1:A1)", { A1: "08", A2: "=1/3" })).toBe(
      `string:08 number:${1 / 3 + 1} string:08`,
    );
    expect(await shows("=RAFTER.SEEN(A1,A2)", { A1: "=1=1", A2: "TRUE" })).toBe("boolean:true string:TRUE none");
  });
  it("takes the marks of feet and inches for no number, as the sheet itself would", async () => {
    expect(await shows("=IFERROR(A1+1,A1)", { A1: "24'" })).toBe("24'");
    t.range("B1").setValue("5.5'");
    t.type("C1", "=RAFTER.SEEN(B1)");
    expect(await t.values("C1")).toEqual([["string:5.5' none none"]]);
  });
  it("gives a block its rows, blanks as null, whatever is given for it", async () => {
    expect(await shows("=RAFTER.BLOCK(A1:B3)", { A1: "Span", B1: 288, B2: "6/12" })).toBe(
      '[["Span",288],[null,"6/12"],[null,null]]',
    );
    expect(await shows("=RAFTER.BLOCK(A1)", { A1: "Span" })).toBe('[["Span"]]');
    expect(await shows('=RAFTER.BLOCK({"Span",288;"Pitch",TRUE})')).toBe('[["Span",288],["Pitch",true]]');
    expect(await shows("=RAFTER.BLOCK(5)")).toBe("[[5]]");
    expect(await shows("=RAFTER.BLOCK(SEQUENCE(2))")).toBe("[[1],[2]]");
  });
  it("reads a reference no further than the sheet reaches", async () => {
    t = make(undefined, 3);
    t.type("A3", "Span");
    t.type("F1", "=RAFTER.BLOCK(A2:XFD1048576)");
    const [[shown]] = (await t.values("F1")) as [[string]];
    expect(JSON.parse(shown)).toEqual([Array(26).fill(null), ["Span", ...Array(25).fill(null)]]);
    expect(await shows("=RAFTER.SEEN(A2:XFD1048576)")).toBe("#VALUE!");
  });
  it("may end while it calculates: nothing of it goes on", async () => {
    t.worksheet()
      .getRange(0, 2, 500, 1)
      .setValues(Array.from({ length: 500 }, (_, i) => [{ f: `=RAFTER.SEEN(${i})&A1` }]));
    await new Promise<void>((resolve) => {
      t.commands.onCommandExecuted(
        ({ id, params }) =>
          void ((params as { stageInfo?: unknown }).stageInfo && /notification$/.test(id) && resolve()),
      );
    });
    t.dispose();
    const faults: unknown[] = [];
    const note = (error: unknown) => void faults.push(error);
    process.on("uncaughtException", note);
    // Its progress would be shown a second after the start.
    await new Promise((resolve) => setTimeout(resolve, 1_200));
    process.off("uncaughtException", note);
    expect(faults).toEqual([]);
  });
  it("lets errors through", async () => {
    expect(await shows("=RAFTER.SEEN(1/0)")).toBe("#DIV/0!");
    expect(await shows("=RAFTER.SEEN(A1)", { A1: "=NA()" })).toBe("#N/A");
    expect(await shows("=RAFTER.SEEN(Nowhere!A1)", { A1: 5 })).toBe("#REF!");
    expect(await shows("=RAFTER.SEEN(#REF!)")).toBe("#REF!");
  });
  it("refuses a range for one value, and too many", async () => {
    expect(await shows("=RAFTER.SEEN(A1:B2)")).toBe("#VALUE!");
    expect(await t.host.messageAt("Sheet1", 0, 5)).toMatch(/single cell/);
    expect(await shows("=RAFTER.NEED(1,2)")).toBe("#VALUE!");
    expect(await t.host.messageAt("Sheet1", 0, 5)).toMatch(/1 argument/);
    expect(await shows("=RAFTER.NEED()")).toBe("#VALUE!");
    expect(await t.host.messageAt("Sheet1", 0, 5)).toMatch(/^number: .* was read/);
  });
});

describe("results", () => {
  it("spill exactly as they are", async () => {
    t.type("B2", "=RAFTER.MIXED()");
    expect(await t.values("B2:D3")).toEqual([
      ["6/12", 1, true],
      ["", 0.1 + 0.2, false],
    ]);
  });
  it("show any error, and go on after a fault", async () => {
    expect(await shows("=RAFTER.WRONG()")).toBe("#VALUE!");
    expect(await shows("=RAFTER.THROWS()")).toBe("#VALUE!");
    expect(await t.host.messageAt("Sheet1", 0, 5)).toMatch(/TypeError: broken.*fault in Longpoint/);
    t.type("G1", "=RAFTER.NEED(7)+1");
    expect(await t.values("G1")).toEqual([[8]]);
  });
});

describe("messages", () => {
  it("belong to the cell, nested calls included, and to the first refusal", async () => {
    t.type("A1", '=ROUND(RAFTER.NEED("x")+1,2)');
    t.type("A2", '=SUM(RAFTER.NEED("y"),RAFTER.NEED(1),RAFTER.NEED("z"))');
    t.type("A3", '=IFERROR(RAFTER.NEED("w"),5)');
    t.type("A4", "=A1");
    t.type("A5", "=RAFTER.NEED(A1)");
    expect(await t.values("A1:A5")).toEqual([["#VALUE!"], ["#VALUE!"], [5], ["#VALUE!"], ["#VALUE!"]]);
    const messages = await Promise.all([0, 1, 2, 3, 4].map((row) => t.host.messageAt("Sheet1", row, 0)));
    const from = "The error comes from Sheet1!A1.";
    expect(messages).toEqual([expect.stringContaining('"x"'), expect.stringContaining('"y"'), null, from, from]);
  });
  it("go when the cell is right again, and come back with undo", async () => {
    t.type("A1", "no");
    t.type("B1", "=RAFTER.NEED(A1)");
    expect(await t.host.messageAt("Sheet1", 0, 1)).toMatch(/"no"/);
    t.type("A1", 4);
    expect(await t.host.messageAt("Sheet1", 0, 1)).toBeNull();
    t.undo();
    expect(await t.host.messageAt("Sheet1", 0, 1)).toMatch(/"no"/);
    t.type("B1", "=1/0");
    expect(await t.host.messageAt("Sheet1", 0, 1)).toBeNull();
  });
  it("follow their cells when rows, columns or sheets come and go", async () => {
    t.type("B2", '=RAFTER.NEED("deep")');
    t.type("B5", '=RAFTER.NEED("deeper")');
    expect(await t.host.messageAt("Sheet1", 1, 1)).toMatch(/deep/);
    t.worksheet().insertRowBefore(0);
    expect(await t.host.messageAt("Sheet1", 2, 1)).toMatch(/"deep"/);
    expect(await t.host.messageAt("Sheet1", 1, 1)).toBeNull();
    t.worksheet().insertColumnBefore(0);
    expect(await t.host.messageAt("Sheet1", 5, 2)).toMatch(/"deeper"/);
    t.worksheet().deleteRow(2);
    expect(await t.host.messageAt("Sheet1", 4, 2)).toMatch(/"deeper"/);
    t.worksheet().setName("Renamed");
    expect(await t.host.messageAt("Renamed", 4, 2)).toMatch(/"deeper"/);
  });
});

describe("functions that answer late", () => {
  it("say so, then give their answer, and their dependents follow", async () => {
    t.type("A1", 3);
    t.type("B1", "=RAFTER.SLOW(A1)");
    t.type("C1", "=SUM(B1:B2)");
    expect(await t.values("B1")).toEqual([["#GETTING_DATA"]]);
    await late();
    expect(await t.values("B1:C2")).toEqual([
      [3, 7],
      [4, ""],
    ]);
  });
  it("do not hold up or lose edits made meanwhile", async () => {
    t.type("A1", 3);
    t.type("B1", "=RAFTER.SLOW(A1)");
    t.type("C1", "=A2*2");
    await new Promise((resolve) => setTimeout(resolve, 150));
    t.type("A2", 21);
    t.type("A1", 8);
    expect(await t.values("C1")).toEqual([[42]]);
    await late();
    expect(await t.values("B1:B2")).toEqual([[8], [9]]);
  });
  it("keep their refusals and survive a rejection", async () => {
    t.type("B1", "=RAFTER.SLOW(-1)");
    t.type("B2", "=RAFTER.SLOWTHROWS()");
    t.type("B3", "=RAFTER.SLOW(-1)");
    await t.values("B1");
    await late();
    expect(await t.values("B1:B3")).toEqual([["#VALUE!"], ["#VALUE!"], ["#VALUE!"]]);
    expect(await t.host.messageAt("Sheet1", 0, 1)).toMatch(/^number: these values give no finite result/);
    expect(await t.host.messageAt("Sheet1", 1, 1)).toMatch(/late/);
    expect(await t.host.messageAt("Sheet1", 2, 1)).toMatch(/^number: these values give no finite result/);
  });
  async function late(): Promise<void> {
    while (t.sheet.late.pending) await new Promise((resolve) => setTimeout(resolve, 20));
  }
});
