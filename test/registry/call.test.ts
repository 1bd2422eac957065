import { inCell, placeOf, type Reading } from "../../src/registry/reading.ts";
import { describe, expect, it } from "vitest";
import { Failure } from "../../src/measure/result.ts";
import { call } from "../../src/registry/call.ts";
import { CellError, Refusal, type Place } from "../../src/registry/refusal.ts";
import {
  worksheetFunction,
  type Definition,
  type Parameter,
  type WorksheetFunction,
} from "../../src/registry/worksheetFunction.ts";

const raw = <const N extends string>(name: N, block = false): Parameter<unknown, N> => ({
  name,
  description: "A cell as it is.",
  quantity: "list",
  block,
  read: (cell) => cell,
});
const examples = [
  { cells: [1], result: 1 },
  { cells: [2], result: 2 },
] as const;
const base = { family: "test", summary: "A test.", result: "value", returns: "a value.", examples } as const;
/** Gives back what it is told to. */
const giving = (value: unknown, more: Partial<Definition> = {}): WorksheetFunction =>
  worksheetFunction({ ...base, name: "GIVING", parameters: [], compute: () => value as never, ...more });

describe("call", () => {
  it("hands the readings on by name, and what the call has learned of its unit", () => {
    const seen = worksheetFunction({
      ...base,
      name: "SEEN",
      parameters: [
        {
          name: "first",
          description: "It.",
          quantity: "length",
          read: (cell, reading) => {
            reading.unit = "mm";
            reading.unitFrom = { argument: reading.argument };
            return cell;
          },
        },
        {
          name: "second",
          description: "It.",
          quantity: "length",
          read: (_, reading) => `${reading.unit} from ${(reading.unitFrom as Place).argument}`,
        },
      ],
      compute: ({ first, second }, { unit }) => [first, second, unit].join(" "),
    });
    expect(call(seen, [7])).toBe("7 mm from first mm");
  });

  it("keeps no unit from one call to the next", () => {
    const unit = worksheetFunction({
      ...base,
      name: "UNIT",
      parameters: [
        {
          name: "text",
          description: "It.",
          quantity: "length",
          read: (cell, reading) => {
            if (cell === "mm") reading.unit = "mm";
            return 0;
          },
        },
      ],
      compute: (_, reading) => String(reading.unit),
    });
    expect([call(unit, ["mm"]), call(unit, ["48"])]).toEqual(["mm", "null"]);
  });

  it("reads a missing argument as undefined", () => {
    const answer = call(
      worksheetFunction({
        ...base,
        name: "ONE",
        parameters: [raw("one"), raw("two")],
        compute: ({ two }) => String(two),
      }),
      ["x"],
    );
    expect(answer).toBe("undefined");
  });

  it("opens a 1 x 1 range, but leaves a block whole", () => {
    const open = worksheetFunction({
      ...base,
      name: "OPEN",
      parameters: [raw("one")],
      compute: ({ one }) => JSON.stringify(one),
    });
    const block = worksheetFunction({
      ...base,
      name: "BLOCK",
      parameters: [raw("one", true)],
      compute: ({ one }) => JSON.stringify(one),
    });
    expect([call(open, [[[7]]]), call(block, [[[7]]])]).toEqual(["7", "[[7]]"]);
    expect(call(open, [[[1, 2]]])).toBeInstanceOf(Refusal);
    expect(call(block, [[[1, 2]]])).toBe("[[1,2]]");
  });

  it("lets an error through, alone or as a 1 x 1 range, and one that a reader finds in a block", () => {
    const error = new CellError("#REF!");
    const one = worksheetFunction({ ...base, name: "ONE", parameters: [raw("one")], compute: () => 1 });
    const found = worksheetFunction({
      ...base,
      name: "FOUND",
      parameters: [{ ...raw("one", true), read: (cell) => (cell as unknown[][])[0]![0] }],
      compute: () => 1,
    });
    expect([call(one, [error]), call(one, [[[error]]]), call(found, [[[error]]])]).toEqual([error, error, error]);
  });

  it("shows an error, alone or as a 1 x 1 range, to no reader of one value", () => {
    const error = new CellError("#DIV/0!");
    const never = () => {
      throw new Error("read an error");
    };
    const one = worksheetFunction({
      ...base,
      name: "ONE",
      parameters: [{ ...raw("one"), read: never }],
      compute: () => 1,
    });
    expect([call(one, [error]), call(one, [[[error]]])]).toEqual([error, error]);
  });

  it.each([[[[1, 2]]], [[[1], [2]]], [[]], [[[]]]])("refuses %j for one value, under the argument's name", (cell) => {
    const two = worksheetFunction({ ...base, name: "TWO", parameters: [raw("one"), raw("two")], compute: () => 1 });
    expect(call(two, [1, cell])).toEqual(new Refusal({ kind: "range for one value" }, { argument: "two" }, null));
  });

  it("stops at the first refusal, and computes nothing", () => {
    let computed = 0;
    const refusal = new Refusal({ kind: "none" }, { argument: "one" }, null);
    const definition = worksheetFunction({
      ...base,
      name: "STOPS",
      parameters: [
        { ...raw("one"), read: () => refusal },
        {
          ...raw("two"),
          read: () => {
            throw new Error("read past a refusal");
          },
        },
      ],
      compute: () => ++computed,
    });
    expect(call(definition, [1, 2])).toBe(refusal);
    expect(computed).toBe(0);
  });

  it.each([NaN, Infinity, -Infinity])("refuses to show %s, from either kind of function", async (value) => {
    expect(call(giving(value), [])).toEqual(new Refusal({ kind: "no finite result" }, { argument: "GIVING" }, null));
    expect(await call(giving(Promise.resolve(value)), [])).toBeInstanceOf(Refusal);
    expect(call(giving([["Length"], [1], [value]]), [])).toBeInstanceOf(Refusal);
  });

  it.each<[string, unknown]>([
    ["a number", 7],
    ["a text", "agrees"],
    ["a flag", true],
    ["rows", [["Piece"], [1]]],
    ["a refusal", new Refusal({ kind: "none" }, null, null)],
    ["an error", new CellError("#N/A")],
  ])("hands on %s, now or later", async (_, value) => {
    expect(call(giving(value), [])).toBe(value);
    expect(await call(giving(Promise.resolve(value)), [])).toBe(value);
  });

  it("places the core's problems at the argument that the definition names, else at the function", async () => {
    const refuses = { "too steep": "pitch" };
    const failure = new Failure({ kind: "too steep", most: 24 });
    const refusal = new Refusal(failure.problem, { argument: "pitch" }, null);
    expect(call(giving(failure, { refuses }), [])).toEqual(refusal);
    expect(await call(giving(Promise.resolve(failure), { refuses }), [])).toEqual(refusal);
    expect(call(giving(failure), [])).toEqual(new Refusal(failure.problem, { argument: "GIVING" }, null));
  });

  it("reads every argument under its own name", () => {
    const where = (name: string) =>
      ({ ...raw(name), read: (_: unknown, reading: Reading) => JSON.stringify(placeOf(reading)) }) as const;
    const within = {
      ...raw("block"),
      read: (_: unknown, reading: Reading) => (inCell(reading, 3, "Size"), 0),
    } as const;
    const seen = worksheetFunction({
      ...base,
      name: "SEEN",
      parameters: [within, where("two")] as const,
      compute: (named) => (named as Record<string, string>)["two"]!,
    });
    expect(call(seen, [])).toBe('{"argument":"two"}');
  });

  it("refuses arguments past the last, before it reads any", () => {
    const definition = worksheetFunction({
      ...base,
      name: "FEW",
      parameters: [
        {
          ...raw("one"),
          read: () => {
            throw new Error("read");
          },
        },
      ],
      compute: () => 1,
    });
    expect(call(definition, [1, 2, 3])).toEqual(
      new Refusal({ kind: "too many arguments", name: "FEW", most: 1, given: 3 }, null, null),
    );
  });
});
