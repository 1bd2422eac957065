import { describe, expect, it, vi } from "vitest";
import { START_INPUTS } from "../../../src/pane/state/fields.ts";
import { syncWithSheet } from "../../../src/pane/state/syncWithSheet.ts";
import { paneState, setInput } from "../../../src/pane/state/paneState.ts";
import { ownClock } from "../ownClock.ts";
import { roofRows, sheetHost } from "../sheetHost.ts";

const { later } = ownClock();

describe("a block that nobody pointed at", () => {
  const second = roofRows().map((line) => ["", ...line]);

  it("is taken up at the start, by name", async () => {
    const { host, names } = sheetHost(roofRows());
    const state = paneState(host);
    const stop = syncWithSheet(state);
    await later();
    expect([state.inputs.value.Length, state.link.value?.name]).toEqual(["40'", "RoofBlock"]);
    expect(names.get("RoofBlock")).toEqual({ sheet: "Bid", row: 1, column: 0, rows: 3, columns: 2 });
    stop();
  });

  it("is asked for where there are several", async () => {
    const { host } = sheetHost(roofRows().map((line, i) => [...line, ...second[i]!]));
    const state = paneState(host);
    const stop = syncWithSheet(state);
    await later();
    expect(state.link.value).toBeNull();
    expect(state.inputs.value).toEqual(START_INPUTS);
    expect(state.says.value).toBe("There are 2 roof blocks: Bid!A2:B4, Bid!D2:E4. Select the one to use.");
    stop();
  });

  it("does not take the place of what is typed while it is looked for", async () => {
    const { host } = sheetHost(roofRows());
    const { read } = host;
    const state = paneState({
      ...host,
      read: async (area) => (await new Promise((resolve) => setTimeout(resolve, 1000)), read(area)),
    });
    const stop = syncWithSheet(state);
    await vi.advanceTimersByTimeAsync(500);
    setInput(state, "Span", "31'");
    await later();
    expect([state.inputs.value.Span, state.link.value]).toEqual(["31'", null]);
    stop();
  });
});

describe("a wing's column", () => {
  const winged = () => [
    ["", "Main roof", "", ""],
    ["Span", "24'", "", ""],
    ["Length", "40'", "", ""],
    ["Pitch", 6, "", ""],
  ];

  it("that comes beside the block is in its name, with the line of the headings", async () => {
    const rows = winged();
    const { host, names, change } = sheetHost(rows);
    const state = paneState(host);
    const stop = syncWithSheet(state);
    await later();
    expect(names.get("RoofBlock")).toEqual({ sheet: "Bid", row: 0, column: 0, rows: 4, columns: 2 });
    rows[0]![2] = "Wing A";
    rows[1]![2] = "12'";
    change();
    await later();
    expect(names.get("RoofBlock")).toEqual({ sheet: "Bid", row: 0, column: 0, rows: 4, columns: 3 });
    rows[0]![3] = "Wing B";
    change();
    await later();
    expect(names.get("RoofBlock")).toEqual({ sheet: "Bid", row: 0, column: 0, rows: 4, columns: 4 });
    expect([state.inputs.value.Span, state.inputs.value.wings.map(({ Span }) => Span)]).toEqual(["24'", ["12'", ""]]);
    stop();
  });
});
