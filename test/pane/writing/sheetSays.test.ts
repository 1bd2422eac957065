import { describe, expect, it, vi } from "vitest";
import type { Area, Host, WriteStep } from "../../../src/hosts/host.ts";
import { PartlyWritten } from "../../../src/hosts/partlyWritten.ts";
import { emptyWing } from "../../../src/pane/state/fields.ts";
import { paneState, setInput } from "../../../src/pane/state/paneState.ts";
import { askSheet, fieldAtFault, once, takeBack, working, writeStep } from "../../../src/pane/writing/sheetWork.ts";
import { texts } from "../../../src/pane/words/texts.ts";
import { ownClock } from "../ownClock.ts";
import { roofRows, sheetHost } from "../sheetHost.ts";

ownClock();

const step: WriteStep = { title: "Jacks", blocks: [] };
const pane = (more: Partial<Host> = {}) => paneState(sheetHost(roofRows(), more).host);
const never = () => new Promise<never>(() => undefined);

describe("what is said of a failure", () => {
  it.each<[string, unknown, string]>([
    ["a stop", new DOMException("", "AbortError"), texts.stopped],
    ["another failure of the page", new DOMException("No room.", "QuotaExceededError"), texts.failed("No room.")],
    ["an error", new Error("No such sheet."), texts.failed("No such sheet.")],
    ["what is no error", "offline", texts.failed("offline")],
    ["what was written in part", new PartlyWritten("Look at Jacks!B4."), "Look at Jacks!B4."],
  ])("is why: %s", async (_, error, said) => {
    const state = pane();
    // Something was written by an earlier press.
    await writeStep(state, step);
    expect(await once(state, () => Promise.reject(error as Error))).toBeNull();
    expect(state.says.value).toBe(said);
  });

  it.each<[string, Error, string]>([
    ["is what was written before it", new Error("No such sheet."), texts.written("Jacks", ["Bid!A1"])],
    ["is where to look", new PartlyWritten("Look at Jacks!B4."), "Look at Jacks!B4."],
  ])("after a write %s", async (_, error, said) => {
    const state = pane();
    const task = async () => (await writeStep(state, step), Promise.reject(error));
    expect([await once(state, task), state.says.value, state.written.value.length]).toEqual([null, said, 1]);
  });

  it("names the field that comes first, and its wing", () => {
    const state = pane();
    expect([fieldAtFault(state), state.says.value]).toEqual([null, ""]);
    const wing = { ...emptyWing("A"), Wall: "front", "From left corner": "8'", "Out from wall": "8'", Ends: "hip" };
    state.inputs.value = { ...state.inputs.value, wings: [{ ...wing, Span: "wide" }] };
    expect(fieldAtFault(state)).toEqual({ row: "Span", wing: "A" });
    expect(state.says.value).toBe(texts.fixFirst("Wing A, Span"));
    setInput(state, "Pitch", "steep");
    expect(fieldAtFault(state)).toEqual({ row: "Pitch" });
    expect(state.says.value).toBe(texts.fixFirst("Pitch"));
  });
});

describe("what takes long", () => {
  it("is shown half a second after it began, not after what went before", async () => {
    const state = pane();
    await working(state, async () => undefined);
    await vi.advanceTimersByTimeAsync(400);
    const second = working(state, async (_, progress) => (progress(2, 5), never()));
    void second;
    expect(state.work.value).toMatchObject({ done: 2, of: 5, shown: false });
    await vi.advanceTimersByTimeAsync(499);
    expect(state.work.value!.shown).toBe(false);
    await vi.advanceTimersByTimeAsync(1);
    expect(state.work.value).toMatchObject({ done: 2, of: 5, shown: true });
  });

  it("is not waited for ten seconds after a stop", async () => {
    const state = pane();
    const task = once(state, () => working(state, never));
    await vi.advanceTimersByTimeAsync(3000);
    state.work.value!.stop();
    await vi.advanceTimersByTimeAsync(9999);
    expect([state.work.value === null, state.says.value]).toEqual([false, ""]);
    await vi.advanceTimersByTimeAsync(1);
    expect([await task, state.work.value, state.says.value]).toEqual([null, null, texts.noAnswer]);
  });

  it("is stopped at once where it is a question", async () => {
    const state = pane();
    const task = once(state, () => askSheet(state, never));
    await vi.advanceTimersByTimeAsync(100);
    state.work.value!.stop();
    expect([await task, state.work.value, state.says.value]).toEqual([null, null, texts.stopped]);
    expect(await askSheet(state, async () => 7)).toBe(7);
  });
});

describe("what is said of a write", () => {
  const at = (sheet: string, row: number): Area => ({ sheet, row, column: 0, rows: 1, columns: 2 });

  it("is the first place on each sheet, in their order, and what the user must know besides", async () => {
    const areas = [at("Roof", 0), at("Jacks", 4), at("Roof", 9), at("Jacks", 1)];
    const state = pane({ write: async ({ title }) => ({ title, areas, hint: "Turn calculation on." }) });
    expect(await writeStep(state, step)).toBe(state.written.value[0]);
    expect(state.says.value).toBe(`${texts.written("Jacks", ["Roof!A1:B1", "Jacks!A5:B5"])} Turn calculation on.`);
  });

  it("is nothing before what belongs to it is done too", async () => {
    const state = pane();
    const seen: unknown[] = [];
    await writeStep(state, step, async () => void seen.push(state.written.value.length, state.says.value));
    expect(seen).toEqual([1, ""]);
    const failing = writeStep(pane(), step, () => Promise.reject(new Error("No name.")));
    await expect(failing).rejects.toThrow("No name.");
  });

  it.each<[string, Host["takeBack"], string, number]>([
    ["that is undone in time", async () => [], texts.stopped, 0],
    ["whose cells were edited since", async () => ["Jacks!B4"], texts.written("Jacks", ["Bid!A1"]), 1],
    [
      "that the sheet does not undo",
      () => Promise.reject(new Error("The sheet is busy.")),
      texts.undoFailed("The sheet is busy."),
      1,
    ],
  ])("stopped too late, %s", async (_, undo, said, kept) => {
    const { host } = sheetHost(roofRows());
    const state = paneState({
      ...host,
      write: async (one) => (state.work.value!.stop(), host.write(one)),
      takeBack: undo,
    });
    await once(state, () => writeStep(state, step));
    expect([state.says.value, state.written.value.length]).toEqual([said, kept]);
  });
});

describe("an undo", () => {
  it("that fails can be pressed again, and says so", async () => {
    let busy = true;
    const state = pane({
      takeBack: () => (busy ? Promise.reject(new Error("The sheet is busy.")) : Promise.resolve([])),
    });
    await writeStep(state, step);
    await once(state, () => takeBack(state));
    expect([state.says.value, state.written.value.length]).toEqual([texts.undoFailed("The sheet is busy."), 1]);
    busy = false;
    await once(state, () => takeBack(state));
    expect([state.says.value, state.written.value.length]).toEqual([texts.takenBack("Jacks"), 0]);
  });
  it("of nothing says nothing", async () => {
    const state = pane({ takeBack: () => Promise.reject(new Error("Nothing was written.")) });
    await takeBack(state);
    expect(state.says.value).toBe("");
  });
});
