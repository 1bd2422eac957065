import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { EMPTY_INPUTS } from "../../../src/pane/state/fields.ts";
import { readRemembered } from "../../../src/pane/state/remembered.ts";

const LINK = { sheet: "Roof", row: 1, column: 0, rows: 12, columns: 2 };
const KEPT = {
  inputs: { Span: "24'", Pitch: "6" },
  link: LINK,
  name: "RoofBlock",
  measured: { J1: "55 7/16" },
  kerf: "1/8",
};
const read = (kept: unknown) => readRemembered(JSON.stringify(kept));

describe("readRemembered", () => {
  it("reads what was kept; a row that was not there yet is empty", () => {
    expect(read(KEPT)).toEqual({ ...KEPT, inputs: { ...EMPTY_INPUTS, Span: "24'", Pitch: "6" } });
  });
  it("takes no block and no measures, and no kerf from before there was one", () => {
    expect(read({ inputs: {}, link: null, measured: {} })).toEqual({
      inputs: EMPTY_INPUTS,
      link: null,
      name: null,
      measured: {},
      kerf: "",
    });
  });

  it.each<[string, unknown]>([
    ["nothing", null],
    ["a list", []],
    ["a text", "Span"],
    ["inputs alone", { inputs: {} }],
    ["no inputs", { ...KEPT, inputs: undefined }],
    ["inputs that are a list", { ...KEPT, inputs: ["24'"] }],
    ["a block of two thousand million rows", { ...KEPT, link: { ...LINK, rows: 2_000_000_000 } }],
    ["a block beyond any sheet", { ...KEPT, link: { ...LINK, row: 1_048_576 } }],
    ["an unknown row", { ...KEPT, inputs: { Spam: "24'" } }],
    ["a row that is a number", { ...KEPT, inputs: { Span: 288 } }],
    ["no word of a block", { ...KEPT, link: undefined }],
    ["a block without a sheet", { ...KEPT, link: { ...LINK, sheet: undefined } }],
    ["a block above the sheet", { ...KEPT, link: { ...LINK, row: -1 } }],
    ["half a column", { ...KEPT, link: { ...LINK, columns: 1.5 } }],
    ["measures that are none", { ...KEPT, measured: null }],
    ["a measure that is a number", { ...KEPT, measured: { J1: 55 } }],
    ["a kerf that is a number", { ...KEPT, kerf: 3 }],
  ])("is null for %s", (_, kept) => {
    expect(read(kept)).toBeNull();
  });

  it("never throws, whoever wrote it there", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        readRemembered(text);
      }),
      { seed: 1 },
    );
  });
});
