import { describe, expect, it, vi } from "vitest";
import type { Host, WriteStep } from "../../../src/hosts/host.ts";
import { PartlyWritten } from "../../../src/hosts/partlyWritten.ts";
import { paneState } from "../../../src/pane/state/paneState.ts";
import { readAgain } from "../../../src/pane/state/sheetBlock.ts";
import { useBlock } from "../../../src/pane/state/syncWithSheet.ts";
import { once, takeBack, undo, writeStep } from "../../../src/pane/writing/sheetWork.ts";
import { ownClock } from "../ownClock.ts";
import { roofRows, sheetHost } from "../sheetHost.ts";

ownClock();

describe("writing", () => {
  const step: WriteStep = { title: "Jacks", blocks: [] };
  let [rows, deaf] = [roofRows(), false];
  it("shows its progress after half a second, and leaves nothing when it is stopped", async () => {
    const { host } = sheetHost(roofRows(), {
      write: (_, options) =>
        new Promise((__, reject) => {
          options!.progress!(3, 9);
          options!.signal!.addEventListener("abort", () => reject(options!.signal!.reason));
        }),
    });
    const state = paneState(host);
    const written = once(state, () => writeStep(state, step));
    expect(state.work.value).toMatchObject({ shown: false, done: 3, of: 9 });
    await vi.advanceTimersByTimeAsync(600);
    expect(state.work.value!.shown).toBe(true);
    state.work.value!.stop();
    expect(await written).toBeNull();
    expect([state.work.value, state.written.value.length, state.says.value]).toEqual([
      null,
      0,
      "Stopped. Nothing was written.",
    ]);
  });
  it("says why it failed", async () => {
    const state = paneState(
      sheetHost(roofRows(), { write: () => Promise.reject(new Error("The sheet is protected.")) }).host,
    );
    expect(await once(state, () => writeStep(state, step))).toBeNull();
    expect(state.says.value).toBe("Nothing was written. The sheet is protected.");
  });
  it("keeps what a failed write left, where the sheet knows how to take it away, and says where to look", async () => {
    const left = { title: "Jacks", areas: [] };
    for (const written of [left, null]) {
      const failure = new PartlyWritten("Look at Jacks!B4.", written);
      const state = paneState(sheetHost(roofRows(), { write: () => Promise.reject(failure) }).host);
      expect(await once(state, () => writeStep(state, step))).toBeNull();
      expect([state.written.value, state.says.value]).toEqual([written ? [left] : [], "Look at Jacks!B4."]);
    }
  });
  it("is taken back, or says which cells were edited since", async () => {
    let edited = ["Jacks!B4"];
    const state = paneState(sheetHost(roofRows(), { takeBack: async () => edited }).host);
    await writeStep(state, step);
    await takeBack(state);
    expect([state.says.value, state.written.value.length]).toEqual([
      "Nothing was undone: Jacks!B4 was edited since.",
      1,
    ]);
    edited = [];
    await takeBack(state);
    expect([state.says.value, state.written.value.length]).toEqual(["Undone: Jacks.", 0]);
  });
  it("is taken back once what belongs to it is done, however often and early that is asked for", async () => {
    const state = paneState(sheetHost(roofRows()).host);
    await writeStep(state, { ...step, title: "Members" });
    const order: string[] = [];
    let name = () => {};
    const named = new Promise<void>((resolve) => (name = resolve)).then(() => void order.push("named"));
    const fill = once(state, () => writeStep(state, step, () => named));
    await vi.waitFor(() => expect(state.written.value.length).toBe(2), 20_000);
    const undone = [undo(state), undo(state)].map((press) => press.then(() => order.push("undone")));
    name();
    await Promise.all([fill, ...undone]);
    expect(order[0]).toBe("named");
    expect([state.written.value.map(({ title }) => title), state.says.value]).toEqual([["Members"], "Undone: Jacks."]);
  });
  it("is not taken back while something else is under way", async () => {
    const state = paneState(sheetHost(roofRows()).host);
    await writeStep(state, step);
    let answer = () => {};
    const question = once(state, () => new Promise<void>((resolve) => (answer = resolve)));
    await undo(state);
    expect(state.written.value.length).toBe(1);
    answer();
    await question;
    await undo(state);
    expect(state.written.value.length).toBe(0);
  });
  it("takes the last step back alone", async () => {
    const state = paneState(sheetHost(roofRows()).host);
    await writeStep(state, step);
    await writeStep(state, { ...step, title: "Members" });
    await takeBack(state);
    expect(state.written.value.map(({ title }) => title)).toEqual(["Jacks"]);
  });
  it.each<[string, Partial<Host>, boolean]>([
    ["that stands", {}, true],
    ["that went with it", { takeBack: async () => (rows.splice(0), []) }, false],
    ["that cannot be read now", { takeBack: async () => ((deaf = true), []) }, true],
  ])("then follows a block %s: %o", async (_, more, followed) => {
    rows = roofRows();
    deaf = false;
    const { host } = sheetHost(rows, more);
    const read: Host["read"] = (area) => (deaf ? Promise.reject(new Error("Busy.")) : host.read(area));
    const state = paneState({ ...host, read });
    await useBlock(state, (await readAgain(state.host, { sheet: "Bid", row: 1, column: 0, rows: 3, columns: 2 }))!);
    await writeStep(state, step);
    await takeBack(state);
    expect([state.link.value !== null, state.says.value]).toEqual([followed, "Undone: Jacks."]);
  });
  it("takes back what was written when a stop came too late for the sheet", async () => {
    const rows = roofRows();
    const { host } = sheetHost(rows);
    const state = paneState({
      ...host,
      write: async (step) => (state.work.value!.stop(), host.write(step)),
      takeBack: async () => ((rows[0]![0] = "Title"), []),
    });
    const late = { title: "test", blocks: [{ sheet: "Bid", row: 0, column: 0, cells: [[{ content: "new" }]] }] };
    expect(await once(state, () => writeStep(state, late))).toBeNull();
    expect([rows[0]![0], state.written.value, state.says.value]).toEqual([
      "Title",
      [],
      "Stopped. Nothing was written.",
    ]);
  });
  it("does not say that nothing was written where only what came after it failed", async () => {
    const state = paneState(sheetHost(roofRows()).host);
    const task = async () => {
      await writeStep(state, step);
      throw new Error("That sheet cannot be shown.");
    };
    expect(await once(state, task)).toBeNull();
    expect(state.says.value).toBe("Jacks written to Bid!A1.");
  });
});
