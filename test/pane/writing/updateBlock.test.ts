import { describe, expect, it, vi } from "vitest";
import { paneState, setInput } from "../../../src/pane/state/paneState.ts";
import { readAgain } from "../../../src/pane/state/sheetBlock.ts";
import { useBlock } from "../../../src/pane/state/syncWithSheet.ts";
import { updateBlock } from "../../../src/pane/writing/updateBlock.ts";
import { roofRows, sheetHost } from "../sheetHost.ts";

describe("updateBlock", () => {
  it("writes into the block only when told, and says what the block lacks", async () => {
    const rows = [...roofRows(), ["Bid", 100]];
    const state = paneState(sheetHost(rows).host);
    await useBlock(state, (await readAgain(state.host, { sheet: "Bid", row: 1, column: 0, rows: 3, columns: 2 }))!);
    setInput(state, "Span", "26'");
    const no = updateBlock(state);
    await vi.waitFor(() => expect(state.question.value).not.toBeNull());
    // Jacks stood at 120, 96, 72, 48 and 24 in, and stand at 132, 108, 84, 60, 36 and 12: forty are cut from the old ones, and the ridge. Eight jacks of 132, four
    // hips, twelve commons and six kings are longer than what was cut.
    expect(state.question.value!.lines[0]).toContain("24' becomes 26'");
    expect(state.question.value!.lines.join()).toContain(
      "0 of the new roof's serve as they are, 41 are cut shorter, 30 cut anew",
    );
    state.question.value!.answer("cancel");
    expect([await no, rows[1]![1]]).toEqual([false, "24'"]);
    setInput(state, "Spacing", "16");
    const yes = updateBlock(state);
    await vi.waitFor(() => expect(state.question.value).not.toBeNull());
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
    await vi.waitFor(() => expect(state.question.value).not.toBeNull());
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
});
