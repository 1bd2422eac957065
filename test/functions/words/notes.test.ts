import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exactText, limitText } from "../../../functions/words/limitText.ts";
import { readRoof } from "../../../functions/arguments/roofModel.ts";
import { NOTE_WORDS, notesText, noteText } from "../../../functions/words/notes.ts";
import { jackTable } from "../../../functions/jackTable.ts";
import { readLength } from "../../../src/measure/readLength.ts";
import { Failure } from "../../../src/measure/result.ts";
import { main, wingedCases } from "../../solids/wings/cases.ts";
import { modelOf } from "../../solids/wings/frameOf.ts";
import type { WingPlan } from "../../solids/wings/plan.ts";
import { plateMarks } from "../../../src/roof/tables/plateMarks.ts";
import { rectangularBlocks } from "../../snapshot/rectangularBlocks.ts";
import { call } from "../../../src/registry/call.ts";

const value = (text: string): number => {
  const read = readLength(text);
  if (read instanceof Failure) throw new Error(text);
  return read.value;
};

describe("noteText", () => {
  it("gives lengths as a tape reads them, the small ones finer, and angles to a hundredth", () => {
    const proud = (by: number) => noteText({ kind: "proud of hip", by }, "in");
    expect(proud(0.2652)).toContain(`17/64"`);
    expect(proud(1.2652)).toContain(`1 1/4"`);
    expect(noteText({ kind: "backed", main: 18.434949 }, "in")).toContain("18.43°");
  });

  it("gives millimeters whole, the small ones to a tenth", () => {
    const toe = (by: number) => noteText({ kind: "toe below hip", by }, "mm");
    expect(toe(27.3)).toContain("27 mm");
    expect(toe(2.73)).toContain("2.7 mm");
  });

  it("rounds what is asked for at least up, never down", () => {
    fc.assert(
      fc.property(fc.double({ min: 3, max: 20, noNaN: true }), (least) => {
        const [, named] = /at least (.+?) deep/.exec(noteText({ kind: "hip too shallow", least }, "in"))!;
        expect(value(named!)).toBeGreaterThanOrEqual(least - 1e-6);
        expect(value(named!)).toBeLessThan(least + 1 / 16);
      }),
      { seed: 1 },
    );
  });

  it("says of an overhang that may be one in feet how it was read, and what was left out", () => {
    const table = (...more: [string, number | string][]) =>
      call(jackTable, [[["Span", 288], ["Length", 432], ["Pitch", 6], ...more]]) as (string | number)[][];
    const notes = (...more: [string, number | string][]) =>
      table(...more)
        .slice(1)
        .map((row) => row[12]);
    expect(notes(["Overhang", 2])[0]).toContain(`overhang only 2": feet need their mark`);
    expect(notes(["Overhang", 2]).slice(1).join()).not.toContain("overhang");
    for (const overhang of [0, 3, 16, `2'`]) expect(notes(["Overhang", overhang]).join()).not.toContain("overhang");
  });

  it("gives all notes in one text", () => {
    expect(notesText([], "in")).toBe("");
    expect(notesText([{ kind: "kings meet" }, { kind: "last bay", width: 12 }], "in")).toMatch(/^.+; last bay 1' 0"$/);
  });

  it("has no words for a note that no roof has", () => {
    const usual = [
      ["Span", 288],
      ["Length", 600],
      ["Overhang", 16],
      ["Hip head", "ridge"],
    ];
    const roofs = [
      ...rectangularBlocks(60),
      [...usual.slice(0, 2), ["Pitch", 6], ["Overhang", 2]],
      [...usual, ["Pitch", 6], ["Rafter", "3.0 x 5.5"], ["Hip", "2x10"], ["Ridge", "2x10"]],
      [...usual, ["Pitch", 5], ["End pitch", 7], ["Hip", "2x12"], ["Ridge", "2x12"]],
      ...[["square"], ["level", "corner"]].map(([cut, blocking = "none"]) => [
        ...usual,
        ["Pitch", 4],
        ["Spacing", 24],
        ["Tail cut", cut],
        ["Fascia", "2x4"],
        ["Blocking", blocking],
      ]),
      [
        ...usual,
        ["Pitch", 14],
        ["Seat", 1],
        ["Hip", "2x12"],
        ["Ridge", "2x12"],
        ["Spacing", 24],
        ["Blocking", "plate"],
      ],
      [
        ["Span", 288, 192],
        ["Length", 480],
        ["Pitch", 6],
        ["Overhang", 16],
        ["Spacing", 24],
        ["Wall", "", "front"],
        ["From left corner", "", 120],
        ["Out from wall", "", 120],
        ["Ends", "", "gable"],
        ["Fascia", "2x6"],
        ["Blocking", "both"],
      ],
      [...usual, ["Pitch", 4], ["End pitch", 10], ["Hip", "2x12"], ["Ridge", "2x12"]],
    ];
    const [tee] = wingedCases["a T with a lower ridge"]!.wings as [WingPlan];
    const winged = [
      ...Object.values(wingedCases),
      { ...main, valley: { thickness: 1.5, depth: 5.5 }, wings: [{ ...tee, overhang: 8 }] },
      // A little one laid over under deep rafters: its upper jacks are wedges.
      {
        ...main,
        rafter: { thickness: 1.5, depth: 9.25 },
        heel: 7,
        hip: { thickness: 1.5, depth: 11.25 },
        wings: [{ ...tee, span: 100, framing: "laid over" as const }],
      },
      // A rafter of the main roof would stand half before and half behind the long valley's head.
      { ...main, wings: [{ ...tee, from: 119.9, longValley: "left" as const }] },
    ].map(modelOf);
    const models = roofs.flatMap((block) => {
      const model = readRoof("roof", block);
      return model instanceof Failure ? [] : [model];
    });
    const kinds = [...models, ...winged].flatMap((model) => {
      const marks = plateMarks(model.frame).flatMap((plate) => plate.marks);
      return [...model.pieces, ...model.eaves, ...marks].flatMap(({ notes }) => notes.map(({ kind }) => kind));
    });
    expect([...new Set(kinds)].sort()).toEqual(Object.keys(NOTE_WORDS).sort());
  });
});

describe("limitText", () => {
  it.each([
    [5.669, "in", "most", `5 5/8"`],
    [5.669, "in", "least", `5 11/16"`],
    [5.625, "in", "most", `5 5/8"`],
    [5.625, "in", "least", `5 5/8"`],
    [143.4, "mm", "most", "143 mm"],
    [143.4, "mm", "least", "144 mm"],
    [1.81066, null, "least", "1.8107"],
    [1.81066, null, "most", "1.8106"],
  ] as const)("%s %s, at the %s: %s", (limit, unit, bound, text) => expect(limitText(limit, unit, bound)).toBe(text));

  it("never names a limit that does not work", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 500, noNaN: true }),
        fc.constantFrom("in" as const, "mm" as const, null),
        (limit, unit) => {
          expect(value(limitText(limit, unit, "most"))).toBeLessThanOrEqual(limit + 1e-6);
          expect(value(limitText(limit, unit, "least"))).toBeGreaterThanOrEqual(limit - 1e-6);
        },
      ),
      { seed: 2 },
    );
  });
});

describe("exactText", () => {
  it("is tape text where a tape can show it, and else a number exact enough to be the value", () => {
    expect(exactText(246.875, "in")).toBe(`20' 6 7/8"`);
    expect(exactText(1728 / 7, "in")).toBe("246.85714286");
    expect(exactText(7200, "mm")).toBe("7200 mm");
  });
});
