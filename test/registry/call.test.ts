import { describe, expect, it } from "vitest";
import { Failure } from "../../src/measure/result.ts";
import { call } from "../../src/registry/call.ts";
import { CellError, Refusal } from "../../src/registry/refusal.ts";
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
  it("hands the readings on by name, and what the call has learnt of its unit", () => {
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
            reading.unitFrom = "first";
            return cell;
          },
        },
        {
          name: "second",
          description: "It.",
          quantity: "length",
          read: (_, reading) => `${reading.unit} from ${reading.unitFrom}`,
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

  it("stops at the first refusal, and computes nothing", () => {
    let computed = 0;
    const refusal = new Refusal("#VALUE!", "one: no.");
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
    expect(call(giving(value), [])).toEqual(
      new Refusal("#VALUE!", expect.stringContaining("GIVING: these values give no finite result")),
    );
    expect(await call(giving(Promise.resolve(value)), [])).toBeInstanceOf(Refusal);
    expect(call(giving([["Length"], [1], [value]]), [])).toBeInstanceOf(Refusal);
  });

  it.each<[string, unknown]>([
    ["a number", 7],
    ["a text", "agrees"],
    ["a flag", true],
    ["rows", [["Piece"], [1]]],
    ["a refusal", new Refusal("#N/A", "none.")],
    ["an error", new CellError("#N/A")],
  ])("hands on %s, now or later", async (_, value) => {
    expect(call(giving(value), [])).toBe(value);
    expect(await call(giving(Promise.resolve(value)), [])).toBe(value);
  });

  it("words the core's reasons, with their figures", async () => {
    const refuses = [
      {
        kind: "too steep",
        when: "it is too steep",
        say: (problem: object) => `pitch: type less than ${(problem as { most: number }).most}.`,
      },
    ];
    const reason = new Failure({ kind: "too steep", most: 24 });
    expect(call(giving(reason, { refuses }), [])).toEqual(new Refusal("#VALUE!", "pitch: type less than 24."));
    expect(await call(giving(Promise.resolve(reason), { refuses }), [])).toEqual(
      new Refusal("#VALUE!", "pitch: type less than 24."),
    );
    expect(call(giving(reason), [])).toEqual(new Refusal("#VALUE!", "GIVING: no result (too steep)."));
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
      new Refusal("#VALUE!", "FEW takes 1 argument at most and was given 3. Remove the last 2."),
    );
  });
});
