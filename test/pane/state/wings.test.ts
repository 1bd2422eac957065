import { describe, expect, it } from "vitest";
import { readRows } from "../../../functions/arguments/roofBlock.ts";
import { Failure } from "../../../src/measure/result.ts";
import { blockRows } from "../../../src/pane/state/blockCells.ts";
import { changeUnit } from "../../../src/pane/state/changeUnit.ts";
import { paneState, setInput, type PaneState } from "../../../src/pane/state/paneState.ts";
import { readRemembered, rememberedText } from "../../../src/pane/state/remembered.ts";
import { faultyField } from "../../../src/pane/state/report.ts";
import { addWing, removeWing } from "../../../src/pane/state/wings.ts";
import { sheetHost } from "../sheetHost.ts";

const start = (): PaneState => paneState(sheetHost([]).host);
const letters = (state: PaneState) => state.inputs.value.wings.map(({ letter }) => letter);
const faults = (state: PaneState) => {
  const read = readRows("roof", blockRows(state.inputs.value));
  return read instanceof Failure
    ? [read.problem.kind]
    : [read, ...read.wings].flatMap(({ problems }) => [...problems.keys()]);
};

describe("wings in the pane", () => {
  it("start with all that a wing needs, on a wall of their own", () => {
    const state = start();
    expect([addWing(state), addWing(state)]).toEqual(["A", "B"]);
    expect(state.inputs.value.wings).toMatchObject([
      { Wall: "front", "From left corner": `11' 0"`, "Out from wall": `6' 0"`, Span: `12' 0"`, Ends: "gable" },
      { Wall: "back" },
    ]);
    expect(faults(state)).toEqual([]);
  });

  it("keep their letters when another goes, and a new one takes the first that is free", () => {
    const state = start();
    for (let i = 0; i < 3; i++) addWing(state);
    removeWing(state, "B");
    expect(letters(state)).toEqual(["A", "C"]);
    expect(addWing(state)).toBe("B");
    expect(letters(state)).toEqual(["A", "B", "C"]);
    for (let i = 0; i < 5; i++) addWing(state);
    expect(addWing(state)).toBeNull();
    expect(letters(state).join("")).toBe("ABCDEFGH");
  });

  it("have their messages at their own fields, all at once", () => {
    const state = start();
    addWing(state);
    addWing(state);
    setInput(state, "Span", "", "A");
    setInput(state, "Out from wall", "10", "B");
    setInput(state, "Ridge", "none", "B");
    const { messages, wings, general, model } = state.report.value;
    expect({ messages, general, model }).toEqual({ messages: {}, general: null, model: null });
    expect(wings["A"]!.messages).toEqual({ Span: "Nothing is typed. Type its width across the plates, such as 12'." });
    expect(wings["B"]!.messages).toMatchObject({
      "Out from wall": "10 was read, which is too short in inches. Type 10' for feet.".replace("10 was", `"10" was`),
      Ridge: expect.stringContaining("needs its ridge boards"),
    });
    expect(wings["B"]!.understood).toMatchObject({ Span: `12' 0"` });
    expect(faultyField(state.report.value)).toEqual({ row: "Span", wing: "A" });
    setInput(state, "Span", "x");
    expect(faultyField(state.report.value)).toEqual({ row: "Span" });
  });

  it("are kept in the workbook, and read again from what was kept before there were any", () => {
    const state = start();
    addWing(state);
    const kept = { inputs: state.inputs.value, link: null, name: null, measured: {}, kerf: "" };
    expect(readRemembered(rememberedText(kept))).toEqual(kept);
    const { wings: _, ...before } = JSON.parse(rememberedText(kept)) as Record<string, unknown>;
    expect(readRemembered(JSON.stringify(before))!.inputs.wings).toEqual([]);
    expect(readRemembered(JSON.stringify({ ...before, wings: { Z: {} } }))).toBeNull();
  });

  it("turn into the other unit with the roof", () => {
    const state = start();
    addWing(state);
    setInput(state, "Overhang", "none", "A");
    changeUnit(state, "mm");
    expect(state.inputs.value.wings).toMatchObject([
      { "From left corner": "3353", "Out from wall": "1829", Span: "3658", Overhang: "none", "End overhang": "" },
    ]);
    expect(faults(state)).toEqual([]);
  });
});
