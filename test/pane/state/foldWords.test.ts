import { describe, expect, it } from "vitest";
import { emptyWing, FOLDS, START_INPUTS, type Inputs } from "../../../src/pane/state/fields.ts";
import { fieldsIn, foldWords } from "../../../src/pane/state/foldWords.ts";
import { report } from "../../../src/pane/state/report.ts";

const said = (fold: Parameters<typeof foldWords>[0], changes: Partial<Inputs>, wing?: string) => {
  const inputs = { ...START_INPUTS, ...changes };
  return foldWords(fold, inputs, report(inputs), wing).map(({ words, own }) => (own ? `* ${words}` : words));
};

describe("foldWords", () => {
  it("says the start values, with none that differs", () => {
    expect(said("ends", {})).toEqual(["both hipped"]);
    expect(said("hip", {})).toEqual(["dropped", "on the king commons"]);
    expect(said("plate", {})).toEqual([`seat 3 1/2"`, "set out from king common"]);
    expect(said("ordering", {})).toEqual([`9 lengths, 8' 0" to 24' 0"`, "waste 10 %"]);
    for (const fold of FOLDS) expect(said(fold, {}).filter((words) => words.startsWith("*"))).toEqual([]);
  });

  it("says first what differs from the default, as it was understood", () => {
    expect(said("ends", { "End pitch": "8", Ends: "hip and gable" })).toEqual([
      "* end pitch 8 in 12, 33.69°",
      "* left hipped, right gable",
    ]);
    expect(said("plate", { Correction: "1/8", Seat: "" })).toContain(`* correction 1/8"`);
    expect(said("hip", { "Hip top": "BACKED" })).toEqual(["* BACKED", "on the king commons"]);
  });

  it("says what cannot be read as it was typed", () => {
    expect(said("ordering", { Spares: "many" })[0]).toBe("* spares many");
    expect(said("plate", { Seat: "wide" })[0]).toBe("* seat wide");
  });

  it("knows a wing's own rows", () => {
    const wing = {
      ...emptyWing("A"),
      Wall: "front",
      "From left corner": "8'",
      "Out from wall": "8'",
      Span: "10'",
      Ends: "hip",
    };
    expect(said("wing", { wings: [wing] }, "A")).toEqual([]);
    expect(said("wing", { wings: [{ ...wing, Pitch: "9" }] }, "A")).toEqual(["* pitch 9 in 12, 36.87°"]);
    expect(fieldsIn("wing").map(({ row }) => row)).toContain("Long valley");
  });
});
