import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ROWS, type Row } from "../../../functions/arguments/roofBlock.ts";
import { EMPTY_INPUTS, emptyWing, START_INPUTS, type Inputs } from "../../../src/pane/state/fields.ts";
import type { Area } from "../../../src/hosts/host.ts";
import { sheetHost } from "../sheetHost.ts";
import { differing, followed, readAgain } from "../../../src/pane/state/sheetBlock.ts";

const text = fc.constantFrom("", "1", "2");
const anyWings = fc
  .subarray(["A", "B", "C"])
  .chain((letters) =>
    fc.tuple(
      ...letters.map((letter) => fc.tuple(text, text).map(([Wall, Span]) => ({ ...emptyWing(letter), Wall, Span }))),
    ),
  );
const anyInputs = fc
  .record({ ...(Object.fromEntries(ROWS.map((row) => [row, text])) as Record<Row, typeof text>), wings: anyWings })
  .map((inputs): Inputs => inputs);

describe("followed", () => {
  it("takes over what changed in the sheet and keeps what was typed in the pane since", () => {
    const seen = { ...EMPTY_INPUTS, Span: "24'", Pitch: "6" };
    expect(followed({ ...seen, Pitch: "8" }, seen, { ...seen, Span: "26'" })).toEqual({
      ...seen,
      Span: "26'",
      Pitch: "8",
    });
  });
  it("is the pane's own where nothing changed, the very same", () => {
    fc.assert(
      fc.property(anyInputs, anyInputs, (pane, seen) => {
        expect(followed(pane, seen, { ...seen })).toBe(pane);
      }),
    );
  });
  it("is the sheet's where the pane said the same as the sheet before", () => {
    fc.assert(
      fc.property(anyInputs, anyInputs, (seen, now) => {
        expect(followed(seen, seen, now)).toEqual(now);
      }),
    );
  });
});

describe("differing", () => {
  it("compares texts without the blanks around them", () => {
    expect(differing({ ...START_INPUTS, Span: " 24' " }, START_INPUTS)).toEqual([]);
  });

  it("names what stands otherwise in a wing, and the wings that only one has by their Wall", () => {
    const wing = { ...emptyWing("A"), Wall: "front", Span: "12'" };
    const sheet = { ...EMPTY_INPUTS, wings: [wing] };
    expect(differing({ ...EMPTY_INPUTS, wings: [{ ...wing, Span: "14'" }] }, sheet)).toEqual([
      { row: "Span", wing: "A" },
    ]);
    expect(differing(EMPTY_INPUTS, { ...EMPTY_INPUTS, wings: [emptyWing("B")] })).toEqual([{ row: "Wall", wing: "B" }]);
  });
});

describe("readAgain", () => {
  const read = async (rows: (string | number)[][], area: Partial<Area> = {}) =>
    readAgain(sheetHost(rows).host, { sheet: "Bid", row: 0, column: 0, rows: 3, columns: 2, ...area });

  it("finds what a user put below and beside the block: a wing", async () => {
    const found = await read([
      ["Span", "24'", "12'"],
      ["Length", "40'", ""],
      ["Pitch", 6, ""],
      ["Wall", "", "front"],
      ["From left corner", "", "flush left"],
    ]);
    expect(found!.area).toMatchObject({ row: 0, rows: 5, columns: 3 });
    expect(found!.inputs.wings).toEqual([
      { ...emptyWing("A"), Wall: "front", "From left corner": "flush left", Span: "12'" },
    ]);
  });

  it("finds headings that came over it, and no title", async () => {
    const block = [
      ["Span", "24'", "12'"],
      ["Length", "40'", ""],
      ["Pitch", 6, ""],
    ];
    const headed = await read([["", "Main roof", "Wing C"], ...block], { row: 1 });
    expect(headed).toMatchObject({ area: { row: 0, rows: 4, columns: 3 }, inputs: { wings: [{ letter: "C" }] } });
    expect((await read([["The roof", "", ""], ...block], { row: 1 }))!.area).toMatchObject({
      row: 1,
      rows: 3,
      columns: 2,
    });
  });

  it("is null where the block is gone", async () => {
    expect(await read([["Span", "24'"]])).toBeNull();
    expect(
      await read([
        ["x", "Span", "24'"],
        ["x", "Length", "40'"],
        ["x", "Pitch", 6],
      ]),
    ).toBeNull();
  });
});
