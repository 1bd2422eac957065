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

describe("updateBlock", () => {
  it("writes into the block only when told, and says what the block lacks", async () => {
    const rows = block();
    const state = paneState(sheetHost(rows).host);
    useBlock(state, (await readAgain(state.host, { sheet: "Bid", row: 1, column: 0, rows: 3, columns: 2 }))!);
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
});
