import { expect, it } from "vitest";
import type { Area, Host } from "../../../src/hosts/host.ts";
import { paneState } from "../../../src/pane/state/paneState.ts";
import { copyPlain } from "../../../src/pane/writing/copyPlain.ts";
import { texts } from "../../../src/pane/words/texts.ts";
import { sheetHost } from "../sheetHost.ts";

/** What one press copies on a workbook with these sheets, what is shown then, and the pane. */
async function pressed(more: Partial<Host>) {
  const [copied, shown] = [[] as (readonly string[])[], [] as Area[]];
  const { host } = sheetHost([], {
    selection: async () => ({ sheet: "Jacks", row: 4, column: 2, rows: 3, columns: 2 }),
    sheets: async () => ["Roof", "Jacks", texts.plainSheet("Jacks")],
    copyPlain: async (sheet, name) => (copied.push([sheet, name]), { title: name, areas: [] }),
    show: async (area) => void shown.push(area),
    ...more,
  });
  const state = paneState(host);
  await copyPlain(state);
  return { state, copied, shown };
}

it("copies the sheet that is seen under a free name, goes to the copy, and can be undone", async () => {
  const { state, copied, shown } = await pressed({});
  expect(copied).toEqual([["Jacks", "Jacks plain 2"]]);
  expect(shown).toEqual([{ sheet: "Jacks plain 2", row: 0, column: 0, rows: 1, columns: 1 }]);
  expect(state.written.value.map(({ title }) => title)).toEqual(["Jacks plain 2"]);
  expect(state.says.value).toBe(texts.plainCopied("Jacks", "Jacks plain 2"));
});

it("says why it cannot, and asks a sheet nothing that copies none", async () => {
  const { state, shown } = await pressed({ copyPlain: () => Promise.reject(new Error("The workbook is protected.")) });
  expect([state.written.value, shown, state.says.value]).toEqual([[], [], texts.failed("The workbook is protected.")]);
  const none = await pressed({ copyPlain: undefined });
  expect([none.state.written.value, none.shown, none.state.says.value]).toEqual([[], [], ""]);
});
