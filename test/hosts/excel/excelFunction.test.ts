import type { Reading } from "../../../src/registry/reading.ts";
import { messageOf } from "../../../functions/words/problemText.ts";
import { beforeEach, describe, expect, it } from "vitest";
import { excelFunction } from "../../../src/hosts/excel/excelFunction.ts";
import { RefusalLog } from "../../../src/hosts/excel/refusalLog.ts";
import { CellError, Refusal } from "../../../src/registry/refusal.ts";
import { worksheetFunction, type Output, type Parameter } from "../../../src/registry/worksheetFunction.ts";
import { FakeError } from "../customFunctionsFake.ts";

const any = (name: string, more: Partial<Parameter> = {}): Parameter => ({
  name,
  description: name,
  quantity: "number",
  read: (cell) => cell,
  ...more,
});
const base = { family: "test", summary: "Test.", returns: "it." };
const scalar = (
  compute: (values: any, reading: Reading) => any,
  parameters: readonly Parameter[] = [any("one"), any("two", { optional: true })],
) =>
  worksheetFunction({
    ...base,
    name: "ONE",
    parameters,
    result: "value",
    examples: [
      { cells: [1], result: 1 },
      { cells: [2], result: 2 },
    ],
    compute,
  });
const block = (compute: (values: any, reading: Reading) => any) =>
  worksheetFunction({
    ...base,
    name: "MANY",
    parameters: [any("block", { block: true })],
    result: "table",
    examples: [
      { cells: [[[1]]], result: [[1]] },
      { cells: [[[2]]], result: [[2]] },
    ],
    compute,
  });

const INVOCATION = { functionName: "ONE", address: "Sheet1!B4" };
let refusals: RefusalLog;
const thrown = (run: () => unknown): FakeError => {
  try {
    run();
  } catch (error) {
    return error as FakeError;
  }
  throw new Error("nothing was thrown");
};

const ONE = "one: nothing was given. Type a lumber size, such as 2x8.";

describe("excelFunction", () => {
  beforeEach(() => {
    refusals = new RefusalLog();
    Object.assign(globalThis, {
      CustomFunctions: { Error: FakeError, ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" } },
    });
  });

  it.each<[string, unknown[], unknown[]]>([
    ["both arguments", [6, "6/12", INVOCATION], [6, "6/12"]],
    ["null for one left out", [6, null, INVOCATION], [6, null]],
    ["an empty cell as a 0", [0, "", INVOCATION], [0, ""]],
    ["logicals", [true, false, INVOCATION], [true, false]],
  ])("passes %s on and drops the invocation", (_, received, expected) => {
    const got: unknown[] = [];
    excelFunction(
      scalar(({ one, two }) => (got.push(one, two), 1)),
      refusals,
    )(...received);
    expect(got).toEqual(expected);
  });
  it("gives values and blocks as they are, and a block of one for a single value", () => {
    expect(
      excelFunction(
        scalar(() => "9' 4 5/8\""),
        refusals,
      )(1, null, INVOCATION),
    ).toBe("9' 4 5/8\"");
    const rows: Output = [
      ["Piece", "Offset"],
      [1, ""],
    ];
    expect(
      excelFunction(
        block(() => rows),
        refusals,
      )([[1]], INVOCATION),
    ).toEqual(rows);
    expect(
      excelFunction(
        block(() => "one"),
        refusals,
      )([[1]], INVOCATION),
    ).toEqual([["one"]]);
  });
  it("throws a refusal as Excel's error with the message, and keeps it by the calling cell", () => {
    const said = new Refusal({ kind: "no rows" }, { argument: "boards" }, null);
    const error = thrown(() =>
      excelFunction(
        scalar(() => said),
        refusals,
      )(1, null, INVOCATION),
    );
    expect(error).toBeInstanceOf(FakeError);
    expect(error).toEqual(new FakeError("#VALUE!", messageOf(said)));
    expect(refusals.at("Sheet1", 3, 1, "#VALUE!")).toBe(messageOf(said));
    excelFunction(
      scalar(() => 5),
      refusals,
    )(1, null, INVOCATION);
    expect(refusals.at("Sheet1", 3, 1, "#VALUE!")).toBeNull();
  });
  it.each(["#DIV/0!", "#N/A", "#NUM!", "#NULL!", "#VALUE!"])(
    "passes %s through unchanged, without a message",
    (code) => {
      expect(
        thrown(() =>
          excelFunction(
            scalar(() => 1),
            refusals,
          )(new FakeError(code), null, INVOCATION),
        ),
      ).toEqual(new FakeError(code));
      expect(refusals.at("Sheet1", 3, 1, code)).toBeNull();
    },
  );
  it("says what came in where Excel takes no such error from a function", () => {
    // #NAME? comes in as an object of Excel's own making.
    const error = thrown(() =>
      excelFunction(
        scalar(() => 1),
        refusals,
      )({ code: "#NAME?" }, null, INVOCATION),
    );
    expect(error.code).toBe("#VALUE!");
    expect(error.message).toContain("#NAME?");
  });
  it("turns errors inside a block into cell errors", () => {
    let got: unknown;
    excelFunction(
      block(({ block }) => ((got = block), 1)),
      refusals,
    )(
      [
        ["Span", new FakeError("#N/A")],
        ["", null],
      ],
      INVOCATION,
    );
    expect(got).toEqual([
      ["Span", new CellError("#N/A")],
      ["", null],
    ]);
  });
  it("gives a promise for a promise, and rejects it for a refusal", async () => {
    await expect(
      excelFunction(
        scalar(async () => 7),
        refusals,
      )(1, null, INVOCATION),
    ).resolves.toBe(7);
    await expect(
      excelFunction(
        scalar(async () => new Refusal({ kind: "no size" }, { argument: "one" }, null)),
        refusals,
      )(1, null, INVOCATION),
    ).rejects.toEqual(new FakeError("#VALUE!", ONE));
    expect(refusals.at("Sheet1", 3, 1, "#VALUE!")).toBe(ONE);
  });
  it("works without an invocation or its address", () => {
    expect(
      excelFunction(
        scalar(({ one }) => one),
        refusals,
      )(1),
    ).toBe(1);
    expect(
      thrown(() =>
        excelFunction(
          scalar(() => new Refusal({ kind: "no size" }, { argument: "one" }, null)),
          refusals,
        )(1, null, {}),
      ).message,
    ).toBe(ONE);
  });
});

describe("RefusalLog", () => {
  const refusal = new Refusal({ kind: "no size" }, { argument: "one" }, null);
  it.each([
    ["Sheet1!B4", "Sheet1"],
    ["sheet1!$B$4", "Sheet1"],
    ["'Hip jacks'!B4", "Hip jacks"],
    ["'Bob''s roof!'!B4:C9", "Bob's roof!"],
    ["'[Bid 3.xlsx]Hip jacks'!B4", "Hip jacks"],
    ["[Bid.xlsx]Roof!B4", "Roof"],
  ])("finds %s", (caller, sheet) => {
    const log = new RefusalLog();
    log.note(caller, "ONE", refusal);
    expect(log.at(sheet, 3, 1, "#VALUE!")).toBe(ONE);
    expect(log.at(sheet, 3, 2, "#VALUE!")).toBeNull();
  });
  it("keeps functions of one cell apart and answers only for the error that shows", () => {
    const log = new RefusalLog();
    log.note("Sheet1!A1", "ONE", refusal);
    log.note("Sheet1!A1", "TWO", new Refusal({ kind: "no rows" }, { argument: "boards" }, null));
    expect(log.at("Sheet1", 0, 0, "#VALUE!")).toMatch(/^boards: /);
    expect(log.at("Sheet1", 0, 0, "#N/A")).toBeNull();
    log.note("Sheet1!A1", "TWO", null);
    expect(log.at("Sheet1", 0, 0, "#VALUE!")).toBe(ONE);
    log.note("Sheet1!A1", "ONE", null);
    expect(log.at("Sheet1", 0, 0, "#VALUE!")).toBeNull();
  });
  it("forgets the oldest before it grows without end", () => {
    const log = new RefusalLog();
    for (let row = 1; row <= 20_001; row++) log.note(`Sheet1!A${row}`, "ONE", refusal);
    expect([log.at("Sheet1", 0, 0, "#VALUE!"), log.at("Sheet1", 20_000, 0, "#VALUE!")]).toEqual([null, ONE]);
  });
});
