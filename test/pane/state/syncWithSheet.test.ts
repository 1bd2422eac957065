import { describe, expect, it, vi } from "vitest";
import type { Area } from "../../../src/hosts/host.ts";
import { START_INPUTS } from "../../../src/pane/state/fields.ts";
import { syncWithSheet, useBlock } from "../../../src/pane/state/syncWithSheet.ts";
import { paneState, setInput } from "../../../src/pane/state/paneState.ts";
import { blockUnder } from "../../../src/pane/state/sheetBlock.ts";
import { ownClock } from "../ownClock.ts";
import { roofRows, sheetHost } from "../sheetHost.ts";

const { later } = ownClock();

describe("the pane and the workbook", () => {
  it("keeps what is typed while the workbook is still asked what it remembers", async () => {
    const { host } = sheetHost(roofRows());
    await host.remember(
      "pane",
      JSON.stringify({ inputs: { Span: "30'", Spacing: "24" }, link: null, measured: { J1: "55" }, kerf: "1/8" }),
    );
    const { recall } = host;
    const state = paneState({
      ...host,
      recall: async (key) => (await new Promise((resolve) => setTimeout(resolve, 1000)), recall(key)),
    });
    const stop = syncWithSheet(state);
    await vi.advanceTimersByTimeAsync(500);
    setInput(state, "Spacing", "16");
    state.kerf.value = "3/32";
    await later();
    expect(state.inputs.value).toMatchObject({ Span: "30'", Spacing: "16" });
    expect([state.measured.value, state.kerf.value]).toEqual([{ J1: "55" }, "3/32"]);
    stop();
  });
  it("offers a block, follows it when used, and keeps what was typed in the pane since", async () => {
    const rows = roofRows();
    const { host, change } = sheetHost(rows);
    const state = paneState(host);
    const stop = syncWithSheet(state);
    await later();
    state.link.value = null;
    state.inputs.value = START_INPUTS;
    await later();
    expect(state.offer.value?.area).toEqual({ sheet: "Bid", row: 1, column: 0, rows: 3, columns: 2 });
    expect(state.inputs.value).toEqual(START_INPUTS);
    void useBlock(state, state.offer.value!);
    setInput(state, "Spacing", "16");
    rows[1]![1] = "30'";
    change();
    await later();
    expect([state.inputs.value.Span, state.inputs.value.Spacing, state.inputs.value.Length]).toEqual([
      "30'",
      "16",
      "40'",
    ]);
    stop();
  });

  it("follows its block by a name that the sheet moves with the cells", async () => {
    const rows = roofRows();
    const { host, names, change, kept } = sheetHost(rows);
    const state = paneState(host);
    const stop = syncWithSheet(state);
    await later();
    await useBlock(state, (await blockUnder(host, await host.selection()))!);
    await later();
    const [[name, area]] = [...names] as [[string, Area]];
    expect([name, state.link.value!.name, JSON.parse(kept.get("pane")!).name]).toEqual([name, name, name]);
    // As a sheet does when seven rows come in above.
    rows.unshift(...Array.from({ length: 7 }, () => ["", ""]));
    names.set(name, { ...area, row: area.row + 7 });
    change();
    await later();
    expect(state.link.value!.area).toEqual({ ...area, row: area.row + 7 });
    rows[8]![1] = "30'";
    change();
    await later();
    expect(state.inputs.value.Span).toBe("30'");
    stop();
  });

  it("takes a row that is put below the block into it, and into its name", async () => {
    const rows = [...roofRows(), ["", ""]];
    const { host, names, change } = sheetHost(rows);
    const state = paneState(host);
    const stop = syncWithSheet(state);
    await useBlock(state, (await blockUnder(host, await host.selection()))!);
    await later();
    rows[4] = ["Spacing", 16];
    change();
    await later();
    expect([state.inputs.value.Spacing, [...names.values()][0]!.rows]).toEqual(["16", 4]);
    stop();
  });

  it("says which rows a block has lost, and keeps their fields", async () => {
    const rows = [...roofRows(), ["Rafter", "2x8"], ["Overhang", 18]];
    const { host, change } = sheetHost(rows);
    const state = paneState(host);
    const stop = syncWithSheet(state);
    await useBlock(state, (await blockUnder(host, await host.selection()))!);
    await later();
    rows[4]![0] = rows[5]![0] = "";
    change();
    await later();
    expect(state.says.value).toContain("Overhang, Rafter are no longer in the roof block");
    expect([state.inputs.value.Rafter, state.inputs.value.Overhang]).toEqual(["2x8", "18"]);
    state.says.value = "";
    rows[1]![1] = "30'";
    change();
    await later();
    expect([state.inputs.value.Span, state.inputs.value.Rafter, state.says.value]).toEqual(["30'", "2x8", ""]);
    stop();
  });

  it("says what a line of other things cuts off from the block, and reads no value from beyond it", async () => {
    const rows = [...roofRows(), ["Spacing", 16], ["Overhang", 18]];
    const { host, names, change } = sheetHost(rows);
    const state = paneState(host);
    const stop = syncWithSheet(state);
    await later();
    const [[name, area]] = [...names] as [[string, Area]];
    // As a sheet does when a row comes inside.
    rows.splice(4, 0, ["Price", 135]);
    names.set(name, { ...area, rows: area.rows + 1 });
    change();
    await later();
    expect(state.says.value).toContain("Spacing, Overhang are no longer in the roof block at Bid!A2:B4");
    rows[5]![1] = 24;
    change();
    await later();
    expect([state.inputs.value.Spacing, state.inputs.value.Overhang]).toEqual(["16", "18"]);
    stop();
  });

  it("follows by place a block that the workbook has lost the name of", async () => {
    const rows = roofRows();
    const { host, names, change } = sheetHost(rows);
    const state = paneState(host);
    const stop = syncWithSheet(state);
    await useBlock(state, (await blockUnder(host, await host.selection()))!);
    await later();
    names.clear();
    rows[1]![1] = "30'";
    change();
    await later();
    expect(state.inputs.value.Span).toBe("30'");
    names.set(state.link.value!.name!, null);
    change();
    await later();
    expect([state.link.value, state.inputs.value.Span]).toEqual([null, "30'"]);
    stop();
  });

  it("lets go of a block that is gone, says so, and keeps the fields", async () => {
    const rows = roofRows();
    const { host, change } = sheetHost(rows);
    const state = paneState(host);
    const stop = syncWithSheet(state);
    await useBlock(state, (await blockUnder(host, await host.selection()))!);
    rows[1]![0] = "gone";
    change();
    await later();
    expect([state.link.value, state.inputs.value.Span]).toEqual([null, "24'"]);
    expect(state.says.value).toContain("Bid!A2:B4");
    stop();
  });

  it("takes up what another workbook remembers, or its block, and writes nothing of the old one into it", async () => {
    const { host, kept, replace } = sheetHost(roofRows());
    const state = paneState(host);
    const stop = syncWithSheet(state);
    await later();
    const link = () => state.link.value;
    state.link.value = null;
    setInput(state, "Span", "27'");
    await later();
    const old = kept.get("pane")!;
    setInput(state, "Span", "28'");
    kept.set("pane", old.replace("27'", "33'"));
    replace();
    await later();
    expect([state.inputs.value.Span, kept.get("pane")!.includes("28'")]).toEqual(["33'", false]);
    kept.clear();
    replace();
    await later();
    expect([state.inputs.value.Span, link()?.area.row]).toEqual(["24'", 1]);
    // Until something is changed it is the workbook's own.
    expect(kept.get("pane")).toBeUndefined();
    setInput(state, "Pitch", "7");
    await later();
    expect(kept.get("pane")).toContain("24'");
    stop();
  });

  it("remembers the fields and the block, and takes up both again with what the sheet says by now", async () => {
    const rows = roofRows();
    const { host, kept } = sheetHost(rows);
    const first = paneState(host);
    const stop = syncWithSheet(first);
    await later();
    useBlock(first, (await blockUnder(host, await host.selection()))!);
    first.measured.value = { J1: "12'" };
    await later();
    setInput(first, "Span", "27'");
    await later();
    stop();
    rows[2]![1] = "50'";
    const second = paneState(host);
    const stopAgain = syncWithSheet(second);
    await later();
    // What was typed in the pane and not written into the block is no work lost.
    expect([second.inputs.value.Span, second.link.value?.inputs.Span]).toEqual(["27'", "24'"]);
    expect([second.inputs.value.Length, second.measured.value, second.link.value?.area.row]).toEqual([
      "50'",
      { J1: "12'" },
      1,
    ]);
    stopAgain();
    for (const bad of [
      "{",
      "null",
      "[]",
      '{"inputs":{"Span":5},"link":null,"measured":{}}',
      '{"inputs":5,"link":{"sheet":"Nowhere"},"measured":7}',
    ]) {
      kept.set("pane", bad);
      const third = paneState(host);
      const stopThird = syncWithSheet(third);
      await later();
      // As where nothing is kept: the sheet's block is taken up.
      expect([third.inputs.value.Length, third.measured.value, third.link.value?.area.row]).toEqual(["50'", {}, 1]);
      stopThird();
    }
  });
});
