import { describe, expect, it, vi } from "vitest";
import { blockRows } from "../../../src/pane/state/blockCells.ts";
import { emptyWing, START_INPUTS, WING_FIELDS } from "../../../src/pane/state/fields.ts";
import { paneState, setInput, type Question } from "../../../src/pane/state/paneState.ts";
import { readAgain } from "../../../src/pane/state/sheetBlock.ts";
import { useBlock } from "../../../src/pane/state/syncWithSheet.ts";
import { texts } from "../../../src/pane/words/texts.ts";
import { cutAlready } from "../../../src/pane/writing/cutAlready.ts";
import { updateBlock } from "../../../src/pane/writing/updateBlock.ts";
import { roofRows, sheetHost } from "../sheetHost.ts";

describe("updateBlock", () => {
  it("writes into the block only when told, and says what the block lacks", async () => {
    const rows = [...roofRows(), ["Bid", 100]];
    const state = paneState(sheetHost(rows).host);
    await useBlock(state, (await readAgain(state.host, { sheet: "Bid", row: 1, column: 0, rows: 3, columns: 2 }))!);
    setInput(state, "Span", "26'");
    const no = updateBlock(state);
    await vi.waitFor(() => expect(state.question.value).not.toBeNull(), 20_000);
    // Jacks stood at 120, 96, 72, 48 and 24 in, and stand at 132, 108, 84, 60, 36 and 12: forty are cut from the old ones, and the ridge. Eight jacks of 132, four
    // hips, twelve commons and six kings are longer than what was cut.
    expect(state.question.value!.lines[0]).toContain("24' becomes 26'");
    expect(state.question.value!.lines.join()).toContain(
      "0 of the new roof's serve as they are, 41 are cut shorter, 30 cut anew",
    );
    // What changes and what is cut already is all there is to say: no formula grows with the block, and it lacks no row.
    const cut = cutAlready(state.link.value!.inputs, state.inputs.value);
    expect(state.question.value!.lines.slice(1)).toEqual(cut);
    state.question.value!.answer("cancel");
    expect([await no, rows[1]![1]]).toEqual([false, "24'"]);
    setInput(state, "Spacing", "16");
    const yes = updateBlock(state);
    await vi.waitFor(() => expect(state.question.value).not.toBeNull(), 20_000);
    expect(state.question.value!.lines.filter((line) => line.includes("no row for"))).toEqual([
      texts.lacking(["Spacing"]),
    ]);
    state.question.value!.answer("yes");
    expect([await yes, rows[1]![1]]).toEqual([false, "26'"]);
    expect(state.says.value).toContain("no row for Spacing");
  });

  it("adds a row below the block where that is free; the link and its name grow", async () => {
    const rows = [...roofRows(), ["", ""]];
    const { host, names } = sheetHost(rows);
    const state = paneState(host);
    await useBlock(state, (await readAgain(host, { sheet: "Bid", row: 1, column: 0, rows: 3, columns: 2 }))!);
    setInput(state, "Spacing", "16");
    const yes = updateBlock(state);
    await vi.waitFor(() => expect(state.question.value).not.toBeNull(), 20_000);
    state.question.value!.answer("yes");
    expect([await yes, rows[4]]).toEqual([true, ["Spacing", 16]]);
    const grown = { sheet: "Bid", row: 1, column: 0, rows: 4, columns: 2 };
    expect([state.link.value!.area, names.get("RoofBlock")]).toEqual([grown, grown]);
  });

  it("asks nothing where the block says what the fields say", async () => {
    const rows = roofRows();
    const written: unknown[] = [];
    const { host } = sheetHost(rows);
    const state = paneState({ ...host, write: async (step) => (written.push(step), host.write(step)) });
    await useBlock(state, (await readAgain(host, { sheet: "Bid", row: 1, column: 0, rows: 3, columns: 2 }))!);
    expect([await updateBlock(state), state.question.value, written]).toEqual([true, null, []]);
  });

  const PLAIN = { sheet: "Bid", row: 1, column: 0, rows: 3, columns: 2 };
  /** A pane that follows the small block among these rows; it answers so, each time after what comes between. */
  async function pane(rows: (string | number)[][], answers: readonly string[], between = (_: number) => {}) {
    const [titles, asked] = [[] as string[], [] as Question[]];
    const { host } = sheetHost(rows);
    const state = paneState({ ...host, write: async (step) => (titles.push(step.title), host.write(step)) });
    await useBlock(state, (await readAgain(host, PLAIN))!);
    state.question.subscribe((question) => {
      if (!question) return;
      between(asked.push(question));
      queueMicrotask(() => question.answer(answers[asked.length - 1] ?? "cancel"));
    });
    return { state, titles, asked };
  }
  const empty = (count: number, columns = 2) => Array.from({ length: count }, () => Array<string>(columns).fill(""));

  it("asks for each cell, the pieces that are cut, the formulas that go with it and what it lacks", async () => {
    const rows = [...roofRows(), ["", "", "=RAFTER.MEMBERS(A2:B4)"], ["mine", ""]];
    const { state, asked, titles } = await pane(rows, ["yes"]);
    setInput(state, "Span", "26'");
    setInput(state, "Spacing", "16");
    setInput(state, "Hip", "2x12");
    const before = state.link.value!.inputs;
    const { ask } = texts;
    const formulas = ["=RAFTER.MEMBERS(A2:B4)", "=RAFTER.MEMBERS(A2:B5)"];
    expect(await updateBlock(state)).toBe(false);
    expect(asked.map(({ answer: _, ...question }) => question)).toEqual([
      {
        title: ask.updateTitle,
        lines: [
          ask.change({ at: "Bid!B2", from: "24'", to: "26'", formula: false }),
          ask.change({ at: "Bid!B5", from: "", to: "16", formula: false }),
          ask.change({ at: "Bid!A5", from: "", to: "Spacing", formula: false }),
          ...cutAlready(before, state.inputs.value),
          ask.formulasGrow(1),
          texts.lacking(["Hip"]),
        ],
        choices: [
          { id: "yes", label: ask.updateYes },
          { id: "cancel", label: ask.cancel },
        ],
      },
    ]);
    expect(cutAlready(before, state.inputs.value)).toHaveLength(1);
    expect(rows[4]).toEqual(["Spacing", 16, formulas[1]]);
    expect([titles, state.says.value]).toEqual([[texts.updated], texts.lacking(["Hip"])]);
  });

  it("asks again where the sheet changed before the answer, and writes nothing on another one", async () => {
    const rows = roofRows();
    const own = await pane(rows, ["yes", "yes"], (asked) => void (asked === 1 && (rows[1]![1] = "25'")));
    setInput(own.state, "Span", "26'");
    expect(await updateBlock(own.state)).toBe(true);
    expect(own.asked.map(({ lines }) => lines.slice(0, 2))).toEqual([
      [expect.stringContaining("24' becomes 26'"), expect.any(String)],
      [texts.ask.changedMeanwhile, expect.stringContaining("25' becomes 26'")],
    ]);
    setInput(own.state, "Span", "28'");
    expect([await updateBlock(own.state), own.titles.length, rows[1]![1]]).toEqual([false, 1, "26'"]);
  });

  it("asks nothing where the block only lacks something, and says so", async () => {
    const { state, asked, titles } = await pane([...roofRows(), ["mine", ""]], []);
    setInput(state, "Hip", "2x12");
    expect([await updateBlock(state), asked, titles]).toEqual([false, [], []]);
    expect(state.says.value).toBe(texts.lacking(["Hip"]));
  });

  it("names the wing of what the block lacks", async () => {
    const { state } = await pane([...roofRows().map((line) => [...line, "mine"])], []);
    const wing = { ...emptyWing("A"), Wall: "front", "From left corner": "8'", "Out from wall": "8'", Span: "12'" };
    state.inputs.value = { ...state.inputs.value, wings: [{ ...wing, Ends: "hip" }] };
    expect(await updateBlock(state)).toBe(false);
    expect(state.says.value).toContain(texts.place("Span", "A"));
  });

  it("does nothing without a block, and names a field that must be fixed first", async () => {
    const { state, asked, titles } = await pane(roofRows(), []);
    const link = state.link.value;
    state.link.value = null;
    setInput(state, "Span", "26'");
    expect([await updateBlock(state), state.says.value]).toEqual([false, ""]);
    state.link.value = link;
    setInput(state, "Span", "wide");
    expect([await updateBlock(state), state.says.value]).toEqual([false, texts.fixFirst("Span")]);
    expect([asked, titles]).toEqual([[], []]);
  });

  it("takes all rows that a roof and its wing can have below a block of three, and the caution below them", async () => {
    const rows = [...roofRows(), ...empty(1), [texts.cautionInSheet, ""], ...empty(60)].map(([a, b]) => [a!, b!, ""]);
    const { state, asked } = await pane(rows, ["yes"]);
    const wing = {
      ...emptyWing("A"),
      ...Object.fromEntries(WING_FIELDS.map(({ row, start, choices = [] }) => [row, start || (choices[0] ?? "")])),
      ...{ "From left corner": "8'", "Out from wall": "8'", Span: "12'", Pitch: "6", "End pitch": "6" },
      ...{ Overhang: "18", "End overhang": "18", "Wing framing": "laid over", Sheathing: "0.5", "Long valley": "" },
    };
    const filled = { ...START_INPUTS, "End pitch": "6", "End overhang": "18", Valley: "2x10", Fascia: "1x6" };
    state.inputs.value = { ...filled, "Sub-fascia": "2x6", "End trim": "1", "Job name": "Barn", wings: [wing] };
    expect([await updateBlock(state), state.says.value]).toEqual([true, expect.any(String)]);
    expect(asked).toHaveLength(1);
    const labels = rows.map(([label]) => label).filter((label) => label !== "");
    expect(labels.slice(0, 4)).toEqual(["Title", "Span", "Length", "Pitch"]);
    const own = blockRows(state.inputs.value).flatMap(([label]) => label || []);
    expect(new Set(labels.slice(1, -1))).toEqual(new Set(own));
    expect(rows[labels.length]).toEqual([texts.cautionInSheet, "", ""]);
    expect(state.link.value!.area).toEqual({ ...PLAIN, rows: own.length, columns: 3 });
  });
});
