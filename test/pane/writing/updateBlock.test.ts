import { describe, expect, it, vi } from "vitest";
import { paneState, setInput } from "../../../src/pane/state/paneState.ts";
import { readAgain } from "../../../src/pane/state/sheetBlock.ts";
import { useBlock } from "../../../src/pane/state/syncWithSheet.ts";
import { updateBlock } from "../../../src/pane/writing/updateBlock.ts";
import { sheetHost } from "../sheetHost.ts";

const block = (): (string | number)[][] => [
  ["Title", ""],
  ["Span", "24'"],
  ["Length", "40'"],
  ["Pitch", 6],
];

const AREA = { sheet: "Bid", row: 1, column: 0, rows: 3, columns: 2 };

describe("updateBlock", () => {
  it("writes into the block only when told, and says what the block lacks and has no room for", async () => {
    const rows = [...block(), ["Total", 5]];
    const state = paneState(sheetHost(rows).host);
    useBlock(state, (await readAgain(state.host, { area: AREA, name: null }))!);
    setInput(state, "Span", "26'");
    const no = updateBlock(state);
    await vi.waitFor(() => expect(state.question.value).not.toBeNull());
    state.question.value!.answer("cancel");
    expect([await no, rows[1]![1]]).toEqual([false, "24'"]);
    setInput(state, "Spacing", "16");
    const yes = updateBlock(state);
    await vi.waitFor(() => expect(state.question.value).not.toBeNull());
    state.question.value!.answer("yes");
    expect([await yes, rows[1]![1]]).toEqual([false, "26'"]);
    expect(state.says.value).toContain("no row for Spacing");
  });

  it("puts a row that the block lacks below it where that is empty, and the link and its name grow with it", async () => {
    const rows = [...block(), ["", ""], ["Total", 5]];
    const { host, names } = sheetHost(rows);
    const state = paneState(host);
    useBlock(state, (await readAgain(host, { area: AREA, name: null }))!);
    await vi.waitFor(() => expect(state.link.value!.name).toBe("RoofBlock"));
    setInput(state, "Spacing", "16");
    const yes = updateBlock(state);
    await vi.waitFor(() => expect(state.question.value).not.toBeNull());
    expect(state.question.value!.lines[0]).toContain("Bid!A5");
    state.question.value!.answer("yes");
    expect([await yes, rows[4]]).toEqual([true, ["Spacing", 16]]);
    expect([state.link.value!.area.rows, names.get("RoofBlock")]).toEqual([4, { ...AREA, rows: 4 }]);
  });
});
